#pragma once

#include <string>

#include "answers/paid/paid_answer.h"

namespace baitwright {

/// Kilograms an hour, or for a unit of money, as surely as they are known: "12", "1.6", "0.06".
std::string shown_takings(Ratio kilograms);
std::string shown_takings(const Range<double>& kilograms);  ///< "0.3 to 1.2"

/// Which way is better, how sure that is, and what would tell: "Open carpet brought more an hour than ...". `more` is
/// what it brought: "more an hour", "more for £1".
std::string verdict_text(const PaidGroup& group, const PaidVerdict& verdict, const std::string& more);

}  // namespace baitwright
