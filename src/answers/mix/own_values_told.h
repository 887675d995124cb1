#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// A bag whose water is by what was learnt of it, and from how many logged mixes.
struct LearntBag {
    std::string name;
    int mixes;
};

/// What an answer takes from the log: the bags of its mixes, by name, each once; and how often what was seen of a cup
/// or a ball was seen.
struct LearntUsed {
    std::vector<LearntBag> bags = {};
    bool hand = false;  ///< this person's hand
    int cups_weighed = 0, holds_seen = 0, carpets_seen = 0;

    void add_water(const ResolvedMix& mix);
    void add_cup(const ResolvedMix& mix);
    [[nodiscard]] bool anything() const { return hand || cups_weighed + holds_seen + carpets_seen > 0; }
    /// "water by your own 7 mixes"; nothing where nothing was learnt.
    [[nodiscard]] std::optional<Warning> told() const;
};

/// What the measured bags of a mix told of the others, where it is worth a word and nothing was learnt from a log.
std::optional<Warning> hand_learned(const ResolvedMix& mix);

}  // namespace baitwright
