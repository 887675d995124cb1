#pragma once

#include <vector>

#include "answers/strategy/fed_mix.h"

namespace baitwright {

/// What goes into one cup, pot or portion at one feel.
struct HelpingPart {
    Feed feed;  ///< of the parts at this feel; its size is what they take of the whole
    FedMix fed;
    FedPerDry each;
    Mass dry;  ///< of one helping
};

/// A feed's helping, by feel: one part for most feeds; of a feed whose parts have feels of their own, several that fill
/// the cup together, by their shares of dry mass. `number`, `feel` and `without` as for `fed_mix`. Empty where nothing
/// is left of it. Throws as `fed_mix` does, and InputError "unfit-feel" for a ball of two feels.
std::vector<HelpingPart> helping_of(const Feed& feed, std::size_t number, const Shelf& shelf,
                                    const std::optional<std::string>& feel, const std::vector<std::string>& without);

}  // namespace baitwright
