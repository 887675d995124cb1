#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/feel.h"

namespace baitwright {

/// The feel a request means: by name, by wetness, or the mix's own. Throws UsageError: both given, a wetness outside
/// 0..3, an unknown name with "did you mean".
struct WantedFeel {
    std::string name;
    Ratio wetness;
};
WantedFeel wanted_feel(const std::vector<Feel>& feels, const Feel& own, const std::optional<std::string>& feel,
                       const std::optional<Ratio>& wetness = std::nullopt);

}  // namespace baitwright
