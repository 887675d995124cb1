#pragma once

#include "answers/pellets/soak_pellets.h"
#include "bait/draft_shelf.h"

/// Short ways to ask for a soak of the draft pellets, and a few more.
namespace baitwright::draft {

inline Ingredient expander(std::string name, double millimetres, double porosity = 0.5) {
    Ingredient i;
    i.name = std::move(name);
    i.kind = IngredientKind::expander;
    i.loose_density = stated(360.0 * gram_per_litre, 0.12);
    i.skeleton_density = stated(1.38 * gram_per_millilitre, 0.06);
    i.envelope_density = stated(0.69 * gram_per_millilitre, 0.12);
    i.diameter = stated(millimetres * millimetre, 0.05);
    i.porosity = stated<Ratio>(porosity, 0.10);
    return i;
}

/// The draft shelf with expanders, one that never sinks, a salt and a glycerol that know what they are, a labelled dye.
inline const Shelf& soaking_shelf() {
    static const struct Filled : MemoryShelf {
        Filled() : MemoryShelf(&draft::shelf()) {
            put(expander("expander 4 mm", 4));
            put(expander("expander 6 mm", 6));
            put(expander("expander 14 mm", 14));
            put(expander("cork pellet", 6, 0.1));
            Ingredient salt = draft::shelf().ingredient("salt");
            salt.solute = "salt";
            put(salt);
            Ingredient glycerol = draft::shelf().ingredient("glycerol");
            glycerol.solute = "glycerol";
            put(glycerol);
            Ingredient sugar = salt;
            sugar.name = "sugar";
            sugar.solute = "sucrose";
            put(sugar);
            Ingredient dye = draft::shelf().ingredient("betaine powder");
            dye.name = "red dye";
            dye.label_dose = parse_dose_rate("5 g per kg dry");
            put(dye);
            Ingredient rod = draft::shelf().ingredient("fishmeal pellet 4 mm");
            rod.name = "long pellet";
            rod.length = stated(12.0 * millimetre);
            put(rod);
            Ingredient seed = draft::shelf().ingredient("maize meal");
            seed.name = "tares";
            seed.kind = IngredientKind::seed;
            put(seed);
        }
    } filled;
    return filled;
}

inline SoakRequest soak_of(std::string name, SoakTotal total, double celsius = 15) {
    SoakRequest request;
    request.items.push_back({std::move(name), std::nullopt, 1});
    request.total = std::move(total);
    request.water = Temperature::from_celsius(celsius);
    return request;
}

inline SoakAnswer soaked(const SoakRequest& request) {
    return soak_pellets(soaking_shelf(), request);
}

}  // namespace baitwright::draft
