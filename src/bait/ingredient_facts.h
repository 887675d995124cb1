#pragma once

#include <string_view>

#include "bait/ingredient.h"
#include "quantities/units.h"

/// The one list of an ingredient's properties. Reading, storing, showing and exporting all walk it, so that a new
/// property is one member in `ingredient.h` and one line here.
namespace baitwright {

enum class Need { optional, required, absent };

/// What the files and screens need to know of a property, whatever its dimension.
template <class D>
struct PropertyFacts {
    std::string_view key;     ///< in files, the store and JSON
    std::string_view symbol;  ///< of the unit it is shown in
    Unit<D> unit;
    double lowest, highest;  ///< in that unit; outside is a fault
    bool bare_number;        ///< written without a unit
    double usual_spread;     ///< where none is stated
};

/// Calls `visit(facts, ingredient.member)` for each property, in the order in which they are shown.
template <class AnIngredient, class Visit>
void visit_properties(AnIngredient& i, Visit&& visit) {
    using R = PropertyFacts<NoDimension>;
    const auto density = [](std::string_view key, double low, double high, double spread) {
        return PropertyFacts<Dimension<1, -3, 0>>{key, "g/ml", gram_per_millilitre, low, high, false, spread};
    };
    const auto share = [](std::string_view key, double spread) { return R{key, "%", percent, 0, 100, false, spread}; };
    const auto length = [](std::string_view key, double low) {
        return PropertyFacts<Dimension<0, 1, 0>>{key, "mm", millimetre, low, 60, false, 0.05};
    };
    visit(PropertyFacts<Dimension<1, -3, 0>>{"loose_density", "g/l", gram_per_litre, 20, 3000, false, 0.12},
          i.loose_density);
    visit(density("skeleton_density", 0.5, 8, 0.03), i.skeleton_density);
    visit(density("envelope_density", 0.05, 8, 0.08), i.envelope_density);
    visit(R{"moisture", "%", percent, 0, 99, false, 0.15}, i.moisture);  // some of it is bait
    visit(R{"absorption", "g/g", one, 0, 10, false, 0.15}, i.absorption);
    visit(R{"slump", "g/g", one, 0, 20, false, 0.15}, i.slump);
    visit(PropertyFacts<Dimension<0, 0, 1>>{"uptake_time", "min", minute, 0, 2880, false, 0.30}, i.uptake_time);
    visit(PropertyFacts<Dimension<0, 1, 0>>{"particle_size", "mm", millimetre, 0.001, 60, false, 0.20},
          i.particle_size);
    visit(R{"particle_spread", "", one, 1, 10, true, 0.10}, i.particle_spread);
    visit(share("fines", 0.40), i.fines);
    visit(R{"binder", "", one, -20, 20, true, 0.50}, i.binder);
    visit(share("inside_share", 0.10), i.inside_share);
    visit(length("diameter", 0.1), i.diameter);
    visit(length("length", 0.1), i.length);
    visit(R{"capacity", "g/g", one, 0.01, 10, false, 0.15}, i.capacity);
    visit(PropertyFacts<Dimension<0, 2, -1>>{"diffusivity", "m2/s", square_metre_per_second, 1e-13, 1e-7, false, 0.30},
          i.diffusivity);
    visit(PropertyFacts<Dimension<1, 2, -2, 0, -1>>{"activation_energy", "kJ/mol", kilojoule_per_mole, 0, 200, false,
                                                    0.30},
          i.activation_energy);
    visit(share("porosity", 0.15), i.porosity);
    visit(density("density", 0.5, 3, 0.03), i.density);
    visit(share("water", 0.10), i.water);
    visit(density("wetting", 0, 2, 0.20), i.wetting);
}

/// Calls `visit(key, share)` for each part of the composition.
template <class AComposition, class Visit>
void visit_composition(AComposition& c, Visit&& visit) {
    visit("protein", c.protein);
    visit("fat", c.fat);
    visit("carbohydrate", c.carbohydrate);
    visit("ash", c.ash);
    visit("fibre", c.fibre);
    visit("salt", c.salt);
}

/// Whether a kind must, may or cannot have the property of that key.
Need need_of(IngredientKind kind, std::string_view key);

}  // namespace baitwright
