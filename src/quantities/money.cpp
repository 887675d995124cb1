#include "quantities/money.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "quantities/fault.h"

namespace baitwright {

namespace {

[[noreturn]] void refuse_size() {
    throw InputError("too-large", "an amount of money is larger than can be counted");
}

void require_same_currency(const Money& a, const Money& b) {
    if (a.currency() == b.currency()) return;
    throw InputError("mixed-currencies",
                     fmt::format("{} and {} do not add up", a.currency().code, b.currency().code),
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
    constexpr double limit = 9.2e18;  // just within 64 bits
    if (!(std::abs(value) < limit)) refuse_size();
    // Not std::nearbyint, which follows the rounding mode of the moment.
    const double below = std::floor(value);
    const double above_it = value - below;
    const auto lower = static_cast<std::int64_t>(below);
    if (above_it == 0.5) return lower % 2 == 0 ? lower : lower + 1;
    return above_it < 0.5 ? lower : lower + 1;
}

std::vector<std::int64_t> round_to_sum(const std::vector<double>& exact_minor) {
    std::vector<std::int64_t> rounded;
    std::vector<double> remainders;
    Money sum_of_floors;
    for (double exact : exact_minor) {
        if (!(std::abs(exact) < 9.2e18)) refuse_size();
        const double below = std::floor(exact);
        rounded.push_back(static_cast<std::int64_t>(below));
        remainders.push_back(exact - below);
        sum_of_floors += Money(rounded.back(), sum_of_floors.currency());
    }
    // Whether a half goes up depends on whether the whole sum is even, so its last bit is rounded along.
    const int odd = sum_of_floors.minor() % 2 == 0 ? 0 : 1;
    const double remainder = std::accumulate(remainders.begin(), remainders.end(), 0.0);
    const auto missing = static_cast<std::size_t>(std::max<std::int64_t>(0, round_half_even(odd + remainder) - odd));

    std::vector<std::size_t> order(rounded.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return remainders[a] > remainders[b]; });
    order.resize(std::min(missing, order.size()));
    for (auto place : order) ++rounded[place];
    return rounded;
}

}  // namespace baitwright
