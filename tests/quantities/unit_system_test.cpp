#include "quantities/unit_system.h"

#include <catch2/catch.hpp>

#include "quantities/fault_of.h"
#include "quantities/quantity_text.h"
#include "quantities/unit_table.h"

using namespace baitwright;

namespace {

std::string symbol_used(const char* text) {
    const UnitRow* unit = unit_used(text);
    return unit ? std::string(unit->symbol) : std::string();
}

}  // namespace

TEST_CASE("a whole quantity tells its unit, the largest of its parts") {
    CHECK(symbol_used("8ft") == "ft");
    CHECK(symbol_used(" 8 feet 6 inches ") == "ft");
    CHECK(symbol_used("1 lb 4 oz") == "lb");
    CHECK(symbol_used("2½ pt") == "pt");
    CHECK(symbol_used("10 fl oz") == "floz");
    CHECK(symbol_used("46F") == "degF");
    CHECK(symbol_used("400 g") == "g");
}

TEST_CASE("what is no quantity, or not a whole one, tells no unit") {
    for (const char* text : {"", "12", "ft", "silt bed", "8 ft of water", "400 g/kg", "£4/kg", "1 lb 4 ft", "09:30",
                             "8 ft and", "2 in the shed"})
        CHECK(symbol_used(text).empty());
}

TEST_CASE("a system of units has three names, and any other is refused with all of them") {
    CHECK(parse_unit_system("metric") == UnitSystem::metric);
    CHECK(parse_unit_system(" Imperial ") == UnitSystem::imperial);
    CHECK(parse_unit_system("both") == UnitSystem::both);
    const Fault fault = fault_of([] { parse_unit_system("feet"); });
    CHECK(fault.code == "unknown-units");
    CHECK(fault.hint == "say metric, imperial or both");
}
