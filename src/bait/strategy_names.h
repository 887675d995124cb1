#pragma once

#include <string>
#include <vector>

#include "bait/shelf.h"
#include "bait/strategy.h"
#include "quantities/fault.h"

namespace baitwright {

/// Where things stand in a strategy, all counted from 1: "feed 2", "feed 2 part 1", "feed 2 part 1 feel",
/// "feed 2 feel", "feed 2 after", "hookbait 1".
std::string feed_subject(std::size_t feed);
std::string feed_part_subject(std::size_t feed, std::size_t part);
std::string feed_part_feel_subject(std::size_t feed, std::size_t part);
std::string feed_feel_subject(std::size_t feed);
std::string feed_after_subject(std::size_t feed);
std::string hookbait_subject(std::size_t hookbait);

/// The fault of a hookbait that is no ingredient on the shelf, with "did you mean".
Fault unknown_hookbait(const std::string& of, const std::string& subject, const Shelf& shelf);

/// Every name in a strategy that the shelf does not know; empty names are passed over.
std::vector<Fault> unknown_names(const Strategy& strategy, const Shelf& shelf);

}  // namespace baitwright
