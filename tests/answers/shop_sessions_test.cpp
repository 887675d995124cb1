#include "answers/money/shop_sessions.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <numeric>

#include "answers/money/shop_needs.h"
#include "answers/sessions.h"
#include "day_of.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

const Date first = parse_date("2026-11-28");

Pack shop_pack(double grams, std::int64_t pence, const char* shop = "", const char* on = "2026-03-01",
               const char* currency = "GBP") {
    return {grams * gram, Money(pence, currency_named(currency)), day_of(on), shop};
}

IngredientNeed need(const std::string& name, double grams, std::vector<Pack> packs,
                    std::optional<Time> keeps = std::nullopt) {
    Ingredient ingredient = bank().ingredient(name);
    ingredient.packs = std::move(packs);
    ingredient.keeps = {keeps, std::nullopt, std::nullopt};
    return {ingredient, grams * gram, {}};
}

std::vector<SessionNeed> weekly(const std::vector<std::vector<IngredientNeed>>& needs) {
    std::vector<SessionNeed> sessions;
    for (const auto& of_session : needs)
        sessions.push_back({"far bank", first + std::chrono::days{7 * static_cast<int>(sessions.size())}, of_session});
    return sessions;
}

ShopRequest asking() {
    ShopRequest request;
    request.today = first;
    return request;
}

ShopAnswer shop(const std::vector<SessionNeed>& sessions, const StockOnHand& stock = {},
                const ShopRequest& request = asking()) {
    return shop_sessions(sessions, stock, request);
}

}  // namespace

// By hand: 8 kg at the most, for 3 sessions of 900 g: 2.7 kg are a 2 kg and a 1 kg shop_pack, 6.10; three of 1 kg
// are 6.60.
TEST_CASE("sessions that share packs are cheaper than each on its own") {
    const auto packs = std::vector<Pack>{shop_pack(1000, 220), shop_pack(2000, 390), shop_pack(5000, 875)};
    const IngredientNeed crumb = need("brown crumb", 900, packs);
    const ShopAnswer answer = shop(weekly({{crumb}, {crumb}, {crumb}}));
    CHECK(answer.total_minor == 610);
    REQUIRE(answer.lines.size() == 1);
    CHECK(answer.lines[0].left_over.in(gram) == Approx(300));
    std::int64_t single = 0;
    for (int i = 0; i < 3; ++i) single += shop(weekly({{crumb}})).total_minor;
    CHECK(single == 660);
}

TEST_CASE("what does not keep to the next session is bought anew for it") {
    const auto packs = std::vector<Pack>{shop_pack(1000, 220)};
    const ShopAnswer keeps =
        shop(weekly({{need("casters", 300, packs, 8.0 * day)}, {need("casters", 300, packs, 8.0 * day)}}));
    CHECK(keeps.total_minor == 220);
    const ShopAnswer spoils =
        shop(weekly({{need("casters", 300, packs, 6.0 * day)}, {need("casters", 300, packs, 6.0 * day)}}));
    CHECK(spoils.total_minor == 440);
    CHECK(spoils.lines[0].past_best.in(gram) == Approx(700));
    CHECK(spoils.packs.back().session == 1);
}

TEST_CASE("uneven gaps between sessions count by the fewest sessions that it keeps through") {
    std::vector<SessionNeed> sessions = weekly({{}, {}, {}, {}});
    sessions[1].on = first + std::chrono::days{1};
    CHECK(sessions_good_for({14.0 * day, {}, {}}, sessions) == 2);
    CHECK(sessions_good_for({6.0 * day, {}, {}}, sessions) == 1);
    CHECK(sessions_good_for({{}, 21.0 * day, {}}, sessions) == 4);
    CHECK(sessions_good_for({}, sessions) == 4);
    CHECK(sessions_good_for({0.1 * day, {}, {}}, sessions) == 1);
}

TEST_CASE("whole numbers by session come to the sum rounded up, however small each is") {
    CHECK(whole_numbers({0.3, 0.3, 0.3, 0.3}) == std::vector<std::int64_t>{1, 0, 0, 1});
    CHECK(whole_numbers({500.0, 250.0}) == std::vector<std::int64_t>{500, 250});
    CHECK(rc::check([] {
        std::vector<double> grams;
        for (int i = *rc::gen::inRange(1, 40); i > 0; --i) grams.push_back(0.01 * *rc::gen::inRange(0, 200000));
        const std::vector<std::int64_t> whole = whole_numbers(grams);
        double so_far = 0;
        std::int64_t bought = 0;
        for (std::size_t i = 0; i < grams.size(); ++i) {
            so_far += grams[i];
            bought += whole[i];
            RC_ASSERT(static_cast<double>(bought) >= so_far - 1e-5);
            RC_ASSERT(static_cast<double>(bought) < so_far + 1);
        }
    }));
}

