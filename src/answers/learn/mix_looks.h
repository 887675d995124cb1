#pragma once

#include <optional>

#include "bait/log_entry.h"
#include "bait/shelf.h"

namespace baitwright {

/// What our model says of what was seen of a mix: g, s, m. Nothing where it says nothing, or the mix is not (or no
/// longer) to be found.
struct SeenAndModelled {
    double seen, modelled;
};
std::optional<SeenAndModelled> cup_seen(const Shelf& shelf, const LoggedWeight& weight);
std::optional<SeenAndModelled> hold_seen(const Shelf& shelf, const LoggedLook& look);
std::optional<SeenAndModelled> carpet_seen(const Shelf& shelf, const LoggedLook& look);

}  // namespace baitwright
