#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/mix_state.h"
#include "bait/resolved_mix.h"
#include "bait/shelf.h"
#include "bait/strategy.h"
#include "bait/wetted_mix.h"

namespace baitwright {

/// What a feed is made of, opened up, how wet it goes in and how it sits then.
struct FedMix {
    ResolvedMix mix;
    std::string feel;  ///< empty where it goes in as it is: pellets, seeds, live and cooked feed; and soaked pellets
    Ratio wetness;     ///< 0 where it goes in as it is; of pressed pellets that of a mix which packs as they do
    MixState state = MixState::riddled;
};

/// What a feed is made of. A mix alone is itself; anything else is a mix of shares, to which the first mix in it lends
/// its feel.
Recipe fed_recipe(const Feed& feed, const Shelf& shelf);

/// Opens a feed up. A mix, and what holds meal, powder, soil or a mix, is wetted to the feed's feel, its own, or firm;
/// balls always are. Pellets alone are soaked instead, whatever the feel, where they would be wetted or go into a
/// feeder: there and in balls they are pressed. `feel` and `without` are those of a StrategyRequest. Nothing where
/// nothing is left of it.
/// Throws InputError with subjects "feed N ..." (`number` is N), UsageError for an unknown `feel`.
std::optional<FedMix> fed_mix(const Feed& feed, std::size_t number, const Shelf& shelf,
                              const std::optional<std::string>& feel, const std::vector<std::string>& without);

/// The same as it lies in the tub, before anything of it is pressed.
FedMix not_pressed(FedMix fed);

/// All per gram of its dry mass.
struct FedPerDry {
    Ratio wet_mass;  ///< as it goes in
    SpecificVolume wet_volume;
    Ratio water;       ///< stirred in
    Ratio soak_water;  ///< that its soaked pellets bring
    std::vector<Ratio> additives;
    bool too_wet = false;
};

/// For the numbers of its mix: the medians (`numbers_of`), or a draw of them.
FedPerDry per_dry(const FedMix& fed, const MixNumbers& numbers);

/// The dry mass of one cup, ball or loose portion.
Mass dry_mass_of(const FeedSize& size, const FedPerDry& each);

}  // namespace baitwright
