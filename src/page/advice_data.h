#pragma once

#include <vector>

#include "bait/advice_rule.h"
#include "report/json.h"

namespace baitwright {

/// The rules of advice as a page carries them, in their order: [{about, say, why, source, season, clarity, bed, fish,
/// temperature, depth, tow, hours, favour, against, colours, feels, share}]. What a rule does not state is left out; a
/// condition from and below is a list of two numbers in SI units, null where it is open; so is `share`.
Json advice_data(const std::vector<AdviceRule>& rules);

/// There and back. Throws where a rule is not whole.
std::vector<AdviceRule> advice_in(const Json& data);

}  // namespace baitwright
