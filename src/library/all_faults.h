#pragma once

#include <string>
#include <vector>

#include "bait/shelf.h"
#include "files/library_file.h"
#include "quantities/fault.h"

namespace baitwright {

/// The file's own faults, and the names in its faulty mixes and strategies that neither it nor the shelf knows, in the
/// file's order. Empties the file's ingredients and faults.
std::vector<Fault> all_faults(LibraryFile& file, const std::string& text, const Shelf& shelf);

}  // namespace baitwright
