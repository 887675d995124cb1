#include "answers/pellets/soak_pellets.h"

#include <algorithm>
#include <cmath>

#include "answers/pellets/pump_expanders.h"
#include "answers/pellets/soak_amounts.h"
#include "answers/pellets/soak_batch.h"
#include "answers/pellets/soak_timetable.h"
#include "answers/shared/check_temperature.h"
#include "bait/caution.h"
#include "bait/ingredient_cautions.h"
#include "physics/diffusion_in_sphere.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "physics/soaked_grain.h"
#include "quantities/fault.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

/// A pellet in this water.
struct Diffusing {
    GrainSize size;
    Diffusivity diffusivity;
    double sigma;  ///< of the logarithm of times

    Diffusing(const Ingredient& pellet, Temperature water)
        : size{pellet.diameter.value, pellet.length.value},
          diffusivity(arrhenius_factor(pellet.activation_energy.value, water) * pellet.diffusivity.value) {
        const double energy = std::abs(std::log(double(arrhenius_factor(pellet.activation_energy.value, water)))) *
                              log_normal_sigma(pellet.activation_energy.spread);
        const double size_twice = 2 * log_normal_sigma(pellet.diameter.spread);
        sigma = std::hypot(size_twice, log_normal_sigma(pellet.diffusivity.spread), energy);
    }

    [[nodiscard]] Range<Time> range(Area diffused) const {
        const Time middle = diffused / diffusivity;
        const double factor = std::exp(normal_quantile(0.95) * sigma);
        return {middle / factor, middle, factor * middle};
    }
};

SoakPoint point_at(const SoakedGrain& grain, Time soak, Area drained, Diffusivity diffusivity) {
    return {soak + drained / diffusivity, grain.mean(), grain.core(drained), grain.surface(drained)};
}

/// Under water: dense at first, where it changes fast.
void add_soak_curve(const Diffusing& pellet, Area soaked, std::vector<SoakPoint>& curve) {
    constexpr int steps = 24;
    const Area shortest = 2e-6 * (0.25 * pellet.size.diameter * pellet.size.diameter);
    curve.push_back({Time{}, 0.0, 0.0, 1.0});
    for (int i = 1; i <= steps; ++i) {
        const Area diffused = (i * i / double(steps * steps)) * soaked;
        const Ratio core = diffused > shortest ? SoakedGrain(pellet.size, diffused).core(Area{}) : Ratio(0.0);
        curve.push_back({diffused / pellet.diffusivity, grain_uptake(pellet.size, diffused), core, 1.0});
    }
}

/// What a soak of this length comes to in the bags that the spreads allow.
void draw_uptake(const Diffusing& pellet, const Ingredient& in, Area diffused, SoakedAnswer& answer) {
    constexpr std::size_t points = 256;
    QuasiRandomNormals normals(2, 1);
    std::vector<double> point(2), uptakes, gains;
    const double wider = log_normal_sigma(in.capacity.spread);
    for (std::size_t i = 0; i < points; ++i) {
        normals.next(point);
        uptakes.push_back(grain_uptake(pellet.size, std::exp(pellet.sigma * point[0]) * diffused));
        gains.push_back(uptakes.back() * std::exp(wider * point[1]) * in.capacity.value);
    }
    const auto wet = [&](double p) { return answer.dry + answer.film + quantile_in_place(gains, p) * answer.dry; };
    answer.uptake_range = {quantile_in_place(uptakes, 0.05), quantile_in_place(uptakes, 0.5),
                           quantile_in_place(uptakes, 0.95)};
    answer.wet_range = {wet(0.05), wet(0.5), wet(0.95)};
}

/// A pellet that was under this water for as long as asked.
struct Soak {
    Diffusing pellet;
    Area diffused;
    SoakedGrain grain;

    Soak(const Ingredient& in, const SoakRequest& request)
        : pellet(in, request.water),
          diffused(request.soaked ? pellet.diffusivity * *request.soaked
                                  : diffused_for_uptake(pellet.size, request.uptake)),
          grain(pellet.size, diffused) {}

