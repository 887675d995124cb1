#pragma once

#include <string>

#include "cli/command.h"

namespace baitwright {

/// Refuses to write over a file that is there unless `--replace` was given: StorageError "file-exists".
void keep_unless_told(const std::string& path, const Arguments& arguments);

}  // namespace baitwright
