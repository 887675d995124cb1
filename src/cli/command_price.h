#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_price();
CommandSpec command_price_list();
CommandSpec command_price_history();

}  // namespace baitwright
