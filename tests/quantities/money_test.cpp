#include "quantities/money.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>
#include <string>

#include "quantities/fault_of.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

/// Exact amounts in eighths of a penny, which a double sums without error.
rc::Gen<std::vector<double>> eighths() {
    return rc::gen::container<std::vector<double>>(
        rc::gen::map(rc::gen::inRange(-100000, 100000), [](int count) { return count / 8.0; }));
}

std::int64_t sum_of(const std::vector<std::int64_t>& parts) {
    return std::accumulate(parts.begin(), parts.end(), std::int64_t{0});
}

}  // namespace

// Sources: tests/reference/rounding.csv, row by row.
TEST_CASE("halves are rounded to the even neighbour, as the standard has it") {
    for (const auto& row : reference::rows_in("rounding.csv")) {
        CAPTURE(row.at("value"), row.at("source"));
        CHECK(round_half_even(std::stod(row.at("value"))) == std::stoll(row.at("rounded")));
    }
}

TEST_CASE("rounding half to even goes to a nearest whole number, and up as often as down") {
    CHECK(rc::check([](int eighth) {
        const double value = eighth / 8.0;
        const auto rounded = round_half_even(value);
        const double away = std::abs(static_cast<double>(rounded) - value);
        RC_ASSERT(away <= 0.5);
        if (away == 0.5) RC_ASSERT(rounded % 2 == 0);
        RC_ASSERT(round_half_even(-value) == -rounded);
    }));
}

TEST_CASE("what cannot be counted in whole pence is refused") {
    CHECK(fault_of([] { round_half_even(1e19); }).code == "too-large");
    CHECK(fault_of([] { round_half_even(-1e19); }).code == "too-large");
    CHECK(fault_of([] { round_half_even(std::numeric_limits<double>::quiet_NaN()); }).code == "too-large");
    CHECK(fault_of([] { round_to_sum({std::numeric_limits<double>::infinity()}); }).code == "too-large");
    CHECK(fault_of([] { round_to_sum({9e18, 9e18}); }).code == "too-large");
}

TEST_CASE("rounded parts sum to the rounded total") {
    CHECK(rc::check([] {
        const auto exact = *eighths();
        const double total = std::accumulate(exact.begin(), exact.end(), 0.0);
        RC_ASSERT(sum_of(round_to_sum(exact)) == round_half_even(total));
    }));
}

TEST_CASE("no rounded part is a whole penny away from its exact amount") {
    CHECK(rc::check([] {
        const auto exact = *eighths();
        const auto rounded = round_to_sum(exact);
        RC_ASSERT(rounded.size() == exact.size());
        for (std::size_t i = 0; i < exact.size(); ++i) {
            RC_ASSERT(std::abs(static_cast<double>(rounded[i]) - exact[i]) < 1.0);
        }
    }));
}

TEST_CASE("whole amounts stay as they are") {
    CHECK(rc::check([](const std::vector<std::int32_t>& whole) {
        const std::vector<double> exact(whole.begin(), whole.end());
        RC_ASSERT(round_to_sum(exact) == std::vector<std::int64_t>(whole.begin(), whole.end()));
    }));
}

TEST_CASE("the missing pence go to the largest remainders, the earlier where they are equal") {
    CHECK(round_to_sum({33.25, 33.5, 33.25}) == std::vector<std::int64_t>{33, 34, 33});
    CHECK(round_to_sum({0.5, 0.5}) == std::vector<std::int64_t>{1, 0});
    CHECK(round_to_sum({0.25, 0.25}) == std::vector<std::int64_t>{0, 0});
    CHECK(round_to_sum({1.25, 0.25}) == std::vector<std::int64_t>{2, 0});
    CHECK(round_to_sum({-0.5, -0.5}) == std::vector<std::int64_t>{0, -1});
    CHECK(round_to_sum({100.0 / 3, 100.0 / 3, 100.0 / 3}) == std::vector<std::int64_t>{34, 33, 33});
    CHECK(round_to_sum({}).empty());
}

TEST_CASE("amounts of one currency add and subtract") {
    const auto& pounds = currency_named("GBP");
    CHECK(Money(340, pounds) + Money(60, pounds) == Money(400, pounds));
    CHECK(Money(340, pounds) - Money(400, pounds) == Money(-60, pounds));
    CHECK(Money() == Money(0, pounds));
    CHECK_FALSE(Money(1, pounds) == Money(1, currency_named("EUR")));
}

TEST_CASE("amounts of two currencies do not add") {
    const auto fault = fault_of([] { Money(1, currency_named("GBP")) + Money(1, currency_named("EUR")); });
    CHECK(fault.code == "mixed-currencies");
    CHECK(fault.message == "GBP and EUR do not add up");
    CHECK(fault_of([] { Money(1, currency_named("GBP")) - Money(1, currency_named("EUR")); }).code ==
          "mixed-currencies");
}

TEST_CASE("sums that leave 64 bits are refused, not wrapped") {
    const auto most = std::numeric_limits<std::int64_t>::max();
    const auto& pounds = currency_named("GBP");
    CHECK(fault_of([&] { Money(most, pounds) + Money(1, pounds); }).code == "too-large");
    CHECK(fault_of([&] { Money(-most, pounds) - Money(2, pounds); }).code == "too-large");
}
