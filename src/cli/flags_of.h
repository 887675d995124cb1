#pragma once

#include <vector>

#include "cli/command.h"

namespace baitwright {

/// The flags that a command is told with: its own, then those of all commands; none that is going.
inline std::vector<const Flag*> flags_of(const CommandSpec& command) {
    std::vector<const Flag*> all;
    for (const std::vector<Flag>* flags : {&command.flags, &common_flags()})
        for (const Flag& flag : *flags)
            if (flag.instead.empty()) all.push_back(&flag);
    return all;
}

}  // namespace baitwright
