#include "library/open_library.h"

#include "files/disk.h"
#include "files/library_file.h"
#include "library/shipped_files.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

/// What several files hold together, in their order; later ones of a name replace earlier ones.
void put_all(LibraryFile&& file, MemoryShelf& shelf, std::vector<Feel>& feels) {
    for (Ingredient& ingredient : file.ingredients) shelf.put(std::move(ingredient));
    for (Entry<Recipe>& entry : file.recipes) shelf.put(std::move(entry.value));
    for (Entry<Strategy>& entry : file.strategies) shelf.put(std::move(entry.value));
    for (Feel& feel : file.feels) feels.push_back(std::move(feel));
}

void append(std::vector<Fault>& all, std::vector<Fault>&& more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

LibraryFile read_shipped(const ShippedFile& shipped) {
    LibraryFile file = read_library_file(shipped.text, std::string(shipped.name));
    if (!file.faults.empty()) throw std::logic_error("a shipped file has a fault: " + file.faults.front().message);
    return file;
}

std::vector<Feel> shipped_feels() {
    std::vector<Feel> feels;
    for (const ShippedFile& shipped : shipped_files())
        if (shipped.name.starts_with("feels/"))
            for (Feel& feel : read_shipped(shipped).feels) feels.push_back(std::move(feel));
    return feels;
}

std::unique_ptr<Shelf> read_folder(const std::filesystem::path& folder) {
    auto shelf = std::make_unique<MemoryShelf>();
    std::vector<Feel> feels;
    std::vector<Fault> faults;
    for (const std::filesystem::path& path : toml_files_below(folder)) {
        LibraryFile file = read_library_file(read_text_file(path), path.string());
        append(faults, std::move(file.faults));
        put_all(std::move(file), *shelf, feels);
    }
    if (!faults.empty()) throw InputError(std::move(faults));
    shelf->put(feels.empty() ? shipped_feels() : std::move(feels));
    return shelf;
}

void fill(Store& store) {
    store.change([&store] {
        const bool new_feels = store.feels().empty();
        for (const ShippedFile& shipped : shipped_files()) {
            LibraryFile file = read_shipped(shipped);
            for (const Ingredient& ingredient : file.ingredients)
                if (!store.ingredient_to_mend(ingredient.name)) store.put(ingredient, EntryOwner::shipped);
            for (const Entry<Recipe>& entry : file.recipes)
                if (!store.recipe_to_mend(entry.value.name)) store.put(entry.value, EntryOwner::shipped);
            for (const Entry<Strategy>& entry : file.strategies)
                if (!store.strategy_to_mend(entry.value.name)) store.put(entry.value, EntryOwner::shipped);
            if (!new_feels) continue;
            for (const Feel& feel : file.feels) store.put(feel, EntryOwner::shipped);
        }
        store.set_shipped_digest(shipped_files_digest());
    });
}

}  // namespace

Store open_store(const std::filesystem::path& path) {
    Store store = Store::open(path);
    if (store.shipped_digest() != shipped_files_digest()) fill(store);
    return store;
}

std::unique_ptr<Shelf> open_library(const LibraryPlace& place) {
    if (place.folder) return read_folder(*place.folder);
    return std::make_unique<Store>(open_store(place.store));
}

std::unique_ptr<MemoryShelf> shipped_shelf() {
    auto shelf = std::make_unique<MemoryShelf>();
    std::vector<Feel> feels;
    for (const ShippedFile& shipped : shipped_files()) put_all(read_shipped(shipped), *shelf, feels);
    shelf->put(std::move(feels));
    return shelf;
}

}  // namespace baitwright
