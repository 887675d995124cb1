#pragma once

#include "cli/command.h"

namespace baitwright {

CommandSpec command_advise();

}  // namespace baitwright
