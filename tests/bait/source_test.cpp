#include <catch2/catch.hpp>

#include "bait/property.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"

using namespace baitwright;

TEST_CASE("a source that is written reads back as the same source") {
    for (const char* text : {"published: USDA SR24 18079", "measured: level vessel, 2026-03-01", "learned: 6 mixes",
                             "default: from memory", "default"}) {
        const Source source = parse_source(text);
        CHECK(source_text(source) == text);
        CHECK(parse_source(source_text(source)).origin == source.origin);
    }
}

TEST_CASE("a source is read whatever its case and blanks, colons in it are kept") {
    const Source source = parse_source(" Published :  a table: page 3");
    CHECK(source.origin == Origin::published);
    CHECK(source.detail == "a table: page 3");
}

TEST_CASE("a source of no known kind is refused with the nearest word") {
    const Fault fault = fault_of([] { parse_source("publsihed: somewhere"); });
    CHECK(fault.code == "unknown-source");
    CHECK_THAT(fault.hint, Catch::Contains("published"));
    CHECK(fault_of([] { parse_source("somebody said so"); }).code == "unknown-source");
}

TEST_CASE("a property is known once it has a source, and stated unless it was derived") {
    Property<Ratio> property;
    CHECK_FALSE(property.known());
    CHECK_FALSE(property.stated());
    property.source.origin = Origin::derived;
    CHECK(property.known());
    CHECK_FALSE(property.stated());
    property.source.origin = Origin::measured;
    CHECK(property.stated());
}
