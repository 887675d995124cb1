#include "library/exported_library.h"

#include <algorithm>
#include <list>

#include "files/kept_csv.h"
#include "files/library_text.h"
#include "library/all_faults.h"
#include "library/change_library.h"
#include "quantities/all_digits.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// Whether there is anything but comments in it.
bool holds_entries(std::string_view text) {
    while (!text.empty()) {
        const std::string_view line = trimmed(text.substr(0, text.find('\n')));
        if (!line.empty() && line.front() != '#') return true;
        text.remove_prefix(
            std::min(text.size(), text.find('\n') == std::string_view::npos ? text.size() : text.find('\n') + 1));
    }
    return false;
}

template <class Entry>
EntryDigest exact_digest(const Entry& entry) {
    const AllDigitsHere exactly;
    return digest_of(entry);
}
// Their numbers stand in the store as text.
EntryDigest exact_digest(const Venue& venue) {
    return digest_of(venue);
}
EntryDigest exact_digest(const BlendSpec& blend) {
    return digest_of(blend);
}

std::string text_in(const KeptValue& value) {
    const auto* text = std::get_if<std::string>(&value);
    return text ? *text : std::string();
}

}  // namespace

void ExportedLibrary::read_notes() {
    FolderFiles::File* file = files_.find(file_of(entries_table()));
    if (!file) return;
    KeptCsvReader reader(entries_table(), file->text, file->faults);
    KeptRow row;
    while (reader.next(row)) {
        const EntryOwner owner = text_in(row[2]) == "shipped" ? EntryOwner::shipped : EntryOwner::person;
        noted_[{text_in(row[0]), folded_name(text_in(row[1]))}] = {owner, {text_in(row[3]), text_in(row[4])}};
        ++rows_[file_of(entries_table())];
    }
}

EntryOwner ExportedLibrary::owner_of(std::string_view kind, const std::string& name, const EntryDigest& digest) {
    const Key key{std::string(kind), folded_name(name)};
    taken_.insert(key);
    const auto noted = noted_.find(key);
    using Change = KeptRows::Change;
    if (noted == noted_.end()) {
        by_hand_.push_back({std::string(kind), name, Change::new_there});
        if (!digest.packs.empty()) by_hand_.push_back({"packs", name, Change::changed});
        return EntryOwner::person;
    }
    const EntryDigest& was = noted->second.digest;
    if (was.packs != digest.packs) by_hand_.push_back({"packs", name, Change::changed});
    if (was.text != digest.text) by_hand_.push_back({std::string(kind), name, Change::changed});
    return was.text == digest.text ? noted->second.owner : EntryOwner::person;  // a price is nobody's own
}

void ExportedLibrary::put(const Venue& venue, EntryOwner owner) {
    store_.entries().put_written(EntryKind::venue, {venue.name, toml_text(venue)}, owner);
}

void ExportedLibrary::put(const BlendSpec& blend, EntryOwner owner) {
    store_.entries().put_written(EntryKind::blend, {blend.name, toml_text(blend)}, owner);
}

template <class Value>
void ExportedLibrary::take_one(std::string_view kind, const Value& value) {
    put(value, owner_of(kind, value.name, exact_digest(value)));
}

void ExportedLibrary::take_entries(const std::string& file, const LibraryFile& entries) {
    for (const Feel& feel : entries.feels) take_one("feel", feel);
    for (const Ingredient& ingredient : entries.ingredients) take_one("ingredient", ingredient);
    for (const Entry<Recipe>& entry : entries.recipes) take_one("mix", entry.value);
    for (const Entry<Strategy>& entry : entries.strategies) take_one("strategy", entry.value);
    for (const Entry<Venue>& entry : entries.venues) take_one("venue", entry.value);
    for (const Entry<BlendSpec>& entry : entries.blends) take_one("blend", entry.value);
    rows_[file] = static_cast<std::int64_t>(entries.feels.size() + entries.ingredients.size() + entries.recipes.size() +
                                            entries.strategies.size() + entries.venues.size() + entries.blends.size());
}

bool ExportedLibrary::some_are_gone() const {
    return std::any_of(noted_.begin(), noted_.end(), [&](const auto& noted) {
        return noted.first.first != "usual" && taken_.count(noted.first) == 0;
    });
}

// What came out as it stands now goes in as it was: a mix may not be worked out any more since its ingredients changed.
void ExportedLibrary::check(const Taken& taken) const {
    LibraryFile looked_at = taken.entries;
    if (!some_are_gone()) {
        const auto is_as_it_was = [&](std::string_view kind) {
            return [&, kind](const auto& entry) {
                return std::none_of(by_hand_.begin(), by_hand_.end(), [&](const ByHand& change) {
                    return change.kind == kind && change.name == entry.value.name;
                });
            };
        };
        std::erase_if(looked_at.recipes, is_as_it_was("mix"));
        std::erase_if(looked_at.strategies, is_as_it_was("strategy"));
        std::erase_if(looked_at.venues, is_as_it_was("venue"));
        std::erase_if(looked_at.blends, is_as_it_was("blend"));
    }
    try {
        check_file(looked_at, taken.file->text, store_);
    } catch (const InputError& error) {
        files_.add(error.faults());
    }
}

void ExportedLibrary::take() {
    read_notes();
    std::list<Taken> all;
    bool faulty = false;
    for (const ExportedKind& kind : exported_kinds) {
        FolderFiles::File* file = files_.find(std::string(kind.file));
        faulty = faulty || !file;
        if (!file || !holds_entries(file->text)) continue;
        LibraryFile entries = read_library_file(file->text, file->name);
        take_entries(std::string(kind.file), entries);
        faulty = faulty || !entries.faults.empty();
        all.push_back({file, std::move(entries)});
    }
    for (Taken& taken : all)
        if (!taken.entries.faults.empty()) files_.add(all_faults(taken.entries, taken.file->text, store_));
    if (faulty) return;  // what is missing in others may be what is faulty in one
    for (const Taken& taken : all) check(taken);
}

void ExportedLibrary::compare_usual() {
    for (const auto& [key, values] : store_.usual()) {
        const auto noted = noted_.find({"usual", folded_name(key)});
        if (noted == noted_.end() || noted->second.digest.text != digest_of(values).text)
            by_hand_.push_back({"usual", key, KeptRows::Change::changed});
    }
}

std::vector<std::string> ExportedLibrary::stamp_changes() {
    std::vector<std::string> told;
    for (const ByHand& change : by_hand_) {
        store_.kept().stamp_change(change.kind, change.name, change.change);
        const std::string words = (change.kind == "packs" ? "packs of " : change.kind + " ") + change.name;
        told.push_back(words);
    }
    return told;
}

}  // namespace baitwright
