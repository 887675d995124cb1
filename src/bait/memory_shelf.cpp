#include "bait/memory_shelf.h"

#include <set>

#include "bait/ingredient_completion.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

template <class Entry>
std::vector<std::string> names_with(const std::map<std::string, Entry>& entries, std::vector<std::string> below) {
    if (entries.empty()) return below;
    std::map<std::string, std::string> names;
    for (std::string& name : below) names.emplace(folded_name(name), name);
    for (const auto& [key, entry] : entries) names[key] = entry.name;
    std::vector<std::string> result;
    result.reserve(names.size());
    for (auto& [key, name] : names) result.push_back(name);
    return result;
}

}  // namespace

void MemoryShelf::put(Ingredient ingredient) {
    complete(ingredient);
    std::string key = folded_name(ingredient.name);
    const auto old = ingredients_.find(key);
    if (old != ingredients_.end() && has_measured_mark(ingredient) && !has_measured_mark(old->second))
        usual_.insert_or_assign(key, std::move(old->second));
    ingredients_.insert_or_assign(std::move(key), std::move(ingredient));
}

void MemoryShelf::put_usual(Ingredient ingredient) {
    complete(ingredient);
    std::string key = folded_name(ingredient.name);
    usual_.insert_or_assign(std::move(key), std::move(ingredient));
}

void MemoryShelf::put(Recipe recipe) {
    std::string key = folded_name(recipe.name);
    recipes_.insert_or_assign(std::move(key), std::move(recipe));
}

void MemoryShelf::put(Strategy strategy) {
    std::string key = folded_name(strategy.name);
    strategies_.insert_or_assign(std::move(key), std::move(strategy));
}

void MemoryShelf::put(std::vector<Feel> feels) {
    feels_ = std::move(feels);
    sort_stably(feels_.begin(), feels_.end(), [](const Feel& a, const Feel& b) { return a.below < b.below; });
}

void MemoryShelf::put(LearntWater learnt) {
    learnt_water_ = std::move(learnt);
}

void MemoryShelf::put(LearntMix learnt) {
    std::string key = folded_name(learnt.name);
    learnt_mixes_.insert_or_assign(std::move(key), std::move(learnt));
}

std::optional<Ingredient> MemoryShelf::find_ingredient(std::string_view name) const {
    if (const auto found = ingredients_.find(folded_name(name)); found != ingredients_.end()) return found->second;
    return below_ ? below_->find_ingredient(name) : std::nullopt;
}

std::optional<Ingredient> MemoryShelf::find_usual(std::string_view name) const {
    if (const auto found = usual_.find(folded_name(name)); found != usual_.end()) return found->second;
    if (!below_) return std::nullopt;
    auto usual = below_->find_usual(name);
    if (usual) return usual;
    usual = below_->find_ingredient(name);
    return usual && !has_measured_mark(*usual) ? usual : std::nullopt;
}

std::optional<Recipe> MemoryShelf::find_recipe(std::string_view name) const {
    if (const auto found = recipes_.find(folded_name(name)); found != recipes_.end()) return found->second;
    return below_ ? below_->find_recipe(name) : std::nullopt;
}

std::optional<Strategy> MemoryShelf::find_strategy(std::string_view name) const {
    if (const auto found = strategies_.find(folded_name(name)); found != strategies_.end()) return found->second;
    return below_ ? below_->find_strategy(name) : std::nullopt;
}

std::vector<Feel> MemoryShelf::feels() const {
    if (!feels_.empty() || !below_) return feels_;
    return below_->feels();
}

std::vector<std::string> MemoryShelf::ingredient_names() const {
    return names_with(ingredients_, below_ ? below_->ingredient_names() : std::vector<std::string>{});
}

std::vector<std::string> MemoryShelf::recipe_names() const {
    return names_with(recipes_, below_ ? below_->recipe_names() : std::vector<std::string>{});
}

std::vector<std::string> MemoryShelf::strategy_names() const {
    return names_with(strategies_, below_ ? below_->strategy_names() : std::vector<std::string>{});
}

std::string MemoryShelf::what_became_of(std::string_view kind, std::string_view name) const {
    return below_ ? below_->what_became_of(kind, name) : std::string();
}

LearntWater MemoryShelf::learnt_water(const std::vector<std::string>& bags) const {
    if (!learnt_water_.known() && below_) return below_->learnt_water(bags);
    return part_of(learnt_water_, bags);
}

std::optional<LearntMix> MemoryShelf::learnt_mix(std::string_view mix) const {
    if (const auto found = learnt_mixes_.find(folded_name(mix)); found != learnt_mixes_.end()) return found->second;
    return below_ ? below_->learnt_mix(mix) : std::nullopt;
}

}  // namespace baitwright
