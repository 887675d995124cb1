#pragma once

#include <map>

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/learnt.h"
#include "bait/recipe.h"
#include "bait/shelf.h"
#include "bait/strategy.h"

namespace baitwright {

/// A shelf that lives in memory for one run; what it lacks it may look for on another shelf below it.
class MemoryShelf : public Shelf {
public:
    /// `below` may be null; it must outlive this shelf.
    explicit MemoryShelf(const Shelf* below = nullptr) : below_(below) {}

    /// Puts an entry on the shelf in place of one of that name. Ingredients must be free of faults; they are completed.
    /// Where a measured ingredient takes the place of one that was not, that one stays as the usual one.
    void put(Ingredient ingredient);
    /// Puts the usual one of a measured ingredient, that alone.
    void put_usual(Ingredient ingredient);
    void put(Recipe recipe);
    void put(Strategy strategy);
    void put(std::vector<Feel> feels);
    /// Puts what was learnt in place of all that was learnt of water, there and below; of a mix in place of that mix's.
    void put(LearntWater learnt);
    void put(LearntMix learnt);

    [[nodiscard]] std::optional<Ingredient> find_ingredient(std::string_view name) const override;
    [[nodiscard]] std::optional<Ingredient> find_usual(std::string_view name) const override;
    [[nodiscard]] std::optional<Recipe> find_recipe(std::string_view name) const override;
    [[nodiscard]] std::optional<Strategy> find_strategy(std::string_view name) const override;
    [[nodiscard]] std::vector<Feel> feels() const override;
    [[nodiscard]] std::vector<std::string> ingredient_names() const override;
    [[nodiscard]] std::vector<std::string> recipe_names() const override;
    [[nodiscard]] std::vector<std::string> strategy_names() const override;

    [[nodiscard]] std::string what_became_of(std::string_view kind, std::string_view name) const override;
    [[nodiscard]] LearntWater learnt_water(const std::vector<std::string>& bags) const override;
    [[nodiscard]] std::optional<LearntMix> learnt_mix(std::string_view mix) const override;

private:
    const Shelf* below_;
    std::map<std::string, Ingredient> ingredients_, usual_;
    std::map<std::string, Recipe> recipes_;
    std::map<std::string, Strategy> strategies_;
    std::vector<Feel> feels_;
    LearntWater learnt_water_;
    std::map<std::string, LearntMix> learnt_mixes_;
};

}  // namespace baitwright
