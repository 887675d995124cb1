#include "answers/pellets/pump_expanders.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "answers/pellets/soak_batch.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "physics/vacuum.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr std::size_t pump_points = 256;
constexpr int most_strokes = 200;

/// A bag as it may be: a draw from the spreads.
struct Bag {
    Density envelope;
    double porosity;
};

double closed_share(const Ingredient& expander) {
    return expander.envelope_density.value / expander.skeleton_density.value;
}

std::vector<Bag> draw_bags(const Ingredient& expander) {
    QuasiRandomNormals normals(2, 1);
    std::vector<double> point(2);
    std::vector<Bag> bags;
    const double heavier = log_normal_sigma(expander.envelope_density.spread),
                 wider = log_normal_sigma(expander.porosity.spread);
    for (std::size_t i = 0; i < pump_points; ++i) {
        normals.next(point);
        const Density envelope = std::exp(heavier * point[0]) * expander.envelope_density.value;
        const double room = 1 - envelope / expander.skeleton_density.value;  // no more pores than there is room for
        bags.push_back(
            {envelope, std::clamp(std::exp(wider * point[1]) * expander.porosity.value, 0.0, std::max(0.0, room))});
    }
    return bags;
}

Density pumped_density(const Bag& bag, double fill, Density water) {
    return bag.envelope + fill * bag.porosity * water;
}

Buoyancy buoyancy_of(Density pellet, Density water) {
    if (pellet <= water) return Buoyancy::floats;
    return pellet <= slow_sinking ? Buoyancy::sinks_slowly : Buoyancy::sinks;
}

/// Everything that does not change from stroke to stroke.
struct Pump {
    Volume stroke, free;
    Pressure air, vapour;
    Density water;
    Bag usual;
    std::vector<Bag> bags;

    [[nodiscard]] StrokeAnswer after(int strokes) const {
        const Pressure reached = pressure_after(strokes, stroke, free, air, vapour);
        const double fill = pore_fill(reached, air, vapour);
        const auto sinks = [&](const Bag& bag) { return pumped_density(bag, fill, water) > water; };
        const auto sinking = static_cast<double>(std::count_if(bags.begin(), bags.end(), sinks));
        const Density density = pumped_density(usual, fill, water);
        return {
            strokes, reached, fill, density, buoyancy_of(density, water), sinking / static_cast<double>(bags.size())};
    }
};

void check_setup(const PumpSetup& pump, Temperature water) {
    const auto refuse = [](const char* message, const char* hint) { throw UsageError("out-of-range", message, hint); };
    if (pump.strokes && (*pump.strokes < 0 || *pump.strokes > most_strokes))
        refuse("the strokes must be from 0 to 200", "for example --strokes 6");
    if (!(pump.stroke >= 1.0 * millilitre && pump.stroke <= 10.0 * litre))
        refuse("a stroke of the pump must be from 1 ml to 10 l", "for example --pump 100ml");
    if (!(pump.vessel >= 20.0 * millilitre && pump.vessel <= 200.0 * litre))
        refuse("the vessel must hold from 20 ml to 200 l", "for example --vessel 500ml");
    if (!(pump.air >= 50.0 * kilopascal && pump.air <= 110.0 * kilopascal && pump.air > vapour_pressure(water)))
        refuse("the air's pressure must be from 50 to 110 kPa",
               "for example --air 101kPa; about 12 kPa less for every 1000 m up");
}

Volume free_volume(const Ingredient& expander, const SoakedBatch& dry, const PumpSetup& pump) {
    const Volume filled = dry.dry / expander.envelope_density.value + dry.pour / (1.0 * gram_per_millilitre);
    if (filled > 0.95 * pump.vessel)
        throw UsageError("vessel-too-small", "pellets and water fill the vessel: no air is left to draw off",
                         "pump them in several lots, or say a larger one with --vessel");
    return pump.vessel - filled;
}

/// The first stroke at which it holds, or nothing up to the vapour's floor.
template <class Holds>
std::optional<int> fewest(const std::vector<StrokeAnswer>& by_stroke, Holds holds) {
    const auto found = std::find_if(by_stroke.begin(), by_stroke.end(), holds);
    if (found == by_stroke.end()) return std::nullopt;
    return found->strokes;
}

}  // namespace

Ratio water_in_pores(const Ingredient& expander, Ratio fill, Temperature water) {
    const double pores = std::min<double>(expander.porosity.value, 1 - closed_share(expander));
    return fill * pores * (water_density(water) / expander.envelope_density.value);
}

PumpedAnswer pump_expanders(const Ingredient& expander, Mass dry, const SoakRequest& request) {
    check_setup(request.pump, request.water);
    const SoakedBatch before = soaked_batch(expander, dry, 0.0, SoakMethod::covered);
    const double pores = std::min<double>(expander.porosity.value, 1 - closed_share(expander));
    const Pump pump{request.pump.stroke,
                    free_volume(expander, before, request.pump),
                    request.pump.air,
                    vapour_pressure(request.water),
                    water_density(request.water),
                    {expander.envelope_density.value, pores},
                    draw_bags(expander)};
    PumpedAnswer answer;
    answer.stroke = pump.stroke;
    answer.vessel = request.pump.vessel;
    answer.free_volume = pump.free;
    answer.air = pump.air;
    answer.vapour = pump.vapour;
    answer.boils_after = static_cast<int>(std::ceil(strokes_to_boil(pump.stroke, pump.free, pump.air, pump.vapour)));
    for (int stroke = 1; stroke <= std::min(answer.boils_after, most_strokes); ++stroke)
        answer.by_stroke.push_back(pump.after(stroke));
    constexpr double nearly_every_bag = 0.95;
    answer.fewest = fewest(answer.by_stroke, [](const StrokeAnswer& a) { return a.buoyancy != Buoyancy::floats; });
    answer.fewest_sure = fewest(answer.by_stroke, [](const StrokeAnswer& a) { return a.sinking >= nearly_every_bag; });
    const int advised = answer.fewest_sure.value_or(answer.fewest.value_or(std::min(answer.boils_after, most_strokes)));
    answer.at = pump.after(request.pump.strokes.value_or(advised));

    const Ratio inside = water_in_pores(expander, answer.at.fill, request.water);
    const SoakedBatch pumped = soaked_batch(expander, dry, inside, SoakMethod::covered);
    static_cast<BatchAnswer&>(answer) = batch_answer(expander, pumped, request.portions);
    return answer;
}

}  // namespace baitwright
