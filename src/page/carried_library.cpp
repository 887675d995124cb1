#include "page/carried_library.h"

#include <map>
#include <set>

#include "answers/strategy/named_in_strategy.h"
#include "files/library_text.h"
#include "quantities/in_quotes.h"
#include "quantities/progress.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// Entries of one kind by name; what is put in twice must be the same.
template <class Entry>
class MeantEntries {
public:
    explicit MeantEntries(std::vector<Entry>& entries) : entries_(entries) {}
    void put(Entry entry, std::string text) {
        const auto [meant, is_new] = by_name_.emplace(folded_name(entry.name), text);
        if (!is_new && meant->second != text)
            throw UsageError("two-meanings", "the strategies mean different things by " + in_quotes(entry.name),
                             "make a page of each");
        if (is_new) entries_.push_back(std::move(entry));
    }
    [[nodiscard]] bool has(const std::string& name) const { return by_name_.count(folded_name(name)) > 0; }
    void put_if_new(Entry entry) {
        if (by_name_.emplace(folded_name(entry.name), std::string()).second) entries_.push_back(std::move(entry));
    }

private:
    std::vector<Entry>& entries_;
    std::map<std::string, std::string> by_name_;
};

std::string meaning(const Ingredient& ingredient) {
    return toml_text(std::vector<Ingredient>{ingredient});
}

class Gathered {
public:
    void put_strategy(const CarriedStrategy& carried) {
        const Shelf& shelf = *carried.shelf;
        for (const std::string& name : names_in(carried.strategy, shelf)) {
            if (auto recipe = shelf.find_recipe(name)) recipes_.put(*recipe, toml_text(*recipe));
            if (auto ingredient = shelf.find_ingredient(name)) ingredients_.put(*ingredient, meaning(*ingredient));
        }
        strategies_.put(carried.strategy, toml_text(carried.strategy));
    }

    /// What is not there yet.
    void fill(const Shelf& library) {
        const std::vector<std::string> names = library.ingredient_names();
        Progress progress("gathering what the page carries", names.size());
        for (const std::string& name : names) {
            ingredients_.put_if_new(library.ingredient(name));
            progress.step();
        }
        for (const std::string& name : library.recipe_names()) recipes_.put_if_new(library.recipe(name));
        for (const std::string& name : library.strategy_names()) strategies_.put_if_new(library.strategy(name));
        library_.feels = library.feels();
    }

    CarriedLibrary take() { return std::move(library_); }

private:
    CarriedLibrary library_;
    MeantEntries<Ingredient> ingredients_{library_.ingredients};
    MeantEntries<Recipe> recipes_{library_.recipes};
    MeantEntries<Strategy> strategies_{library_.strategies};
};

}  // namespace

CarriedLibrary carried_library(const BankContents& contents) {
    Gathered gathered;
    for (const CarriedStrategy& carried : contents.strategies) gathered.put_strategy(carried);
    gathered.fill(*contents.library);
    CarriedLibrary library = gathered.take();
    library.venues = contents.venues;
    return library;
}

CarriedLibrary usual_of(const BankContents& contents) {
    CarriedLibrary usual;
    MeantEntries<Ingredient> entries(usual.ingredients);
    const auto put = [&](const std::string& name, const Shelf& shelf) {
        const auto ingredient = shelf.find_ingredient(name);
        if (!ingredient || !has_measured_mark(*ingredient) || entries.has(name)) return;
        if (auto before = shelf.find_usual(name)) entries.put_if_new(*std::move(before));
    };
    for (const CarriedStrategy& carried : contents.strategies)
        for (const std::string& name : names_in(carried.strategy, *carried.shelf)) put(name, *carried.shelf);
    for (const std::string& name : contents.library->ingredient_names()) put(name, *contents.library);
    return usual;
}

}  // namespace baitwright
