#include "questions/advise_question.h"

#include <algorithm>
#include <array>

#include "answers/shared/check_temperature.h"
#include "bait/strategy.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

template <std::size_t Count>
std::string read_word(const std::string& text, const std::array<std::string_view, Count>& words) {
    const std::vector<std::string> known{words.begin(), words.end()};
    if (std::find(known.begin(), known.end(), text) != known.end()) return text;
    std::string all = "it can be";
    for (const std::string& word : known)
        all += (word == known.front() ? " " : word == known.back() ? " or " : ", ") + word;
    const std::string near = did_you_mean(text, known);
    throw InputError("unknown-word", "it cannot be " + in_quotes(text), near.empty() ? all : near);
}

std::string lower(std::string text) {
    for (char& letter : text)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return text;
}

/// Named on the command line, so that a length of 24 h and a depth of 100 m are the most there is.
template <class Q>
Q up_to(Q value, Q most, const char* range) {
    if (!(value > Q{}) || value > most)
        throw InputError("out-of-range", std::string("it must be ") + range, "check the unit");
    return value;
}

}  // namespace

Circumstances circumstances(const Arguments& arguments) {
    Circumstances now;
    read_flag(arguments, "--season", [&](const std::string& text) { now.season = read_word(text, season_names); });
    read_flag(arguments, "--clarity", [&](const std::string& text) { now.clarity = read_word(text, clarity_names); });
    read_flag(arguments, "--bed", [&](const std::string& text) { now.bed = read_word(text, bed_names); });
    read_flag(arguments, "--water-temp", [&](const std::string& text) {
        now.temperature = read_temperature(arguments, text);
        check_water_temperature(*now.temperature);
    });
    read_flag(arguments, "--depth", [&](const std::string& text) {
        now.depth = up_to(parse<Length>(text), 100.0 * metre, "above 0 and at most 100 m");
    });
    read_flag(arguments, "--hours", [&](const std::string& text) {
        now.hours = up_to(read_hours(text), 24.0 * hour, "above 0 and at most 24 h, as in --hours 5h");
    });
    read_flag(arguments, "--tow", [&](const std::string& text) {
        now.tow = parse<Speed>(text);
        if (*now.tow < Speed{} || *now.tow > 5.0 * metre_per_second)
            throw InputError("out-of-range", "it must be from 0 to 5 m/s", "for example --tow 5cm/s");
    });
    for (const std::string& fish : arguments.values("--fish")) now.fish.push_back(lower(fish));
    return now;
}

}  // namespace baitwright
