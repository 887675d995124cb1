#include "cli/terminal_letters.h"

#include <cstdlib>

#include "quantities/suggestion.h"

namespace baitwright {

TerminalLetters terminal_letters() {
    for (const char* name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
        const char* value = std::getenv(name);
        if (!value || !*value) continue;
        const std::string locale = folded_name(value);
        const bool utf8 = locale.find("utf-8") != std::string::npos || locale.find("utf8") != std::string::npos;
        return utf8 ? TerminalLetters::utf8 : TerminalLetters::ascii;
    }
    return TerminalLetters::ascii;
}

}  // namespace baitwright
