#include "bait/recipe_names.h"

#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"

using namespace baitwright;

TEST_CASE("every name that the shelf lacks is told, with its place and the nearest one there is") {
    Recipe recipe = draft::mix_of("bad", {{"brown crumb", 1}, {"maze meal", 1}});
    recipe.doses = {{"salt", parse_dose_rate("1 %")}, {"mollasses", parse_dose_rate("20 ml per kg dry")}};
    recipe.feel = "furm";
    const std::vector<Fault> faults = unknown_names(recipe, draft::shelf());
    REQUIRE(faults.size() == 3);
    CHECK(faults[0].code == "unknown-feel");
    CHECK(faults[0].subject == "feel");
    CHECK(faults[0].hint == "did you mean 'firm'?");
    CHECK(faults[1].code == "unknown-ingredient");
    CHECK(faults[1].subject == "part 2");
    CHECK(faults[1].hint == "did you mean 'maize meal'?");
    CHECK(faults[2].code == "unknown-ingredient");
    CHECK(faults[2].subject == "dose 2");
    CHECK(faults[2].hint == "did you mean 'molasses'?");
}

TEST_CASE("a recipe whose names are all there has no such fault, nor has an entry without a name") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(draft::crumb_mix());
    Recipe recipe = draft::mix_of("fine", {{"Brown CRUMB", 1}, {"crumb mix", 1}, {"", 1}});
    recipe.doses = {{"molasses", parse_dose_rate("20 ml per kg dry")}, {"", parse_dose_rate("1 %")}};
    recipe.feel = " FIRM ";
    CHECK(unknown_names(recipe, shelf).empty());
}

TEST_CASE("a part may be a mix, so mixes are among what may have been meant; an additive may not") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(draft::mix_of("silt bed", {{"brown crumb", 1}}));
    CHECK(unknown_part("slit bed", "part 1", shelf).hint == "did you mean 'silt bed'?");
    CHECK_THAT(unknown_additive("slit bed", "dose 1", shelf).hint, Catch::Contains("ingredient list"));
}

TEST_CASE("a feel that is like none is answered with all there are") {
    CHECK(unknown_feel("qqqqqq", draft::shelf()).hint == "the feels are: dusty, crumbly, firm, tacky, soft, slop");
}
