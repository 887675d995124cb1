#include "answers/money/shop_needs.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "answers/strategy/kept_in_feeds.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// A sum that is a whole number but for rounding is that number.
constexpr double slack = 1e-6;

int days_between(Date from, Date to) {
    return static_cast<int>((to - from).count());
}

}  // namespace

void add_sessions(std::vector<SessionNeed>& sessions, const UnrolledStrategy& unrolled, int times, SessionDays& days) {
    for (int time = 0; time < times; ++time) {
        sessions.push_back({unrolled.name, days.first, unrolled.totals, unrolled.kept});
        days.first += std::chrono::days{days.gap};
    }
}

std::vector<SessionNeed> sessions_in_turn(const std::vector<TimedStrategy>& strategies, const StockOnHand& stock,
                                          StrategyRequest what_if, SessionDays days, const UnrollOne& unroll) {
    std::vector<SessionNeed> sessions;
    for (std::size_t i = 0; i < strategies.size(); ++i) {
        add_kept(what_if.kept, *strategies[i].strategy, stock);
        for (int left = strategies[i].times; left > 0;) {
            what_if.on = days.first;
            const UnrolledStrategy unrolled = unroll(i, what_if);
            const int alike = unrolled.kept.empty() ? left : 1;  // what is not good now is not good later
            add_sessions(sessions, unrolled, alike, days);
            take_used(what_if.kept, unrolled.kept);
            left -= alike;
        }
    }
    return sessions;
}

Mass ShoppedIngredient::mass() const {
    return std::accumulate(masses.begin(), masses.end(), Mass{});
}

std::vector<ShoppedIngredient> shopped_ingredients(const std::vector<SessionNeed>& sessions) {
    std::map<std::string, ShoppedIngredient> by_name;
    for (std::size_t session = 0; session < sessions.size(); ++session) {
        for (const IngredientNeed& need : sessions[session].needs) {
            if (!(need.mass > Mass{})) continue;
            ShoppedIngredient& shopped = by_name[need.ingredient.name];
            shopped.ingredient = need.ingredient;
            shopped.masses.resize(sessions.size());
            shopped.masses[session] += need.mass;
        }
    }
    std::vector<ShoppedIngredient> all;
    for (auto& [name, shopped] : by_name) {
        shopped.packs = packs_on_offer(shopped.ingredient);
        all.push_back(std::move(shopped));
    }
    return all;
}

int sessions_good_for(const Keeping& keeps, const std::vector<SessionNeed>& sessions) {
    const auto longest = keeps.dry ? keeps.dry : keeps.cold ? keeps.cold : keeps.frozen;
    const auto all = static_cast<int>(sessions.size());
    if (!longest) return all;
    // Sessions need not be evenly spaced: what counts is the fewest that fit in, so that nothing is reckoned to keep
    // longer than it does.
    int fewest = all;
    for (std::size_t first = 0; first < sessions.size(); ++first) {
        std::size_t past = first;
        while (past < sessions.size() &&
               days_between(sessions[first].on, sessions[past].on) <= longest->in(day) + slack)
            ++past;
        if (past < sessions.size()) fewest = std::min(fewest, static_cast<int>(past - first));
    }
    return std::max(1, fewest);
}

std::vector<std::int64_t> whole_numbers(const std::vector<double>& exact) {
    std::vector<std::int64_t> whole;
    double sum = 0;
    std::int64_t before = 0;
    for (const double each : exact) {
        sum += each;
        const auto now = static_cast<std::int64_t>(std::ceil(sum - slack));
        whole.push_back(now - before);
        before = now;
    }
    return whole;
}

PackNeed pack_need(const ShoppedIngredient& shopped, const std::vector<SessionNeed>& sessions,
                   const StockOnHand& stock) {
    std::vector<double> milligrams;
    for (const Mass& mass : shopped.masses) milligrams.push_back(mass.in(gram)*1000);
    PackNeed need;
    need.milligrams = whole_numbers(milligrams);
    need.packs = shopped.packs;
    need.shelf_life = sessions_good_for(shopped.ingredient.keeps, sessions);
    for (const StockLot& lot : stock.lots(shopped.ingredient.name, sessions.front().on)) {
        const auto good_for = std::count_if(sessions.begin(), sessions.end(), [&](const SessionNeed& session) {
            return !lot.best_before || session.on <= *lot.best_before;
        });
        need.stock.push_back({whole_milligrams(lot.mass), static_cast<int>(good_for) - 1});
    }
    return need;
}

}  // namespace baitwright
