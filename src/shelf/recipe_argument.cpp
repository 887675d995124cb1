#include "shelf/recipe_argument.h"

#include "files/disk.h"
#include "shelf/all_faults.h"

namespace baitwright {

namespace {

RecipeEntry the_one_mix(std::vector<RecipeEntry>& entries, const std::string& file) {
    if (entries.size() == 1) return std::move(entries.front());
    if (entries.empty())
        throw InputError(
            {"no-mix", "the file holds no mix", "a mix has a name and at least one [[part]]", file, 0, 0, {}});
    throw InputError({"several-mixes",
                      "the file holds " + std::to_string(entries.size()) + " mixes, and it is not clear which is meant",
                      "give the one you want a file of its own, or add them all with: baitwright recipe add " + file,
                      file,
                      0,
                      0,
                      {}});
}

}  // namespace

LibraryFile read_mixes(const std::string& path, const Shelf& shelf) {
    const std::string text = read_text_file(path);
    LibraryFile file = read_library_file(text, path == "-" ? "standard input" : path);
    if (!file.faults.empty()) throw InputError(all_faults(file, text, shelf));
    return file;
}

bool means_a_file(const std::string& word) {
    return word == "-" || word.find('/') != std::string::npos || word.ends_with(".toml");
}

NamedRecipe recipe_argument(const std::string& word, const Shelf& shelf) {
    NamedRecipe named;
    named.below = &shelf;
    if (!means_a_file(word)) {
        named.recipe = shelf.recipe(word);
        return named;
    }
    named.file = word == "-" ? "standard input" : word;
    named.text = read_text_file(word);
    LibraryFile file = read_library_file(named.text, named.file);
    if (!file.faults.empty()) throw InputError(all_faults(file, named.text, shelf));
    RecipeEntry entry = the_one_mix(file.recipes, named.file);
    named.recipe = std::move(entry.recipe);
    named.places = std::move(entry.places);
    named.on_top = std::make_unique<MemoryShelf>(&shelf);
    for (Ingredient& ingredient : file.ingredients) named.on_top->put(std::move(ingredient));
    named.on_top->put(named.recipe);
    if (!file.feels.empty()) named.on_top->put(std::move(file.feels));
    return named;
}

}  // namespace baitwright
