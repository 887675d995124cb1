#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "answers/shared/usual_seed.h"
#include "bait/mix_state.h"
#include "quantities/date.h"
#include "quantities/mass_or_volume.h"
#include "quantities/money.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// What the mix is to come to. Exactly one.
struct AsWritten {};
struct WetVolume {
    Volume volume;
};
struct WetMass {
    Mass mass;
};
struct DryMass {
    Mass mass;
};
/// So many cups or pots, filled and levelled; or feeders.
struct Vessels {
    int count;
    Volume each;
    std::string called;  ///< "cup", "feeder"
};
/// So many balls, squeezed.
struct Balls {
    int count;
    Length diameter;
};
/// The most that these amounts allow; what is not named is taken as enough.
struct OnHand {
    struct Item {
        std::string of;
        MassOrVolume amount;
    };
    std::vector<Item> items;
};
using MixTarget = std::variant<AsWritten, WetVolume, WetMass, DryMass, Vessels, Balls, OnHand>;

/// One of several things that one batch is made into, and its feel where that is not the mix's own or is said.
struct TargetAtFeel {
    std::variant<Vessels, Balls> of;
    std::optional<std::string> feel;
};

/// How a mix is made otherwise than it is written, for once.
struct ForOnce {
    struct Extra {
        std::string of;
        MassOrVolume amount;  ///< in the whole batch
    };
    std::vector<std::string> without;  ///< the rest takes its room
    std::vector<Extra> with;

    [[nodiscard]] bool any() const { return !without.empty() || !with.empty(); }
};

/// A question to `answer_mix`; what is not given is the recipe's or the usual.
struct MixRequest {
    MixTarget target;
    std::vector<TargetAtFeel> several;  ///< two or more, in the order typed, in place of `target`; or none
    std::optional<std::string> feel;
    std::optional<Ratio> wetness;  ///< in place of a feel
    std::optional<MixState> state;
    ForOnce once;
    Ratio spare;     ///< more than asked, 0.1 for a tenth
    int people = 1;  ///< the target is for each of them
    Temperature water_temperature = Temperature::from_celsius(15);
    Volume already_added;  ///< water that is in the tub already
    std::uint64_t seed = usual_seed;
    const Currency* usual_currency = nullptr;  ///< priced in it where anything of it is
    std::optional<Date> today;                 ///< tells old prices; where it is not known, none is called old
};

}  // namespace baitwright
