#include "answers/money/pack_calendar.h"

#include <algorithm>

namespace baitwright {

PackCalendar::PackCalendar(const PackNeed& need) : shelf_life_(need.shelf_life), needed_before_{0} {
    for (const std::int64_t grams : need.grams) needed_before_.push_back(needed_before_.back() + grams);
}

std::int64_t PackCalendar::need_at(int session) const {
    const auto at = static_cast<std::size_t>(session);
    return needed_before_[at + 1] - needed_before_[at];
}

int PackCalendar::last_good(int bought_for) const {
    return shelf_life_ >= sessions() ? sessions() - 1 : std::min(sessions() - 1, bought_for + shelf_life_ - 1);
}

std::int64_t PackCalendar::window(int session) const {
    return needed_before_[static_cast<std::size_t>(last_good(session)) + 1] -
           needed_before_[static_cast<std::size_t>(session)];
}

std::int64_t PackCalendar::widest_window(int from) const {
    std::int64_t widest = 0;
    for (int session = from; session < sessions(); ++session) widest = std::max(widest, window(session));
    return widest;
}

RunsShort PackCalendar::after(int session, std::int64_t left) const {
    const int last = last_good(session);
    const auto begin = needed_before_.begin();
    const std::int64_t reach = needed_before_[static_cast<std::size_t>(session) + 1] + left;
    RunsShort point{static_cast<int>(std::upper_bound(begin + session + 1, begin + last + 2, reach) - begin) - 1, 0};
    point.left = reach - needed_before_[static_cast<std::size_t>(point.session)];
    if (point.session <= last || point.session == sessions()) return point;
    point.lost = point.left;
    point.left = 0;
    while (point.session < sessions() && need_at(point.session) == 0) ++point.session;
    return point;
}

}  // namespace baitwright
