#include "answers/learn/learn_looks.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "answers/learn/factor_fit.h"
#include "answers/learn/mix_looks.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "physics/normal_quantile.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// What nine tenths of a factor lie within either way, as a sigma.
double sigma_of_factor(double factor) {
    return std::log(factor) / normal_quantile(0.95);
}

/// A factor as it was seen, in the entry's own measure.
struct LookSeen {
    std::size_t entry;
    SeenAndModelled both;
};

/// One factor of one ingredient or mix, and all that was seen of it.
struct FactorOfThing {
    std::string name;
    Learnt::Property property;
    double sigma_before, error;
    std::optional<double> library = {};  ///< in SI
    std::vector<LookSeen> seen = {};
};

class LooksOfLog {
public:
    LooksOfLog(const Shelf& shelf, const LearnRequest& request) : shelf_(shelf) {
        for (std::size_t i = 0; i < request.log.size(); ++i) {
            if (const auto* weight = std::get_if<LoggedWeight>(&request.log[i].what)) take(*weight, i);
            if (const auto* look = std::get_if<LoggedLook>(&request.log[i].what)) take(*look, i);
        }
    }

    [[nodiscard]] const auto& all() const { return all_; }

private:
    void take(const LoggedWeight& weight, std::size_t entry) {
        if (!(weight.vessel > Volume{} && weight.mass > Mass{})) return;
        if (const auto in = shelf_.find_ingredient(weight.of)) {
            const Property<Density>& loose = in->loose_density;
            if (!loose.known() || !(loose.value > Density{})) return;
            const double sigma = std::max(1e-6, log_normal_sigma(loose.spread));
            FactorOfThing& thing = of({in->name, Learnt::Property::loose_weight, sigma, weighing, loose.value.si()});
            thing.seen.push_back({entry, {weight.mass.in(gram), (loose.value * weight.vessel).in(gram)}});
            return;
        }
        add(weight.of, Learnt::Property::cup_weight, log_normal_sigma(cup_before), cup_error, entry,
            cup_seen(shelf_, weight));
    }

    void take(const LoggedLook& look, std::size_t entry) {
        add(look.of, Learnt::Property::hold, sigma_of_factor(2.5), std::log(1.3), entry, hold_seen(shelf_, look));
        add(look.of, Learnt::Property::carpet, sigma_of_factor(2), std::log(1.25), entry, carpet_seen(shelf_, look));
    }

    void add(const std::string& mix, Learnt::Property property, double sigma_before, double error, std::size_t entry,
             const std::optional<SeenAndModelled>& both) {
        if (both) of({shelf_.find_recipe(mix)->name, property, sigma_before, error}).seen.push_back({entry, *both});
    }

    FactorOfThing& of(const FactorOfThing& thing) {
        return all_.try_emplace({folded_name(thing.name), thing.property}, thing).first->second;
    }

    // Ours, no source.
    static constexpr double weighing = 0.03, cup_before = 0.08, cup_error = 0.04;

    const Shelf& shelf_;
    std::map<std::pair<std::string, Learnt::Property>, FactorOfThing> all_;
};

void keep_of_mix(const FactorOfThing& thing, const LearntFactor& factor, LearnAnswer& answer) {
    if (answer.learnt_mixes.empty() || answer.learnt_mixes.back().name != thing.name)
        answer.learnt_mixes.push_back({thing.name, {}, {}, {}});
    LearntMix& mix = answer.learnt_mixes.back();
    (thing.property == Learnt::Property::cup_weight ? mix.cup_weight
     : thing.property == Learnt::Property::hold     ? mix.hold
                                                    : mix.carpet) = factor;
}

void learn_factor(FactorOfThing thing, const LearnRequest& request, LearnAnswer& answer) {
    const auto log_factor = [](const LookSeen& one_seen) {
        return std::log(one_seen.both.seen / one_seen.both.modelled);
    };
    const auto key = [&](const LookSeen& a) {
        return std::make_tuple(request.log[a.entry].on, a.both.seen, a.both.modelled, request.log[a.entry].id);
    };
    std::sort(thing.seen.begin(), thing.seen.end(),
              [&](const LookSeen& a, const LookSeen& b) { return key(a) < key(b); });
    std::vector<FactorSeen> seen;
    for (const LookSeen& look : thing.seen)
        seen.push_back({log_factor(look), thing.error, look.entry, request.log[look.entry].believed});
    const FactorFit fit = fit_factor(thing.sigma_before, seen);
    answer.observations += fit.times();
    for (std::size_t i = 0; i < seen.size(); ++i)
        if (!fit.heeded[i])
            answer.set_aside.push_back({request.log[seen[i].entry], fit.sigmas[i], thing.seen[i].both.seen,
                                        thing.seen[i].both.modelled * std::exp(fit.log_expected[i])});
    if (fit.times() == 0) return;
    Learnt learnt{thing.name, thing.property, 0, thing.sigma_before, fit.mean[0], fit.sigma[0], fit.times()};
    learnt.library = thing.library;
    if (thing.library) learnt.value = *thing.library * std::exp(fit.mean[0]);
    answer.posterior.push_back(std::move(learnt));
    if (thing.property != Learnt::Property::loose_weight)
        keep_of_mix(thing, {fit.mean[0], fit.sigma[0], fit.times()}, answer);
}

}  // namespace

void learn_looks(const Shelf& shelf, const LearnRequest& request, LearnAnswer& answer) {
    const LooksOfLog looks(shelf, request);
    for (const auto& [key, thing] : looks.all()) learn_factor(thing, request, answer);
}

}  // namespace baitwright
