#include "library/change_library.h"

#include "answers/strategy/unroll_strategy.h"
#include "bait/memory_shelf.h"
#include "bait/resolve_mix.h"
#include "bait/suggesting_shelf.h"
#include "bait/venue_names.h"
#include "files/library_text.h"
#include "library/blend_names.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// Puts entries one by one, each after laying the old one of its name by, and says what that did.
class Putting {
public:
    Putting(Store& store, Date today) : store_(store), today_(today) {}

    void put(const Ingredient& ingredient) {
        put(ingredient, "ingredient", store_.ingredient_to_mend(ingredient.name),
            [](const Ingredient& one) { return toml_text({one}); });
    }
    void put(const Recipe& recipe) {
        put(recipe, "mix", store_.recipe_to_mend(recipe.name), [](const Recipe& one) { return toml_text(one); });
    }
    void put(const Strategy& strategy) {
        put(strategy, "strategy", store_.strategy_to_mend(strategy.name),
            [](const Strategy& one) { return toml_text(one); });
    }
    void put(const Venue& venue) { put_written(EntryKind::venue, {venue.name, toml_text(venue)}); }
    void put(const BlendSpec& blend) { put_written(EntryKind::blend, {blend.name, toml_text(blend)}); }
    void put(const Feel& feel) {
        std::optional<Feel> old;
        for (Feel& known : store_.feels())
            if (folded_name(known.name) == folded_name(feel.name)) old = std::move(known);
        put(feel, "feel", old, [](const Feel& one) { return toml_text(std::vector<Feel>{one}); });
    }
    [[nodiscard]] std::vector<EntryChange> changes() && { return std::move(changes_); }

private:
    template <class Entry, class Text>
    void put(const Entry& entry, const std::string& kind, const std::optional<Entry>& old, Text&& text) {
        if (lay_by(entry.name, kind, old ? std::optional(old->name) : std::nullopt, old ? text(*old) : std::string(),
                   text(entry)))
            store_.put(entry, EntryOwner::person);
    }
    void put_written(EntryKind kind, const WrittenEntry& entry) {
        const auto old = store_.entries().find_written(kind, entry.name);
        if (lay_by(entry.name, std::string(name_of(kind)), old ? std::optional(old->name) : std::nullopt,
                   old ? old->text : std::string(), entry.text))
            store_.entries().put_written(kind, entry, EntryOwner::person);
    }
    /// True where the entry is new or another than the old one, which is then kept.
    bool lay_by(const std::string& name, const std::string& kind, const std::optional<std::string>& old_name,
                const std::string& old_text, const std::string& text) {
        using Kind = EntryChange::Kind;
        const bool same = old_name && old_text == text;
        if (old_name && !same) store_.retire({kind, *old_name, date_text(today_), old_text});
        changes_.push_back({name, same ? Kind::unchanged : old_name ? Kind::replaced : Kind::added, kind});
        return !same;
    }

    Store& store_;
    Date today_;
    std::vector<EntryChange> changes_;
};

