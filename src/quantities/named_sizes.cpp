#include "quantities/named_sizes.h"

#include <fmt/format.h>

#include <array>
#include <string>
#include <vector>

#include "quantities/amount_words.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

/// The sizes that anglers name instead of measuring. **Source**: common practice, no source.
namespace baitwright {

namespace {

template <class Q>
struct NamedSize {
    std::string_view name;
    Q size;
};

constexpr std::array ball_sizes{
    NamedSize<Length>{"walnut", 30 * millimetre}, NamedSize<Length>{"golf ball", 43 * millimetre},
    NamedSize<Length>{"egg", 50 * millimetre},    NamedSize<Length>{"satsuma", 60 * millimetre},
    NamedSize<Length>{"orange", 75 * millimetre},
};

constexpr std::array vessel_sizes{
    NamedSize<Volume>{"toss pot 10", 10 * millilitre}, NamedSize<Volume>{"toss pot 25", 25 * millilitre},
    NamedSize<Volume>{"toss pot 40", 40 * millilitre}, NamedSize<Volume>{"cup 100", 100 * millilitre},
    NamedSize<Volume>{"cup 250", 250 * millilitre},    NamedSize<Volume>{"cup 500", 500 * millilitre},
};

bool is_name(std::string_view text) {
    std::string_view rest = text;
    return !text.empty() && !take_number(rest) && !amount_in_words(text);
}

std::string digits_in(std::string_view name) {
    std::string digits;
    for (char c : name) {
        if (c >= '0' && c <= '9') digits += c;
    }
    return digits;
}

template <class Sizes>
std::string listed(const Sizes& sizes) {
    std::string list;
    for (const auto& named : sizes) list += (list.empty() ? "" : ", ") + std::string(named.name);
    return list;
}

template <class Sizes>
std::string size_hint(std::string_view name, const Sizes& sizes, std::string_view example) {
    std::vector<std::string> names;
    names.reserve(sizes.size());
    for (const auto& named : sizes) names.emplace_back(named.name);
    // "cup 300" is near "cup 500" in letters only, and "cup" alone near too many: then all that there are say more.
    const auto nearest = nearest_name(name, names);
    if (nearest && digits_in(*nearest) == digits_in(name)) return fmt::format("did you mean '{}'?", *nearest);
    return fmt::format("the named ones are {}; or write it as in {}", listed(sizes), example);
}

template <class Q, class Sizes>
Q size_of(std::string_view text, const Sizes& sizes, std::string_view kind, std::string_view example) {
    const auto whole = trimmed(text);
    if (!is_name(whole)) return parse<Q>(whole);
    const auto name = folded_name(whole);
    for (const auto& named : sizes) {
        if (named.name == name) return named.size;
    }
    throw InputError("unknown-size", fmt::format("{} is not a size of {} known here", in_quotes(whole), kind),
                     size_hint(name, sizes, example));
}

template <class Sizes>
std::vector<std::pair<std::string, std::string>> named_with(const Sizes& sizes, std::string_view unit, double in_si) {
    std::vector<std::pair<std::string, std::string>> list;
    list.reserve(sizes.size());
    for (const auto& named : sizes)
        list.emplace_back(named.name, fmt::format("{:.0f} {}", named.size.si() / in_si, unit));
    return list;
}

}  // namespace

std::vector<std::pair<std::string, std::string>> named_ball_sizes() {
    return named_with(ball_sizes, "mm", millimetre.in_si);
}

std::vector<std::pair<std::string, std::string>> named_vessel_sizes() {
    return named_with(vessel_sizes, "ml", millilitre.in_si);
}

Length parse_ball_size(std::string_view text) {
    return size_of<Length>(text, ball_sizes, "a ball", "55 mm");
}

Volume parse_vessel_size(std::string_view text) {
    return size_of<Volume>(text, vessel_sizes, "a cup or pot", "250 ml");
}

std::string ball_size_names() {
    return listed(ball_sizes);
}

std::string vessel_size_names() {
    return listed(vessel_sizes);
}

}  // namespace baitwright
