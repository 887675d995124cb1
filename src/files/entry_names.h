#pragma once

#include <map>
#include <string>

#include "files/toml_reader.h"

namespace baitwright {

/// The names of one sort of entry in a file. Two that differ only in case and blanks are the same.
class EntryNames {
public:
    /// The name of an entry, which must be there and not be taken yet.
    std::optional<std::string> claim(TableReader& entry);

private:
    std::map<std::string, int> lines_;
};

}  // namespace baitwright
