#include "bait/pricing.h"

#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"
#include "day_of.h"

using namespace baitwright;

namespace {

Pack pack(std::variant<Mass, Volume> size, std::int64_t pence, std::string on) {
    return {size, Money(pence, currency_named("GBP")), day_of(on), {}};
}

Ingredient crumb_with(std::vector<Pack> packs) {
    Ingredient crumb = draft::shelf().ingredient("brown crumb");
    crumb.packs = std::move(packs);
    return crumb;
}

}  // namespace

TEST_CASE("use is priced by the smallest pack that has a price") {
    const Ingredient crumb = crumb_with({pack(5.0 * kilogram, 800, "2026-05-01"),
                                         {0.5 * kilogram, {}, {}, {}},
                                         pack(1.0 * kilogram, 210, "2026-03-01")});
    REQUIRE(pricing_pack(crumb) != nullptr);
    CHECK(pricing_pack(crumb)->price->minor() == 210);
}

TEST_CASE("of one size the pack priced last counts, then the cheapest") {
    const Ingredient later =
        crumb_with({pack(1.0 * kilogram, 190, "2026-03-01"), pack(1.0 * kilogram, 230, "2026-04-01")});
    CHECK(pricing_pack(later)->price->minor() == 230);
    const Ingredient same_day =
        crumb_with({pack(1.0 * kilogram, 230, "2026-04-01"), pack(1.0 * kilogram, 210, "2026-04-01")});
    CHECK(pricing_pack(same_day)->price->minor() == 210);
}

TEST_CASE("what has no price costs nothing that is known") {
    CHECK(pricing_pack(crumb_with({})) == nullptr);
    CHECK(pricing_pack(crumb_with({{1.0 * kilogram, {}, {}, {}}})) == nullptr);
    CHECK_FALSE(exact_cost_minor(crumb_with({}), 1.0 * kilogram).has_value());
}

TEST_CASE("the cost of use is its share of the pack") {
    const Ingredient crumb = crumb_with({pack(1.5 * kilogram, 300, "2026-03-01")});
    CHECK(exact_cost_minor(crumb, 400.0 * gram).value() == Approx(80));
    CHECK(exact_cost_minor(crumb, 3.0 * kilogram).value() == Approx(600));
}

TEST_CASE("a pack sold by volume holds what its loose density, or a liquid's density, says") {
    Ingredient crumb = crumb_with({pack(1.0 * litre, 210, "2026-03-01")});
    CHECK(mass_in(crumb.packs.front(), crumb).in(gram) == Approx(420));
    Ingredient molasses = draft::shelf().ingredient("molasses");
    molasses.packs = {pack(500.0 * millilitre, 350, "2026-03-01")};
    CHECK(mass_in(molasses.packs.front(), molasses).in(gram) == Approx(700));
    CHECK(exact_cost_minor(molasses, 70.0 * gram).value() == Approx(35));
}

TEST_CASE("what is offered is the newest price of each size at each shop") {
    Pack mill = pack(1.0 * kilogram, 180, "2026-01-01");
    mill.shop = "the mill";
    const Ingredient crumb = crumb_with({pack(1.0 * kilogram, 190, "2026-03-01"),
                                         pack(1.0 * kilogram, 230, "2026-04-01"),
                                         pack(5.0 * kilogram, 800, "2025-05-01"),
                                         {2.0 * kilogram, {}, {}, {}},
                                         mill});
    const std::vector<Pack> offered = offered_packs(crumb);
    REQUIRE(offered.size() == 3);
    CHECK(offered[0].price->minor() == 230);
    CHECK(offered[1].price->minor() == 800);
    CHECK(offered[2].shop == "the mill");
}

TEST_CASE("of prices in several currencies those in the one that is asked for count, and no other") {
    Pack euros = pack(1.0 * kilogram, 250, "2026-06-01");
    euros.price = Money(250, currency_named("EUR"));
    const Ingredient crumb = crumb_with({pack(1.0 * kilogram, 210, "2026-03-01"), euros});
    const Currency &gbp = currency_named("GBP"), &chf = currency_named("CHF");
    CHECK(pricing_pack(crumb, &gbp)->price->minor() == 210);
    CHECK(pricing_pack(crumb, &euros.price->currency())->price->minor() == 250);
    CHECK(pricing_pack(crumb, &chf) == nullptr);
    CHECK(exact_cost_minor(crumb, 500.0 * gram, &gbp).value() == Approx(105));
    CHECK_FALSE(exact_cost_minor(crumb, 500.0 * gram, &chf));
    CHECK(offered_packs(crumb, &gbp).at(0).price->minor() == 210);  // an older price, and in the currency
    CHECK(offered_packs(crumb, &chf).empty());
}

TEST_CASE(
    "of one size at one shop the newer price stands whatever its currency; of one day in two currencies both do") {
    Pack euros = pack(1.0 * kilogram, 250, "2026-06-01");
    euros.price = Money(250, currency_named("EUR"));
    const std::vector<Pack> newer = offered_packs(crumb_with({pack(1.0 * kilogram, 210, "2026-03-01"), euros}));
    REQUIRE(newer.size() == 1);
    CHECK(newer[0].price->currency().code == "EUR");
    CHECK(offered_packs(crumb_with({pack(1.0 * kilogram, 210, "2026-06-01"), euros})).size() == 2);
}
