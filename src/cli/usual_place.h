#pragma once

#include <filesystem>
#include <string>

namespace baitwright {

/// What the environment holds by that name; empty where it holds nothing.
std::string environment(const char* name);

/// Where the store is unless a person says otherwise. The XDG base directory specification: $XDG_DATA_HOME where it is
/// an absolute path, else ~/.local/share. Throws StorageError where there is no place for it.
std::filesystem::path usual_store();

}  // namespace baitwright
