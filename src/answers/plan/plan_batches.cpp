#include "answers/plan/plan_batches.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "answers/mix/let_down.h"
#include "answers/mix/mix_doubt.h"
#include "answers/pellets/pump_expanders.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/plan/prep_minutes.h"
#include "answers/shared/usual_seed.h"
#include "answers/strategy/kept_in_feeds.h"
#include "bait/amount.h"
#include "bait/free_offerings.h"
#include "bait/uptake.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

constexpr double drunk = 0.9;

/// Of one make-up: the same solids in the same shares, wetted or not alike.
bool is_same(const FedMix& a, const FedMix& b) {
    if (a.mix.name != b.mix.name || a.feel.empty() != b.feel.empty() || a.mix.solids.size() != b.mix.solids.size())
        return false;
    for (std::size_t i = 0; i < a.mix.solids.size(); ++i) {
        const SolidPart &one = a.mix.solids[i], &other = b.mix.solids[i];
        if (one.ingredient.name != other.ingredient.name || one.prepare != other.prepare) return false;
        if (std::abs(double(one.share) - double(other.share)) > 1e-9) return false;
    }
    return true;
}

bool is_dosed(const FedMix& fed, const std::string& name) {
    return std::none_of(fed.mix.solids.begin(), fed.mix.solids.end(),
                        [&](const SolidPart& part) { return part.ingredient.name == name; });
}

void add_total(std::vector<PlannedTotal>& totals, const PlannedTotal& more) {
    const auto same =
        std::find_if(totals.begin(), totals.end(), [&](const PlannedTotal& one) { return one.name == more.name; });
    if (same == totals.end()) return totals.push_back(more);
    same->mass += more.mass;
    same->soaked += more.soaked;
    same->volume += more.volume;
    same->grains += more.grains;
}

void add_feed(PlannedBatch& batch, const FeedNeed& need, std::size_t place) {
    batch.feeds.push_back(place);
    batch.dry += need.dry;
    batch.water += need.water;
    batch.wet_mass += need.wet_mass;
    batch.wet_volume += need.wet_volume;
    for (const IngredientNeed& one : need.ingredients)
        if (!is_all_kept(one)) add_total(batch.parts, planned_total(one));
    for (const KeptUse& use : need.kept) add_use(batch.kept, use);
}

/// The water that brings kept mix to the feel that it is fed at; it is stirred into that alone.
Mass water_to_kept(const std::vector<KeptUse>& kept) {
    Mass water;
    for (const KeptUse& use : kept) water += std::max(Mass{}, use.more_water);
    return water;
}

/// Adds what is made fresh of a feed.
void add_fresh(LetDown& sum, const FeedNeed& need) {
    Mass fresh = need.wet_mass - water_to_kept(need.kept);
    for (const KeptUse& use : need.kept) fresh -= use.of.mass;
    sum.dry += need.dry;
    sum.wet_mass += fresh;
    sum.wet_volume += need.kept.empty() ? need.wet_volume : need.wet_volume * (fresh / need.wet_mass);
}

/// The feeds of a tub at one feel.
struct FedAlike {
    Ratio wetness;
    const FedMix* fed;
    LetDown sum;  ///< without what it takes to let it down
};

/// The driest first; without those that are all kept mix, but where all are.
std::vector<FedAlike> by_feel(const PlannedBatch& batch, const std::vector<FeedNeed>& needs) {
    std::vector<FedAlike> feels;
    for (const std::size_t place : batch.feeds) {
        const FeedNeed& need = needs[place];
        auto same = std::find_if(feels.begin(), feels.end(),
                                 [&](const FedAlike& one) { return one.fed->feel == need.fed.feel; });
        if (same == feels.end()) {
            same = feels.insert(feels.end(), {need.fed.wetness, &need.fed, LetDown{}});
            same->sum.feel = need.fed.feel;
        }
        LetDown& sum = same->sum;
        sum.feeds.push_back(place);
        add_fresh(sum, need);
    }
    sort_stably(feels.begin(), feels.end(), [](const FedAlike& a, const FedAlike& b) { return a.wetness < b.wetness; });
    const auto kept = [](const FedAlike& one) { return !(one.sum.dry > Mass{}); };
    if (!std::all_of(feels.begin(), feels.end(), kept)) std::erase_if(feels, kept);
    return feels;
}

/// How many it goes in at, made fresh or kept.
int feels_in(const PlannedBatch& batch, const std::vector<FeedNeed>& needs) {
    std::set<std::string> feels;
    for (const std::size_t place : batch.feeds) feels.insert(needs[place].fed.feel);
    return static_cast<int>(feels.size());
}

/// Each wetter feel is let down from the tub, which is wetted to the driest.
void add_let_downs(PlannedBatch& batch, const FedMix& driest, const std::vector<FedAlike>& feels) {
    for (std::size_t i = 1; i < feels.size(); ++i) {
        if (!(feels[i].sum.dry > Mass{})) continue;  // all of it was made before
        LetDown one = feels[i].sum;
        const WetterShare share{one.dry, driest.wetness, feels[i].wetness};
        const LetDownShare how = let_down(driest.mix, share);
        one.take = how.take;
        one.water = how.water;
        one.water_range = let_down_range(driest.mix, share, usual_seed);
        batch.let_downs.push_back(std::move(one));
    }
}

/// Of what is made fresh: so much of the range of all, for how much the kept mix drank is known: it was wetted by feel.
Range<Mass> fresh_range(const PlannedBatch& batch, const FedMix& driest, Mass fresh) {
    Mass dry = batch.dry;
    for (const KeptUse& use : batch.kept) dry += use.dry;
    const Range<Mass> all = water_to_wet(driest.mix, driest.wetness, dry, usual_seed);
    const Mass water = per_dry(driest, numbers_of(driest.mix)).water * dry;
    if (batch.kept.empty() || !(water > Mass{})) return all;
    const double share = fresh / water;
    return {share * all.low, share * all.middle, share * all.high};
}

