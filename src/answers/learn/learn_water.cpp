#include "answers/learn/learn_water.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "quantities/units.h"

namespace baitwright {

namespace {

using Mark = WaterSeen::Term::Mark;

Learnt told_form(const WaterTaught& taught, std::size_t form, Learnt::Property property) {
    const LinearForm& of = taught.log.problem.unknowns.forms[form];
    Learnt learnt;
    learnt.property = property;
    learnt.prior_sd = std::sqrt(variance_before(of));
    learnt.mean = value_of(of, taught.out.fit.best);
    learnt.sd = std::sqrt(taught.covariance.of(of));
    return learnt;
}

int heeded_mixes(const WaterTaught& taught) {
    int count = 0;
    for (std::size_t i = 0; i < taught.log.problem.seen.size(); ++i)
        if (taught.log.problem.seen[i].entry && taught.out.heeded[i]) ++count;
    return count;
}

/// How often each ingredient was in a mix that was heeded, by its place.
std::vector<WaterTaught::Times> times_of(const WaterLog& log, const BorneOut& out) {
    const WaterUnknowns& unknowns = log.problem.unknowns;
    std::vector<std::size_t> ingredient_of(unknowns.bags.size());
    for (std::size_t i = 0; i < unknowns.bags_of.size(); ++i)
        for (std::size_t bag = unknowns.bags_of[i].first; bag < unknowns.bags_of[i].second; ++bag)
            ingredient_of[bag] = i;
    std::vector<WaterTaught::Times> times(unknowns.bags_of.size());
    for (std::size_t i = 0; i < log.problem.seen.size(); ++i) {
        const WaterSeen& seen = log.problem.seen[i];
        if (!seen.entry || !out.heeded[i]) continue;
        std::set<std::pair<std::size_t, Mark>> in_it;
        for (const WaterSeen::Term& term : seen.terms) in_it.emplace(ingredient_of[term.bag], term.mark);
        for (const auto& [ingredient, mark] : in_it)
            ++(mark == Mark::absorption ? times[ingredient].absorption : times[ingredient].gap);
    }
    return times;
}

/// What was poured, and what was to be expected, in grams of water.
SetAside aside_mix(const LogEntry& entry, const Foretold& foretold) {
    const auto& mix = std::get<LoggedMix>(entry.what);
    const double expected = std::exp(foretold.log_expected) - mix.wetting.in(gram);
    return {entry, foretold.sigmas, mix.water->in(gram), std::max(0.0, expected)};
}

}  // namespace

WaterTaught water_taught(const Shelf& shelf, const LearnRequest& request) {
    WaterLog log = water_log(shelf, request);
    BorneOut out = borne_out(log.problem);
    WaterCovariance covariance(out.fit);
    const std::vector<WaterTaught::Times> times = times_of(log, out);
    WaterTaught taught{std::move(log), std::move(out), std::move(covariance), {}, {}};
    const WaterUnknowns& unknowns = taught.log.problem.unknowns;
    std::set<std::size_t> mixed;
    for (const auto& [said, ingredient] : taught.log.ingredients)
        if (unknowns.bags[bag_on(unknowns, ingredient, std::nullopt)].takes_water()) mixed.insert(ingredient);
    for (const std::size_t ingredient : mixed) {
        taught.ingredients.push_back(ingredient);
        taught.times.push_back(times[ingredient]);
    }
    return taught;
}

LearntWater learnt_water_of(const WaterTaught& taught) {
    LearntWater water;
    const WaterUnknowns& unknowns = taught.log.problem.unknowns;
    const std::vector<double>& best = taught.out.fit.best;
    std::vector<const LinearForm*> forms{&unknowns.forms[WaterUnknowns::hand], &unknowns.forms[WaterUnknowns::memory]};
    water.log_hand = value_of(*forms[0], best);
    water.log_memory = value_of(*forms[1], best);
    for (std::size_t i = 0; i < taught.ingredients.size(); ++i) {
        const BagOfWater& bag = unknowns.bags[bag_on(unknowns, taught.ingredients[i], std::nullopt)];
        const LinearForm &absorption = unknowns.forms[bag.on_absorption], &gap = unknowns.forms[bag.on_gap];
        forms.insert(forms.end(), {&absorption, &gap});
        water.bags.push_back({bag.name, std::log(bag.absorption) + value_of(absorption, best),
                              std::log(bag.gap) + value_of(gap, best), taught.times[i].absorption});
    }
    water.rank = unknowns.count;
    water.factor = factor_rows(taught.out.fit, forms);
    return water;
}

Learnt told_hand(const WaterTaught& taught) {
    Learnt hand = told_form(taught, WaterUnknowns::hand, Learnt::Property::hand);
    hand.times = heeded_mixes(taught);
    return hand;
}

Learnt told_mark(const WaterTaught& taught, std::size_t ingredient, Mark mark) {
    const WaterUnknowns& unknowns = taught.log.problem.unknowns;
    const BagOfWater& bag = unknowns.bags[bag_on(unknowns, taught.ingredients[ingredient], std::nullopt)];
    const bool is_gap = mark == Mark::gap;
    Learnt learnt = told_form(taught, is_gap ? bag.on_gap : bag.on_absorption,
                              is_gap ? Learnt::Property::gap : Learnt::Property::absorption);
    learnt.name = bag.name;
    learnt.times = is_gap ? taught.times[ingredient].gap : taught.times[ingredient].absorption;
    learnt.library = is_gap ? bag.gap : bag.absorption;
    learnt.value = *learnt.library * std::exp(learnt.mean);
    return learnt;
}

void tell_water(const WaterTaught& taught, const LearnRequest& request, LearnAnswer& answer) {
    answer.observations += heeded_mixes(taught);
    answer.posterior.push_back(told_hand(taught));
    answer.posterior.push_back(told_form(taught, WaterUnknowns::memory, Learnt::Property::memory));
    answer.posterior.back().times = heeded_mixes(taught);
    for (std::size_t i = 0; i < taught.ingredients.size(); ++i)
        for (const Mark mark : {Mark::absorption, Mark::gap}) answer.posterior.push_back(told_mark(taught, i, mark));
    for (std::size_t i = 0; i < taught.log.problem.seen.size(); ++i)
        if (!taught.out.heeded[i])
            answer.set_aside.push_back(
                aside_mix(request.log[*taught.log.problem.seen[i].entry], taught.out.foretold[i]));
    answer.water = learnt_water_of(taught);
}

}  // namespace baitwright
