#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_page();

}  // namespace baitwright
