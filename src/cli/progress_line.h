#pragma once

#include <chrono>
#include <cstddef>
#include <string>
#include <string_view>

namespace baitwright {

/// What lasts longer than a second shows how far it is, on the error output's last line, where that is a terminal; the
/// line is wiped when it is done.
void show_progress_on_terminal();

/// Wipes the line, if there is one. Safe inside a signal's handler.
void wipe_progress_at_once();

/// "taking in the log: 34 %, about 12 s left".
std::string progress_words(std::string_view doing, std::size_t done, std::size_t of,
                           std::chrono::duration<double> taken);

}  // namespace baitwright
