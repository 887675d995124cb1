#include "cli/progress_line.h"

#include <fmt/format.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>

#include "quantities/progress.h"

namespace baitwright {

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds before_the_first{1000}, between_two{200};
/// To the line's beginning, and all of it gone. **Source**: ECMA-48, 5th edition, 8.3.41, erase in line.
constexpr std::string_view wipe = "\r\033[K";

volatile std::sig_atomic_t line_stands = 0;

void to_terminal(std::string_view text) {
    static_cast<void>(!::write(STDERR_FILENO, text.data(), text.size()));
}

struct WorkSeen {
    std::string_view doing;
    Clock::time_point begun, told;
};

void hear(std::string_view doing, std::size_t done, std::size_t of) {
    static WorkSeen seen;
    const Clock::time_point now = Clock::now();
    if (seen.doing.data() != doing.data()) seen = {doing, now, now + before_the_first - between_two};
    if (done == of) {
        seen = {};
        wipe_progress_at_once();
        return;
    }
    if (now - seen.told < between_two) return;
    seen.told = now;
    line_stands = 1;
    to_terminal(std::string(wipe) + progress_words(doing, done, of, now - seen.begun));
}

}  // namespace

std::string progress_words(std::string_view doing, std::size_t done, std::size_t of,
                           std::chrono::duration<double> taken) {
    if (of == 0) return std::string(doing);
    const double share = static_cast<double>(done) / static_cast<double>(of);
    std::string words = fmt::format("{}: {:.0f} %", doing, share * 100);
    if (done == 0) return words;
    const double left = taken.count() / share * (1 - share);
    return words + (left < 90 ? fmt::format(", about {:.0f} s left", left < 1 ? 1 : left)
                              : fmt::format(", about {:.0f} min left", left / 60));
}

void show_progress_on_terminal() {
    const char* terminal = std::getenv("TERM");
    const bool can_wipe = terminal && *terminal != 0 && std::string_view(terminal) != "dumb";
    if (can_wipe && ::isatty(STDERR_FILENO)) listen_to_progress(hear);
}

void wipe_progress_at_once() {
    if (line_stands == 0) return;
    line_stands = 0;
    to_terminal(wipe);
}

}  // namespace baitwright
