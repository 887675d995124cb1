#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <limits>
#include <string>

#include "quantities/fault_of.h"
#include "quantities/money.h"

using namespace baitwright;

TEST_CASE("money is read as it is written on a price tag") {
    struct Row {
        const char* text;
        std::int64_t minor;
        const char* code;
    };
    const Row row = GENERATE(values<Row>({
        {"£3.40", 340, "GBP"},      {"3.40 GBP", 340, "GBP"},
        {"GBP 3.40", 340, "GBP"},   {"340p", 340, "GBP"},
        {"340 p", 340, "GBP"},      {"£3", 300, "GBP"},
        {"£3.4", 340, "GBP"},       {"-£1.20", -120, "GBP"},
        {"£-1.20", -120, "GBP"},    {"-5p", -5, "GBP"},
        {" £ 3.40 ", 340, "GBP"},   {"£.50", 50, "GBP"},
        {"€2.05", 205, "EUR"},      {"2.05 €", 205, "EUR"},
        {"$0.99", 99, "USD"},       {"350 JPY", 350, "JPY"},
        {"1.234 KWD", 1234, "KWD"}, {"chf 12.5", 1250, "CHF"},
        {"£0.10", 10, "GBP"},       {"£1.15", 115, "GBP"},
        {"£4.35", 435, "GBP"},      {"£92233720368547758.07", std::numeric_limits<std::int64_t>::max(), "GBP"},
    }));
    CAPTURE(row.text);
    CHECK(parse_money(row.text).minor() == row.minor);
    CHECK(parse_money(row.text).currency().code == row.code);
}

TEST_CASE("what is no money is refused, saying what is wrong") {
    struct Row {
        const char* text;
        const char* code;
        const char* message;
    };
    const Row row = GENERATE(values<Row>({
        {"", "not-a-number", "nothing is written"},
        {"£", "not-a-number", "'£' is not an amount of money"},
        {"3.40", "no-currency", "'3.40' has no currency"},
        {"£3.405", "too-many-digits", "'£3.405' has too many digits after the point: GBP has 2"},
        {"3.5 JPY", "too-many-digits", "'3.5 JPY' has digits after the point, but JPY has none"},
        {"340.5p", "too-many-digits", "'340.5p' has digits after the point, but a penny has none"},
        {"£1,50", "not-a-number", "'£1,50' has a comma in its number"},
        {"£1.2.3", "not-a-number", "'£1.2.3' has a point too many"},
        {"£3.", "not-a-number", "'£3.' has a point too many"},
        {"£1e3", "not-a-number", "'£1e3' has more than an amount and its currency"},
        {"£3.40 GBP", "not-a-number", "'£3.40 GBP' has more than an amount and its currency"},
        {"£340p", "not-a-number", "'£340p' has more than an amount and its currency"},
        {"3.40 GBP each", "not-a-number", "'3.40 GBP each' has more than an amount and its currency"},
        {"-£-1", "not-a-number", "'-£-1' is not an amount of money"},
        {"£nan", "not-a-number", "'£nan' is not an amount of money"},
        {"3.40 GPB", "unknown-currency", "'GPB' is not a currency known here"},
        {"free", "unknown-currency", "'free' is not a currency known here"},
        {"£92233720368547758.08", "too-large", "'£92233720368547758.08' is more money than can be counted"},
    }));
    CAPTURE(row.text);
    const auto fault = fault_of([&] { parse_money(row.text); });
    CHECK(fault.code == row.code);
    CHECK(fault.message == row.message);
}

TEST_CASE("a bare amount is of the currency that a person told once, and of no other") {
    struct Row {
        const char* text;
        const char* usual;
        std::int64_t minor;
        const char* code;
    };
    const Row row = GENERATE(values<Row>({
        {"2.50", "GBP", 250, "GBP"},
        {" 2.5 ", "EUR", 250, "EUR"},
        {"2", "EUR", 200, "EUR"},
        {".5", "EUR", 50, "EUR"},
        {"350", "JPY", 350, "JPY"},
        {"1.234", "KWD", 1234, "KWD"},
        {"-2.50", "GBP", -250, "GBP"},
        {"£2.50", "EUR", 250, "GBP"},
        {"250p", "EUR", 250, "GBP"},
        {"2.50 CHF", "EUR", 250, "CHF"},
    }));
    CAPTURE(row.text);
    const Money money = parse_money(row.text, &currency_named(row.usual));
    CHECK(money.minor() == row.minor);
    CHECK(money.currency().code == row.code);
}

TEST_CASE("a bare amount that cannot be of a person's currency is refused, saying what is wrong") {
    struct Row {
        const char* text;
        const char* usual;
        const char* code;
        const char* message;
    };
    const Row row = GENERATE(values<Row>({
        {"2.50", "JPY", "too-many-digits", "'2.50' has digits after the point, but your currency, JPY, has none"},
        {"2.505", "GBP", "too-many-digits", "'2.505' has too many digits after the point: GBP has 2"},
        {"2,50", "EUR", "not-a-number", "'2,50' has a comma in its number"},
        {"2.50.", "EUR", "not-a-number", "'2.50.' has a point too many"},
        {"2.50 each", "EUR", "unknown-currency", "'each' is not a currency known here"},
        {"", "EUR", "not-a-number", "nothing is written"},
    }));
    CAPTURE(row.text);
    const Fault fault = fault_of([&] { parse_money(row.text, &currency_named(row.usual)); });
    CHECK(fault.code == row.code);
    CHECK(fault.message == row.message);
    CHECK_FALSE(fault.hint.empty());
}

TEST_CASE("a person who told no currency is told how to, a file is not") {
    CHECK(fault_of([] { parse_money("2.50", nullptr); }).hint ==
          "as in £3.40, 3.40 EUR or 340p; or tell it once: baitwright usual --currency GBP");
    CHECK(fault_of([] { parse_money("2.50"); }).hint == "as in £3.40, 3.40 EUR or 340p");
}

TEST_CASE("money is written with its sign, or with its code where it has none") {
    CHECK(money_text(parse_money("340p")) == "£3.40");
    CHECK(money_text(parse_money("-£1.2")) == "-£1.20");
    CHECK(money_text(parse_money("5p")) == "£0.05");
    CHECK(money_text(parse_money("3.4 CHF")) == "3.40 CHF");
    CHECK(money_text(parse_money("350 JPY")) == "350 JPY");
    CHECK(money_text(parse_money("1.2 KWD")) == "1.200 KWD");
    CHECK(money_text(Money(std::numeric_limits<std::int64_t>::min(), currency_named("GBP"))) ==
          "-£92233720368547758.08");
}

TEST_CASE("money that is written reads back as the same") {
    CHECK(rc::check([](std::int64_t minor) {
        RC_PRE(minor > std::numeric_limits<std::int64_t>::min());
        const std::string code = *rc::gen::element<std::string>("GBP", "EUR", "USD", "CHF", "JPY", "KWD", "SEK");
        const Money money(minor, currency_named(code));
        RC_ASSERT(parse_money(money_text(money)) == money);
    }));
}

TEST_CASE("any text is read as money or refused, and never more than that") {
    CHECK(rc::check([](const std::string& text) {
        try {
            RC_ASSERT(!money_text(parse_money(text)).empty());
        } catch (const InputError& error) {
            RC_ASSERT(!error.faults().front().message.empty());
        }
    }));
}
