#pragma once

#include <string>

#include "cli/command.h"

namespace baitwright {

/// The flags of a command that can also draw: where to, and whether over a file that is there.
std::vector<Flag> picture_flags();

/// Refuses, before anything is worked out, a picture over a file that is there (without --replace) and a name that does
/// not end in .svg.
void check_picture(const Arguments& arguments);

/// Writes the picture where --plot asks for it, whole or not at all. Throws StorageError.
void write_picture(const Arguments& arguments, const std::string& svg);

}  // namespace baitwright
