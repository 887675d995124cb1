#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "files/library_file.h"
#include "library/exported_files.h"
#include "library/folder_files.h"
#include "store/store.h"

namespace baitwright {

/// Takes the entries of the library out of a folder that `export_all` wrote, each as its owner's; one that was changed
/// or added by hand since is the person's, and newer than all that the folder says. Inside `Store::change` only.
class ExportedLibrary {
public:
    ExportedLibrary(Store& store, FolderFiles& files) : store_(store), files_(files) {}

    void take();
    /// The same of what is usual, once it is in the store.
    void compare_usual();
    /// Stamps what was changed by hand; gives it as it is told.
    std::vector<std::string> stamp_changes();

    [[nodiscard]] std::map<std::string, std::int64_t> rows() const { return rows_; }

private:
    using Key = std::pair<std::string, std::string>;  ///< kind and folded name
    struct Noted {
        EntryOwner owner = EntryOwner::person;
        EntryDigest digest;
    };

    /// What was read of a file.
    struct Taken {
        FolderFiles::File* file;
        LibraryFile entries;
    };

    void read_notes();
    void check(const Taken& taken) const;
    [[nodiscard]] bool some_are_gone() const;
    void take_entries(const std::string& file, const LibraryFile& entries);
    template <class Value>
    void take_one(std::string_view kind, const Value& value);
    /// Whose it is, and whether it was changed.
    EntryOwner owner_of(std::string_view kind, const std::string& name, const EntryDigest& digest);
    void put(const Ingredient& ingredient, EntryOwner owner) { store_.put(ingredient, owner); }
    void put(const Recipe& recipe, EntryOwner owner) { store_.put(recipe, owner); }
    void put(const Strategy& strategy, EntryOwner owner) { store_.put(strategy, owner); }
    void put(const Feel& feel, EntryOwner owner) { store_.put(feel, owner); }
    void put(const Venue& venue, EntryOwner owner);
    void put(const BlendSpec& blend, EntryOwner owner);

    struct ByHand {
        std::string kind, name;
        KeptRows::Change change;
    };

    Store& store_;
    FolderFiles& files_;
    std::map<Key, Noted> noted_;
    std::set<Key> taken_;
    std::vector<ByHand> by_hand_;
    std::map<std::string, std::int64_t> rows_;
};

}  // namespace baitwright
