#pragma once

#include "cli/command.h"

/// The commands that change the library in the store, or take it out.
namespace baitwright {

CommandSpec command_ingredient_add();
CommandSpec command_ingredient_measure();
CommandSpec command_ingredient_import();
CommandSpec command_ingredient_export();
CommandSpec command_recipe_add();

}  // namespace baitwright
