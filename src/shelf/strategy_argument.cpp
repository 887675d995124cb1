#include "shelf/strategy_argument.h"

#include "files/disk.h"
#include "shelf/all_faults.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

StrategyEntry the_one_strategy(std::vector<StrategyEntry>& entries, const std::string& file) {
    if (entries.size() == 1) return std::move(entries.front());
    if (entries.empty())
        throw InputError({"no-strategy",
                          "the file holds no strategy",
                          "a strategy has a name, a length and at least one [[feed]]",
                          file,
                          0,
                          0,
                          {}});
    throw InputError(
        {"several-strategies",
         "the file holds " + std::to_string(entries.size()) + " strategies, and it is not clear which is meant",
         "give the one you want a file of its own, or add them all with: baitwright strategy add " + file,
         file,
         0,
         0,
         {}});
}

}  // namespace

NamedStrategy strategy_argument(const std::string& word, const Shelf& shelf) {
    NamedStrategy named;
    named.below = &shelf;
    if (!means_a_file(word)) {
        named.strategy = shelf.strategy(word);
        return named;
    }
    named.file = word == "-" ? "standard input" : word;
    named.text = read_text_file(word);
    LibraryFile file = read_library_file(named.text, named.file);
    if (!file.faults.empty()) throw InputError(all_faults(file, named.text, shelf));
    StrategyEntry entry = the_one_strategy(file.strategies, named.file);
    named.strategy = std::move(entry.strategy);
    named.places = std::move(entry.places);
    named.on_top = std::make_unique<MemoryShelf>(&shelf);
    for (Ingredient& ingredient : file.ingredients) named.on_top->put(std::move(ingredient));
    for (RecipeEntry& recipe : file.recipes) named.on_top->put(std::move(recipe.recipe));
    if (!file.feels.empty()) named.on_top->put(std::move(file.feels));
    return named;
}

}  // namespace baitwright
