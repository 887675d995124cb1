#include "bait/mix_property.h"

#include <catch2/catch.hpp>

#include <set>

#include "bait/draft_shelf.h"

namespace baitwright {

TEST_CASE("the facts of every property stand at its place under a key of their own") {
    std::set<std::string_view> keys;
    for (const MixPropertyFacts& facts : mix_properties()) {
        CHECK(&facts_of(facts.property) == &facts);
        CHECK(keys.insert(facts.key).second);
        CHECK(facts.lowest < facts.highest);
        CHECK(facts.step > 0);
    }
}

// By hand: 1 kg at 420 g/l and 1 kg at 620 g/l fill 2.381 l and 1.613 l; 2 kg in 3.994 l are 500.8 g/l.
TEST_CASE("the loose volumes of two parts are added") {
    const auto crumb = terms_of(MixProperty::loose_density, draft::shelf().ingredient("brown crumb")).value(),
               maize = terms_of(MixProperty::loose_density, draft::shelf().ingredient("maize meal")).value();
    CHECK((crumb.amount + maize.amount) / (crumb.weight + maize.weight) == Approx(500.8).margin(0.05));
}

TEST_CASE("absorption is a mean over what takes water") {
    const auto crumb = terms_of(MixProperty::absorption, draft::shelf().ingredient("brown crumb")).value(),
               casters = terms_of(MixProperty::absorption, draft::shelf().ingredient("casters")).value();
    CHECK(crumb.amount == Approx(0.65));
    CHECK(crumb.weight == 1);
    CHECK(casters.amount == 0);
    CHECK(casters.weight == 0);
}

TEST_CASE("percents are in percent, and binder in its own number") {
    const Ingredient flour = draft::shelf().ingredient("wheat flour");
    CHECK(terms_of(MixProperty::fines, flour).value().amount == Approx(60));
    CHECK(terms_of(MixProperty::moisture, flour).value().amount == Approx(11.9));
    CHECK(terms_of(MixProperty::binder, flour).value().amount == Approx(4));
}

TEST_CASE("what is not known of a meal is not known, and a soil holds no food") {
    const Ingredient flour = draft::shelf().ingredient("wheat flour"),
                     leam = draft::shelf().ingredient("grey leam, dry");
    CHECK_FALSE(terms_of(MixProperty::protein, flour));
    CHECK_FALSE(terms_of(MixProperty::price, flour));
    CHECK(terms_of(MixProperty::protein, leam).value().amount == 0);
    CHECK_FALSE(terms_of(MixProperty::ash, leam));
}

}  // namespace baitwright