void finish(PlannedBatch& batch, const FedMix& first, const std::vector<FeedNeed>& needs, Temperature water) {
    for (std::size_t i = 0; i < batch.parts.size(); ++i)
        if (is_dosed(first, batch.parts[i].name)) batch.doses.push_back(i);
    batch.buckets = batch.containers = std::max(1, static_cast<int>(std::ceil(batch.wet_mass / full_bucket - 1e-9)));
    if (batch.feel.empty()) return;
    const std::vector<FedAlike> feels = by_feel(batch, needs);
    const FedMix& driest = *feels.front().fed;
    batch.feel = driest.feel;
    batch.rest = MixUptake(driest.mix, water).time_to(drunk);
    add_let_downs(batch, driest, feels);
    Mass to_feel = batch.water - water_to_kept(batch.kept);
    for (const LetDown& wetter : batch.let_downs) to_feel -= wetter.water;
    batch.water_range = fresh_range(batch, driest, to_feel);
    batch.water_first = std::min(to_feel, first_pour(batch.water_range));
    batch.water_rest = to_feel - batch.water_first;
    batch.containers += feels_in(batch, needs) - 1;
}

/// Tubs of one name that are wetted are told apart by their feel: "silt bed (soft)" and "silt bed (firm)".
void tell_apart(std::vector<PlannedBatch>& batches) {
    std::vector<std::string> names;
    names.reserve(batches.size());
    for (const PlannedBatch& batch : batches) names.push_back(batch.name);
    for (std::size_t i = 0; i < batches.size(); ++i)
        if (std::count(names.begin(), names.end(), names[i]) > 1 && !batches[i].feel.empty())
            batches[i].name += " (" + batches[i].feel + ")";
}

void add_soak(std::vector<PlannedSoak>& soaks, const std::string& name, const std::string& into, Mass dry) {
    for (PlannedSoak& soak : soaks) {
        if (soak.name != name) continue;
        soak.dry += dry;
        if (soak.into != into) soak.into += "; " + into;
        return;
    }
    PlannedSoak soak;
    soak.name = name;
    soak.into = into;
    soak.dry = dry;
    soaks.push_back(soak);
}

void fill_soak(PlannedSoak& soak, const Ingredient& pellet, Temperature water) {
    const SoakedAnswer soaked = soak_one(pellet, soak.dry, water);
    soak.pour = soaked.pour;
    soak.soak = soaked.soak.middle;
    soak.stand = soaked.stand_ready.middle;
    soak.wet = soaked.wet();
    soak.grains = free_offerings_in(pellet, soak.dry);
}

/// Many are pumped in lots; the strokes are those of a lot.
PlannedSoak pumped(const Ingredient& expander, const HookbaitNeed& hook, Temperature water, const PumpSetup& pump) {
    SoakRequest request;
    request.pump = pump;
    request.water = water;
    const PumpedAnswer answer = pump_expanders(expander, hook.mass, request);
    PlannedSoak soak;
    soak.name = soak.into = hook.name;
    soak.dry = hook.mass;
    soak.pour = answer.pour;
    soak.wet = answer.wet();
    soak.strokes = answer.at.strokes;
    soak.lots = answer.lots;
    soak.for_the_hook = true;
    soak.grains = free_offerings_in(expander, soak.dry);
    return soak;
}

}  // namespace

bool is_all_kept(const IngredientNeed& need) {
    return need.kept > Mass{} && !(need.mass > Mass{});
}

PlannedTotal planned_total(const IngredientNeed& need) {
    return {need.ingredient.name,
            need.mass,
            need.soaked,
            need.mass / measured_density(need.ingredient),
            need.ingredient.kind == IngredientKind::liquid,
            free_offerings_in(need.ingredient, need.mass),
            need.ingredient.kind};
}

std::vector<PlannedBatch> plan_batches(const UnrolledStrategy& unrolled, Temperature water) {
    std::vector<PlannedBatch> batches;
    std::vector<const FedMix*> made_of;
    for (std::size_t i = 0; i < unrolled.feeds.size(); ++i) {
        const FeedNeed& need = unrolled.feeds[i];
        std::size_t place = 0;
        while (place < batches.size() && !is_same(*made_of[place], need.fed)) ++place;
        if (place == batches.size()) {
            batches.emplace_back();
            batches.back().name = need.name;
            batches.back().feel = need.fed.feel;
            made_of.push_back(&need.fed);
        }
        add_feed(batches[place], need, i);
    }
    for (std::size_t i = 0; i < batches.size(); ++i) finish(batches[i], *made_of[i], unrolled.feeds, water);
    tell_apart(batches);
    return batches;
}

std::vector<PlannedSoak> plan_soaks(const Shelf& shelf, const UnrolledStrategy& unrolled,
                                    const std::vector<PlannedBatch>& batches, Temperature water,
                                    const PumpSetup& pump) {
    std::vector<PlannedSoak> soaks;
    for (const PlannedBatch& batch : batches)
        for (const PlannedTotal& part : batch.parts)
            if (part.soaked > Mass{}) add_soak(soaks, part.name, batch.name, part.soaked);
    for (PlannedSoak& soak : soaks) fill_soak(soak, shelf.ingredient(soak.name), water);
    for (const HookbaitNeed& hook : unrolled.hookbaits) {
        const Ingredient bait = shelf.ingredient(hook.name);
        if (bait.kind == IngredientKind::expander) soaks.push_back(pumped(bait, hook, water, pump));
    }
    return soaks;
}

}  // namespace baitwright