TEST_CASE("the shed is used first, and what is past its best by then is not") {
    const auto packs = std::vector<Pack>{shop_pack(1000, 220)};
    const auto sessions = weekly({{need("brown crumb", 600, packs)}, {need("brown crumb", 600, packs)}});
    StockOnHand good, short_lived, gone;
    good.put("brown crumb", {1.2 * kilogram, day_of("2027-03-01")});
    short_lived.put("brown crumb", {1.2 * kilogram, day_of("2026-12-01")});
    gone.put("brown crumb", {1.2 * kilogram, day_of("2026-11-01")});
    CHECK(shop(sessions, good).packs.empty());
    CHECK(shop(sessions, good).total_minor == 0);
    const ShopAnswer half = shop(sessions, short_lived);
    CHECK(half.total_minor == 220);
    CHECK(half.lines[0].from_stock.in(gram) == Approx(600));
    CHECK(shop(sessions, gone).total_minor == 440);
}

TEST_CASE("a charge for bringing it sends one to another shop, and one shop may cost more") {
    const auto sessions =
        weekly({{need("brown crumb", 900, {shop_pack(1000, 200, "the mill"), shop_pack(1000, 260, "the village shop")}),
                 need("casters", 300, {shop_pack(320, 390, "the village shop")})}});
    CHECK(shop(sessions).total_minor == 590);
    ShopRequest request = asking();
    request.deliveries = {{"the mill", Money(100, currency_named("GBP"))}};
    const ShopAnswer brought = shop(sessions, {}, request);
    CHECK(brought.total_minor == 650);
    CHECK(brought.delivery_minor == 0);
    request = asking();
    request.trips = ShopRequest::Trips::one_shop;
    CHECK(shop(sessions, {}, request).total_minor == 650);
    const auto apart = weekly({{need("brown crumb", 900, {shop_pack(1000, 200, "the mill")}),
                                need("casters", 300, {shop_pack(320, 390, "the village shop")})}});
    const Fault fault = fault_of([&] { shop(apart, {}, request); });
    CHECK(fault.code == "no-one-shop");
    CHECK_THAT(fault.message,
               Catch::Contains("the mill lacks casters") && Catch::Contains("the village shop lacks brown crumb"));
}

TEST_CASE("no more is left over than is wanted, or it is said how much must be") {
    const auto sessions = weekly({{need("brown crumb", 900, {shop_pack(300, 120), shop_pack(1000, 200)})}});
    CHECK(shop(sessions).total_minor == 200);
    ShopRequest request = asking();
    request.most_left_over = 50.0 * gram;
    const ShopAnswer tight = shop(sessions, {}, request);
    CHECK(tight.total_minor == 360);
    CHECK(tight.lines[0].left_over.in(gram) == Approx(0));
    const auto coarse = weekly({{need("brown crumb", 900, {shop_pack(1000, 200)})}});
    const Fault fault = fault_of([&] { shop(coarse, {}, request); });
    CHECK(fault.code == "too-much-left");
    CHECK_THAT(fault.message, Catch::Contains("100 g of brown crumb"));
    CHECK(fault.hint == "allow more with --most-left, or leave it out");
    request.rather_at = "the mill";  // whose packs alone are looked at
    const auto both = weekly(
        {{need("brown crumb", 900, {shop_pack(300, 120, "the village shop"), shop_pack(1000, 200, "the mill")})}});
    CHECK_THAT(fault_of([&] { shop(both, {}, request); }).hint,
               Catch::Contains("say with --at where else than at the mill"));
}

TEST_CASE("what has no price, or is not sold where one goes, is named and left off") {
    const auto sessions =
        weekly({{need("brown crumb", 900, {}), need("casters", 300, {shop_pack(320, 390, "the village shop")}),
                 need("sweetcorn", 300, {shop_pack(340, 115, "the mill")})}});
    ShopRequest request = asking();
    request.at = {"the mill"};
    const ShopAnswer answer = shop(sessions, {}, request);
    CHECK(answer.total_minor == 115);
    REQUIRE(answer.missing.size() == 2);
    CHECK(answer.missing[0].why == NotOnSale::Why::no_price);
    CHECK(answer.missing[1].why == NotOnSale::Why::not_sold_there);
    CHECK(answer.warnings.at(0).code == "no-price");
    CHECK(answer.warnings.at(1).code == "not-sold-there");
    request.at = {"the mlil"};
    CHECK(fault_of([&] { shop(sessions, {}, request); }).hint == "did you mean 'the mill'?");
}

