#include "answers/shared/searched_entry.h"

namespace baitwright {

namespace {

using Sort = SearchedText::Sort;

}  // namespace

SearchedText kind_text(EntryKind kind) {
    return {"kind", std::string(name_of(kind)), Sort::trait};
}

SearchedEntry searched(const Ingredient& ingredient) {
    const std::string kind(name_of(ingredient.kind));
    return {EntryKind::ingredient,
            ingredient.name,
            kind + (ingredient.colour.empty() ? "" : ", " + ingredient.colour),
            {{"kind", kind, Sort::trait}, {"colour", ingredient.colour, Sort::trait}, {"note", ingredient.note}}};
}

SearchedEntry searched(const Recipe& recipe) {
    const std::string feel = recipe.feel.empty() ? "firm" : recipe.feel;
    return {EntryKind::mix,
            recipe.name,
            "mix, " + feel,
            {kind_text(EntryKind::mix),
             {"feel", feel, Sort::trait},
             {"purpose", recipe.purpose},
             {"why", recipe.why},
             {"note", recipe.note}}};
}

SearchedEntry searched(const Strategy& strategy) {
    return {EntryKind::strategy,
            strategy.name,
            "strategy",
            {kind_text(EntryKind::strategy),
             {"purpose", strategy.purpose},
             {"why", strategy.why},
             {"note", strategy.note}}};
}

}  // namespace baitwright
