#include "library/change_library.h"

#include "answers/strategy/unroll_strategy.h"
#include "bait/memory_shelf.h"
#include "bait/resolve_mix.h"
#include "bait/suggesting_shelf.h"
#include "files/library_text.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

/// Puts each entry after laying the old one of its name by, in one transaction.
template <class Entry, class Find, class Text>
std::vector<EntryChange> put_all(Store& store, const std::vector<Entry>& entries, const std::string& kind, Date today,
                                 Find&& find, Text&& text) {
    std::vector<EntryChange> changes;
    store.change([&] {
        for (const Entry& entry : entries) {
            const auto old = find(entry.name);
            if (old && text(*old) == text(entry)) {
                changes.push_back({entry.name, EntryChange::Kind::unchanged});
                continue;
            }
            if (old) store.retire({kind, old->name, date_text(today), text(*old)});
            store.put(entry, EntryOwner::person);
            changes.push_back({entry.name, old ? EntryChange::Kind::replaced : EntryChange::Kind::added});
        }
    });
    return changes;
}

/// Runs the check on each, against the shelf; throws the faults of all of them, with their names.
template <class Entry, class Check>
void check_all(const std::vector<Entry>& entries, const Shelf& shelf, Check&& check) {
    const SuggestingShelf suggesting(shelf);
    std::vector<Fault> faults;
    for (const Entry& entry : entries) {
        try {
            check(entry, suggesting.after(faults.size()));
        } catch (const InputError& error) {
            for (Fault fault : error.faults()) {
                fault.message = "'" + entry.name + "': " + fault.message;
                faults.push_back(std::move(fault));
            }
        }
    }
    if (!faults.empty()) throw InputError(std::move(faults));
}

}  // namespace

std::vector<EntryChange> put_ingredients(Store& store, const std::vector<Ingredient>& ingredients, Date today) {
    return put_all(
        store, ingredients, "ingredient", today,
        [&](const std::string& name) { return store.ingredient_to_mend(name); },
        [](const Ingredient& old) { return toml_text({old}); });
}

std::vector<EntryChange> put_recipes(Store& store, const std::vector<Recipe>& recipes, Date today) {
    MemoryShelf on_top(&store);
    for (const Recipe& recipe : recipes) on_top.put(recipe);
    check_all(recipes, on_top,
              [](const Recipe& recipe, const Shelf& shelf) { static_cast<void>(resolve(recipe, shelf)); });
    return put_all(
        store, recipes, "mix", today, [&](const std::string& name) { return store.recipe_to_mend(name); },
        [](const Recipe& old) { return toml_text(old); });
}

std::vector<EntryChange> put_strategies(Store& store, const std::vector<Strategy>& strategies, Date today) {
    check_all(strategies, store, [](const Strategy& strategy, const Shelf& shelf) {
        static_cast<void>(unroll_strategy(shelf, strategy));
    });
    return put_all(
        store, strategies, "strategy", today, [&](const std::string& name) { return store.strategy_to_mend(name); },
        [](const Strategy& old) { return toml_text(old); });
}

}  // namespace baitwright
