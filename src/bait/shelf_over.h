#pragma once

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/learnt.h"
#include "bait/recipe.h"
#include "bait/shelf.h"
#include "bait/strategy.h"

namespace baitwright {

/// A shelf that finds what another has: for those that differ from it in one thing. The other must outlive it.
class ShelfOver : public Shelf {
public:
    explicit ShelfOver(const Shelf& below) : below_(below) {}

    [[nodiscard]] std::optional<Ingredient> find_ingredient(std::string_view name) const override {
        return below_.find_ingredient(name);
    }
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
    [[nodiscard]] LearntWater learnt_water(const std::vector<std::string>& bags) const override {
        return below_.learnt_water(bags);
    }
    [[nodiscard]] std::optional<LearntMix> learnt_mix(std::string_view mix) const override {
        return below_.learnt_mix(mix);
    }

protected:
    [[nodiscard]] const Shelf& below() const { return below_; }

private:
    const Shelf& below_;
};

}  // namespace baitwright
