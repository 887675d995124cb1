#pragma once

#include <string>

#include "bait/kept_mix.h"
#include "bait/shelf.h"

namespace baitwright {

/// A tub of damp mix as a person tells of it: "600g", "600g frozen", "600g cold soft". Cold where it is not said, and
/// at the mix's own feel. Throws InputError: what is no mass above zero, a word that is neither a way to keep it nor a
/// feel on the shelf.
KeptMix read_kept(const std::string& mix, const std::string& text, const Shelf& shelf);

/// Refuses "400g frozen" of an ingredient, which is told by its amount alone. Throws InputError "no-mix".
void refuse_kept(const std::string& ingredient, const std::string& text);

}  // namespace baitwright