    [[nodiscard]] SoakPoint drained(Area since) const {
        return point_at(grain, diffused / pellet.diffusivity, since, pellet.diffusivity);
    }
};

void add_stand_curve(const Soak& soak, Area even, std::vector<SoakPoint>& curve) {
    constexpr int steps = 40;
    constexpr double beyond_even = 1.15;
    for (int i = 1; i <= steps; ++i)
        curve.push_back(soak.drained((i * i / double(steps * steps)) * beyond_even * even));
}

/// Times, weights and the three moments.
SoakedAnswer soak_times(const Ingredient& in, Mass dry, const Soak& soak, const SoakRequest& request) {
    const auto& [pellet, diffused, grain] = soak;
    const SoakedBatch batch = soaked_batch(in, dry, grain.mean() * in.capacity.value, request.method);
    SoakedAnswer answer;
    static_cast<BatchAnswer&>(answer) = batch_answer(in, batch, request.portions);
    answer.uptake = grain.mean();
    answer.soak = pellet.range(diffused);
    if (request.soaked) {
        answer.soak.low = answer.soak.high = answer.soak.middle;
        answer.right_soak = pellet.range(diffused_for_uptake(pellet.size, soaked_uptake));
    }
    const Area ready = grain.drained_until(ready_unevenness), even = grain.drained_until(even_unevenness);
    answer.stand_ready = pellet.range(ready);
    answer.stand_even = pellet.range(even);
    answer.drained = soak.drained(Area{});
    answer.ready = soak.drained(ready);
    answer.even = soak.drained(even);
    answer.uptake_range = {answer.uptake, answer.uptake, answer.uptake};
    answer.wet_range = {answer.wet(), answer.wet(), answer.wet()};
    return answer;
}

/// And how sure they are, and the curve.
SoakedAnswer soak_of(const Ingredient& in, Mass dry, const SoakRequest& request) {
    const Soak soak(in, request);
    SoakedAnswer answer = soak_times(in, dry, soak, request);
    if (request.method == SoakMethod::covered) draw_uptake(soak.pellet, in, soak.diffused, answer);
    add_soak_curve(soak.pellet, soak.diffused, answer.curve);
    add_stand_curve(soak, soak.pellet.diffusivity * answer.stand_even.middle, answer.curve);
    return answer;
}

void check_request(const SoakRequest& request) {
    check_water_temperature(request.water);
    if (!(request.uptake >= 0.01 && request.uptake <= 0.95))
        throw UsageError("out-of-range", "the uptake must be from 1 to 95 % of what they can take",
                         "for example --uptake 40%");
    if (request.soaked && !(*request.soaked >= 5.0 * second && *request.soaked <= 48.0 * hour))
        throw UsageError("out-of-range", "the time under water must be from 5 seconds to 48 hours",
                         "for example --soaked 10min");
    if (request.soaked && request.method == SoakMethod::measured)
        throw UsageError("unfit-flag", "with measured water they take what is there, however long",
                         "leave out --soaked or --method measured");
    const PortionsWanted& p = request.portions;
    if (!(p.cup <= 20.0 * litre && p.ball <= 300.0 * millimetre && p.carpet >= 50.0 * millimetre &&
          p.carpet <= 100.0 * metre))
        throw UsageError("out-of-range", "no such cup, ball or carpet is fed",
                         "for example --cup 250ml --ball egg --carpet 1m");
}

Ingredient pellet_called(const Shelf& shelf, const std::string& name) {
    Ingredient in = shelf.ingredient(name);
    if (in.kind == IngredientKind::pellet || in.kind == IngredientKind::expander) return in;
    const bool hard = in.kind == IngredientKind::seed;
    throw UsageError(
        "not-a-pellet",
        "'" + in.name + "' is a " + std::string(name_of(in.kind)) + ", and only pellets are soaked here",
        hard ? "seeds and pulses must be soaked for hours and boiled" +
                   worded(": see baitwright ingredient show \"" + in.name + "\"", "")
             : worded("see them with: baitwright ingredient list --kind pellet", "choose one from the list"));
}

