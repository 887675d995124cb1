#pragma once

#include <optional>

#include "bait/feel.h"
#include "files/entry_names.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads the feels of a file one after the other; their bands must follow each other upwards.
class FeelReader {
public:
    /// Nothing where the table had a fault; all of them are with its `faults()`.
    std::optional<Feel> read(TableReader& table);

private:
    EntryNames names_;
    double edge_ = 0;  ///< where the band before ends
};

}  // namespace baitwright
