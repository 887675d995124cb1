#pragma once

#include <filesystem>
#include <string_view>

namespace baitwright {

/// Where this program lies, in full; nothing where /proc is not there to tell.
std::filesystem::path this_program();

/// Where `cmake --install` puts the files that a program at that place goes with.
std::filesystem::path installed_for(const std::filesystem::path& program);

/// A file that goes with the program: beside it, else where it is installed; nothing where it is in neither, or where
/// the program's place is not known in full, for it is never taken from the folder that one happens to be in.
std::filesystem::path beside_program(std::string_view file, const std::filesystem::path& program);

}  // namespace baitwright
