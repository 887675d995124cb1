#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_venue_list();
CommandSpec command_venue_show();
CommandSpec command_venue_check();

}  // namespace baitwright
