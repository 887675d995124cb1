#include "cli/terminal_letters.h"

#include <unistd.h>

#include <cstdlib>

#include "quantities/suggestion.h"

namespace baitwright {

TerminalLetters terminal_letters() {
    const TerminalLetters ascii = ::isatty(STDOUT_FILENO) ? TerminalLetters::ascii_alone : TerminalLetters::ascii;
    for (const char* name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
        const char* value = std::getenv(name);
        if (!value || !*value) continue;
        const std::string locale = folded_name(value);
        const bool utf8 = locale.find("utf-8") != std::string::npos || locale.find("utf8") != std::string::npos;
        return utf8 ? TerminalLetters::utf8 : ascii;
    }
    return ascii;
}

}  // namespace baitwright
