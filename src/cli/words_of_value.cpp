#include "cli/words_of_value.h"

#include <algorithm>
#include <array>

#include "bait/dose.h"
#include "quantities/clock.h"
#include "quantities/fault.h"
#include "quantities/quantity_text.h"

namespace baitwright {

namespace {

/// "three quarters of a fluid ounce and a half" is longer than anybody types.
constexpr std::size_t most_words_more = 7;

/// What the flags that take one amount call it.
constexpr std::array<std::string_view, 12> amounts_taken{"AMOUNT", "VOLUME",      "MASS",     "LENGTH",
                                                         "TIME",   "TEMPERATURE", "PRESSURE", "SPEED",
                                                         "RATIO",  "SHARE",       "SIZE",     "NAME=AMOUNT"};

constexpr std::array<std::pair<std::string_view, Measure>, 5> measures_taken{{{"MASS", Measure::mass},
                                                                              {"VOLUME", Measure::volume},
                                                                              {"LENGTH", Measure::length},
                                                                              {"TIME", Measure::time},
                                                                              {"TEMPERATURE", Measure::temperature}}};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

template <class Read>
bool can_be_read(const Read& read) {
    try {
        read();
        return true;
    } catch (const InputError&) {
        return false;
    }
}

/// "40 x 30 cm", "40 cm x 30 cm": the sides of a tub.
bool is_two_sides(std::string_view text) {
    const auto cross = text.find('x');
    if (cross == std::string_view::npos) return false;
    const auto first = trimmed(text.substr(0, cross));
    return (is_bare_number(first) || measured_in(first)) && measured_in(text.substr(cross + 1));
}

bool is_counted_size(std::string_view text) {
    return can_be_read([&] {
        const CountedSize counted = parse_counted_size(text);
        if (!measured_in(counted.size) && !can_be_read([&] { parse_ball_size(counted.size); }))
            parse_vessel_size(counted.size);
    });
}

/// A size of what the flag is named after: balls have one across, cups and feeders hold something.
bool is_size_for(std::string_view flag, std::string_view size) {
    if (flag.starts_with("--ball")) return can_be_read([&] { parse_ball_size(size); });
    return (flag.starts_with("--cup") || flag.starts_with("--feeder")) && can_be_read([&] { parse_vessel_size(size); });
}

bool is_counted_for(std::string_view flag, std::string_view text) {
    bool fits = false;
    return can_be_read([&] { fits = is_size_for(flag, parse_counted_size(text).size); }) && fits;
}

bool is_dose(std::string_view text) {
    return measured_in(text) || can_be_read([&] { parse_dose_rate(text); });
}

/// Whether the text is one whole value of a flag that takes that.
bool is_whole(std::string_view takes, std::string_view text) {
    if (takes == "CLOCK") return can_be_read([&] { parse_clock(text); }) || measured_in(text) == Measure::time;
    if (takes == "COUNTxSIZE") return is_counted_size(text);
    if (takes == "RATE") return is_dose(text);
    if (takes.starts_with("NAME=")) {
        const auto equals = text.rfind('=');
        if (equals == std::string_view::npos) return false;
        text.remove_prefix(equals + 1);
        return takes == "NAME=DOSE" ? is_dose(text) : measured_in(text).has_value();
    }
    return measured_in(text).has_value() || (takes == "SIZE" && is_two_sides(text));
}

bool takes_an_amount(std::string_view takes) {
    return takes == "CLOCK" || takes == "COUNTxSIZE" || takes == "RATE" || takes == "NAME=DOSE" ||
           std::find(amounts_taken.begin(), amounts_taken.end(), takes) != amounts_taken.end();
}

}  // namespace

std::string with_points(std::string_view text) {
    std::string pointed(text);
    for (std::size_t i = 1; i + 1 < pointed.size(); ++i)
        if (pointed[i] == ',' && is_digit(pointed[i - 1]) && is_digit(pointed[i + 1])) pointed[i] = '.';
    return pointed;
}

std::size_t words_of_value(std::string_view takes, std::string_view value, const std::vector<std::string>& after) {
    if (!takes_an_amount(takes)) return 0;
    std::string text(value);
    std::size_t belong = 0;
    bool whole_before = is_whole(takes, with_points(text));
    for (std::size_t i = 0; i < std::min(after.size(), most_words_more); ++i) {
        if (after[i].empty() || after[i].find(' ') != std::string::npos) break;
        text += ' ' + after[i];
        const bool whole = is_whole(takes, with_points(text));
        if (whole && !(whole_before && is_bare_number(after[i]))) belong = i + 1;
        whole_before = whole;
    }
    return belong;
}

bool is_measure_taken(std::string_view flag, std::string_view takes, std::string_view text) {
    if (takes == "COUNTxSIZE") return is_counted_for(flag, text);
    if (takes == "SIZE") return is_size_for(flag, text);
    const auto found = std::find_if(measures_taken.begin(), measures_taken.end(),
                                    [&](const auto& taken) { return taken.first == takes; });
    return found != measures_taken.end() && measured_in(text) == found->second;
}

}  // namespace baitwright
