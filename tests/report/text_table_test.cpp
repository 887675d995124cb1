#include "report/text_table.h"

#include <catch2/catch.hpp>

using namespace baitwright;

TEST_CASE("accents and wide letters take the columns that a terminal gives them") {
    CHECK(text_width("£3.40") == 5);
    CHECK(text_width("crème") == 5);
    CHECK(text_width("餌") == 2);
}

TEST_CASE("a table lines up its columns and breaks long names") {
    TextTable table({TextTable::Align::left, TextTable::Align::right});
    table.row({"name", "g"});
    table.row({"crème", "400"});
    table.rule();
    CHECK(table.text() == "  name     g\n  crème  400\n  ----------\n");
    TextTable long_names({TextTable::Align::left, TextTable::Align::right});
    long_names.row({std::string(50, 'a') + " " + std::string(50, 'b'), "1"});
    std::size_t start = 0;
    const std::string text = long_names.text();
    for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', start)) {
        CHECK(text_width(text.substr(start, end - start)) <= text_columns);
        start = end + 1;
    }
}

TEST_CASE("a paragraph is broken at blanks under its heading") {
    const std::string text = paragraph("Makes     ", std::string(60, 'x') + " " + std::string(30, 'y'));
    CHECK(text == "Makes     " + std::string(60, 'x') + "\n          " + std::string(30, 'y') + "\n");
    CHECK(sentence("mind this") == "Mind this.");
    const std::string margin(72, ' ');
    CHECK(paragraph(margin, "of 6 fl oz") == margin + "of\n" + margin + "6 fl oz\n");
}

TEST_CASE("on a narrow terminal the first column stands above the others, and a paragraph below its word") {
    struct Narrow {
        Narrow() { show_columns(10); }  // taken to be the fewest
        ~Narrow() { show_columns(text_columns); }
    } const narrow;
    CHECK(columns_shown() == fewest_columns);
    TextTable table({TextTable::Align::left, TextTable::Align::right, TextTable::Align::right});
    table.row({"weigh", "grams", std::string(24, '-')});
    table.row({"fishmeal, brown", "460 g", "1 lb"});
    CHECK(table.text() ==
          "  weigh\n   grams ------------------------\n  fishmeal, brown\n   460 g                     1 lb\n");
    CHECK(paragraph("  barge wash            firm      ", "Plain, cheap and brown, for roach.") ==
          "  barge wash            firm\n      Plain, cheap and brown, for roach.\n");
    show_columns(1000);
    CHECK(columns_shown() == most_columns);
}