TEST_CASE("what the usual shop sells is bought there, dear or not, and the rest where it is sold") {
    const auto sessions =
        weekly({{need("brown crumb", 900, {shop_pack(1000, 210, "the village shop"), shop_pack(1000, 260, "the mill")}),
                 need("casters", 300, {shop_pack(320, 390, "the village shop")})}});
    ShopRequest request = asking();
    request.rather_at = "the mill";
    const ShopAnswer answer = shop(sessions, {}, request);
    CHECK(answer.complete());
    CHECK(answer.total_minor == 260 + 390);
    CHECK(answer.rather_at == "the mill");
    request.rather_at = "the kiosk";  // sells none of it
    const ShopAnswer elsewhere = shop(sessions, {}, request);
    CHECK(elsewhere.total_minor == 210 + 390);
    CHECK_FALSE(elsewhere.rather_at);
}

TEST_CASE("what has no price and is in the shed is no lack") {
    StockOnHand stock;
    stock.put("brown crumb", {1.0 * kilogram});
    const ShopAnswer answer = shop(weekly({{need("brown crumb", 900, {})}}), stock);
    CHECK(answer.missing.empty());
    CHECK(answer.packs.empty());
}

TEST_CASE("what is priced in another currency alone stands on the list without a sum") {
    const auto sessions = weekly({{need("brown crumb", 900, {shop_pack(1000, 200)}),
                                   need("casters", 300, {shop_pack(320, 390, "", "2026-03-01", "EUR")})}});
    const ShopAnswer answer = shop(sessions);
    CHECK(answer.currency->code == "GBP");
    CHECK(answer.total_minor == 200);
    REQUIRE(answer.missing.size() == 1);
    CHECK(answer.missing[0].name == "casters");
    CHECK(answer.missing[0].why == NotOnSale::Why::other_currency);
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings[0].code == "other-currency");
    CHECK(answer.warnings[0].answer_is_no);
    CHECK_THAT(answer.warnings[0].message, Catch::Contains("casters (€3.90)"));
    ShopRequest request = asking();
    request.usual_currency = &currency_named("EUR");
    const ShopAnswer in_euros = shop(sessions, {}, request);
    CHECK(in_euros.total_minor == 390);
    CHECK(in_euros.missing.at(0).name == "brown crumb");
}

TEST_CASE("a newer price in another currency does not hide the one that can be paid") {
    const auto sessions =
        weekly({{need("brown crumb", 900, {shop_pack(1000, 200), shop_pack(1000, 50, "", "2026-09-01", "EUR")}),
                 need("sweetcorn", 300, {shop_pack(340, 115)})}});
    const ShopAnswer answer = shop(sessions);
    CHECK(answer.total_minor == 315);
    CHECK(answer.complete());
}

TEST_CASE("a delivery in another currency than the packs is refused, and both are named") {
    const auto sessions = weekly({{need("brown crumb", 900, {shop_pack(1000, 200, "the mill")})}});
    ShopRequest request = asking();
    request.deliveries = {{"the mill", parse_money("€2.00")}};
    const Fault fault = fault_of([&] { shop(sessions, {}, request); });
    CHECK(fault.code == "mixed-currencies");
    CHECK_THAT(fault.message, Catch::Contains("GBP") && Catch::Contains("EUR"));
    CHECK_THAT(fault.hint, Catch::Contains("GBP"));
}

TEST_CASE("a shop_pack far larger than any need and an old price are minded") {
    const ShopAnswer answer =
        shop(weekly({{need("brown crumb", 400, {shop_pack(25000, 3000, "the mill", "2025-03-01")})}}));
    REQUIRE(answer.warnings.size() == 2);
    CHECK(answer.warnings[0].code == "stale-price");
    CHECK(answer.warnings[1].code == "more-left-than-used");
}

TEST_CASE("every gram of sessions drawn at random is bought, in stock, used or left, and every penny adds up") {
    CHECK(rc::check([] {
        const char* names[] = {"brown crumb", "casters", "sweetcorn"};
        std::vector<std::vector<IngredientNeed>> needs(static_cast<std::size_t>(*rc::gen::inRange(1, 9)));
        const int life = *rc::gen::inRange(1, 60);
        for (auto& of_session : needs)
            for (const char* name : names)
                if (*rc::gen::inRange(0, 3) > 0)
                    of_session.push_back(need(name, *rc::gen::inRange(1, 3000),
                                              {shop_pack(300, 100, "the mill"), shop_pack(1000, 290)}, life * day));
        StockOnHand stock;
        const int stocked = *rc::gen::inRange(0, 3000);
        if (stocked > 0) stock.put("casters", {stocked * gram, day_of("2027-01-01")});
        const ShopAnswer answer = shop(weekly(needs), stock);
        std::int64_t packs = 0;
        for (const PackBought& bought : answer.packs) packs += bought.total().minor();
        RC_ASSERT(packs + answer.delivery_minor == answer.total_minor);
        std::int64_t by_shop = 0;
        for (const ShopSum& sum : answer.shops) by_shop += sum.packs.minor();
        RC_ASSERT(by_shop == packs);
        for (const ShopLine& line : answer.lines) {
            const double in_stock = line.name == "casters" ? stocked : 0;
            RC_ASSERT(std::abs(in_stock + line.bought.in(gram)-line.need.in(gram)-line.left_over.in(gram)) < 1e-6);
            RC_ASSERT(line.from_stock <= line.need);
        }
    }));
}

