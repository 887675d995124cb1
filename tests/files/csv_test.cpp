#include "files/csv.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "files/formula_guard.h"
#include "quantities/fault_of.h"

using namespace baitwright;

TEST_CASE("rows and cells are read as RFC 4180 says") {
    const auto rows = read_csv("a,b\r\n\"c,d\",\"e\"\"f\"\n\"g\nh\",\n");
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].cells == std::vector<std::string>{"a", "b"});
    CHECK(rows[1].cells == std::vector<std::string>{"c,d", "e\"f"});
    CHECK(rows[2].cells == std::vector<std::string>{"g\nh", ""});
    CHECK(rows[2].line == 3);
}

TEST_CASE("a row begins on the line on which it begins, also behind line breaks in quotes") {
    const auto rows = read_csv("\"a\n\nb\"\nc");
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].line == 1);
    CHECK(rows[1].line == 4);
}

TEST_CASE("a byte order mark belongs to no cell") {
    CHECK(read_csv("\xEF\xBB\xBFname").at(0).cells.at(0) == "name");
    CHECK(read_csv("\xEF\xBB\xBF").empty());
    CHECK(read_csv("").empty());
}

TEST_CASE("a cell that begins as a marked file does is written so that it comes back") {
    CHECK(csv_row({"\xEF\xBB\xBFname"}) == "\"\xEF\xBB\xBFname\"\n");
    CHECK(read_csv(csv_row({"\xEF\xBB\xBFname"})).at(0).cells.at(0) == "\xEF\xBB\xBFname");
}

TEST_CASE("a quote that is not closed is shown where it was opened") {
    const Fault fault = fault_of([] { read_csv("a\né,\"b\n"); });
    CHECK(fault.code == "unclosed-quote");
    CHECK(fault.line == 2);
    CHECK(fault.column == 3);
}

TEST_CASE("a quote out of place is shown where it stands") {
    const Fault inside = fault_of([] { read_csv("a,b\"c\n"); });
    CHECK(inside.code == "stray-quote");
    CHECK(inside.column == 4);
    const Fault behind = fault_of([] { read_csv("\"a\"b\n"); });
    CHECK(behind.code == "stray-quote");
    CHECK(behind.column == 4);
}

TEST_CASE("a written table is read back") {
    CHECK(rc::check([] {
        const auto cell = rc::gen::container<std::string>(
            rc::gen::element('a', ' ', ',', '"', '\n', '\r', '\x7f', '=', '-', '1', '\''));
        const auto row = rc::gen::nonEmpty(rc::gen::container<std::vector<std::string>>(cell));
        const auto table = *rc::gen::container<std::vector<std::vector<std::string>>>(row);
        std::string text;
        for (const auto& cells : table) text += csv_row(cells);
        std::vector<std::vector<std::string>> back;
        for (const CsvRow& read : read_csv(text)) {
            back.emplace_back();
            for (const std::string& written : read.cells) back.back().push_back(unguarded(written));
        }
        RC_ASSERT(back == table);
    }));
}
