#pragma once

#include <string>
#include <vector>

#include "quantities/mass_or_volume.h"

namespace baitwright {

enum class Bites { steady, slow, none };

/// What is left of a feed on the day; a volume is as it lies in its tub, not squeezed.
struct LeftOver {
    std::string of;
    MassOrVolume amount;
};

/// A question to `rest_of_session`: so long after the start.
struct RestRequest {
    Time now;
    std::vector<LeftOver> left;
    Bites bites = Bites::steady;
};

}  // namespace baitwright
