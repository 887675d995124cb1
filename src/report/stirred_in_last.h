#pragma once

#include <string>
#include <vector>

#include "answers/plan/plan_answer.h"

/// What goes into a mix after the last riddling, in the words of `mix`, of the plan and of the sheet.
namespace baitwright {

/// "105 g of casters"; of what was weighed dry and soaked, which has no mass here, "the soaked micros".
std::string told_last(const std::string& name, Mass mass);

/// "stir in 105 g of casters at the very end", or "once all of it is firm" where the rest of it is then let down.
std::string stirred_in_last(const std::vector<std::string>& what, const std::string& before_let_down);

/// Of a job to stir in: "silt bed and casters: stir in 105 g of casters at the very end".
std::string stirring_in_text(const PrepJob& job);

}  // namespace baitwright
