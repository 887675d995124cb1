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

}  // namespace baitwright
