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

/// What an answer takes from the log: the bags of its mixes, by name, each once.
struct LearntUsed {
    std::vector<LearntBag> bags;
    bool hand = false;  ///< this person's hand

    void add(const ResolvedMix& mix);
    /// "water by your own 7 mixes"; nothing where nothing was learnt.
    [[nodiscard]] std::optional<Warning> told() const;
};

/// What a mix takes from the log, or else from bags that were measured, where it is worth a word.
std::optional<Warning> by_own_values(const ResolvedMix& mix);

}  // namespace baitwright
