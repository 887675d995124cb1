#include "library/named.h"

#include <algorithm>

#include "bait/venue_names.h"
#include "files/disk.h"
#include "library/all_faults.h"
#include "library/shipped_files.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"

namespace baitwright {

namespace {

/// A kind of entry: where a file holds it, and how it is spoken of.
template <class T>
struct Kind {
    std::vector<Entry<T>> LibraryFile::*entries;
    std::string one, many;
    std::string makes;    ///< what makes one, in a file
    std::string add_all;  ///< the command that takes all of a file
    EntryKind kind;
};

const Kind<Recipe> recipes{&LibraryFile::recipes, "mix",         "mixes", "a mix has a name and at least one [[part]]",
                           "recipe add",          EntryKind::mix};
const Kind<Strategy> strategies{&LibraryFile::strategies,
                                "strategy",
                                "strategies",
                                "a strategy has a name, a length and at least one [[feed]]",
                                "strategy add",
                                EntryKind::strategy};
const Kind<Venue> venues{&LibraryFile::venues,
                         "venue",
                         "venues",
                         "a venue has a name and at least one [[limit]], [[ban]] or [[rule]]",
                         "venue add",
                         EntryKind::venue};
const Kind<BlendSpec> blends{
    &LibraryFile::blends, "blend",         "blends", "a blend has a name and at least one [[candidate]]",
    "blend add",          EntryKind::blend};

std::string name_of_file(const std::string& word) {
    return word == "-" ? "standard input" : word;
}

LibraryFile read_whole(const std::string& text, const std::string& file, const Shelf& shelf) {
    LibraryFile read = read_library_file(text, file);
    if (!read.faults.empty()) throw InputError(all_faults(read, text, shelf));
    return read;
}

template <class T>
Entry<T> the_one(std::vector<Entry<T>>& entries, const Kind<T>& kind, const std::string& file) {
    if (entries.size() == 1) return std::move(entries.front());
    if (entries.empty())
        throw InputError(fault_of_file("no-" + kind.one, "the file holds no " + kind.one, kind.makes, file));
    throw InputError(fault_of_file(
        "several-" + kind.many,
        "the file holds " + std::to_string(entries.size()) + " " + kind.many + ", and it is not clear which is meant",
        "give the one you want a file of its own, or add them all with: baitwright " + kind.add_all + " " + file,
        file));
}

template <class T>
Named<T> from_file(const std::string& word, const Kind<T>& kind, const Shelf& shelf) {
    Named<T> named;
    named.below = &shelf;
    named.file = name_of_file(word);
    named.text = read_text_file(word);
    LibraryFile file = read_whole(named.text, named.file, shelf);
    named.on_top = std::make_unique<MemoryShelf>(&shelf);
    for (Ingredient& ingredient : file.ingredients) named.on_top->put(std::move(ingredient));
    for (const Entry<Recipe>& recipe : file.recipes) named.on_top->put(recipe.value);
    if (!file.feels.empty()) named.on_top->put(std::move(file.feels));
    Entry<T> entry = the_one(file.*kind.entries, kind, named.file);
    named.value = std::move(entry.value);
    named.places = std::move(entry.places);
    return named;
}

template <class T>
Named<T> from_shelf(T value, const Shelf& shelf) {
    Named<T> named;
    named.value = std::move(value);
    named.below = &shelf;
    return named;
}

/// Those that a store holds as text.
template <class T>
std::vector<T> written_in(const Store& store, const Kind<T>& kind) {
    std::vector<T> all;
    for (const WrittenEntry& written : store.entries().written(kind.kind)) {
        LibraryFile file = read_library_file(written.text, kind.one + " '" + written.name + "' of the store");
        if (!file.faults.empty()) throw InputError(std::move(file.faults));
        for (Entry<T>& entry : file.*kind.entries) all.push_back(std::move(entry.value));
    }
    return all;
}

/// Of the folder; else of the store; else the shipped ones of a folder below recipes/, named as the kind's many.
template <class T>
std::vector<T> all_of(const Kind<T>& kind, const LibraryPlace& place) {
    if (!place.folder && !place.store.empty()) return written_in(open_store(place), kind);
    std::vector<T> all;
    const auto append = [&](std::string_view text, std::string name) {
        LibraryFile file = read_library_file(text, std::move(name));
        if (!file.faults.empty()) throw InputError(std::move(file.faults));
        for (Entry<T>& entry : file.*kind.entries) all.push_back(std::move(entry.value));
    };
    if (place.folder) {
        for (const std::filesystem::path& path : toml_files_below(*place.folder))
            append(read_text_file(path), path.string());
    } else {
        for (const ShippedFile& shipped : shipped_files())
            if (shipped.name.starts_with(kind.many + "/")) append(shipped.text, std::string(shipped.name));
    }
    std::sort(all.begin(), all.end(), [](const T& a, const T& b) { return a.name < b.name; });
    return all;
}

template <class T>
T called(const std::string& name, const Kind<T>& kind, std::vector<T> all) {
    std::vector<std::string> names;
    names.reserve(all.size());
    for (const T& one : all) names.push_back(one.name);
    const SaidName said = said_name(name, names);
    for (T& one : all)
        if (said.name && one.name == *said.name) return std::move(one);
    const std::string list = names.empty() ? "there are none here" : "there are: " + joined(names, ", ");
    throw NotFound(fault_of_name(name, names,
                                 {"unknown-" + kind.one, "no " + kind.one + " is called " + in_quotes(name),
                                  list + "; or name a file, as in my-" + kind.one + ".toml"}));
}

}  // namespace

bool means_a_file(const std::string& word) {
    return word == "-" || word.find('/') != std::string::npos || word.ends_with(".toml");
}

Named<Recipe> named_recipe(const std::string& word, const Shelf& shelf) {
    return means_a_file(word) ? from_file(word, recipes, shelf) : from_shelf(shelf.recipe(word), shelf);
}

Named<Recipe> named_bait(const std::string& word, const Shelf& shelf, BaitUse use) {
    return means_a_file(word) ? named_recipe(word, shelf) : from_shelf(bait_called(word, shelf, use), shelf);
}

Named<Strategy> named_strategy(const std::string& word, const Shelf& shelf) {
    return means_a_file(word) ? from_file(word, strategies, shelf) : from_shelf(shelf.strategy(word), shelf);
}

std::vector<BlendSpec> all_blends(const LibraryPlace& place) {
    return all_of(blends, place);
}

std::vector<Venue> all_venues(const LibraryPlace& place) {
    return all_of(venues, place);
}

Named<BlendSpec> named_blend(const std::string& word, const LibraryPlace& place, const Shelf& shelf) {
    return means_a_file(word) ? from_file(word, blends, shelf)
                              : from_shelf(called(word, blends, all_blends(place)), shelf);
}

Named<Venue> named_venue(const std::string& word, const LibraryPlace& place, const Shelf& shelf) {
    Named<Venue> named = means_a_file(word) ? from_file(word, venues, shelf)
                                            : from_shelf(called(word, venues, all_venues(place)), shelf);
    with_places(named, [&] {
        std::vector<Fault> unknown = unknown_names(named.value, named.shelf());
        if (!unknown.empty()) throw InputError(std::move(unknown));
    });
    return named;
}

std::string written_name(const Store& store, EntryKind kind, const std::string& word) {
    return kind == EntryKind::venue ? called(word, venues, written_in(store, venues)).name
                                    : called(word, blends, written_in(store, blends)).name;
}

LibraryFile read_entries(const std::string& path, const Shelf& shelf) {
    return read_whole(read_text_file(path), name_of_file(path), shelf);
}

}  // namespace baitwright
