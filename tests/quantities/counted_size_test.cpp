#include <catch2/catch.hpp>
#include <string>

#include "quantities/fault_of.h"
#include "quantities/quantity_text.h"

using namespace baitwright;

TEST_CASE("a count and a size are told apart") {
    struct Row {
        const char* text;
        int count;
        const char* size;
    };
    const Row row = GENERATE(values<Row>({
        {"12x55mm", 12, "55mm"},
        {"4 x 250 ml", 4, "250 ml"},
        {"3×egg", 3, "egg"},
        {"2 X toss pot 25", 2, "toss pot 25"},
        {"5*½ pt", 5, "½ pt"},
        {"100000x1mm", 100000, "1mm"},
        {" 1 x box ", 1, "box"},
    }));
    CAPTURE(row.text);
    const auto read = parse_counted_size(row.text);
    CHECK(read.count == row.count);
    CHECK(read.size == row.size);
}

TEST_CASE("a size without a count is refused, and so is a count that is none") {
    struct Row {
        const char* text;
        const char* code;
        const char* message;
    };
    const std::string whole = " does not count in whole numbers from 1 to 100000";
    const Row row = GENERATE(values<Row>({
        {"55mm", "no-count", "'55mm' does not say how many"},
        {"egg", "no-count", "'egg' does not say how many"},
        {"box", "no-count", "'box' does not say how many"},
        {"x55mm", "no-count", "'x55mm' does not say how many"},
        {"", "no-count", "'' does not say how many"},
        {"12x", "no-count", "'12x' does not say how many of what"},
        {"0x55mm", "bad-count", nullptr},
        {"-3x55mm", "bad-count", nullptr},
        {"+3x55mm", "bad-count", nullptr},
        {"1.5x55mm", "bad-count", nullptr},
        {"½xegg", "bad-count", nullptr},
        {"12 kg x 3", "bad-count", nullptr},
        {"100001x1mm", "bad-count", nullptr},
        {"99999999999999999999x1mm", "bad-count", nullptr},
    }));
    CAPTURE(row.text);
    const auto fault = fault_of([&] { parse_counted_size(row.text); });
    CHECK(fault.code == row.code);
    CHECK(fault.message == (row.message ? row.message : "'" + std::string(row.text) + "'" + whole));
    CHECK_THAT(fault.hint, Catch::EndsWith("as in 12x55mm or 3x250ml"));
}
