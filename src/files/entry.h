#pragma once

#include <map>
#include <string>

#include "files/position.h"

namespace baitwright {

/// The places of what an entry holds, by subject ("part 1", "dose 2", "feel", "name", "feed 3", "limit 1"), so that a
/// fault found later, such as an unknown ingredient, can be shown where it stands.
using EntryPlaces = std::map<std::string, Position>;

/// A recipe, a strategy, a venue or a blend as read from a file.
template <class T>
struct Entry {
    T value;
    EntryPlaces places;
    bool faulty = false;  ///< something in it could not be read
};

}  // namespace baitwright
