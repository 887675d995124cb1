// What a sum leaves out is told by its reason: no price at all, or one in another currency.
#include <catch2/catch.hpp>
#include <regex>
#include <string>

#include "answers/money/cost_strategy.h"
#include "answers/sessions.h"
#include "day_of.h"
#include "report/cost_plot.h"
#include "report/cost_report.h"
#include "report/display.h"
#include "report/plan_shopping.h"
#include "report/shop_report.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

void sell(MemoryShelf& shelf, const std::string& name, const char* currency) {
    Ingredient ingredient = bank().ingredient(name);
    ingredient.packs = {{1.0 * kilogram, Money(390, currency_named(currency)), day_of("2026-03-01"), {}}};
    shelf.put(ingredient);
}

/// Casters in euros, maggots without a price, the rest in pounds.
StrategyCost cost_in_two_currencies() {
    MemoryShelf shelf(&bank());
    sell(shelf, "casters", "EUR");
    sell(shelf, "sweetcorn", "GBP");
    sell(shelf, "cooked hemp", "GBP");
    CostRequest request;
    request.on = day_of("2026-11-25");
    return cost_strategy(shelf,
                         session({cups("casters", 100, 2), cups("maggots", 100, 2), cups("sweetcorn", 100, 2),
                                  cups("cooked hemp", 100, 2)}),
                         {}, request);
}

NotOnSale missing(const char* name, NotOnSale::Why why) {
    return {name, 100.0 * gram, why, Mass{}, 100.0 * gram};
}

/// As it is read, whatever the lines.
std::string in_one_line(const Told& told) {
    return std::regex_replace(told.text(), std::regex("\\s+"), " ");
}

}  // namespace

TEST_CASE("the reasons why a sum leaves things out are told one by one") {
    CHECK(no_price_text(1, 0) == "1 thing has no price");
    CHECK(no_price_text(4, 0) == "4 things have no price");
    CHECK(no_price_text(0, 1) == "1 thing is priced in another currency");
    CHECK(no_price_text(2, 3) == "2 things have no price; 3 things are priced in another currency");
    CHECK(no_price_text(0, 0).empty());
}

TEST_CASE("a cost tells of what is priced in another currency as such, in words, on the list and in the picture") {
    const StrategyCost cost = cost_in_two_currencies();
    const std::string both = "1 thing has no price; 1 thing is priced in another currency";
    CHECK(not_in_sum_text(cost) == both);
    CHECK_THAT(in_one_line(cost_told(cost)), Catch::Contains("to pay; " + both));
    CHECK_THAT(cost_plot({cost}), Catch::Contains(", at least: " + both));
    CHECK_THAT(shopping_text(cost),
               Catch::Contains("casters (priced in another currency)") && Catch::Contains("maggots (no price)"));
}

TEST_CASE("a list to buy by counts what is priced in another currency apart") {
    ShopAnswer answer;
    answer.sessions.resize(1);
    answer.currency = &currency_named("GBP");
    answer.missing = {missing("casters", NotOnSale::Why::other_currency), missing("maggots", NotOnSale::Why::no_price),
                      missing("worms", NotOnSale::Why::not_sold_there)};
    CHECK_THAT(in_one_line(shop_told(answer)),
               Catch::Contains("no sum; 1 thing has no price; 1 thing is priced in another "
                               "currency; 1 thing is not sold where you go"));
    answer.missing.pop_back();
    answer.missing.pop_back();
    CHECK_THAT(in_one_line(shop_told(answer)), Catch::Contains("no sum; 1 thing is priced in another currency"));
}
