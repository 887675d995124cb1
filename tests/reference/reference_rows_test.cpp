#include "reference/reference_rows.h"
#include "reference/whole_file.h"

#include <catch2/catch.hpp>
#include <filesystem>
#include <vector>

using namespace baitwright;
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

TEST_CASE("every table of reference values is read by some test") {
    const std::filesystem::path tests = std::filesystem::path(BAITWRIGHT_SOURCE_DIR) / "tests";
    std::string sources;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(tests))
        if (entry.path().extension() == ".cpp" || entry.path().extension() == ".h") sources += whole_file(entry.path());
    int tables = 0;
    for (const auto& entry : std::filesystem::directory_iterator(tests / "reference")) {
        if (entry.path().extension() != ".csv") continue;
        CAPTURE(entry.path().filename().string());
        CHECK(sources.find('"' + entry.path().filename().string() + '"') != std::string::npos);
        ++tables;
    }
    CHECK(tables > 40);
}
