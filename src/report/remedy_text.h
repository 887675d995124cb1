#pragma once

#include <string>

#include "quantities/quantity.h"

namespace baitwright {

/// What puts a tub right that has water in it, in the same words wherever it is asked: `water` or `dry_mix` to add, or
/// neither, to the feel of that name.
struct Remedy {
    std::string feel;
    Mass water, dry_mix;
    bool all_parts_take_water = true;
};
std::string remedy_text(const Remedy& remedy);

}  // namespace baitwright
