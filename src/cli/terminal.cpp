#include "cli/terminal.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <optional>
#include <string_view>

#include "quantities/in_quotes.h"
#include "report/shown_columns.h"

namespace baitwright {

namespace {

constexpr std::string_view colour_flag = "--color", pager_flag = "--no-pager";

std::string_view said_by(const char* name) {
    const char* value = std::getenv(name);
    return value ? value : "";
}

ColourWish colour_wish(const std::string& word) {
    if (word == "auto") return ColourWish::automatic;
    if (word == "always") return ColourWish::always;
    if (word == "never") return ColourWish::never;
    throw UsageError("unfit-value", "--color: " + in_quotes(word) + " is none of auto, always and never",
                     "leave it out: colour comes on a terminal alone");
}

/// The number that a variable holds; nothing where it is no whole number above 0.
std::optional<std::size_t> number_in(const char* name) {
    const std::string_view text = said_by(name);
    std::size_t number = 0;
    const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (failed != std::errc() || end != text.data() + text.size() || number == 0) return std::nullopt;
    return number;
}

winsize size_of(int descriptor) {
    winsize size{};
    if (::ioctl(descriptor, TIOCGWINSZ, &size) != 0) return {};
    return size;
}

}  // namespace

const std::vector<Flag>& terminal_flags() {
    static const std::vector<Flag> flags{
        {colour_flag, "WHEN", "auto, always or never"},
        {pager_flag, "", "print long lists and help at once"},
    };
    return flags;
}

std::vector<std::string>::const_iterator end_of_flags(const std::vector<std::string>& given) {
    return std::find(given.begin(), given.end(), "--");
}

TerminalWishes take_terminal_wishes(std::vector<std::string>& given) {
    TerminalWishes wishes;
    const std::string joined = std::string(colour_flag) + "=";
    for (auto word = given.begin(); word != end_of_flags(given);) {
        const bool parted = *word == colour_flag;
        if (*word == pager_flag) {
            wishes.pager = false;
        } else if (parted && word + 1 == end_of_flags(given)) {
            throw UsageError("missing-value", "--color needs a value: auto, always or never",
                             "leave it out: colour comes on a terminal alone");
        } else if (parted || word->starts_with(joined)) {
            wishes.colour = colour_wish(parted ? *(word + 1) : word->substr(joined.size()));
        } else {
            ++word;
            continue;
        }
        word = given.erase(word, word + (parted ? 2 : 1));
    }
    return wishes;
}

std::size_t terminal_columns(int descriptor) {
    if (!::isatty(descriptor)) return text_columns;
    if (const auto columns = number_in("COLUMNS")) return *columns;
    const std::size_t columns = size_of(descriptor).ws_col;
    return columns > 0 ? columns : text_columns;
}

std::size_t terminal_lines(int descriptor) {
    if (const auto lines = number_in("LINES")) return *lines;
    const std::size_t lines = size_of(descriptor).ws_row;
    return lines > 0 ? lines : 24;
}

bool takes_colour(int descriptor, ColourWish wish) {
    if (wish != ColourWish::automatic) return wish == ColourWish::always;
    const std::string_view terminal = said_by("TERM");
    return said_by("NO_COLOR").empty() && ::isatty(descriptor) && !terminal.empty() && terminal != "dumb";
}

}  // namespace baitwright
