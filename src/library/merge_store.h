#pragma once

#include <filesystem>

#include "answers/shared/merge_answer.h"
#include "quantities/date.h"
#include "store/store.h"

namespace baitwright {

enum class MergeDoing { done, only_shown };

/// Brings another store into this one: all that either has, once. Entries of the ledger and the log and lots are known
/// by their marks; of an entry of the library the last change stands, and what does not stand is among its old
/// versions. What is used is never missing. It comes to the same whichever of two goes into the other, and in whatever
/// order several do; a second time it changes nothing. One transaction; the other store is only read. Throws NotFound,
/// UsageError "merge-with-itself", StorageError.
MergeAnswer merge_store(Store& store, const std::filesystem::path& other, Date today,
                        MergeDoing doing = MergeDoing::done);

}  // namespace baitwright
