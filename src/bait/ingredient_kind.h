#pragma once

#include <array>
#include <string_view>

namespace baitwright {

enum class IngredientKind { base, pellet, expander, seed, particle, powder, soil, liquid };

inline constexpr std::array<std::string_view, 8> ingredient_kind_names{"base",     "pellet", "expander", "seed",
                                                                       "particle", "powder", "soil",     "liquid"};

constexpr std::string_view name_of(IngredientKind kind) {
    return ingredient_kind_names[static_cast<std::size_t>(kind)];
}

/// Solids are weighed into the tub; a liquid is poured.
constexpr bool is_solid(IngredientKind kind) {
    return kind != IngredientKind::liquid;
}

/// Live and cooked feed and hook pellets carry their own water: they take none from the mix.
constexpr bool takes_water(IngredientKind kind) {
    return is_solid(kind) && kind != IngredientKind::particle && kind != IngredientKind::expander;
}

/// Live, cooked or thawed: it is weighed on the day, for it does not stand a night in the open.
constexpr bool is_fresh_feed(IngredientKind kind) {
    return kind == IngredientKind::particle;
}

/// What takes no water is stirred into a mix whole, at the very end: a riddle crushes it, and dry meal dries it out.
constexpr bool goes_in_last(IngredientKind kind) {
    return is_solid(kind) && !takes_water(kind);
}

/// What a fish can pick up one by one.
constexpr bool is_free_offering(IngredientKind kind) {
    return kind == IngredientKind::pellet || kind == IngredientKind::expander || kind == IngredientKind::seed ||
           kind == IngredientKind::particle;
}

}  // namespace baitwright
