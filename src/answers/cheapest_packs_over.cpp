#include <algorithm>
#include <limits>
#include <tuple>

#include "answers/buy_packs.h"
#include "answers/pack_sums.h"

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

struct Point {
    int session;
    Grams left;
    Grams lost = 0;
};

/// What the stock alone does: where it first falls short, with what then is left, or the end.
class StockPhase {
public:
    explicit StockPhase(const PackNeed& need) : lots_(need.stock) {
        for (StockedGrams& lot : lots_) lot.last_session = std::min(lot.last_session, need.shelf_life - 1);
        std::stable_sort(lots_.begin(), lots_.end(),
                         [](const StockedGrams& a, const StockedGrams& b) { return a.last_session < b.last_session; });
        const int sessions = static_cast<int>(need.grams.size());
        for (; at_ < sessions; ++at_) {
            if (usable() < need.grams[static_cast<std::size_t>(at_)]) break;
            use(need.grams[static_cast<std::size_t>(at_)]);
        }
        const bool reaches = at_ == sessions;
        if (reaches && at_ > 0) --at_;  // good in the last session is good enough
        left_ = usable();
        if (reaches)
            at_ = sessions;
        else
            used_ += left_;
    }

    [[nodiscard]] int falls_short_at() const { return at_; }
    /// Usable in the session in which it falls short; where it never does, after the last.
    [[nodiscard]] Grams left() const { return left_; }
    [[nodiscard]] Grams used() const { return used_; }

private:
    [[nodiscard]] Grams usable() const {
        Grams sum = 0;
        for (const StockedGrams& lot : lots_) sum += lot.last_session >= at_ ? lot.grams : 0;
        return sum;
    }

    /// The first to go off first.
    void use(Grams grams) {
        used_ += grams;
        for (StockedGrams& lot : lots_) {
            if (lot.last_session < at_) continue;
            const Grams taken = std::min(grams, lot.grams);
            lot.grams -= taken;
            grams -= taken;
        }
    }

    std::vector<StockedGrams> lots_;
    int at_ = 0;
    Grams left_ = 0, used_ = 0;
};

/// The programme over sessions.
class PackProgramme {
public:
    explicit PackProgramme(const PackNeed& need)
        : need_(need),
          sessions_(static_cast<int>(need.grams.size())),
          phase_(need),
          sums_(need.packs, widest_window()) {
        for (const Grams grams : need.grams) needed_ += grams;
        needed_ -= phase_.used();
        most_bought_ = need.most_left_over ? needed_ + *need.most_left_over : std::numeric_limits<Grams>::max();
        choices_ = need.most_left_over ? sums_.all() : sums_.worth_having();
    }

    std::optional<PackPlan> run() {
        if (phase_.falls_short_at() == sessions_) return plan_of(nullptr);
        if (need_.packs.empty()) return std::nullopt;
        by_session_.resize(static_cast<std::size_t>(sessions_) + 1);
        all_.push_back({phase_.left(), 0, 0, 0, 0, 0, -1, 0});
        by_session_[static_cast<std::size_t>(phase_.falls_short_at())].push_back(0);
        for (int session = phase_.falls_short_at(); session < sessions_; ++session) {
            std::vector<std::size_t>& ways = by_session_[static_cast<std::size_t>(session)];
            keep_best(ways);
            for (const std::size_t way : ways) buy(session, way);
        }
        const Way* best = nullptr;
        for (const std::size_t way : by_session_.back())
            if (!best || price_of(all_[way]) < price_of(*best)) best = &all_[way];
        if (!best) return std::nullopt;
        return plan_of(best);
    }

private:
    [[nodiscard]] Grams need_at(int session) const { return need_.grams[static_cast<std::size_t>(session)]; }
    [[nodiscard]] int last_good(int bought_for) const {
        return need_.shelf_life >= sessions_ ? sessions_ - 1
                                             : std::min(sessions_ - 1, bought_for + need_.shelf_life - 1);
    }

    /// All that a purchase for that session can be used for.
    [[nodiscard]] Grams window(int session) const {
        Grams sum = 0;
        for (int s = session; s <= last_good(session); ++s) sum += need_at(s);
        return sum;
    }

