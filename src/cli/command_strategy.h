#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_strategy_list();
CommandSpec command_strategy_show();
CommandSpec command_strategy_check();
CommandSpec command_strategy_add();

}  // namespace baitwright
