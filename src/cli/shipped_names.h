#pragma once

#include <string>
#include <vector>

#include "bait/entry_kind.h"
#include "store/name_glance.h"

/// The names in the shipped files, read off their lines: to read all that is said below them takes longer than a person
/// who types should wait. Ours are all written alike, and a test holds this against the whole reading.
namespace baitwright {

std::vector<GlancedName> shipped_names(EntryKind kind);

/// The shops that prices are of.
std::vector<GlancedName> shipped_shops();

}  // namespace baitwright
