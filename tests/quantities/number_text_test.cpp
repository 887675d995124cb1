#include "quantities/number_text.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <clocale>
#include <cmath>
#include <cstring>
#include <limits>
#include <string>

#include "quantities/fault_of.h"
#include "quantities/quantity_text.h"

using namespace baitwright;

TEST_CASE("numbers are read as people write them") {
    CHECK(parse_number("12") == 12.0);
    CHECK(parse_number("  2.5 ") == 2.5);
    CHECK(parse_number(".5") == 0.5);
    CHECK(parse_number("+3") == 3.0);
    CHECK(parse_number("-1.25") == -1.25);
    CHECK(parse_number("1e-3") == 1e-3);
    CHECK(parse_number("2E5") == 2e5);
    CHECK(parse_number("007") == 7.0);
}

TEST_CASE("fractions are read as signs, with strokes and after whole numbers") {
    CHECK(parse_number("½") == 0.5);
    CHECK(parse_number("¼") == 0.25);
    CHECK(parse_number("¾") == 0.75);
    CHECK(parse_number("⅓") == 1.0 / 3);
    CHECK(parse_number("⅔") == 2.0 / 3);
    CHECK(parse_number("⅛") == 0.125);
    CHECK(parse_number("2½") == 2.5);
    CHECK(parse_number("2 ½") == 2.5);
    CHECK(parse_number("1/2") == 0.5);
    CHECK(parse_number("1 1/2") == 1.5);
    CHECK(parse_number("1 3⁄4") == 1.75);
    CHECK(parse_number("-2½") == -2.5);
}

TEST_CASE("what is no number is refused with a way out") {
    struct Row {
        const char* text;
        const char* code;
        const char* message;
        const char* hint;
    };
    const Row row = GENERATE(values<Row>({
        {"", "not-a-number", "nothing is written", "as in 12, 1.5 or ½"},
        {" \t", "not-a-number", "nothing is written", "as in 12, 1.5 or ½"},
        {"1,5", "not-a-number", "'1,5' has a comma in its number", "write 1.5"},
        {"1,500", "not-a-number", "'1,500' has a comma in its number", "write 1500 or 1.500"},
        {"1,500,000", "not-a-number", "'1,500,000' has a comma in its number", "write the number without commas"},
        {"1.500,5", "not-a-number", "'1.500,5' has a comma in its number", "write the number without commas"},
        {"nan", "not-a-number", "'nan' does not start with a number", "as in 12, 1.5 or ½"},
        {"inf", "not-a-number", "'inf' does not start with a number", "as in 12, 1.5 or ½"},
        {"-inf", "not-a-number", "'-inf' does not start with a number", "as in 12, 1.5 or ½"},
        {"--5", "not-a-number", "'--5' does not start with a number", "as in 12, 1.5 or ½"},
        {".", "not-a-number", "'.' does not start with a number", "as in 12, 1.5 or ½"},
        {"0x1F", "not-a-number", "'0x1F' is more than a plain number", "write 0 alone"},
        {"12 kg", "not-a-number", "'12 kg' is more than a plain number", "write 12 alone"},
        {"1.2.3", "not-a-number", "'1.2.3' is more than a plain number", "write 1.2 alone"},
        {"5.", "not-a-number", "'5.' is more than a plain number", "write 5 alone"},
        {"1.5½", "not-a-number", "'1.5½' is more than a plain number", "write 1.5 alone"},
        {"1e", "not-a-number", "'1e' is more than a plain number", "write 1 alone"},
        {"1/0", "not-a-number", "'1/0' divides by nothing", "write it as in 1/2 or 0.5"},
        {"0/0", "not-a-number", "'0/0' divides by nothing", "write it as in 1/2 or 0.5"},
        {"1e301", "too-large", "'1e301' is larger than any number used here",
         "check its digits; an amount reads like 500 g or 1.5 l"},
        {"1e999", "too-large", "'1e999' is larger than any number used here",
         "check its digits; an amount reads like 500 g or 1.5 l"},
        {"-1e999", "too-large", "'-1e999' is larger than any number used here",
         "check its digits; an amount reads like 500 g or 1.5 l"},
    }));
    CAPTURE(row.text);
    const auto fault = fault_of([&] { parse_number(row.text); });
    CHECK(fault.code == row.code);
    CHECK(fault.message == row.message);
    CHECK(fault.hint == row.hint);
}

TEST_CASE("a number inside a text with a zero byte is refused") {
    CHECK(fault_of([] { parse_number(std::string_view("5\0", 2)); }).code == "not-a-number");
}

TEST_CASE("taking a number leaves what follows it") {
    std::string_view rest = " 2½ pt";
    CHECK(take_number(rest) == 2.5);
    CHECK(rest == " pt");
    CHECK_FALSE(take_number(rest));
    CHECK(rest == " pt");
}

TEST_CASE("the e of a word is not taken for an exponent") {
    std::string_view rest = "2eggs";
    CHECK(take_number(rest) == 2.0);
    CHECK(rest == "eggs");
}

TEST_CASE("no-break spaces around a text are trimmed as blanks are") {
    CHECK(trimmed("\u00a0 5 \u202f\t") == "5");
    CHECK(trimmed("") == "");
}

TEST_CASE("numbers are written short") {
    CHECK(number_text(0.1) == "0.1");
    CHECK(number_text(400.0) == "400");
    CHECK(number_text(-2.5) == "-2.5");
    CHECK(number_text(-0.0) == "0");
    CHECK(number_text(0.1 + 0.2) == "0.30000000000000004");
    CHECK(number_text(1e-9) == "1e-09");
    CHECK_THROWS_AS(number_text(std::numeric_limits<double>::quiet_NaN()), std::logic_error);
    CHECK_THROWS_AS(number_text(std::numeric_limits<double>::infinity()), std::logic_error);
}

TEST_CASE("a number within an error is written as short as the error lets it be") {
    CHECK(number_text_within(399.99999999999994, 1e-10) == "400");
    CHECK(number_text_within(1e-12, 1e-11) == "0");
    CHECK(number_text_within(1.0 / 3, 1e-3) == "0.333");
    CHECK(number_text_within(0.1 + 0.2, 0.0) == "0.30000000000000004");
}

TEST_CASE("a number that is written reads back as just the same number") {
    CHECK(rc::check([](std::int64_t bits) {
        double value = 0;
        std::memcpy(&value, &bits, sizeof value);
        RC_PRE(std::isfinite(value) && std::abs(value) <= 1e300);
        RC_ASSERT(parse_number(number_text(value)) == value);
    }));
}

TEST_CASE("any text is read as a number or refused, and never more than that") {
    CHECK(rc::check([](const std::string& text) {
        try {
            RC_ASSERT(std::isfinite(parse_number(text)));
        } catch (const InputError& error) {
            RC_ASSERT(!error.faults().front().message.empty());
        }
    }));
}

TEST_CASE("a library that sets a comma as the decimal point changes nothing") {
    const std::string before = std::setlocale(LC_NUMERIC, nullptr);
    const char* set = nullptr;
    for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "nl_NL.UTF-8"}) {
        if (!set) set = std::setlocale(LC_NUMERIC, name);
    }
    if (!set) WARN("no locale with a decimal comma is installed: not tested");
    CHECK(parse_number("1.5") == 1.5);
    CHECK(number_text(1.5) == "1.5");
    std::setlocale(LC_NUMERIC, before.c_str());
}
