#include <algorithm>
#include <limits>
#include <tuple>

#include "answers/money/buy_packs.h"
#include "answers/money/pack_calendar.h"
#include "answers/money/pack_sums.h"

namespace baitwright {

namespace {

using Whole = std::int64_t;  // milligrams, or minor units

/// A way to have come to a session whose need what is left does not reach.
struct Way {
    Whole left;  ///< usable, and used up in this session
    Whole outlay;
    Whole bought, lost;
    Whole held;        ///< what is bought, each milligram times the sessions to the end: the less, the later
    std::size_t from;  ///< place among all ways
    int at;            ///< the session that was bought for on the way
    Whole sum;         ///< what was bought for it
};

/// What trying a way costs, beside a look at one: it is kept.
constexpr std::int64_t steps_of_a_way = 4;

/// The programme over sessions.
class PackProgramme {
public:
    PackProgramme(const PackNeed& need, const PackCalendar& calendar, const PackSums& sums, std::int64_t& steps)
        : need_(need), calendar_(calendar), sums_(sums), steps_(steps) {
        if (need.most_left_over) most_bought_ = calendar.to_buy() + *need.most_left_over;
        choices_ = need.most_left_over ? sums_.all() : sums_.worth_having();
    }

    /// Nothing where no packs keep the most left over, or where it was cut short.
    std::optional<PackPlan> run() {
        const int sessions = calendar_.sessions(), first = calendar_.stock().session;
        by_session_.resize(static_cast<std::size_t>(sessions) + 1);
        all_.push_back({calendar_.stock().left, 0, 0, 0, 0, 0, -1, 0});
        by_session_[static_cast<std::size_t>(first)].push_back(0);
        for (int session = first; session < sessions && !cut_short(); ++session) {
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
        const Whole least = calendar_.need_at(session) - way.left, enough = calendar_.window(session) - way.left;
        auto choice =
            std::lower_bound(choices_.begin(), choices_.end(), least,
                             [](const PackSums::Sum& sum, Whole milligrams) { return sum.milligrams < milligrams; });
        const PackSums::Sum* best_of_enough = nullptr;
        for (; choice != choices_.end() && choice->milligrams < enough && !cut_short(); ++choice)
            go_on(session, from, *choice);
        for (; choice != choices_.end(); ++choice) {  // beyond enough, what is bought only has to be cheap
            --steps_;
            if (best_of_enough && choice->price_minor >= best_of_enough->price_minor) continue;
            best_of_enough = &*choice;
            go_on(session, from, *choice);
        }
    }

    /// What is to be least, in this order: outlay, what is bought (and so left over), how early it is bought.
    static std::tuple<Whole, Whole, Whole> price_of(const Way& way) { return {way.outlay, way.bought, way.held}; }

    void go_on(int session, std::size_t from, const PackSums::Sum& sum) {
        const Way& way = all_[from];
        --steps_;
        if (way.bought > most_bought_ - sum.milligrams) return;
        steps_ -= steps_of_a_way;
        const RunsShort point = calendar_.after(session, way.left + sum.milligrams - calendar_.need_at(session));
        by_session_[static_cast<std::size_t>(point.session)].push_back(all_.size());
        all_.push_back({point.left, way.outlay + sum.price_minor, way.bought + sum.milligrams, way.lost + point.lost,
                        way.held + sum.milligrams * (calendar_.sessions() - session), from, session, sum.milligrams});
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
        return one.left >= other.left && (!need_.most_left_over || one.bought <= other.bought) &&
               price_of(one) <= price_of(other);
    }

    /// The purchases on the way back from the end.
    [[nodiscard]] PackPlan plan_of(const Way& end) const {
        PackPlan plan = calendar_.without_buying();
        plan.outlay_minor = plan.at_least_minor = end.outlay;
        plan.bought = end.bought;
        plan.left_over += end.bought - calendar_.to_buy();
        plan.past_best += end.lost;
        std::vector<PackBought>& all = plan.purchases;
        for (const Way* way = &end; way->at >= 0; way = &all_[way->from]) {
            const std::vector<PackBought> more = packs_bought(sums_.packs(), sums_.counts(way->sum), way->at);
            all.insert(all.begin(), more.begin(), more.end());
        }
        return plan;
    }

    const PackNeed& need_;
    const PackCalendar& calendar_;
    const PackSums& sums_;
    std::int64_t& steps_;  // still to be taken
    Whole most_bought_ = std::numeric_limits<Whole>::max();
    std::vector<PackSums::Sum> choices_;
    std::vector<Way> all_;
    std::vector<std::vector<std::size_t>> by_session_;
};

}  // namespace

std::optional<PackPlan> cheapest_packs_over(const PackNeed& need, std::int64_t& ways) {
    const PackCalendar calendar(need);
    if (calendar.stock_reaches()) return calendar.without_buying();
    if (need.packs.empty()) return std::nullopt;
    PackSums sums(need.packs);
    if (sums.reach(calendar.widest_window(), ways / steps_of_a_way)) {
        ways -= sums.steps();
        PackProgramme programme(need, calendar, sums, ways);
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
