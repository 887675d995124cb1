#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "bait/kept_tables.h"
#include "files/library_file.h"

/// The files of a folder with all of a store.
namespace baitwright {

inline constexpr const char* export_about = "about.toml";

/// A file of the library's entries; `begins` is the comment above them.
struct ExportedKind {
    std::string_view kind, file, begins;
};
inline constexpr std::array<ExportedKind, 6> exported_kinds{{
    {"ingredient", "ingredients.toml", "# The ingredients, with the packs that are in use.\n"},
    {"mix", "mixes.toml", "# The mixes.\n"},
    {"strategy", "strategies.toml", "# The strategies.\n"},
    {"venue", "venues.toml", "# The rules of waters.\n"},
    {"blend", "blends.toml", "# The blends.\n"},
    {"feel", "feels.toml", "# The feels, rising.\n"},
}};

std::string file_of(const KeptTable& table);

/// All names but that of `export_about`.
std::vector<std::string> exported_file_names();

/// Digests of what is written of an entry, by which a change by hand is known: its packs have one of their own, empty
/// where it can have none.
struct EntryDigest {
    std::string text, packs;
};
EntryDigest digest_of(const Ingredient& ingredient);
EntryDigest digest_of(const Recipe& recipe);
EntryDigest digest_of(const Strategy& strategy);
EntryDigest digest_of(const Venue& venue);
EntryDigest digest_of(const BlendSpec& blend);
EntryDigest digest_of(const Feel& feel);
/// Of what is usual by one key.
EntryDigest digest_of(const std::vector<std::string>& values);

}  // namespace baitwright
