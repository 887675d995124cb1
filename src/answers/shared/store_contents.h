#pragma once

#include <cstdint>

namespace baitwright {

/// How much a store holds.
struct StoreContents {
    int version = 0;  ///< of its tables
    std::int64_t ingredients = 0, mixes = 0, strategies = 0, venues = 0, blends = 0;
    std::int64_t shed_entries = 0;  ///< of its ledger, those that were taken back too
    std::int64_t sessions = 0, log_entries = 0;
    std::int64_t bytes = 0;  ///< of the file
};

}  // namespace baitwright
