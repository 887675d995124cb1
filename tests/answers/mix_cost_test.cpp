#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/asking.h"
#include "answers/mix/answer_mix.h"
#include "bait/random_mixes.h"
#include "day_of.h"

using namespace baitwright;
using draft::request_for;
using draft::scaled;
using draft::warns;

namespace {

Ingredient priced(const std::string& name, std::int64_t minor, const char* currency = "GBP") {
    Ingredient ingredient = draft::shelf().ingredient(name);
    ingredient.packs = {{1.0 * kilogram, Money(minor, currency_named(currency)), day_of("2026-03-01"), {}}};
    return ingredient;
}

MixRequest a_kilo() {
    return request_for(DryMass{1.0 * kilogram}, "firm");
}

}  // namespace

TEST_CASE("the parts' pence sum to the whole, which is within a penny of the exact cost") {
    CHECK(rc::check([] {
        const Recipe recipe = draft::drawn_recipe(draft::Extras::all);
        MemoryShelf shelf(&draft::shelf());
        for (const std::string& name : draft::shelf().ingredient_names())
            shelf.put(priced(name, *rc::gen::inRange(1, 900)));
        const MixAnswer answer = scaled(recipe, request_for(DryMass{draft::drawn(1, 9000, 1) * gram}), shelf);
        RC_ASSERT(answer.cost.has_value());
        std::int64_t sum = 0;
        double exact = 0;
        for (const PartAnswer& part : answer.parts) {
            sum += part.cost.value().minor();
            exact +=
                part.mass.in(kilogram) * static_cast<double>(shelf.ingredient(part.name).packs.front().price->minor());
        }
        for (const AdditiveAnswer& additive : answer.additives) {
            sum += additive.cost.value().minor();
            exact += additive.mass.in(kilogram) *
                     static_cast<double>(shelf.ingredient(additive.name).packs.front().price->minor());
        }
        RC_ASSERT(sum == answer.cost->minor());
        RC_ASSERT(std::abs(exact - static_cast<double>(sum)) <= 0.5 + 1e-9);
    }));
}

TEST_CASE("a price that is missing leaves out its own cost and the whole, and says so") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(priced("fishmeal, brown", 420));
    shelf.put(priced("brown crumb", 210));
    shelf.put(priced("maize meal", 165));
    const MixAnswer answer = scaled(draft::fishmeal_mix(), a_kilo(), shelf);
    CHECK_FALSE(answer.cost.has_value());
    CHECK(answer.parts[0].cost->minor() == 168);
    CHECK_FALSE(answer.parts[2].cost.has_value());
    REQUIRE(warns(answer, "no-price"));
    CHECK_THAT(answer.warnings.front().message, Catch::Contains("ground fishmeal pellet"));
}

TEST_CASE("a mix is priced in one currency, and what that leaves out is named with the way to mend it") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(priced("brown crumb", 210));
    shelf.put(priced("maize meal", 165, "EUR"));
    const Recipe two = draft::mix_of("two", {{"brown crumb", 1}, {"maize meal", 1}});
    const MixAnswer answer = scaled(two, a_kilo(), shelf);
    CHECK_FALSE(answer.cost.has_value());
    CHECK(answer.parts[0].cost == Money(105, currency_named("GBP")));
    CHECK_FALSE(answer.parts[1].cost.has_value());
    REQUIRE(warns(answer, "other-currency"));
    CHECK_FALSE(warns(answer, "no-price"));
    CHECK_FALSE(answer.warnings.front().answer_is_no);
    CHECK_THAT(answer.warnings.front().message,
               Catch::Contains("no price in GBP: maize meal (€1.65)") && Catch::Contains("--to GBP"));
    MixRequest request = a_kilo();
    request.usual_currency = &currency_named("EUR");
    const MixAnswer in_euros = scaled(two, request, shelf);
    CHECK_FALSE(in_euros.parts[0].cost.has_value());
    CHECK(in_euros.parts[1].cost == Money(82, currency_named("EUR")));
}

TEST_CASE("prices over a year old are named, with their days, and the answer stands") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(priced("brown crumb", 210));
    shelf.put(priced("maize meal", 165));
    const Recipe recipe = draft::mix_of("two", {{"brown crumb", 1}, {"maize meal", 1}});
    MixRequest request = a_kilo();
    CHECK_FALSE(warns(answer_mix(shelf, recipe, request), "stale-price"));  // what day it is was not said
    request.today = parse_date("2027-03-01");
    CHECK_FALSE(warns(answer_mix(shelf, recipe, request), "stale-price"));
    request.today = parse_date("2027-03-02");
    const MixAnswer answer = answer_mix(shelf, recipe, request);
    REQUIRE(warns(answer, "stale-price"));
    CHECK(answer.warnings.back().message ==
          "these prices are over a year old: brown crumb (2026-03-01) and maize meal (2026-03-01)");
    CHECK_FALSE(answer.warnings.back().answer_is_no);
    CHECK(answer.cost.has_value());
}
