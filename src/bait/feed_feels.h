#pragma once

#include <string>
#include <vector>

#include "bait/strategy.h"

namespace baitwright {

/// The feels that a feed and its parts state, each once, the feed's first.
std::vector<std::string> stated_feels(const Feed& feed);

/// A feed as the feeds that it is made of, one for each feel among its parts, in their order; itself alone where it has
/// one. A part that states none has the feed's. Their size is still that of all together, and they go in at once.
std::vector<Feed> feeds_by_feel(const Feed& feed);

}  // namespace baitwright
