#include "bait/suggesting_shelf.h"

#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/recipe_names.h"
#include "bait/resolve_mix.h"
#include "bait/strategy.h"
#include "quantities/fault.h"

using namespace baitwright;

namespace {

Recipe with_unknown_parts(std::size_t count) {
    Recipe recipe;
    recipe.name = "slips";
    for (std::size_t i = 0; i < count; ++i) recipe.parts.push_back({"brown crum", 1.0 * kilogram});
    return recipe;
}

}  // namespace

TEST_CASE("a shelf without names finds what the one below it has, and suggests nothing") {
    const Shelf& shelf = draft::shelf();
    const NamelessShelf nameless(shelf);
    CHECK(nameless.find_ingredient("brown crumb"));
    CHECK(nameless.feels().size() == shelf.feels().size());
    CHECK(unknown_part("brown crum", "part 1", shelf).hint.find("brown crumb") != std::string::npos);
    CHECK(unknown_part("brown crum", "part 1", nameless).hint.find("brown crumb") == std::string::npos);
    CHECK_FALSE(unknown_part("brown crum", "part 1", nameless).hint.empty());
}

TEST_CASE("the first twenty unknown names are told with a suggestion, the others are counted") {
    const std::vector<Fault> faults = unknown_names(with_unknown_parts(50), draft::shelf());
    REQUIRE(faults.size() == 50);
    CHECK(faults[19].hint == "did you mean 'brown crumb'?");
    CHECK(faults[20].hint != faults[19].hint);
    try {
        static_cast<void>(resolve(with_unknown_parts(50), draft::shelf()));
        FAIL("nothing was thrown");
    } catch (const InputError& error) {
        REQUIRE(error.faults().size() == 21);
        CHECK(error.faults()[19].hint == "did you mean 'brown crumb'?");
        CHECK(error.faults()[20].more == 30);
    }
}
