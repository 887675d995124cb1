#include "quantities/money.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "quantities/fault.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

[[noreturn]] void refuse_size() {
    throw InputError("too-large", "an amount of money is larger than can be counted",
                     "check the prices and amounts: the most is 92,000 million million");
}

std::int64_t whole_below(double value) {
    constexpr double limit = 9.2e18;  // just within 64 bits
    if (!(std::abs(value) < limit)) refuse_size();
    return static_cast<std::int64_t>(std::floor(value));
}

/// The places of the largest so many remainders; earlier first where equal.
std::vector<std::size_t> largest_first(const std::vector<double>& remainders, std::size_t how_many) {
    std::vector<std::size_t> places(remainders.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    sort_stably(places.begin(), places.end(),
                [&](std::size_t a, std::size_t b) { return remainders[a] > remainders[b]; });
    places.resize(std::min(how_many, places.size()));
    return places;
}

void require_same_currency(const Money& a, const Money& b) {
    if (a.currency() == b.currency()) return;
    throw InputError("mixed-currencies", fmt::format("{} and {} do not add up", a.currency().code, b.currency().code),
                     "price everything in one currency");
}

}  // namespace

Money& Money::operator+=(const Money& other) {
    require_same_currency(*this, other);
    if (__builtin_add_overflow(minor_, other.minor_, &minor_)) refuse_size();
    return *this;
}

Money& Money::operator-=(const Money& other) {
    require_same_currency(*this, other);
    if (__builtin_sub_overflow(minor_, other.minor_, &minor_)) refuse_size();
    return *this;
}

std::int64_t round_half_even(double value) {
    // Not std::nearbyint, which follows the rounding mode of the moment.
    const auto lower = whole_below(value);
    const double remainder = value - std::floor(value);
    const bool up = remainder == 0.5 ? lower % 2 != 0 : remainder > 0.5;
    return up ? lower + 1 : lower;
}

std::vector<std::int64_t> round_to_sum(const std::vector<double>& exact_minor) {
    std::vector<std::int64_t> rounded;
    std::vector<double> remainders;
    std::int64_t sum = 0;
    for (double exact : exact_minor) {
        rounded.push_back(whole_below(exact));
        remainders.push_back(exact - std::floor(exact));
        if (__builtin_add_overflow(sum, rounded.back(), &sum)) refuse_size();
    }
    // Whether a half goes up depends on whether the whole sum is even, so its last bit is rounded along.
    const int odd = sum % 2 == 0 ? 0 : 1;
    const double remainder = std::accumulate(remainders.begin(), remainders.end(), 0.0);
    const auto missing = static_cast<std::size_t>(round_half_even(odd + remainder) - odd);
    for (auto place : largest_first(remainders, missing)) ++rounded[place];
    return rounded;
}

}  // namespace baitwright
