#pragma once

#include <string>

#include "answers/drop/drop_answer.h"
#include "answers/drop/drop_portion.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// What the forms have in common: their volume and how the mix sits in them.
struct Portion {
    std::string words;
    Volume volume;
    MixState state;
};

/// How a mix goes in at a wetness. Throws UsageError for a portion below 0.5 ml or above 10 l.
Portion portion_of(const DropForm& form, Ratio wetness);

/// Soaked pellets alone: pressed into a ball or a feeder, else poured. Throws the same.
Portion pellet_portion(const DropForm& form);

/// The portion of a mix as it goes in; its masses go into the answer.
DropSetup setup_of(const ResolvedMix& mix, const Portion& portion, const DropRequest& request, Ratio wetness,
                   DropAnswer& answer);

}  // namespace baitwright
