#include "reference/reference_rows.h"

#include <catch2/catch.hpp>

using namespace baitwright::reference;

// RFC 4180, section 2, rules 1-7 (from memory).
TEST_CASE("reference rows keep commas, quotes and line ends that are quoted") {
    const auto rows = rows_of("a,b\r\n\"1,5\",\"say \"\"no\"\"\"\r\n\"two\nlines\",\r\n");
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].at("a") == "1,5");
    CHECK(rows[0].at("b") == "say \"no\"");
    CHECK(rows[1].at("a") == "two\nlines");
    CHECK(rows[1].at("b").empty());
}

TEST_CASE("the last reference row may lack its line end") {
    CHECK(rows_of("a,b\n1,2").size() == 1);
}

TEST_CASE("reference rows that are torn are refused") {
    CHECK_THROWS_WITH(rows_of("a,b\n1\n"), Catch::Contains("number of fields"));
    CHECK_THROWS_WITH(rows_of("a\n\"1\n"), Catch::Contains("does not end"));
    CHECK_THROWS_WITH(rows_of("a\n\"1\"2\n"), Catch::Contains("after a quoted field"));
}
