#include "shelf/venue_argument.h"

#include <algorithm>

#include "bait/venue_names.h"
#include "files/disk.h"
#include "quantities/suggestion.h"
#include "shelf/all_faults.h"
#include "shelf/recipe_argument.h"
#include "shelf/shipped_files.h"

namespace baitwright {

namespace {

/// Throws InputError with the faults of the file, if it has any.
void append_venues(std::vector<Venue>& venues, LibraryFile&& file) {
    if (!file.faults.empty()) throw InputError(std::move(file.faults));
    for (VenueEntry& entry : file.venues) venues.push_back(std::move(entry.venue));
}

VenueEntry the_one_venue(std::vector<VenueEntry>& entries, const std::string& file) {
    if (entries.size() == 1) return std::move(entries.front());
    if (entries.empty())
        throw InputError({"no-venue",
                          "the file holds no venue",
                          "a venue has a name and at least one [[limit]], [[ban]] or [[rule]]",
                          file,
                          0,
                          0,
                          {}});
    throw InputError(
        {"several-venues",
         "the file holds " + std::to_string(entries.size()) + " venues, and it is not clear which is meant",
         "give the one you want a file of its own",
         file,
         0,
         0,
         {}});
}

NamedVenue venue_of_file(const std::string& word, const Shelf& shelf) {
    NamedVenue named;
    named.file = word == "-" ? "standard input" : word;
    named.text = read_text_file(word);
    LibraryFile file = read_library_file(named.text, named.file);
    if (!file.faults.empty()) throw InputError(all_faults(file, named.text, shelf));
    VenueEntry entry = the_one_venue(file.venues, named.file);
    named.venue = std::move(entry.venue);
    named.places = std::move(entry.places);
    return named;
}

Venue venue_called(const std::string& name, const LibraryPlace& place) {
    std::vector<std::string> names;
    for (Venue& venue : all_venues(place)) {
        if (folded_name(venue.name) == folded_name(name)) return std::move(venue);
        names.push_back(venue.name);
    }
    const std::string hint = did_you_mean(name, names);
    throw NotFound("unknown-venue", "no venue is called '" + name + "'",
                   hint.empty() ? "see them all with: baitwright venue list; or name a file of its rules" : hint);
}

}  // namespace

std::vector<Venue> all_venues(const LibraryPlace& place) {
    std::vector<Venue> venues;
    if (place.folder) {
        for (const std::filesystem::path& path : toml_files_below(*place.folder))
            append_venues(venues, read_library_file(read_text_file(path), path.string()));
    } else {
        for (const ShippedFile& shipped : shipped_files())
            if (shipped.name.starts_with("venues/"))
                append_venues(venues, read_library_file(shipped.text, std::string(shipped.name)));
    }
    std::sort(venues.begin(), venues.end(), [](const Venue& a, const Venue& b) { return a.name < b.name; });
    return venues;
}

NamedVenue venue_argument(const std::string& word, const LibraryPlace& place, const Shelf& shelf) {
    NamedVenue named;
    if (means_a_file(word))
        named = venue_of_file(word, shelf);
    else
        named.venue = venue_called(word, place);
    std::vector<Fault> unknown = unknown_names(named.venue, shelf);
    if (unknown.empty()) return named;
    if (!named.file.empty()) place_faults(unknown, named.places, named.text, named.file);
    throw InputError(std::move(unknown));
}

}  // namespace baitwright
