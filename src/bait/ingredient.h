#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/dose.h"
#include "bait/ingredient_kind.h"
#include "bait/keeping.h"
#include "bait/pack.h"
#include "bait/property.h"
#include "quantities/quantity.h"

namespace baitwright {

/// Shares of the mass as bought.
struct Composition {
    Property<Ratio> protein, fat, carbohydrate, ash, fibre, salt;
};

/// One thing a mix is made of, as bought. Which properties a kind has, their units and ranges: `ingredient_facts.h`.
/// After `complete` every property that its kind has is known, and where it was not stated it says `derived`.
struct Ingredient {
    std::string name;
    IngredientKind kind = IngredientKind::base;

    Property<Density> loose_density;     ///< poured and levelled, not tapped
    Property<Density> skeleton_density;  ///< of the solid without any pores
    Property<Density> envelope_density;  ///< of a particle with its own pores
    Property<Ratio> moisture;            ///< wet basis, in the bag
    Property<Ratio> absorption;          ///< A: added water per g at which a squeezed handful just holds
    Property<Ratio> slump;               ///< B: added water per g at which an up-ended pot will not stand
    Property<Time> uptake_time;          ///< t90 at 15 degC: 90 % of A taken up
    Property<Length> particle_size;      ///< d50
    Property<Ratio> particle_spread;     ///< geometric standard deviation of the size
    Property<Ratio> fines;               ///< share under 0.1 mm
    Property<Ratio> binder;              ///< b: per unit share of dry mass; above 0 holds together, below 0 breaks up
    Property<Ratio> inside_share;        ///< theta: share of A held inside the particles

    Property<Length> diameter;
    Property<Length> length;
    Property<Ratio> capacity;  ///< C: g of water per g dry at saturation
    Property<Diffusivity> diffusivity;
    Property<MolarEnergy> activation_energy;
    Property<Ratio> porosity;  ///< open pores of an expander

    Property<Density> density;  ///< of a liquid
    Property<Ratio> water;      ///< share of a liquid's mass that is water
    Property<Density> wetting;  ///< grams of wetting per ml of a liquid

    Composition composition;
    std::string colour;
    std::string solute;  ///< of a liquid or powder: glycerol, sucrose, salt, or empty
    std::optional<DoseRate> label_dose;
    std::vector<Pack> packs;
    Keeping keeps;
    std::vector<std::string> cautions;
    std::string note;
};

/// Whether a person measured A or B of it.
inline bool has_measured_mark(const Ingredient& ingredient) {
    return ingredient.absorption.source.origin == Origin::measured ||
           ingredient.slump.source.origin == Origin::measured;
}

}  // namespace baitwright
