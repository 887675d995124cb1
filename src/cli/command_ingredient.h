#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_ingredient_list();
CommandSpec command_ingredient_show();

}  // namespace baitwright
