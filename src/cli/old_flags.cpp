#include "cli/old_flags.h"

#include <algorithm>

#include "cli/terminal.h"

namespace baitwright {

std::string old_flags_told(const CommandSpec& command, const std::vector<std::string>& given) {
    std::string told;
    for (const Flag& flag : command.flags) {
        if (flag.instead.empty()) continue;
        const bool typed = std::any_of(given.begin(), end_of_flags(given), [&](const std::string& word) {
            return word.substr(0, word.find('=')) == flag.name;
        });
        if (!typed) continue;
        told.append("note: ")
            .append(flag.name)
            .append(" is going; type ")
            .append(flag.instead)
            .append(" in its place\n");
    }
    return told;
}

}  // namespace baitwright
