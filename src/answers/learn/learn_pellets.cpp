#include "answers/learn/learn_pellets.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "answers/learn/factor_fit.h"
#include "bait/soaked_batch.h"
#include "physics/diffusion_in_sphere.h"
#include "physics/normal_quantile.h"
#include "physics/soaked_grain.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double gain_error = 0.05;  // of what was gained. Ours, no source
constexpr double slope_step = 1e-4;  // of ln D

using SoakEntries = std::vector<std::size_t>;  // places in the log

double gain_of(const LoggedSoak& soak) {
    return (soak.drained - soak.dry) / soak.dry;
}

bool tells_soak(const LoggedSoak& soak) {
    return soak.dry > Mass{} && soak.under_water > Time{} && gain_of(soak) > 1.01 * soaked_film;
}

class SoakedPellet {
public:
    SoakedPellet(const Ingredient& pellet, const LearnRequest& request) : pellet_(pellet), request_(request) {}

    [[nodiscard]] const LoggedSoak& soak(std::size_t entry) const {
        return std::get<LoggedSoak>(request_.log[entry].what);
    }

    [[nodiscard]] FactorSeen seen(std::size_t entry) const {
        const double gain = gain_of(soak(entry)), inside = gain - soaked_film;
        return {std::log(inside), gain_error * gain / inside, entry, request_.log[entry].believed};
    }

    [[nodiscard]] FactorSlope slope(std::size_t entry, const std::array<double, 2>& at) const {
        const double up = log_uptake(soak(entry), at[0] + slope_step),
                     down = log_uptake(soak(entry), at[0] - slope_step);
        return {log_uptake(soak(entry), at[0]) + std::log(double(pellet_.capacity.value)) + at[1],
                {(up - down) / (2 * slope_step), 1}};
    }

private:
    [[nodiscard]] double log_uptake(const LoggedSoak& soak, double log_factor) const {
        const Area diffused = std::exp(log_factor) * pellet_.diffusivity.value *
                              arrhenius_factor(pellet_.activation_energy.value, soak.water) * soak.under_water;
        return std::log(double(grain_uptake({pellet_.diameter.value, pellet_.length.value}, diffused)));
    }

    const Ingredient& pellet_;
    const LearnRequest& request_;
};

bool comes_first(const LearnRequest& request, std::size_t a, std::size_t b) {
    const LogEntry &x = request.log[a], &y = request.log[b];
    const auto key = [](const LogEntry& entry) {
        const auto& soak = std::get<LoggedSoak>(entry.what);
        return std::make_tuple(entry.on, soak.dry.si(), soak.drained.si(), soak.under_water.si(),
                               soak.water.in_celsius(), entry.id);
    };
    return key(x) < key(y);
}

void tell_pellet(const Ingredient& pellet, const FactorFit& fit, LearnAnswer& answer) {
    const auto tell = [&](Learnt::Property property, std::size_t k, double sigma_before, double library) {
        Learnt learnt{pellet.name, property, 0, sigma_before, fit.mean[k], fit.sigma[k], fit.times()};
        learnt.library = library;
        learnt.value = library * std::exp(fit.mean[k]);
        answer.posterior.push_back(std::move(learnt));
    };
    tell(Learnt::Property::diffusivity, 0, log_normal_sigma(pellet.diffusivity.spread), pellet.diffusivity.value.si());
    tell(Learnt::Property::capacity, 1, log_normal_sigma(pellet.capacity.spread), pellet.capacity.value);
}

void learn_pellet(const Ingredient& pellet, SoakEntries soaks, const LearnRequest& request, LearnAnswer& answer) {
    std::sort(soaks.begin(), soaks.end(), [&](std::size_t a, std::size_t b) { return comes_first(request, a, b); });
    const SoakedPellet soaked(pellet, request);
    std::vector<FactorSeen> seen;
    for (const std::size_t entry : soaks) seen.push_back(soaked.seen(entry));
    const auto before = [](Ratio spread) { return std::max(1e-6, log_normal_sigma(spread)); };
    const FactorFit fit =
        fit_factors({before(pellet.diffusivity.spread), before(pellet.capacity.spread)}, seen,
                    [&](std::size_t i, const std::array<double, 2>& at) { return soaked.slope(soaks[i], at); });
    answer.observations += fit.times();
    if (fit.times() > 0) tell_pellet(pellet, fit, answer);
    for (std::size_t i = 0; i < seen.size(); ++i) {
        if (fit.heeded[i]) continue;
        const LoggedSoak& soak = soaked.soak(soaks[i]);
        answer.set_aside.push_back({request.log[soaks[i]], fit.sigmas[i], (soak.drained - soak.dry).in(gram),
                                    soak.dry.in(gram) * (soaked_film + std::exp(fit.log_expected[i]))});
    }
}

}  // namespace

void learn_pellets(const Shelf& shelf, const LearnRequest& request, LearnAnswer& answer) {
    std::map<std::string, SoakEntries> by_name;
    for (std::size_t i = 0; i < request.log.size(); ++i)
        if (const auto* soak = std::get_if<LoggedSoak>(&request.log[i].what); soak && tells_soak(*soak))
            by_name[folded_name(soak->of)].push_back(i);
    for (auto& [name, soaks] : by_name) {
        const auto pellet = shelf.find_ingredient(name);
        if (!pellet || !(pellet->diffusivity.known() && pellet->capacity.known())) continue;
        if (!(pellet->diffusivity.value > Diffusivity{} && pellet->capacity.value > 0)) continue;
        learn_pellet(*pellet, std::move(soaks), request, answer);
    }
}

}  // namespace baitwright
