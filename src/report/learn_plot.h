#pragma once

#include <string>

#include "answers/learn/learn_answer.h"

namespace baitwright {

/// How what is known of each bag, and of the hand, narrowed over the season, as a picture (SVG): a panel each, against
/// what the library says (the line in the middle); the range that holds 9 in 10 by the library alone, left, and after
/// each day of the log; what each observation alone would say, with how closely it says it, as a bar; a cross where it
/// was set aside.
std::string learn_plot(const LearnAnswer& answer);

}  // namespace baitwright
