#pragma once

#include "bait/resolved_mix.h"
#include "bait/shelf.h"

/// What a person knows of their own bags and their own hand.
namespace baitwright {

/// Heeds it in a mix whose solids are there. Of bags that were learnt the marks become the medians of what was learnt,
/// and so does the hand; those measured since stay as measured. Where nothing was learnt, the marks that measured ones
/// took the place of are looked up, and tell of the hand (`learned_hand`).
void heed_own_values(ResolvedMix& mix, const Shelf& shelf);

/// The hand that the log taught.
Hand hand_of(const LearntWater& learnt);

/// The place among the bags of what was learnt of an ingredient; nothing where none is called that.
std::optional<std::size_t> place_of_bag(const LearntWater& learnt, const std::string& ingredient);

}  // namespace baitwright
