#pragma once

#include <string>
#include <string_view>

#include "cli/asked_for.h"
#include "cli/candidates.h"
#include "cli/names_to_type.h"

namespace baitwright {

/// Whether what is typed may go on to be that; capitals do not matter.
bool begins_so(std::string_view whole, std::string_view typed);

/// All that is asked for and begins with what is typed.
Completion chosen(const AskedFor& asked, const CommandSpec& command, const NamesToType& names,
                  const std::string& typed);

/// The same with this in front of each: "--feel=".
Completion behind(const std::string& front, Completion completion);

}  // namespace baitwright
