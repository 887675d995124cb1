#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/memory_shelf.h"
#include "bait/recipe.h"
#include "quantities/units.h"

/// A shelf of generic ingredients for the tests, independent of the library that is shipped. All values are estimates
/// from memory that give sensible mixes; they are inputs, never what a result is held against.
namespace baitwright::draft {

struct SolidRow {
    std::string_view name;
    IngredientKind kind;
    double absorption, slump;   // g/g
    double loose;               // g/l
    double skeleton, envelope;  // g/ml
    double size;                // mm
    double size_spread;
    double uptake_minutes;
    double binder;
    double fines, moisture;  // %
};

inline constexpr SolidRow solids[] = {
    {"brown crumb", IngredientKind::base, 0.65, 1.12, 420, 1.45, 0.95, 0.9, 1.8, 8, 0, 3, 6.5},
    {"white crumb, fine dry", IngredientKind::base, 0.75, 1.28, 400, 1.45, 0.9, 0.6, 1.8, 6, 0.5, 5, 6.5},
    {"rusk", IngredientKind::base, 0.9, 1.55, 350, 1.45, 0.85, 1, 1.8, 8, 0.3, 3, 10},
    {"biscuit crumb", IngredientKind::base, 0.45, 0.8, 460, 1.42, 1.05, 0.8, 1.8, 12, 0.8, 6, 4.4},
    {"sweet cake crumb", IngredientKind::base, 0.5, 0.88, 400, 1.4, 1, 0.7, 1.8, 10, 1, 8, 10},
    {"egg biscuit bird food", IngredientKind::base, 0.55, 0.95, 480, 1.42, 1, 1.2, 2.1, 15, -0.5, 4, 10},
    {"fishmeal, brown", IngredientKind::base, 0.5, 0.85, 560, 1.45, 1.28, 0.35, 2.1, 25, 0.3, 6, 10},
    {"predigested fishmeal", IngredientKind::base, 0.35, 0.6, 550, 1.42, 1.3, 0.25, 2.1, 15, 3, 10, 10},
    {"crustacean meal", IngredientKind::base, 0.6, 1, 430, 1.45, 1.15, 0.5, 2.1, 20, -0.5, 5, 10},
    {"ground fishmeal pellet", IngredientKind::base, 0.55, 0.93, 600, 1.42, 1.22, 0.6, 2.1, 20, 1.2, 6, 10},
    {"maize meal", IngredientKind::base, 0.42, 0.72, 620, 1.45, 1.28, 0.45, 2.1, 30, -0.8, 8, 10.3},
    {"polenta, coarse maize", IngredientKind::base, 0.35, 0.6, 690, 1.45, 1.3, 0.9, 2.1, 45, -1.5, 1, 10},
    {"semolina", IngredientKind::base, 0.42, 0.72, 710, 1.45, 1.35, 0.4, 2.1, 20, -0.5, 3, 12.7},
    {"maize distillers grains", IngredientKind::base, 0.6, 1.02, 500, 1.42, 1.1, 0.7, 2.1, 25, -0.3, 3, 10},
    {"wheat flour", IngredientKind::powder, 0.42, 0.8, 530, 1.45, 1.4, 0.08, 2.1, 10, 4, 60, 11.9},
    {"wheat gluten", IngredientKind::powder, 0.9, 1.6, 500, 1.32, 1.25, 0.09, 2.1, 5, 7, 55, 10},
    {"wheat bran", IngredientKind::base, 1.05, 1.85, 240, 1.45, 0.65, 1.2, 2.1, 15, -2, 3, 9.9},
    {"ground hemp, toasted", IngredientKind::base, 0.4, 0.7, 470, 1.25, 1.05, 1, 2.1, 30, -2.5, 3, 10},
    {"coconut meal", IngredientKind::base, 1.15, 2, 430, 1.4, 0.95, 0.7, 2.1, 20, -1, 4, 10},
    {"beet pulp, ground", IngredientKind::base, 1.5, 2.6, 320, 1.5, 0.8, 1, 2.1, 30, 0.5, 3, 10},
    {"whole milk powder", IngredientKind::powder, 0.2, 0.45, 480, 1.32, 1.1, 0.1, 2.1, 3, 2, 50, 2.5},
    {"salt", IngredientKind::powder, 0, 0.05, 1200, 2.16, 2.16, 0.4, 2.1, 2, 0, 0, 0.2},
    {"betaine powder", IngredientKind::powder, 0, 0.05, 650, 1.2, 1.2, 0.4, 2.1, 2, 0, 0, 1},
    {"grey leam, dry", IngredientKind::soil, 0.22, 0.38, 1100, 2.62, 2.2, 0.06, 2.1, 30, 1.5, 70, 2},
    {"leam, damp (15 % moisture)", IngredientKind::soil, 0.07, 0.23, 950, 2.2, 1.95, 0.06, 2.1, 10, 1.5, 60, 15},
    {"bentonite", IngredientKind::soil, 0.9, 1.7, 850, 2.6, 2.2, 0.02, 2.1, 60, 8, 95, 8},
    {"sharp sand", IngredientKind::soil, 0.06, 0.2, 1500, 2.65, 2.6, 0.5, 2.1, 1, -2, 1, 3},
    {"fishmeal micro pellet 1 mm", IngredientKind::pellet, 0.4, 0.65, 680, 1.4, 1.24, 1, 1.05, 8, 1, 1, 10},
    {"fishmeal micro pellet 2 mm", IngredientKind::pellet, 0.38, 0.62, 650, 1.4, 1.24, 2, 1.05, 20, 0.5, 1, 10},
    {"fishmeal pellet 4 mm", IngredientKind::pellet, 0.35, 0.6, 640, 1.4, 1.22, 4, 1.05, 80, -0.5, 0, 10},
    {"fishmeal pellet 8 mm", IngredientKind::pellet, 0.35, 0.6, 610, 1.4, 1.22, 8, 1.05, 320, -0.5, 0, 10},
    {"cereal pellet 2 mm", IngredientKind::pellet, 0.5, 0.85, 600, 1.45, 1.2, 2, 1.05, 12, 1, 2, 10},
    {"fine live feed", IngredientKind::particle, 0, 0, 650, 1.06, 1.06, 2, 1.15, 0, -1.5, 0, 80},
    {"maggots", IngredientKind::particle, 0, 0, 600, 1.05, 1.05, 3, 1.15, 0, -1.5, 0, 68},
    {"casters", IngredientKind::particle, 0, 0, 560, 1.05, 1.05, 3, 1.15, 0, -1.5, 0, 65},
    {"cooked hemp", IngredientKind::particle, 0, 0, 680, 1.08, 1.08, 3.5, 1.15, 0, -1.5, 0, 60},
    {"sweetcorn", IngredientKind::particle, 0, 0, 700, 1.08, 1.08, 7, 1.15, 0, -1.5, 0, 75},
};

struct LiquidRow {
    std::string_view name;
    double density;  // g/ml
    double water;    // share of its mass
    double wetting;  // g/ml
    double binder;
};

inline constexpr LiquidRow liquids[] = {
    {"molasses", 1.4, 0.22, 0.8, 5}, {"corn steep liquor", 1.2, 0.5, 0.9, 1.5},
    {"glycerol", 1.26, 0, 0.8, 1},   {"sweet liquid", 1.05, 0.8, 0.9, 0},
    {"fish oil", 0.92, 0, 0.2, -2},
};

inline const Source from_memory{Origin::standing, "from memory"};

template <class Q>
Property<Q> stated(Q value, double spread = 0.15) {
    return {value, spread, from_memory};
}

inline Ingredient solid_of(const SolidRow& row) {
    Ingredient i;
    i.name = row.name;
    i.kind = row.kind;
    i.absorption = stated<Ratio>(row.absorption);
    i.slump = stated<Ratio>(row.slump);
    i.loose_density = stated(row.loose * gram_per_litre, 0.12);
    i.skeleton_density = stated(row.skeleton * gram_per_millilitre, 0.03);
    i.envelope_density = stated(row.envelope * gram_per_millilitre, 0.08);
    i.particle_size = stated(row.size * millimetre, 0.20);
    i.particle_spread = stated<Ratio>(row.size_spread, 0.10);
    i.uptake_time = stated(row.uptake_minutes * minute, 0.30);
    i.binder = stated<Ratio>(row.binder, 0.50);
    i.fines = stated<Ratio>(row.fines / 100, 0.40);
    i.moisture = stated<Ratio>(row.moisture / 100);
    if (row.kind == IngredientKind::pellet) i.diameter = stated(row.size * millimetre, 0.05);
    return i;
}

inline Ingredient liquid_of(const LiquidRow& row) {
    Ingredient i;
    i.name = row.name;
    i.kind = IngredientKind::liquid;
    i.density = stated(row.density * gram_per_millilitre, 0.03);
    i.water = stated<Ratio>(row.water, 0.10);
    i.wetting = stated(row.wetting * gram_per_millilitre, 0.20);
    i.binder = stated<Ratio>(row.binder, 0.50);
    return i;
}

/// The six feels as they are shipped.
inline std::vector<Feel> feels() {
    return {{"dusty", 0.70, 0.82, {}}, {"crumbly", 0.95, 1.07, {}}, {"firm", 1.20, 1.30, {}},
            {"tacky", 1.40, 1.55, {}}, {"soft", 1.70, 1.90, {}},    {"slop", 2.10, 3.00, {}}};
}

/// Shelves are not copied, so this fills one.
class FilledShelf : public MemoryShelf {
public:
    FilledShelf() {
        for (const SolidRow& row : solids) put(solid_of(row));
        for (const LiquidRow& row : liquids) put(liquid_of(row));
        put(draft::feels());
    }
};

/// One for all tests that only read.
inline const Shelf& shelf() {
    static const FilledShelf filled;
    return filled;
}

/// A mix of shares: {{"brown crumb", 3}, {"maize meal", 1}}.
inline Recipe mix_of(std::string name, const std::vector<std::pair<std::string, double>>& shares) {
    Recipe recipe;
    recipe.name = std::move(name);
    for (const auto& [of, share] : shares) recipe.parts.push_back({of, Share{share}});
    return recipe;
}

inline Recipe fishmeal_mix() {
    return mix_of("fishmeal mix",
                  {{"fishmeal, brown", 4}, {"brown crumb", 3}, {"ground fishmeal pellet", 2}, {"maize meal", 1}});
}

inline Recipe crumb_mix() {
    return mix_of("crumb mix", {{"brown crumb", 1}});
}

inline Recipe micro_mix() {
    return mix_of("micro mix", {{"fishmeal micro pellet 2 mm", 1}});
}

inline Recipe leam_mix() {
    return mix_of("leam mix", {{"leam, damp (15 % moisture)", 7}, {"brown crumb", 1.5}, {"fine live feed", 1.5}});
}

}  // namespace baitwright::draft
