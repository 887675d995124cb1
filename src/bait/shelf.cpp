#include "bait/shelf.h"

#include <array>

#include "bait/ingredient.h"
#include "bait/learnt.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/said_name.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

/// A kind of entry that a shelf holds: how it is spoken of, and the first word of its commands.
struct ShelfKind {
    std::string one, with_article, command;
    std::vector<std::string> (Shelf::*names)() const;
};

enum ShelfKindIndex { ingredients_kind, recipes_kind, strategies_kind };

const std::array<ShelfKind, 3>& shelf_kinds() {
    static const std::array<ShelfKind, 3> kinds{
        {{"ingredient", "an ingredient", "ingredient", &Shelf::ingredient_names},
         {"mix", "a mix", "recipe", &Shelf::recipe_names},
         {"strategy", "a strategy", "strategy", &Shelf::strategy_names}}};
    return kinds;
}

/// Says of what other kind it is, where it is one.
void refuse_other_kind(const Shelf& shelf, const ShelfKind& wanted, std::string_view name, const Fault& fault) {
    for (const ShelfKind& kind : shelf_kinds()) {
        if (kind.command == wanted.command) continue;
        for (const std::string& other : (shelf.*kind.names)())
            if (said_alike(name, other))
                throw NotFound(fault.code, fault.message + ": it is " + kind.with_article,
                               worded("see it with: baitwright " + kind.command + " show \"" + other + "\"",
                                      "see it as " + kind.with_article + ", \"" + other + "\""));
    }
}

std::optional<std::string> name_meant(const Shelf& shelf, ShelfKindIndex index, std::string_view name) {
    return said_name(name, (shelf.*shelf_kinds()[index].names)()).name;
}

[[noreturn]] void refuse_unknown(const Shelf& shelf, ShelfKindIndex index, std::string_view name) {
    const ShelfKind& kind = shelf_kinds()[index];
    const std::vector<std::string> names = (shelf.*kind.names)();
    Fault fault{
        "unknown-" + kind.command, "no " + kind.one + " is called " + in_quotes(name),
        worded("see them all with: baitwright " + kind.command + " list", "see them in the list, and choose one")};
    if (const std::string became = shelf.what_became_of(kind.one, name); !became.empty())
        throw NotFound(fault.code, fault.message + " any more", became);
    if (said_name(name, names).several.empty()) refuse_other_kind(shelf, kind, name, fault);
    throw NotFound(fault_of_name(name, names, std::move(fault)));
}

}  // namespace

LearntWater Shelf::learnt_water(const std::vector<std::string>&) const {
    return {};
}

std::optional<LearntMix> Shelf::learnt_mix(std::string_view) const {
    return std::nullopt;
}

std::string Shelf::what_became_of(std::string_view, std::string_view) const {
    return {};
}

Ingredient Shelf::ingredient(std::string_view name) const {
    if (auto found = find_ingredient(name)) return *std::move(found);
    if (const auto meant = name_meant(*this, ingredients_kind, name))
        if (auto found = find_ingredient(*meant)) return *std::move(found);
    refuse_unknown(*this, ingredients_kind, name);
}

Recipe Shelf::recipe(std::string_view name) const {
    if (auto found = find_recipe(name)) return *std::move(found);
    if (const auto meant = name_meant(*this, recipes_kind, name))
        if (auto found = find_recipe(*meant)) return *std::move(found);
    refuse_unknown(*this, recipes_kind, name);
}

Strategy Shelf::strategy(std::string_view name) const {
    if (auto found = find_strategy(name)) return *std::move(found);
    if (const auto meant = name_meant(*this, strategies_kind, name))
        if (auto found = find_strategy(*meant)) return *std::move(found);
    refuse_unknown(*this, strategies_kind, name);
}

}  // namespace baitwright
