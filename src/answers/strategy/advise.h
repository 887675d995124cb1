#pragma once

#include <vector>

#include "answers/strategy/advise_answer.h"
#include "answers/strategy/brought_before.h"
#include "bait/shelf.h"

namespace baitwright {

/// Ranks the strategies and mixes of the shelf. Rules that hold give 2 points to what they favour and take 2 from what
/// they are against, 1 to mixes of their colours and feels, each rule once; a strategy gets points for water like the
/// one it is meant for, and strategies and mixes for fish that their purpose names. **Source**: common practice, no
/// source. What strategies brought this person before moves each by 2 points at most. Names in rules that are not on
/// the shelf are passed over. A fish is known whatever its case, in the singular or the plural. Throws UsageError
/// "unknown-fish", listing those of the rules, for one that neither a rule nor a purpose names, and what
/// `unroll_strategy` throws.
AdviseAnswer advise(const Shelf& shelf, const std::vector<AdviceRule>& rules, const Circumstances& now,
                    const std::vector<BroughtBefore>& brought = {});

}  // namespace baitwright