TEST_CASE("what is left of the shed is not laid to the packs") {
    StockOnHand stock;
    stock.put("casters", {700.0 * gram, first + std::chrono::days{2}});
    const IngredientNeed casters = need("casters", 104, {shop_pack(320, 390)});
    const ShopAnswer answer = shop(weekly({{casters}, {casters}, {casters}}), stock);
    REQUIRE(answer.lines.size() == 1);
    CHECK(answer.lines[0].bought.in(gram) == Approx(320));     // of which 112 g are left
    CHECK(answer.lines[0].left_over.in(gram) == Approx(708));  // and 596 g of the shed's
    CHECK(answer.warnings.empty());
}

// By hand: 1.5 kg are needed, 600 g are in the shed, and the first session takes 500 g of them.
TEST_CASE("what nobody sells stands on the list with what the shed lacks of it, and the answer is no") {
    const IngredientNeed unpriced = need("maize meal", 500, {{1.0 * kilogram, std::nullopt, {}, {}}});
    const IngredientNeed elsewhere = need("brown crumb", 500, {shop_pack(1000, 220, "the mill")});
    const IngredientNeed sold = need("fishmeal, brown", 500, {shop_pack(1000, 300, "the village shop")});
    StockOnHand stock;
    stock.put("maize meal", {600.0 * gram});
    ShopRequest request = asking();
    request.at = {"the village shop"};
    const auto sessions = weekly({{unpriced, elsewhere, sold}, {unpriced, sold}, {unpriced}});
    const ShopAnswer answer = shop(sessions, stock, request);
    CHECK(answer.total_minor == 300);
    CHECK_FALSE(answer.complete());
    REQUIRE(answer.missing.size() == 2);
    const NotOnSale& crumb = answer.missing[0];
    CHECK(crumb.name == "brown crumb");
    CHECK(crumb.why == NotOnSale::Why::not_sold_there);
    CHECK(crumb.lacking.in(gram) == Approx(500));
    const NotOnSale& meal = answer.missing[1];
    CHECK(meal.why == NotOnSale::Why::no_price);
    CHECK(meal.need.in(gram) == Approx(1500));
    CHECK(meal.from_stock.in(gram) == Approx(600));
    CHECK(meal.lacking.in(gram) == Approx(900));
    CHECK(meal.session == 1);
    int no = 0;
    for (const Warning& warning : answer.warnings) no += warning.answer_is_no ? 1 : 0;
    CHECK(no == 2);
    stock.put("maize meal", {900.0 * gram});
    CHECK(shop(sessions, stock, request).missing.size() == 1);
}

TEST_CASE("each thing that the sessions take is sold, in the shed, or on the list as missing") {
    CHECK(rc::check([] {
        const char* const names[]{"brown crumb", "maize meal", "fishmeal, brown"};
        std::vector<IngredientNeed> needs;
        StockOnHand stock;
        for (int i = 0; i < 3; ++i) {
            std::vector<Pack> packs;
            if (*rc::gen::inRange(0, 2) == 1)
                packs.push_back(shop_pack(1000, 220, *rc::gen::inRange(0, 2) == 1 ? "the mill" : "bait barn"));
            needs.push_back(need(names[i], *rc::gen::inRange(1, 900), packs));
            if (*rc::gen::inRange(0, 2) == 1) stock.put(names[i], {1.0 * *rc::gen::inRange(1, 2000) * gram});
        }
        needs.push_back(need("casters", 100, {shop_pack(1000, 220, "the mill")}));
        ShopRequest request = asking();
        request.at = {"the mill"};
        const auto sessions = weekly({needs, needs});
        const ShopAnswer answer = shop(sessions, stock, request);
        RC_ASSERT(answer.lines.size() + answer.missing.size() == needs.size());
        for (const NotOnSale& missing : answer.missing) {
            RC_ASSERT(missing.lacking > Mass{});
            RC_ASSERT(std::abs((missing.need - missing.from_stock - missing.lacking).in(gram)) < 1e-6);
        }
    }));
}
