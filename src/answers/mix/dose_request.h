#pragma once

#include <optional>
#include <string>

#include "bait/dose.h"
#include "quantities/mass_or_volume.h"

namespace baitwright {

/// How much of one additive goes on so much of a bait: by a rate, by the label's, or as it once went on another bait.
struct AdditiveRequest {
    /// "15 ml in 0.5 pt of fishmeal micro pellet 2 mm"
    struct Carried {
        MassOrVolume additive, bait_amount;
        std::string bait;
    };
    std::string additive;
    std::optional<DoseRate> rate;
    std::optional<Carried> carried;
    MassOrVolume amount;          ///< of the bait, as bought
    std::string bait;             ///< its ingredient; may be empty where the amount is a mass
    std::optional<Volume> water;  ///< that the additive is dissolved in
};

}  // namespace baitwright
