#include "answers/strategy/kept_in_feeds.h"

#include <algorithm>
#include <set>

#include "answers/shared/take_out.h"
#include "bait/pellets_alone.h"
#include "bait/resolve_mix.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Mass too_little = 1e-6 * gram;  // what rounding leaves of a tub, or of room for it

/// A gram of kept mix, as it was made.
struct KeptGram {
    FedMix mix;
    FeedNeed each;  ///< of 1 g wet
};

/// How much of one ingredient the fresh mix of a session still takes.
struct FreshPart {
    std::string name;
    Mass mass, soaked;
};

/// What is still to be made fresh of a feed in one session.
struct FreshMix {
    FeedNeed* need;
    std::vector<FreshPart> parts;
    Mass water;
};

/// A feed that a tub can go into.
struct SuitedFeed {
    FreshMix* into;
    KeptGram gram_of;
    int rank;  ///< the lowest suits best

    /// Than the mix that is kept.
    [[nodiscard]] bool is_drier() const { return gram_of.mix.wetness > into->need->fed.wetness + 1e-9; }
};

FreshMix all_fresh(FeedNeed& need) {
    FreshMix fresh{&need, {}, need.water};
    fresh.parts.reserve(need.ingredients.size());
    for (const IngredientNeed& each : need.ingredients)
        fresh.parts.push_back({each.ingredient.name, each.mass, each.soaked});
    return fresh;
}

FreshMix share_of_it(FreshMix fresh, double share) {
    fresh.water = share * fresh.water;
    for (FreshPart& part : fresh.parts) {
        part.mass = share * part.mass;
        part.soaked = share * part.soaked;
    }
    return fresh;
}

FreshPart part_of(const FreshMix& fresh, const std::string& name) {
    for (const FreshPart& part : fresh.parts)
        if (part.name == name) return part;
    return {};
}

/// The most grams of kept mix that hold no more of anything than the fresh mix would.
double most_grams(const FreshMix& fresh, const FeedNeed& gram_of) {
    double most = 1e12;
    const auto hold = [&](Mass room, Mass each) {
        if (each > Mass{}) most = std::min(most, double(room / each));
    };
    hold(fresh.water, gram_of.water);
    for (const IngredientNeed& each : gram_of.ingredients) {
        const FreshPart room = part_of(fresh, each.ingredient.name);
        hold(room.mass, each.mass);
        hold(room.soaked, each.soaked);
    }
    return std::max(0.0, most);
}

/// All of it but for what rounding leaves is all of it.
void take_from(Mass& whole, Mass part) {
    whole -= part;
    if (whole < 1e-9 * part) whole = Mass{};
}

void take_parts(FreshMix& fresh, const FeedNeed& gram_of, double grams) {
    take_from(fresh.water, grams * gram_of.water);
    for (const IngredientNeed& each : gram_of.ingredients)
        for (FreshPart& part : fresh.parts) {
            if (part.name != each.ingredient.name) continue;
            take_from(part.mass, grams * each.mass);
            take_from(part.soaked, grams * each.soaked);
        }
}

void take_needs(FeedNeed& need, const FeedNeed& gram_of, double grams) {
    take_from(need.dry, grams * gram_of.dry);
    take_from(need.water, grams * gram_of.water);
    take_from(need.soak_water, grams * gram_of.soak_water);
    for (const IngredientNeed& each : gram_of.ingredients)
        for (IngredientNeed& whole : need.ingredients) {
            if (whole.ingredient.name != each.ingredient.name) continue;
            take_from(whole.mass, grams * each.mass);
            take_from(whole.soaked, grams * each.soaked);
            whole.kept += grams * each.mass;
        }
}

/// `more_water` is what the same dry mix takes at the feed's wetness less what it has.
KeptUse use_of(const KeptMix& kept, const KeptGram& gram_of, const FedMix& fed, double grams) {
    FedMix as_fed = gram_of.mix;
    as_fed.wetness = fed.wetness;
    KeptUse use;
    use.of = kept;
    use.of.mass = grams * gram;
    use.of.feel = gram_of.mix.feel;
    use.fed_at = fed.feel;
    use.wetness = gram_of.mix.wetness;
    use.dry = grams * gram_of.each.dry;
    use.water = grams * gram_of.each.water;
    use.soak_water = grams * gram_of.each.soak_water;
    use.more_water = per_dry(as_fed, numbers_of(as_fed.mix)).water * use.dry - use.water;
    return use;
}

bool feeds_mix(const Feed& feed, const std::string& mix) {
    return std::any_of(feed.parts.begin(), feed.parts.end(), [&](const FeedPart& part) {
        return part.prepare == Preparation::as_bought && folded_name(part.of) == folded_name(mix);
    });
}

class KeptUser {
public:
    KeptUser(std::vector<FeedNeed>& feeds, const FedFrom& from) : from_(from) {
        left_.reserve(from.request.kept.size());
        for (const KeptMix& kept : from.request.kept) left_.push_back(kept.mass);
        whole_.reserve(feeds.size());
        for (FeedNeed& need : feeds) whole_.push_back(all_fresh(need));
    }

    void use_all() {
        for (int session = 0; session < from_.request.times && some_left(); ++session) use_in(session);
    }

private:
    [[nodiscard]] bool some_left() const {
        return std::any_of(left_.begin(), left_.end(), [](Mass left) { return left > too_little; });
    }

    /// What one session makes of all that is made of a feed: mix that the sessions freeze for each other is not made
    /// again, so the first makes more than the others.
    [[nodiscard]] double share_of(const FeedNeed& need, int session) const {
        const double later = need.fed.feel.empty() ? 1 : 1 - double(from_.request.reused);
        return (session == 0 ? 1 : later) / (1 + (from_.request.times - 1) * later);
    }

