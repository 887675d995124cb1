#pragma once

#include <string>
#include <vector>

#include "answers/learn/learn_answer.h"
#include "store/store.h"

namespace baitwright {

/// What a writing of what was learnt changed.
struct LearntApplied {
    std::vector<std::string> ingredients;  ///< whose values are others now, by name
    std::vector<std::string> mixes;        ///< of which something was learnt
    bool water = false;                    ///< what is known of hand and bags together is another than before

    [[nodiscard]] bool anything() const { return water || !ingredients.empty() || !mixes.empty(); }
};

/// Writes what the log taught, whole or not at all: A and B into the bags that were in logged mixes, D, C and loose
/// density where those were learnt, as `learned`, the old versions kept; and what hangs together, for every answer to
/// heed. What was learnt from what the log says no more (taken back, set aside) becomes what it was before learning,
/// unless the library never had another value. What the person measured themselves is not written over: it is in what
/// was learnt, and stays an observation. Where all that stands already, nothing is written.
LearntApplied apply_learnt(Store& store, const LearnAnswer& answer, Date today);

/// Whether every answer heeds all that the log says already.
bool stands_already(const Store& store, const LearnAnswer& answer);

/// Takes back all that was ever learnt, as a writing that can itself be taken back: every learned value is what it was
/// before any was, and nothing is learnt of hand and mixes.
LearntApplied forget_learnt(Store& store, Date today);

/// Takes the last writing back, once: every value that is still as it was written becomes what it was before, and so
/// does what was learnt before it. Throws NotFound "nothing-to-undo".
LearntApplied undo_learnt(Store& store, Date today);

}  // namespace baitwright
