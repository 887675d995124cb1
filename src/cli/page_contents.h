#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "bait/venue.h"
#include "cli/command.h"
#include "library/named.h"
#include "page/bank_data.h"

namespace baitwright {

/// What `page` was asked to put into a page, with what it lies on.
struct PageContents {
    std::unique_ptr<Shelf> library;
    std::vector<Named<Strategy>> named;  ///< the strategies, each sound and each once; none: all that the library has
    BankContents contents;               ///< of these
    std::optional<Venue> venue;          ///< that is usual for the person
};

/// Throws what is wrong with a strategy, in its place.
PageContents page_contents(const Arguments& arguments, const Surroundings& around);

/// What the page's sums will leave out.
std::vector<Warning> unpriced_on_page(const BankContents& contents);

}  // namespace baitwright
