#include <fmt/format.h>

#include <array>

#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"

namespace baitwright {

namespace {

constexpr int largest_count = 100000;
constexpr std::array<std::string_view, 4> signs_for_times{"x", "X", "\u00d7", "*"};

/// The sign and its place; its place is past the end where there is none.
struct Times {
    std::size_t place;
    std::size_t width;
};

Times first_times(std::string_view text) {
    Times first{std::string_view::npos, 0};
    for (auto sign : signs_for_times) {
        if (const auto place = text.find(sign); place < first.place) first = {place, sign.size()};
    }
    return first;
}

/// True of "12", "-3", "1.5" and "½", which are meant as a count, right or wrong; false of the "bo" of "box 5".
bool means_a_number(std::string_view text) {
    auto rest = text;
    return take_number(rest).has_value();
}

int whole_count(std::string_view count, std::string_view whole) {
    auto rest = count;
    const auto value = take_number(rest);
    const bool plain = count.find_first_not_of("0123456789") == std::string_view::npos;
    if (!plain || !value || *value < 1 || *value > largest_count) {
        throw InputError(
            "bad-count",
            fmt::format("{} does not count in whole numbers from 1 to {}", in_quotes(whole), largest_count),
            "say how many first, as in 12x55mm or 3x250ml");
    }
    return static_cast<int>(*value);
}

}  // namespace

int parse_count(std::string_view text) {
    const auto count = trimmed(text);
    return whole_count(count, count);
}

CountedSize parse_counted_size(std::string_view text) {
    const auto whole = trimmed(text);
    const auto times = first_times(whole);
    const auto count = trimmed(whole.substr(0, times.place));
    if (times.width == 0 || !means_a_number(count)) {
        throw InputError("no-count", fmt::format("{} does not say how many", in_quotes(whole)),
                         "say how many first, as in 12x55mm or 3x250ml");
    }
    const auto size = trimmed(whole.substr(times.place + times.width));
    const int number = whole_count(count, whole);
    if (size.empty()) {
        throw InputError("no-count", fmt::format("{} does not say how many of what", in_quotes(whole)),
                         "say the size too, as in 12x55mm or 3x250ml");
    }
    return {number, std::string(size)};
}

}  // namespace baitwright
