#pragma once

#include "bait/memory_shelf.h"
#include "report/json.h"

namespace baitwright {

/// What the log taught of the shelf's ingredients and mixes, as a page carries it: {hand, memory, bags: [{name,
/// absorption, gap, mixes, measured: [A, B]}], rank, factor: [numbers], mixes: [{name, cup_weight, hold, carpet}]},
/// each of those {mean, sigma, times} or null. Bags that no log told of are left out: they are in this person's hand
/// alone. Null where nothing was learnt.
Json learnt_data(const Shelf& shelf);

/// Puts it on the shelf. Throws where it is not whole.
void put_learnt_data(const Json& data, MemoryShelf& shelf);

}  // namespace baitwright