    void use_in(int session) {
        std::optional<Date> on = from_.request.on;
        if (on) *on += std::chrono::days{session * from_.request.days_apart};
        std::vector<FreshMix> fresh;
        fresh.reserve(whole_.size());
        for (const FreshMix& whole : whole_) fresh.push_back(share_of_it(whole, share_of(*whole.need, session)));
        for (std::size_t place = 0; place < left_.size(); ++place)
            if (left_[place] > too_little && is_good_on(from_.request.kept[place], on)) use_tub(place, fresh);
    }

    void use_tub(std::size_t place, std::vector<FreshMix>& fresh) {
        const KeptMix& kept = from_.request.kept[place];
        for (const SuitedFeed& suited : feeds_for(kept, fresh)) {
            const FeedNeed& each = suited.gram_of.each;
            const double grams = std::min(left_[place].in(gram), most_grams(*suited.into, each));
            if (grams * gram <= too_little) continue;
            FeedNeed& need = *suited.into->need;
            KeptUse use = use_of(kept, suited.gram_of, need.fed, grams);
            use.place = place;
            left_[place] -= use.of.mass;
            take_parts(*suited.into, each, grams);
            take_needs(need, each, grams);
            add_use(need.kept, use);
        }
    }

    /// Those that it can go into, the one that it suits best first.
    [[nodiscard]] std::vector<SuitedFeed> feeds_for(const KeptMix& kept, std::vector<FreshMix>& fresh) const {
        std::vector<SuitedFeed> suited;
        if (is_named(from_.without, kept.of) || from_.shelf.find_ingredient(kept.of)) return suited;
        for (FreshMix& into : fresh) {
            const Feed& feed = from_.strategy.feeds[into.need->written];
            if (!feeds_mix(feed, kept.of)) continue;
            SuitedFeed one{&into, made(kept, into.need->fed), feed.parts.size() > 1 ? 2 : 0};
            if (one.is_drier()) ++one.rank;
            suited.push_back(std::move(one));
        }
        leave_drier_out(suited);
        sort_stably(suited.begin(), suited.end(),
                    [](const SuitedFeed& a, const SuitedFeed& b) { return a.rank < b.rank; });
        return suited;
    }

    /// What is wetter than its feed gives water to the tub that all feels are let down from: where there are several,
    /// it goes into those alone that are as wet.
    static void leave_drier_out(std::vector<SuitedFeed>& suited) {
        const auto feel_of = [](const SuitedFeed& one) { return one.into->need->fed.feel; };
        const bool several = std::any_of(suited.begin(), suited.end(), [&](const SuitedFeed& one) {
            return feel_of(one) != feel_of(suited.front());
        });
        if (several) std::erase_if(suited, [](const SuitedFeed& one) { return one.is_drier(); });
    }

    /// Where the feed goes in as it is, so was the mix kept.
    [[nodiscard]] KeptGram made(const KeptMix& kept, const FedMix& fed) const {
        KeptGram gram_of;
        FedMix& mix = gram_of.mix;
        mix.mix = resolve(from_.shelf.recipe(kept.of), from_.shelf);
        if (!fed.feel.empty()) {
            const std::vector<Feel> feels = from_.shelf.feels();
            const Feel* told = kept.feel.empty() ? nullptr : find_feel(feels, kept.feel);
            const Feel& feel = told ? *told : mix.mix.feel;
            mix.feel = feel.name;
            mix.wetness = feel.aim;
        }
        mix.state = usual_state(mix.wetness);
        if (is_soaked_alone(fed.mix)) {  // soaked they were put by too
            soak_pellets_alone(mix.mix);
            mix.wetness = fed.wetness;
            mix.state = fed.state;
        }
        const FedPerDry each = per_dry(mix, numbers_of(mix.mix));
        gram_of.each.fed = mix;
        fill(gram_of.each, each, 1.0 * gram / each.wet_mass);
        return gram_of;
    }

    const FedFrom& from_;
    std::vector<Mass> left_;       // of each tub
    std::vector<FreshMix> whole_;  // of all sessions, were nothing kept
};

}  // namespace

void use_kept(std::vector<FeedNeed>& feeds, const FedFrom& from) {
    if (!from.request.kept.empty()) KeptUser(feeds, from).use_all();
}

void add_use(std::vector<KeptUse>& uses, const KeptUse& more) {
    const auto same = std::find_if(uses.begin(), uses.end(), [&](const KeptUse& use) {
        return use.place == more.place && use.fed_at == more.fed_at;
    });
    if (same == uses.end()) {
        uses.push_back(more);
        return;
    }
    same->of.mass += more.of.mass;
    same->dry += more.dry;
    same->water += more.water;
    same->soak_water += more.soak_water;
    same->more_water += more.more_water;
}

void add_kept(std::vector<KeptMix>& kept, const Strategy& strategy, const StockOnHand& stock) {
    std::set<std::string> there;
    for (const KeptMix& tub : kept) there.insert(folded_name(tub.of));
    for (const Feed& feed : strategy.feeds)
        for (const FeedPart& part : feed.parts) {
            if (!there.insert(folded_name(part.of)).second) continue;
            for (KeptMix& tub : stock.kept(part.of)) kept.push_back(std::move(tub));
        }
}

StrategyRequest with_kept(StrategyRequest what_if, const Strategy& strategy, const StockOnHand& stock,
                          const std::optional<Date>& on) {
    add_kept(what_if.kept, strategy, stock);
    what_if.on = on;
    return what_if;
}

void take_used(std::vector<KeptMix>& kept, const std::vector<KeptUse>& used) {
    for (const KeptUse& use : used) {
        Mass& mass = kept[use.place].mass;
        mass = std::max(Mass{}, mass - use.of.mass);
    }
}

}  // namespace baitwright
