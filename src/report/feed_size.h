#pragma once

#include <string>

#include "bait/strategy.h"

namespace baitwright {

/// A feed's size as it was written: "250 ml", "1.5 l", "45 mm", "900 g".
std::string shown_size(const FeedSize& size);

/// How often a feed is reckoned to go in as bites slow: "reckoned once", "reckoned 3 times".
std::string shown_reckoned(double times);

}  // namespace baitwright
