#pragma once

#include <string>

#include "answers/paid/paid_answer.h"

namespace baitwright {

/// A ratio of takings as surely as it is known: "12", "1.6", "0.06"; of a range "0.3 to 1.2".
std::string shown_takings(Ratio takings);
std::string shown_takings(const Range<double>& takings);

/// What fish are weighed in: "kg"; "lb" where ounces come first. And kilograms in it.
std::string fish_unit();
Ratio in_fish_unit(Ratio kilograms);
Range<double> in_fish_unit(const Range<double>& kilograms);

/// Which way is better, how sure that is, and what would tell: "Open carpet brought more an hour than ...". `more` is
/// what it brought: "more an hour", "more for £1".
std::string verdict_text(const PaidGroup& group, const PaidVerdict& verdict, const std::string& more);

}  // namespace baitwright
