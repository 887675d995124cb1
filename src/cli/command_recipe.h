#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_recipe_list();
CommandSpec command_recipe_show();
CommandSpec command_recipe_check();

}  // namespace baitwright
