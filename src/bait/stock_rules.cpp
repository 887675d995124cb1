#include "bait/stock_rules.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <tuple>

#include "quantities/units.h"

namespace baitwright {

namespace {

const std::optional<Time>& keeping_in(StockState state, const Keeping& keeps) {
    if (state == StockState::cold) return keeps.cold;
    return state == StockState::frozen ? keeps.frozen : keeps.dry;
}

std::vector<Lot> holding(std::vector<Lot> lots, const Reach& reach) {
    const auto out = [&](const Lot& lot) { return !in_reach(lot, reach) || lot.left <= Milligrams{}; };
    lots.erase(std::remove_if(lots.begin(), lots.end(), out), lots.end());
    std::sort(lots.begin(), lots.end(), goes_first);
    return lots;
}

}  // namespace

bool goes_first(const Lot& a, const Lot& b) {
    if (a.best_before != b.best_before) {
        if (!a.best_before || !b.best_before) return a.best_before.has_value();
        return *a.best_before < *b.best_before;
    }
    return std::tie(a.got_on, a.id) < std::tie(b.got_on, b.id);
}

bool in_reach(const Lot& lot, const Reach& reach) {
    return lot.got_on <= reach.on && (!reach.state || lot.state == *reach.state);
}

Milligrams left_in(const std::vector<Lot>& lots, const Reach& reach) {
    Milligrams left;
    for (const Lot& lot : lots)
        if (in_reach(lot, reach)) left += lot.left;
    return left;
}

std::vector<Movement> taken(std::vector<Lot> lots, Milligrams mass, const Reach& reach) {
    std::vector<Movement> movements;
    for (const Lot& lot : holding(std::move(lots), reach)) {
        if (mass <= Milligrams{}) break;
        const Milligrams part = std::min(mass, lot.left);
        movements.push_back({lot.id, -part});
        mass -= part;
    }
    if (mass > Milligrams{}) throw std::logic_error("more is taken than the lots hold");
    return movements;
}

Correction corrected(const std::vector<Lot>& lots, Milligrams counted, const Reach& reach, Surplus surplus) {
    const Milligrams difference = counted - left_in(lots, reach);
    if (difference < Milligrams{}) return {taken(lots, -difference, reach), {}};
    if (difference == Milligrams{}) return {};
    const std::vector<Lot> there = holding(lots, reach);
    if (there.empty() || surplus == Surplus::own_bag) return {{}, difference};
    return {{{there.front().id, difference}}, {}};
}

std::optional<Date> best_before(Date got_on, StockState state, const Keeping& keeps) {
    const std::optional<Time>& time = keeping_in(state, keeps);
    if (!time) return std::nullopt;
    return got_on + std::chrono::days(static_cast<int>(std::floor(time->in(day))));
}

Keeping keeping_of_mix() {
    return {std::nullopt, 2.0 * day, 3.0 * month};
}

bool is_past(const Lot& lot, Date today) {
    return lot.best_before && *lot.best_before < today;
}

StockState usual_state(const Keeping& keeps) {
    if (keeps.dry || (!keeps.cold && !keeps.frozen)) return StockState::dry;
    return keeps.cold ? StockState::cold : StockState::frozen;
}

}  // namespace baitwright
