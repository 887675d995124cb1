#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "bait/break_up.h"
#include "quantities/temperature.h"
#include "quantities/units.h"

namespace baitwright {

/// How the feed goes in.
struct DroppedCup {
    Volume volume;
};
struct DroppedBall {
    Length diameter;
};
struct DroppedFeeder {
    Volume volume;
};
struct DroppedLoose {
    Volume volume;  ///< of a loose handful, riddled
};
using DropForm = std::variant<DroppedCup, DroppedBall, DroppedFeeder, DroppedLoose>;

/// What a person saw in a bucket or in clear water, in place of our defaults.
struct OwnLook {
    std::optional<Time> holds;        ///< a ball or a cupful in the bucket test
    std::optional<Length> breaks_at;  ///< a cupful
    std::optional<Length> carpet;     ///< how wide nine tenths of it lay
    std::optional<Mass> cup_weighs;   ///< one level cupful of the wet mix
};

/// Closed water under a wind, or water that flows.
enum class WaterKind { still, river };
inline constexpr std::array<std::string_view, 2> water_kind_names{"still", "river"};

struct DropRequest {
    DropForm form = DroppedCup{250.0 * millilitre};
    std::vector<DropForm> told_forms;  ///< where forms are compared: in place of the usual ones of their kind
    std::optional<std::string> feel;
    std::optional<Ratio> wetness;
    Squeeze squeeze = Squeeze::firm;
    bool thrown = false;
    Temperature water = Temperature::from_celsius(15);
    Length depth;
    Speed tow;                        ///< at the top
    std::optional<Speed> tow_bottom;  ///< the same way; then straight from top to bottom
    std::optional<WaterKind> kind;    ///< where it is not told: a river from a tow of 10 cm/s on
    std::optional<std::string> hook;  ///< an expander or a pellet, to see whether it falls with the feed
    OwnLook own;
};

/// What a feed is held side by side by.
enum class DropComparison { feels, sizes, forms };

/// How wide it is to lie, or how deep it is to break.
struct DropWish {
    enum class Of { carpet, breaks };
    Of of;
    Length wanted;
};

}  // namespace baitwright