void warn_of_soak(const SoakedAnswer& soaked, std::vector<Warning>& warnings) {
    constexpr double hardly_soaked = 0.15;
    if (soaked.uptake > over_soaked)
        warnings.push_back(
            {"over-soaked", soaked.name + " would be over-soaked, at " +
                                std::to_string(std::lround(100 * soaked.uptake)) +
                                " % of all they can take: they go to mush in the hand; give them less time"});
    if (soaked.uptake < hardly_soaked)
        warnings.push_back(
            {"hardly-soaked", soaked.name + " would be hardly soaked: they stay hard inside and swell later"});
}

void warn_of_pump(const PumpedAnswer& pumped, std::vector<Warning>& warnings) {
    if (!pumped.fewest)
        warnings.push_back(
            {"cannot-sink",
             "no number of strokes sinks " + pumped.name + ": their pores are too small for what they weigh", true});
    else if (pumped.at.buoyancy == Buoyancy::floats)
        warnings.push_back({"floats",
                            pumped.name + " would still float after " + std::to_string(pumped.at.strokes) +
                                " strokes; from " + std::to_string(*pumped.fewest) + " they sink",
                            true});
}

std::vector<Steeped> steeped_of(const Shelf& shelf, const SoakRequest& request) {
    std::vector<Steeped> steeped;
    for (const InTheWater& in : request.in_the_water) {
        Ingredient additive = shelf.ingredient(in.of);
        if (additive.kind != IngredientKind::liquid && additive.kind != IngredientKind::powder)
            throw UsageError("not-an-additive",
                             "'" + additive.name + "' is a " + std::string(name_of(additive.kind)) +
                                 ", and does not dissolve in the water",
                             "stir in liquids and powders only");
        steeped.push_back({std::move(additive), in.dose});
    }
    return steeped;
}

}  // namespace

SoakedAnswer soak_one(const Ingredient& pellet, Mass dry, Temperature water) {
    SoakRequest request;
    request.water = water;
    return soak_times(pellet, dry, Soak(pellet, request), request);
}

SoakAnswer soak_pellets(const Shelf& shelf, const SoakRequest& request) {
    check_request(request);
    std::vector<Ingredient> pellets;
    for (const SoakItem& item : request.items) pellets.push_back(pellet_called(shelf, item.of));
    std::optional<Ingredient> as_many;
    if (const AsManyAs* other = std::get_if<AsManyAs>(&request.total)) as_many = pellet_called(shelf, other->of);
    const std::vector<Mass> amounts = soak_amounts(request, pellets, as_many ? &*as_many : nullptr);
    const std::vector<Steeped> steeped = steeped_of(shelf, request);
    Mass all;
    for (const Mass amount : amounts) all += amount;
    SoakAnswer answer;
    answer.water = request.water;
    answer.method = request.method;
    answer.by_clock = request.soaked.has_value();
    answer.portions = request.portions;
    if (const auto* bites = std::get_if<BitesPlanned>(&request.total)) answer.bites = *bites;
    answer.spare = request.spare;
    answer.ready_at = request.ready_at;
    std::vector<std::string> words;
    for (std::size_t i = 0; i < pellets.size(); ++i) {
        const Ingredient& in = pellets[i];
        add_caution_words(in, words);
        if (in.kind == IngredientKind::expander) {
            PumpedAnswer pumped = pump_expanders(in, amounts[i], request);
            steep({steeped, amounts[i] / all, SoakMethod::covered, request.water}, in, pumped, answer.warnings);
            warn_of_pump(pumped, answer.warnings);
            answer.pumped.push_back(std::move(pumped));
        } else {
            SoakedAnswer soaked = soak_of(in, amounts[i], request);
            steep({steeped, amounts[i] / all, request.method, request.water}, in, soaked, answer.warnings);
            warn_of_soak(soaked, answer.warnings);
            answer.soaked.push_back(std::move(soaked));
        }
    }
    for (const Steeped& one_additive : steeped) add_caution_words(one_additive.ingredient, words);
    answer.cautions = caution_sentences(words);
    answer.timetable = soak_timetable(answer.soaked, answer.pumped, request.method);
    return answer;
}

}  // namespace baitwright
