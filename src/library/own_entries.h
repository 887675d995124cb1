#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "library/change_library.h"
#include "store/store.h"

/// What a person does with the entries of their library, whatever their kind: ingredient, mix, strategy, venue, blend.
/// Each change is whole or absent, nothing is lost, and nothing is left that refers to what is not there.
namespace baitwright {

/// Of all entries of that kind, as the store lists them.
std::vector<std::string> names_of_kind(const Store& store, EntryKind kind);

/// The name as the library writes it. Throws NotFound: with what it is called now where it was renamed, how to have it
/// back where it was removed, else "did you mean".
std::string known_name(const Store& store, EntryKind kind, const std::string& word);

/// The entry as TOML that `put_file` takes back.
std::string text_of_entry(const Store& store, EntryKind kind, const std::string& name);

/// Another one like it. Throws UsageError "bad-name", "name-taken".
EntryChange copy_entry(Store& store, EntryKind kind, const std::string& name, const std::string& as, Date today);

/// What follows an entry to its new name.
struct Renamed {
    std::string from, to;
    std::vector<NamedEntry> followed;  ///< what refers to it
    bool in_shed = false;              ///< the shed has held it
};
/// Throws UsageError "bad-name", "name-taken".
Renamed rename_entry(Store& store, EntryKind kind, const std::string& from, const std::string& to);

/// Takes it out; its last version is kept. Throws Error (answer_is_no) "in-use" with what uses it.
std::string remove_entry(Store& store, EntryKind kind, const std::string& name, Date today);

/// A version that was kept, as it is now again.
struct Restored {
    std::string name, until;  ///< the day until which it was so
    std::size_t version = 0, of = 0;
    EntryChange::Kind change = EntryChange::Kind::added;
};
/// Puts an old version back, by its number from 1, the oldest; the newest where there is none. What it replaces is
/// kept. What it refers to by a name that was given up since is meant by its new one. Throws NotFound "no-old-version";
/// UsageError "out-of-range"; InputError where it refers to what is not there.
Restored restore_entry(Store& store, EntryKind kind, const std::string& name, std::optional<std::size_t> version,
                       Date today);

/// Puts what a person has made of an entry's text, `before`, in its place, under another name where the text has
/// another. Throws InputError with every fault, at its place in the text, called `file`; Error (try_again)
/// "changed-meanwhile" where the entry is no longer as it was before.
std::vector<EntryChange> put_edited(Store& store, EntryKind kind, const std::string& name, const std::string& text,
                                    const std::string& before, const std::string& file, Date today);

}  // namespace baitwright