    [[nodiscard]] Grams widest_window() const {
        Grams widest = 0;
        for (int session = phase_.falls_short_at(); session < sessions_; ++session)
            widest = std::max(widest, window(session));
        return widest;
    }

    /// Where what is left after a session runs short, or goes off.
    [[nodiscard]] Point next(int session, Grams left) const {
        Point point{session + 1, left};
        const int last = last_good(session);
        for (; point.session <= last && need_at(point.session) <= point.left; ++point.session)
            point.left -= need_at(point.session);
        if (point.session <= last || point.session == sessions_) return point;
        point.lost = point.left;
        point.left = 0;
        while (point.session < sessions_ && need_at(point.session) == 0) ++point.session;
        return point;
    }

    void buy(int session, std::size_t from) {
        const Way way = all_[from];
        const Grams least = need_at(session) - way.left, enough = window(session) - way.left;
        auto choice = std::lower_bound(choices_.begin(), choices_.end(), least,
                                       [](const PackSums::Sum& sum, Grams grams) { return sum.grams < grams; });
        const PackSums::Sum* best_of_enough = nullptr;
        for (; choice != choices_.end() && choice->grams < enough; ++choice) go_on(session, from, *choice);
        for (; choice != choices_.end(); ++choice) {  // beyond enough, what is bought only has to be cheap
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
        if (way.bought > most_bought_ - sum.grams) return;
        const Point point = next(session, way.left + sum.grams - need_at(session));
        by_session_[static_cast<std::size_t>(point.session)].push_back(all_.size());
        all_.push_back({point.left, way.outlay + sum.price_minor, way.bought + sum.grams, way.lost + point.lost,
                        way.held + sum.grams * (sessions_ - session), from, session, sum.grams});
    }

    /// Of those with as much left or more, one that costs no more, and has bought no more, makes another needless.
    void keep_best(std::vector<std::size_t>& ways) const {
        std::sort(ways.begin(), ways.end(), [this](std::size_t a, std::size_t b) {
            const Way &x = all_[a], &y = all_[b];
            return x.left != y.left ? x.left > y.left : price_of(x) < price_of(y);
        });
        std::vector<std::size_t> kept;
        for (const std::size_t way : ways)
            if (std::none_of(kept.rbegin(), kept.rend(),
                             [&](std::size_t other) { return makes_needless(all_[other], all_[way]); }))
                kept.push_back(way);
        ways = std::move(kept);
    }

    [[nodiscard]] bool makes_needless(const Way& one, const Way& other) const {
        if (one.left < other.left) return false;
        if (need_.most_left_over && one.bought > other.bought) return false;
        return price_of(one) <= price_of(other);
    }

    /// The purchases on the way back from the end; none where the stock reaches.
    [[nodiscard]] PackPlan plan_of(const Way* end) const {
        PackPlan plan;
        Grams stocked = 0;
        for (const StockedGrams& lot : need_.stock) stocked += lot.grams;
        plan.from_stock = phase_.used();
        plan.left_over = stocked - phase_.used();
        plan.past_best = plan.left_over - (end ? 0 : phase_.left());  // once it falls short all that was good is used
        if (!end) return plan;
        plan.outlay_minor = end->outlay;
        plan.bought = end->bought;
        plan.left_over += end->bought - needed_;
        plan.past_best += end->lost;
        for (const Way* way = end; way->at >= 0; way = &all_[way->from]) {
            const std::vector<std::int64_t> counts = sums_.counts(way->sum);
            for (std::size_t p = counts.size(); p-- > 0;)
                if (counts[p] > 0) plan.purchases.push_back({way->at, p, counts[p]});
        }
        std::reverse(plan.purchases.begin(), plan.purchases.end());
        return plan;
    }

    const PackNeed& need_;
    int sessions_;
    StockPhase phase_;
    PackSums sums_;
    Grams needed_ = 0;  // of what is bought
    Grams most_bought_ = 0;
    std::vector<PackSums::Sum> choices_;
    std::vector<Way> all_;
    std::vector<std::vector<std::size_t>> by_session_;
};

}  // namespace

std::optional<PackPlan> cheapest_packs_over(const PackNeed& need) {
    return PackProgramme(need).run();
}

}  // namespace baitwright
