#pragma once

#include <string>
#include <vector>

#include "quantities/quantity.h"

namespace baitwright {

/// What a strategy brought this person an hour, against all their other ones.
struct BroughtBefore {
    std::string strategy;
    Ratio times;        ///< as much as the others
    int sessions = 0;   ///< of it
    bool sure = false;  ///< more than a guess, or that it brings less
    std::string where;  ///< "in tinged water"; empty: anywhere
};

}  // namespace baitwright
