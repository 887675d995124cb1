#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "quantities/quantity.h"

namespace baitwright {

/// A named band of wetness h. The band runs from the one before (or from 0) up to `below`.
struct Feel {
    std::string name;
    Ratio aim;    ///< the h that water is measured for
    Ratio below;  ///< upper edge of the band
    std::string purpose;
};

/// The feel of that name among them, or null; case and blanks do not matter.
const Feel* find_feel(const std::vector<Feel>& feels, std::string_view name);

/// The feel whose band holds the wetness; the last above every edge. `feels` must not be empty and rise.
const Feel& feel_of(const std::vector<Feel>& feels, Ratio wetness);

/// The first feel whose aim does not lie inside its band, or whose band does not begin where the one before ends or
/// above; null where they rise from the driest to the wettest. `feel_reader.cpp` says the same of a file.
const Feel* first_not_rising(const std::vector<Feel>& feels);

/// What contradicts itself among them, in words; empty where they rise.
std::string told_not_rising(const std::vector<Feel>& feels);

/// By the edges of their bands, as a store has them.
void sort_by_band(std::vector<Feel>& feels);

}  // namespace baitwright
