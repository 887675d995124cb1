#include "report/degree_sign.h"

#include <catch2/catch.hpp>

#include "report/fault_text.h"
#include "report/text_table.h"
#include "report/told.h"

using namespace baitwright;

TEST_CASE("a temperature is shown with a degree sign") {
    CHECK(with_degree_signs("15 degC") == "15 °C");
    CHECK(with_degree_signs("15 degC is 59 degF") == "15 °C is 59 °F");
    CHECK(with_degree_signs("turn it 90 deg, or 90 degX") == "turn it 90 deg, or 90 degX");
    CHECK(with_degree_signs("water at 12.5 degC.") == "water at 12.5 °C.");
    CHECK(with_degree_signs("from -5 to 45 degC, not 50 degC") == "from -5 to 45 °C, not 50 °C");
    CHECK(with_degree_signs("Rest (5 degC) and wait") == "Rest (5 °C) and wait");
}

TEST_CASE("what is quoted or is to be typed keeps its letters") {
    for (const char* kept :
         {"'90 degC' is a temperature", "for example --water-temp 12degC", "a unit, degC", "3 degCs"})
        CHECK(with_degree_signs(kept) == kept);
}

TEST_CASE("paragraphs, tables and errors have the sign, and keep it with its number") {
    CHECK(paragraph("Pour on   ", "of water at 15 degC") == "Pour on   of water at 15 °C\n");
    const std::string narrow = paragraph(std::string(60, ' '), "the water is at 15 degC");
    CHECK(narrow.find("\n" + std::string(60, ' ') + "15 °C\n") != std::string::npos);
    TextTable table({TextTable::Align::left, TextTable::Align::right});
    table.row({"at", "5 degC"});
    CHECK(table.text() == "  at  5 °C\n");
    const Fault fault{"out-of-range", "it must be from 0 to 60 degC", "for example 12degC"};
    CHECK(fault_text({fault}) == "error: it must be from 0 to 60 °C\n  hint: for example 12degC\n");
}

TEST_CASE("a terminal without UTF-8 gets plain letters, a page its sign all the same") {
    write_for(TerminalLetters::ascii);
    Told told;
    told.line("Water", "at 15 degC");
    const std::string text = told.text();
    const Json json = told_json(told);
    write_for(TerminalLetters::utf8);
    CHECK(text == "Water     at 15 degC\n");
    CHECK(json[0]["text"].text() == "at 15 °C");
}

TEST_CASE("plain letters have a word for money, and leave accents away") {
    CHECK(in_plain_letters("£3.40") == "GBP 3.40");
    CHECK(in_plain_letters("3.40 €") == "3.40 EUR ");
    CHECK(in_plain_letters("15 °C, crème, Müsli, 5 – 6 ½") == "15 degC, creme, Musli, 5 - 6 1/2");
    CHECK(in_plain_letters("餌") == "?");
    CHECK(in_plain_letters("silt bed\n") == "silt bed\n");
}
