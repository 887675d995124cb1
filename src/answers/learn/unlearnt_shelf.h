#pragma once

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/learnt.h"
#include "bait/recipe.h"
#include "bait/shelf.h"
#include "bait/strategy.h"

namespace baitwright {

/// A shelf as if nothing had been learnt: learnt values are the library's again, those that a person measured stay.
/// What the log teaches is reckoned from there, so that applying it does not count it twice.
class UnlearntShelf : public Shelf {
public:
    explicit UnlearntShelf(const Shelf& below) : below_(below) {}

    /// Where the library has none, a learnt value stays, as doubtful as one that nobody looked up.
    [[nodiscard]] std::optional<Ingredient> find_ingredient(std::string_view name) const override;
    [[nodiscard]] std::optional<Ingredient> find_usual(std::string_view name) const override {
        return below_.find_usual(name);
    }
    [[nodiscard]] std::optional<Recipe> find_recipe(std::string_view name) const override {
        return below_.find_recipe(name);
    }
    [[nodiscard]] std::optional<Strategy> find_strategy(std::string_view name) const override {
        return below_.find_strategy(name);
    }
    [[nodiscard]] std::vector<Feel> feels() const override { return below_.feels(); }
    [[nodiscard]] std::vector<std::string> ingredient_names() const override { return below_.ingredient_names(); }
    [[nodiscard]] std::vector<std::string> recipe_names() const override { return below_.recipe_names(); }
    [[nodiscard]] std::vector<std::string> strategy_names() const override { return below_.strategy_names(); }
    [[nodiscard]] LearntWater learnt_water(const std::vector<std::string>&) const override { return {}; }
    [[nodiscard]] std::optional<LearntMix> learnt_mix(std::string_view) const override { return std::nullopt; }

private:
    const Shelf& below_;
};

}  // namespace baitwright
