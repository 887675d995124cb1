#include "answers/pellets/pump_expanders.h"

#include <algorithm>
#include <cmath>
#include <numbers>
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
constexpr double nearly_full = 0.99;     ///< of the pores: more strokes change nothing that shows
constexpr double filled_at_most = 0.75;  ///< of the vessel, or the bubbles carry water into the pump
constexpr Length water_above = Length::from_si(0.01);

/// A bag as it may be: a draw from the spreads.
struct Bag {
    Density envelope;
    double porosity;
};

/// Of a pellet's volume; no more than there is room for beside the solid.
double open_pores(const Ingredient& expander) {
    return std::min<double>(expander.porosity.value,
                            1 - expander.envelope_density.value / expander.skeleton_density.value);
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
    Volume stroke, air_volume;
    Pressure air, vapour;
    Density water;
    Bag usual;
    std::vector<Bag> bags;

    [[nodiscard]] StrokeAnswer after(int strokes) const {
        const Pressure reached = pressure_after(strokes, stroke, air_volume, air, vapour);
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

/// The base of a vessel as tall as it is wide.
Area base_of(Volume vessel) {
    const double width = std::cbrt(4 / std::numbers::pi * vessel.si());
    return Area::from_si(std::numbers::pi / 4 * width * width);
}

/// One lot in the vessel: what its pellets are, and the water that keeps them under.
struct VesselLot {
    Volume pellets, pores;  ///< with their pores; the pores
    Volume level;           ///< pellets and water together once the pores are full

    VesselLot(const Ingredient& expander, Mass dry, const PumpSetup& pump)
        : pellets(dry / expander.envelope_density.value),
          pores(open_pores(expander) * pellets),
          level(std::max(dry / expander.loose_density.value, one_layer(expander, pump.vessel)) +
                water_above * base_of(pump.vessel)) {}
    /// Of the water, what ends in the pores counted in.
    [[nodiscard]] Volume water() const { return level - pellets + pores; }
    /// Above the water and in the pores.
    [[nodiscard]] Volume air(Volume vessel) const { return vessel - level; }

    /// A layer of pellets over the whole base.
    static Volume one_layer(const Ingredient& expander, Volume vessel) {
        return std::max(expander.diameter.value, expander.length.value) * base_of(vessel);
    }
};

/// The most that goes into the vessel at once: its poured bulk, or one layer, with water above and in the pores.
Mass largest_lot(const Ingredient& expander, const PumpSetup& pump) {
    const Volume room = filled_at_most * pump.vessel - water_above * base_of(pump.vessel),
                 beside_a_layer = room - VesselLot::one_layer(expander, pump.vessel);
    if (!(beside_a_layer > Volume{}))
        throw UsageError("vessel-too-small",
                         "that vessel is too small for one layer of " + expander.name + " with water over it",
                         "say a larger one with --vessel");
    const SpecificVolume in_pores = open_pores(expander) / expander.envelope_density.value;
    const Mass by_bulk = room / (1.0 / expander.loose_density.value + in_pores);
    return in_pores > SpecificVolume{} ? std::min(by_bulk, beside_a_layer / in_pores) : by_bulk;
}

/// The first stroke at which it holds, or nothing where none does.
template <class Holds>
std::optional<int> fewest(const std::vector<StrokeAnswer>& by_stroke, Holds holds) {
    const auto found = std::find_if(by_stroke.begin(), by_stroke.end(), holds);
    if (found == by_stroke.end()) return std::nullopt;
    return found->strokes;
}

}  // namespace

Ratio water_in_pores(const Ingredient& expander, Ratio fill, Temperature water) {
    return fill * open_pores(expander) * (water_density(water) / expander.envelope_density.value);
}

PumpedAnswer pump_expanders(const Ingredient& expander, Mass dry, const SoakRequest& request) {
    check_setup(request.pump, request.water);
    PumpedAnswer answer;
    answer.lots = static_cast<int>(std::ceil(dry / largest_lot(expander, request.pump) - 1e-9));
    const VesselLot lot(expander, dry / answer.lots, request.pump);
    const Pump pump{request.pump.stroke,
                    lot.air(request.pump.vessel),
                    request.pump.air,
                    vapour_pressure(request.water),
                    water_density(request.water),
                    {expander.envelope_density.value, open_pores(expander)},
                    draw_bags(expander)};
    answer.stroke = pump.stroke;
    answer.vessel = request.pump.vessel;
    answer.free_volume = pump.air_volume;
    answer.air = pump.air;
    answer.vapour = pump.vapour;
    for (int stroke = 1; stroke <= most_strokes; ++stroke) {
        answer.by_stroke.push_back(pump.after(stroke));
        if (answer.by_stroke.back().fill >= nearly_full) break;
    }
    constexpr double nearly_every_bag = 0.95;
    answer.fewest = fewest(answer.by_stroke, [](const StrokeAnswer& a) { return a.buoyancy != Buoyancy::floats; });
    answer.fewest_sure = fewest(answer.by_stroke, [](const StrokeAnswer& a) { return a.sinking >= nearly_every_bag; });
    const int advised = answer.fewest_sure.value_or(answer.fewest.value_or(answer.by_stroke.back().strokes));
    answer.at = pump.after(request.pump.strokes.value_or(advised));

    const Ratio inside = water_in_pores(expander, answer.at.fill, request.water);
    SoakedBatch pumped = soaked_batch(expander, dry, inside, SoakMethod::covered);
    pumped.pour = answer.lots * lot.water() * (1.0 * gram_per_millilitre);
    static_cast<BatchAnswer&>(answer) = batch_answer(expander, pumped, request.portions);
    return answer;
}

}  // namespace baitwright