/// Checks and puts in one transaction: what was checked is what is there.
template <class Entry, class Check>
std::vector<EntryChange> put_all(Store& store, const std::vector<Entry>& entries, Date today, Check&& check) {
    Putting putting(store, today);
    store.change([&] {
        check();
        for (const Entry& entry : entries) putting.put(entry);
    });
    return std::move(putting).changes();
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

/// Gathers what is wrong with the entries of a file, each fault at its place.
class FileCheck {
public:
    FileCheck(const LibraryFile& file, const std::string& text, const Store& store)
        : file_(file), text_(text), on_top_(&store), suggesting_(on_top_) {
        for (const Ingredient& ingredient : file.ingredients) on_top_.put(ingredient);
        for (const Entry<Recipe>& entry : file.recipes) on_top_.put(entry.value);
        if (!file.feels.empty()) {
            std::vector<Feel> feels = store.feels();
            for (const Feel& feel : file.feels) {
                std::erase_if(feels, [&](const Feel& old) { return folded_name(old.name) == folded_name(feel.name); });
                feels.push_back(feel);
            }
            on_top_.put(std::move(feels));
        }
    }

    template <class T, class Check>
    void each(const std::vector<Entry<T>>& entries, Check&& check) {
        for (const Entry<T>& entry : entries) {
            std::vector<Fault> found;
            try {
                found = check(entry.value, suggesting_.after(faults_.size()));
            } catch (const InputError& error) {
                found = error.faults();
            }
            place_faults(found, entry.places, text_, file_.name);
            faults_.insert(faults_.end(), found.begin(), found.end());
        }
    }
    /// Feels of the file take the place of those of their names; all of them together must rise.
    void feels() {
        if (file_.feels.empty()) return;
        std::vector<Feel> feels = on_top_.feels();
        sort_by_band(feels);
        if (const std::string wrong = told_not_rising(feels); !wrong.empty())
            faults_.push_back(fault_of_file("not-rising", "with those of your library, " + wrong,
                                            "write each of these into the file, the driest first", file_.name));
    }
    void refuse() {
        if (!faults_.empty()) throw InputError(std::move(faults_));
    }

private:
    const LibraryFile& file_;
    const std::string& text_;
    MemoryShelf on_top_;
    SuggestingShelf suggesting_;
    std::vector<Fault> faults_;
};

}  // namespace

std::vector<EntryChange> put_ingredients(Store& store, const std::vector<Ingredient>& ingredients, Date today) {
    return put_all(store, ingredients, today, [] {});
}

std::vector<EntryChange> put_recipes(Store& store, const std::vector<Recipe>& recipes, Date today) {
    return put_all(store, recipes, today, [&] {
        MemoryShelf on_top(&store);
        for (const Recipe& recipe : recipes) on_top.put(recipe);
        check_all(recipes, on_top,
                  [](const Recipe& recipe, const Shelf& shelf) { static_cast<void>(resolve(recipe, shelf)); });
    });
}

std::vector<EntryChange> put_strategies(Store& store, const std::vector<Strategy>& strategies, Date today) {
    return put_all(store, strategies, today, [&] {
        check_all(strategies, store, [](const Strategy& strategy, const Shelf& shelf) {
            static_cast<void>(unroll_strategy(shelf, strategy));
        });
    });
}

void check_file(const LibraryFile& file, const std::string& text, const Store& store) {
    FileCheck check(file, text, store);
    check.each(file.recipes, [](const Recipe& recipe, const Shelf& shelf) {
        static_cast<void>(resolve(recipe, shelf));
        return std::vector<Fault>{};
    });
    check.each(file.strategies, [](const Strategy& strategy, const Shelf& shelf) {
        static_cast<void>(unroll_strategy(shelf, strategy));
        return std::vector<Fault>{};
    });
    check.each(file.venues, [](const Venue& venue, const Shelf& shelf) { return unknown_names(venue, shelf); });
    check.each(file.blends, unfit_candidates);
    check.feels();
    check.refuse();
}

std::vector<EntryChange> put_checked(Store& store, const LibraryFile& file, Date today) {
    Putting putting(store, today);
    for (const Feel& feel : file.feels) putting.put(feel);
    for (const Ingredient& ingredient : file.ingredients) putting.put(ingredient);
    for (const Entry<Recipe>& entry : file.recipes) putting.put(entry.value);
    for (const Entry<Strategy>& entry : file.strategies) putting.put(entry.value);
    for (const Entry<Venue>& entry : file.venues) putting.put(entry.value);
    for (const Entry<BlendSpec>& entry : file.blends) putting.put(entry.value);
    return std::move(putting).changes();
}

std::vector<EntryChange> put_file(Store& store, const LibraryFile& file, const std::string& text, Date today) {
    std::vector<EntryChange> changes;
    store.change([&] {
        check_file(file, text, store);
        changes = put_checked(store, file, today);
    });
    return changes;
}

}  // namespace baitwright
