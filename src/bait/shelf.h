#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

struct Feel;
struct Ingredient;
struct LearntMix;
struct LearntWater;
struct Recipe;
struct Strategy;

/// Where ingredients, recipes, strategies and feels are found by name, whoever keeps them. What is found (`find_...`)
/// has that name, whatever its case and blanks: so files name things.
class Shelf {
public:
    Shelf() = default;
    Shelf(const Shelf&) = delete;
    Shelf& operator=(const Shelf&) = delete;
    virtual ~Shelf() = default;

    /// The completed ingredient of that name, or nothing.
    [[nodiscard]] virtual std::optional<Ingredient> find_ingredient(std::string_view name) const = 0;
    /// The same as it was before this person measured it: as it is shipped, or as the shelf held it first. Nothing
    /// where that is not known.
    [[nodiscard]] virtual std::optional<Ingredient> find_usual(std::string_view name) const = 0;
    [[nodiscard]] virtual std::optional<Recipe> find_recipe(std::string_view name) const = 0;
    [[nodiscard]] virtual std::optional<Strategy> find_strategy(std::string_view name) const = 0;
    /// All feels, rising.
    [[nodiscard]] virtual std::vector<Feel> feels() const = 0;
    /// All names, in alphabetical order.
    [[nodiscard]] virtual std::vector<std::string> ingredient_names() const = 0;
    [[nodiscard]] virtual std::vector<std::string> recipe_names() const = 0;
    [[nodiscard]] virtual std::vector<std::string> strategy_names() const = 0;

    /// What is called so no more: "it is called 'pit bed' now", or how to have it back; empty where nothing ever was.
    /// `kind` is "ingredient", "mix" or "strategy".
    [[nodiscard]] virtual std::string what_became_of(std::string_view kind, std::string_view name) const;

    /// What this person's log taught of these ingredients, in the order asked for, those left out that nothing was
    /// learnt of; `known()` is false where nothing was learnt at all.
    [[nodiscard]] virtual LearntWater learnt_water(const std::vector<std::string>& bags) const;
    /// What it taught of how a mix packs and falls apart.
    [[nodiscard]] virtual std::optional<LearntMix> learnt_mix(std::string_view mix) const;

    /// What a person means who says that (`quantities/said_name.h`): looked up among all names only where none is it.
    /// Throws NotFound: with the names that may be meant, or are near, or of what other kind it is.
    [[nodiscard]] Ingredient ingredient(std::string_view name) const;
    [[nodiscard]] Recipe recipe(std::string_view name) const;
    [[nodiscard]] Strategy strategy(std::string_view name) const;
};

}  // namespace baitwright
