#include "answers/money/pack_calendar.h"

#include <algorithm>

#include "quantities/sort_stably.h"

namespace baitwright {

PackCalendar::PackCalendar(const PackNeed& need) : shelf_life_(need.shelf_life) {
    for (const std::int64_t each : need.milligrams) needed_before_.push_back(needed_before_.back() + each);
    use(need.stock);
}

/// The first to go off first, as far as it reaches; in the session in which it falls short all that is usable is used.
void PackCalendar::use(std::vector<StockedMilligrams> lots) {
    std::int64_t stocked = 0, used = 0;
    for (StockedMilligrams& lot : lots) {
        stocked += lot.milligrams;
        lot.last_session = std::min(lot.last_session, shelf_life_ - 1);
    }
    sort_stably(lots.begin(), lots.end(),
                [](const StockedMilligrams& a, const StockedMilligrams& b) { return a.last_session < b.last_session; });
    for (; stock_.session < sessions(); ++stock_.session) {
        const std::int64_t need = need_at(stock_.session);
        std::int64_t taken = 0;
        stock_.left = 0;
        for (StockedMilligrams& lot : lots) {
            if (lot.last_session < stock_.session) continue;
            const std::int64_t of_it = std::min(need - taken, lot.milligrams);
            lot.milligrams -= of_it;
            taken += of_it;
            stock_.left += lot.milligrams;
        }
        used += taken;
        if (taken < need) {
            stock_.left = taken;
            break;
        }
    }
    without_buying_.from_stock = used;
    without_buying_.left_over = stocked - used;
    without_buying_.past_best = stocked - used - (stock_reaches() ? stock_.left : 0);
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

std::int64_t PackCalendar::widest_window() const {
    std::int64_t widest = 0;
    for (int session = stock_.session; session < sessions(); ++session) widest = std::max(widest, window(session));
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
