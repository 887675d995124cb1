#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_cost();
CommandSpec command_compare();

}  // namespace baitwright
