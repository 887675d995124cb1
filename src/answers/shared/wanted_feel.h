#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/feel.h"

namespace baitwright {

/// The feel a request means: by name, by wetness, or the mix's own. Throws UsageError: both given, a wetness outside
/// 0..3, an unknown name with "did you mean".
struct WantedFeel {
    enum class By { feel, number };  ///< a feel is a band, a number is meant as it stands
    std::string name;
    Ratio wetness;
    By by = By::feel;
};
WantedFeel wanted_feel(const std::vector<Feel>& feels, const Feel& own, const std::optional<std::string>& feel,
                       const std::optional<Ratio>& wetness = std::nullopt);

}  // namespace baitwright
