#pragma once

#include "report/degree_sign.h"

namespace baitwright {

/// By the first of LC_ALL, LC_CTYPE and LANG that says anything: whether it names UTF-8. **Source**: POSIX.1-2017,
/// environment variables, 8.2 (from memory).
TerminalLetters terminal_letters();

}  // namespace baitwright
