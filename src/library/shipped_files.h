#pragma once

#include <span>
#include <string_view>

namespace baitwright {

/// A TOML file of `recipes/`, held inside the program so that it needs no folder of its own on the machine.
struct ShippedFile {
    std::string_view name;  ///< below `recipes/`
    std::string_view text;
};

/// All of them, by name. Made at build time from the files themselves.
std::span<const ShippedFile> shipped_files();

/// A digest of all names and texts: another one means that another program filled the store.
std::string_view shipped_files_digest();

}  // namespace baitwright
