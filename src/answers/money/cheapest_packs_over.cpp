#include <algorithm>
#include <limits>
#include <tuple>

#include "answers/money/bulk_packs.h"
#include "answers/money/buy_packs.h"
#include "answers/money/pack_calendar.h"
#include "answers/money/pack_sums.h"
#include "answers/money/stock_reach.h"

namespace baitwright {

namespace {

using Grams = std::int64_t;

/// A way to have come to a session whose need what is left does not reach.
struct Way {
    Grams left;  ///< usable, and used up in this session
    std::int64_t outlay;
    Grams bought, lost;
    std::int64_t held;  ///< grams bought, each times the sessions to the end: the less, the later
    std::size_t from;   ///< place among all ways
    int at;             ///< the session that was bought for on the way
    Grams sum;          ///< what was bought for it
};

/// What trying a way costs, beside a look at one: it is kept.
constexpr std::int64_t steps_of_a_way = 4;

/// The programme over sessions.
class PackProgramme {
public:
    PackProgramme(const PackNeed& need, const PackCalendar& calendar, const StockReach& reach, std::int64_t& steps)
        : need_(need),
          calendar_(calendar),
          reach_(reach),
          sums_(need.packs, calendar.widest_window(reach.falls_short_at())),
          steps_(steps) {
        for (const Grams grams : need.grams) needed_ += grams;
        needed_ -= reach.used();
        most_bought_ = need.most_left_over ? needed_ + *need.most_left_over : std::numeric_limits<Grams>::max();
        choices_ = need.most_left_over ? sums_.all() : sums_.worth_having();
    }

    /// Nothing where no packs keep the most left over, or where it was cut short.
    std::optional<PackPlan> run() {
        const int sessions = calendar_.sessions();
        by_session_.resize(static_cast<std::size_t>(sessions) + 1);
        all_.push_back({reach_.left(), 0, 0, 0, 0, 0, -1, 0});
        by_session_[static_cast<std::size_t>(reach_.falls_short_at())].push_back(0);
        for (int session = reach_.falls_short_at(); session < sessions && !cut_short(); ++session) {
            std::vector<std::size_t>& ways = by_session_[static_cast<std::size_t>(session)];
            keep_best(ways);
            for (std::size_t way = 0; way < ways.size() && !cut_short(); ++way) buy(session, ways[way]);
        }
        const Way* best = nullptr;
        for (const std::size_t way : by_session_.back())
            if (!best || price_of(all_[way]) < price_of(*best)) best = &all_[way];
        if (!best || cut_short()) return std::nullopt;
        return plan_of(*best);
    }

    [[nodiscard]] bool cut_short() const { return steps_ <= 0; }

private:
    void buy(int session, std::size_t from) {
        const Way way = all_[from];
        const Grams least = calendar_.need_at(session) - way.left, enough = calendar_.window(session) - way.left;
        auto choice = std::lower_bound(choices_.begin(), choices_.end(), least,
                                       [](const PackSums::Sum& sum, Grams grams) { return sum.grams < grams; });
        const PackSums::Sum* best_of_enough = nullptr;
        for (; choice != choices_.end() && choice->grams < enough && !cut_short(); ++choice)
            go_on(session, from, *choice);
        for (; choice != choices_.end(); ++choice) {  // beyond enough, what is bought only has to be cheap
            --steps_;
            if (best_of_enough && choice->price_minor >= best_of_enough->price_minor) continue;
            best_of_enough = &*choice;
            go_on(session, from, *choice);
        }
    }

    /// What is to be least, in this order: outlay, what is bought (and so left over), how early it is bought.
    static std::tuple<std::int64_t, Grams, std::int64_t> price_of(const Way& way) {
        return {way.outlay, way.bought, way.held};
    }

