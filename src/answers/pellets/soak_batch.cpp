#include "answers/pellets/soak_batch.h"

#include <numbers>

#include "answers/shared/mix_amount.h"
#include "answers/shared/over_label.h"
#include "bait/amount.h"
#include "bait/free_offerings.h"
#include "bait/label.h"
#include "physics/solutions.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

/// How densely a hand squeezes soaked pellets: as the mix's own rule has it for a squeezed mix at the wetness just
/// below firm. **Source**: default, from memory.
constexpr double squeezed_packing = 0.77;

GrainsAnswer grains_of(const Ingredient& pellet, const SoakedBatch& batch, const PortionsWanted& portions) {
    GrainsAnswer grains;
    grains.all = free_offerings_in(pellet, batch.dry);
    const double poured = pellet.loose_density.value / pellet.envelope_density.value;
    grains.in_cup = grains.all * (portions.cup / batch.wet_volume);
    grains.in_ball = grains.all * (ball_volume(portions.ball) / batch.wet_volume) * squeezed_packing / poured;
    grains.in_hand = grains.in_cup * (hand_patch / (std::numbers::pi / 4 * portions.carpet * portions.carpet));
    return grains;
}

/// The whole amount for one batch.
struct DoseOfBatch {
    const Ingredient& additive;
    const DoseGround& ground;
    double share;

    Mass operator()(const DoseRate& rate) const { return dosed_mass(rate, additive, ground); }
    Mass operator()(Mass mass) const { return share * mass; }
    Mass operator()(Volume volume) const { return share * volume * measured_density(additive); }
};

struct Dissolved {
    Solute solute;
    Mass in_pellet;
};

void warn_where_undissolved(const Ingredient& additive, Solute solute, Ratio strength, Temperature water,
                            std::vector<Warning>& warnings) {
    if (strength * solute_share(additive) > soluble_fraction(solute, water))
        warnings.push_back({"undissolved", "so much " + additive.name + " does not dissolve in that water", true});
}

std::optional<Ratio> activity_in(const std::vector<Dissolved>& dissolved, Mass water, Temperature temperature) {
    if (dissolved.empty()) return std::nullopt;
    double activity = 1;
    for (const Dissolved& one : dissolved) {
        const Ratio fraction = mass_fraction(one.in_pellet, water);
        if (fraction > soluble_fraction(one.solute, temperature)) return std::nullopt;
        activity *= water_activity(one.solute, fraction);
    }
    return activity;
}

/// Where the water is measured, what is stirred in is part of what they take: less water goes with it. A dose by the
/// litre hangs on the water in turn; a few rounds settle it.
Mass water_beside(const std::vector<Steeped>& additives, double share, const BatchAnswer& batch) {
    Mass water = batch.inside;
    for (int round = 0; round < 60; ++round) {
        Mass all;
        const DoseGround ground{batch.dry, batch.wet(), water, batch.dry_volume};
        for (const Steeped& added : additives)
            all += std::visit(DoseOfBatch{added.ingredient, ground, share}, added.dose);
        water = std::max(Mass{}, batch.inside - all);
    }
    if (!(water > Mass{}))
        throw UsageError("too-much-additive",
                         "what is stirred in is more than the " + batch.name + " are to take, with no water at all",
                         "stir in less, let them take more with --uptake, or cover and drain them");
    return water;
}

}  // namespace

BatchAnswer batch_answer(const Ingredient& pellet, const SoakedBatch& batch, const PortionsWanted& portions) {
    return {batch,
            pellet.name,
            pellet.diameter.value,
            batch.dry / pellet.loose_density.value,
            grains_of(pellet, batch, portions),
            {},
            {},
            pellet.keeps.cold,
            pellet.keeps.frozen};
}

void steep(const Stirring& stirring, const Ingredient& pellet, BatchAnswer& batch, std::vector<Warning>& warnings) {
    const auto& [additives, share, method, temperature] = stirring;
    if (additives.empty()) return;
    if (method == SoakMethod::measured) batch.pour = water_beside(additives, share, batch);
    const DoseGround ground{batch.dry, batch.wet(), batch.pour, batch.dry_volume};
    std::vector<SteepedAdditive> steeped;
    Mass all;
    for (const Steeped& added : additives) {
        SteepedAdditive line;
        line.name = added.ingredient.name;
        line.liquid = added.ingredient.kind == IngredientKind::liquid;
        line.mass = std::visit(DoseOfBatch{added.ingredient, ground, share}, added.dose);
        line.volume = line.mass / measured_density(added.ingredient);
        line.of_label_max = share_of_label(added.ingredient, line.mass, ground);
        if (line.of_label_max.value_or(0.0) > 1 + 1e-9)
            warnings.push_back(over_label(added.ingredient, line.mass, *line.of_label_max));
        all += line.mass;
        steeped.push_back(line);
    }
    const Mass taken = batch.inside + batch.film;  // of the solution
    Mass water = pellet.moisture.value * batch.dry + taken * (batch.pour / (batch.pour + all));
    std::vector<Dissolved> dissolved;
    for (std::size_t i = 0; i < steeped.size(); ++i) {
        SteepedAdditive& line = steeped[i];
        const Ingredient& additive = additives[i].ingredient;
        line.strength = line.mass / (batch.pour + all);
        line.in_pellet = line.strength * taken / batch.wet();
        const Mass in_pellet = line.strength * taken;
        const auto solute = find_solute(additive.solute);
        if (!solute) continue;
        water += (1 - solute_share(additive)) * in_pellet;
        warn_where_undissolved(additive, *solute, line.strength, temperature, warnings);
        dissolved.push_back({*solute, solute_share(additive) * in_pellet});
    }
    batch.additives = std::move(steeped);
    batch.water_activity = activity_in(dissolved, water, temperature);
}

}  // namespace baitwright
