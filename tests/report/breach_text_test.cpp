#include "report/breach_text.h"

#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

namespace {

PlanBreach breach_of(const std::string& rule, std::variant<Mass, Volume> limit, std::variant<Mass, Volume> planned) {
    return {rule, "it", limit, planned};
}

}  // namespace

TEST_CASE("what a plan has of what a rule limits is told in the rule's unit, and never as what is allowed") {
    CHECK(planned_against(breach_of("at most 2 kg of it", 2.0 * kilogram, 2346.0 * gram)) == "2350 g");
    CHECK(planned_against(breach_of("at most 7 g of it", 7.0 * gram, 7.087 * gram)) == "just over that");
    CHECK(planned_against(breach_of("at most 1 pt of it", 1.0 * imperial_pint, 830.0 * millilitre)) == "1.5 pt");
    CHECK(planned_against(breach_of("at most 1 l of it", 1.0 * litre, 830.0 * millilitre)) == "830 ml");
    CHECK(planned_against(breach_of("at most 2 lb of it", 2.0 * pound, 2.5 * pound)) == "2 lb 8 oz");
    PlanBreach ban{"no it", "it", std::nullopt, 7.0 * gram};
    CHECK(planned_against(ban) == "7 g");
}
