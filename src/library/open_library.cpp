#include "library/open_library.h"

#include "bait/ingredient_completion.h"
#include "files/disk.h"
#include "files/library_file.h"
#include "files/library_text.h"
#include "library/shipped_files.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

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

/// The lines of an entry of ours with these words in it; empty where there is none.
std::string_view entry_around(std::string_view text, std::string_view words) {
    constexpr std::string_view head = "[[ingredient]]\n";
    const std::size_t at = text.find(words);
    if (at == std::string_view::npos) return {};
    const std::size_t start = text.rfind(head, at), end = text.find(head, at);
    return start == std::string_view::npos ? std::string_view() : text.substr(start, end - start);
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

/// What the person renamed or removed does not come back.
bool is_lacking(const Store& store, EntryKind kind, const std::string& name) {
    const EntryRegister entries = store.entries();
    return !entries.find_name(kind, name) && !entries.became(kind, name);
}

void fill_with(Store& store, const LibraryFile& file) {
    for (const Ingredient& ingredient : file.ingredients)
        if (is_lacking(store, EntryKind::ingredient, ingredient.name)) store.put(ingredient, EntryOwner::shipped);
    for (const Entry<Recipe>& entry : file.recipes)
        if (is_lacking(store, EntryKind::mix, entry.value.name)) store.put(entry.value, EntryOwner::shipped);
    for (const Entry<Strategy>& entry : file.strategies)
        if (is_lacking(store, EntryKind::strategy, entry.value.name)) store.put(entry.value, EntryOwner::shipped);
    const auto put_written = [&](EntryKind kind, const auto& entry) {
        if (is_lacking(store, kind, entry.value.name))
            store.entries().put_written(kind, {entry.value.name, toml_text(entry.value)}, EntryOwner::shipped);
    };
    for (const Entry<Venue>& entry : file.venues) put_written(EntryKind::venue, entry);
    for (const Entry<BlendSpec>& entry : file.blends) put_written(EntryKind::blend, entry);
}

void fill(Store& store) {
    store.change([&store] {
        const bool new_feels = store.feels().empty();
        for (const ShippedFile& shipped : shipped_files()) {
            const LibraryFile file = read_shipped(shipped);
            fill_with(store, file);
            if (!new_feels) continue;
            for (const Feel& feel : file.feels) store.put(feel, EntryOwner::shipped);
        }
        store.set_shipped_digest(shipped_files_digest());
    });
}

}  // namespace

std::optional<Ingredient> shipped_ingredient(std::string_view name) {
    const std::string words = "name = \"" + folded_name(name) + "\"\n";
    for (const ShippedFile& shipped : shipped_files()) {
        if (!shipped.name.starts_with("ingredients/")) continue;
        const std::string_view entry = entry_around(shipped.text, words);
        if (entry.empty()) continue;
        LibraryFile file = read_shipped({shipped.name, entry});
        complete(file.ingredients.front());
        return std::move(file.ingredients.front());
    }
    return std::nullopt;
}

Store open_store(const std::filesystem::path& path) {
    Store store = Store::open(path);
    store.know_shipped(shipped_ingredient);
    store.look_from_now();
    if (store.shipped_digest() != shipped_files_digest()) fill(store);
    store.look_from_now();
    return store;
}

Store open_store(const LibraryPlace& place) {
    if (!place.ahead || !*place.ahead) return open_store(place.store);
    Store store = std::move(**place.ahead);
    place.ahead->reset();
    return store;
}

std::unique_ptr<Shelf> open_library(const LibraryPlace& place) {
    if (place.folder) return read_folder(*place.folder);
    return std::make_unique<Store>(open_store(place));
}

Usual usual_of(LibraryPlace& place) {
    std::error_code failed;
    if (place.folder || !std::filesystem::exists(place.store, failed)) return {};
    place.ahead = std::make_shared<std::optional<Store>>(open_store(place.store));
    return (*place.ahead)->usual();
}

std::unique_ptr<MemoryShelf> shipped_shelf() {
    auto shelf = std::make_unique<MemoryShelf>();
    std::vector<Feel> feels;
    for (const ShippedFile& shipped : shipped_files()) put_all(read_shipped(shipped), *shelf, feels);
    shelf->put(std::move(feels));
    return shelf;
}

}  // namespace baitwright
