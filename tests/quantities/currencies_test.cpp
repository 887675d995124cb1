#include <catch2/catch.hpp>
#include <string>

#include "quantities/fault_of.h"
#include "quantities/money.h"
#include "reference/reference_rows.h"

using namespace baitwright;

// Source: tests/reference/currencies.csv (ISO 4217, list one).
TEST_CASE("currencies have the minor digits that ISO 4217 gives them") {
    const auto rows = reference::rows_in("currencies.csv");
    REQUIRE(rows.size() >= 19);
    for (const auto& row : rows) {
        CAPTURE(row.at("code"));
        CHECK(currency_named(row.at("code")).code == row.at("code"));
        CHECK(currency_named(row.at("code")).minor_digits == std::stoi(row.at("minor_digits")));
    }
}

TEST_CASE("a currency is named by its code, in any case, or by its sign") {
    CHECK(currency_named("£").code == "GBP");
    CHECK(currency_named("€").code == "EUR");
    CHECK(currency_named("$").code == "USD");
    CHECK(currency_named(" gbp ").code == "GBP");
    CHECK(currency_named("GBP").sign == "£");
}

TEST_CASE("an unknown currency is refused, with the one that may have been meant") {
    const auto fault = fault_of([] { currency_named("GPB"); });
    CHECK(fault.code == "unknown-currency");
    CHECK(fault.message == "'GPB' is not a currency known here");
    CHECK(fault.hint == "did you mean 'GBP'?");
    CHECK(fault_of([] { currency_named("XQX"); }).hint == "write a sign or an ISO 4217 code, as in £3.40 or 3.40 EUR");
    CHECK(fault_of([] { currency_named(""); }).code == "unknown-currency");
}