    void go_on(int session, std::size_t from, const PackSums::Sum& sum) {
        const Way& way = all_[from];
        --steps_;
        if (way.bought > most_bought_ - sum.grams) return;
        steps_ -= steps_of_a_way;
        const RunsShort point = calendar_.after(session, way.left + sum.grams - calendar_.need_at(session));
        by_session_[static_cast<std::size_t>(point.session)].push_back(all_.size());
        all_.push_back({point.left, way.outlay + sum.price_minor, way.bought + sum.grams, way.lost + point.lost,
                        way.held + sum.grams * (calendar_.sessions() - session), from, session, sum.grams});
    }

    /// Of those with as much left or more, one that costs no more, and has bought no more, makes another needless.
    void keep_best(std::vector<std::size_t>& ways) {
        std::sort(ways.begin(), ways.end(), [this](std::size_t a, std::size_t b) {
            const Way &x = all_[a], &y = all_[b];
            return x.left != y.left ? x.left > y.left : price_of(x) < price_of(y);
        });
        std::vector<std::size_t> kept;
        for (const std::size_t way : ways) {
            // Where only the price counts, the last that was kept is the cheapest of those with as much left or more.
            const std::size_t looked_at = need_.most_left_over ? kept.size() : std::min<std::size_t>(1, kept.size());
            const auto needless = [&](std::size_t other) { return makes_needless(all_[other], all_[way]); };
            steps_ -= static_cast<std::int64_t>(looked_at) + 1;
            if (cut_short()) return;
            if (std::none_of(kept.end() - static_cast<std::ptrdiff_t>(looked_at), kept.end(), needless))
                kept.push_back(way);
        }
        ways = std::move(kept);
    }

    [[nodiscard]] bool makes_needless(const Way& one, const Way& other) const {
        if (one.left < other.left) return false;
        if (need_.most_left_over && one.bought > other.bought) return false;
        return price_of(one) <= price_of(other);
    }

    /// The purchases on the way back from the end.
    [[nodiscard]] PackPlan plan_of(const Way& end) const {
        PackPlan plan = plan_without_buying(need_, reach_);
        plan.outlay_minor = plan.at_least_minor = end.outlay;
        plan.bought = end.bought;
        plan.left_over += end.bought - needed_;
        plan.past_best += end.lost;
        for (const Way* way = &end; way->at >= 0; way = &all_[way->from]) {
            const std::vector<std::int64_t> counts = sums_.counts(way->sum);
            for (std::size_t p = counts.size(); p-- > 0;)
                if (counts[p] > 0) plan.purchases.push_back({way->at, p, counts[p]});
        }
        std::reverse(plan.purchases.begin(), plan.purchases.end());
        return plan;
    }

    const PackNeed& need_;
    const PackCalendar& calendar_;
    const StockReach& reach_;
    PackSums sums_;
    std::int64_t& steps_;  // still to be taken
    Grams needed_ = 0;     // of what is bought
    Grams most_bought_ = 0;
    std::vector<PackSums::Sum> choices_;
    std::vector<Way> all_;
    std::vector<std::vector<std::size_t>> by_session_;
};

}  // namespace

std::optional<PackPlan> cheapest_packs_over(const PackNeed& need, std::int64_t& ways) {
    const StockReach reach(need);
    const PackCalendar calendar(need);
    if (reach.falls_short_at() == calendar.sessions()) return plan_without_buying(need, reach);
    if (need.packs.empty()) return std::nullopt;
    const std::int64_t table = PackSums::steps(need.packs, calendar.widest_window(reach.falls_short_at()));
    if (table < ways / steps_of_a_way) {
        ways -= table;
        PackProgramme programme(need, calendar, reach, ways);
        auto plan = programme.run();
        if (!programme.cut_short()) return plan;
    }
    ways = std::max<std::int64_t>(0, ways);
    return bulk_packs(need);
}

std::optional<PackPlan> cheapest_packs_over(const PackNeed& need) {
    std::int64_t ways = most_ways_tried;
    return cheapest_packs_over(need, ways);
}

}  // namespace baitwright
