#pragma once

#include <string>
#include <vector>

#include "bait/venue.h"
#include "files/library_file.h"
#include "shelf/library.h"

namespace baitwright {

/// The rules of a venue named on the command line, with the places of its file for faults found later.
struct NamedVenue {
    Venue venue;
    EntryPlaces places;
    std::string file, text;  ///< empty for a shipped one
};

/// All venues, by name: those of `--library` (throws InputError where a file has faults), else those that are shipped.
/// The store keeps none: a person's own rules stay in their file.
std::vector<Venue> all_venues(const LibraryPlace& place);

/// Finds it: a name among `all_venues`; a path (with a `/` or ending in `.toml`); or `-` for standard input. Throws
/// NotFound (with "did you mean", or no such file), InputError with all faults of the file, and with the names in its
/// rules that the shelf does not know.
NamedVenue venue_argument(const std::string& word, const LibraryPlace& place, const Shelf& shelf);

}  // namespace baitwright
