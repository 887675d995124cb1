#pragma once

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/learnt.h"
#include "bait/recipe.h"
#include "bait/shelf.h"
#include "bait/strategy.h"
#include "quantities/fault.h"

namespace baitwright {

/// Finds what another shelf has, and lists no names: nothing is suggested from it, so that an unknown name costs no
/// more than looking for it.
class NamelessShelf : public Shelf {
public:
    explicit NamelessShelf(const Shelf& below) : below_(below) {}

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
    [[nodiscard]] std::vector<std::string> ingredient_names() const override { return {}; }
    [[nodiscard]] std::vector<std::string> recipe_names() const override { return {}; }
    [[nodiscard]] std::vector<std::string> strategy_names() const override { return {}; }
    [[nodiscard]] LearntWater learnt_water(const std::vector<std::string>& bags) const override {
        return below_.learnt_water(bags);
    }
    [[nodiscard]] std::optional<LearntMix> learnt_mix(std::string_view mix) const override {
        return below_.learnt_mix(mix);
    }

private:
    const Shelf& below_;
};

/// The shelf to ask where names may be wrong: with its names for the faults that are told, without for those that are
/// only counted. A suggestion looks through every name there is; for each of thousands of slips that would take
/// minutes.
class SuggestingShelf {
public:
    explicit SuggestingShelf(const Shelf& shelf) : shelf_(shelf), nameless_(shelf) {}

    [[nodiscard]] const Shelf& after(std::size_t faults) const {
        if (faults < most_faults_told) return shelf_;
        return nameless_;
    }

private:
    const Shelf& shelf_;
    NamelessShelf nameless_;
};

}  // namespace baitwright
