#include "answers/money/buy_packs.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include <ctime>
#include <random>

#include "answers/every_way_to_buy.h"
#include "progress_heard.h"
#include "quantities/fault.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

namespace baitwright {

namespace {

/// 1, 2 and 5 kg as in PACK_ROUNDING.
std::vector<PackOnOffer> sacks() {
    return {{1'000'000, 220}, {2'000'000, 390}, {5'000'000, 875}};
}

PackNeed one_session(std::int64_t milligrams, std::vector<PackOnOffer> packs = sacks()) {
    PackNeed need;
    need.milligrams = {milligrams};
    need.packs = std::move(packs);
    return need;
}

std::vector<std::int64_t> counts_of(const PackPlan& plan, const std::vector<PackOnOffer>& packs) {
    std::vector<std::int64_t> counts;
    for (const PackOnOffer& pack : packs) {
        counts.push_back(0);
        for (const PackBought& purchase : plan.purchases)
            if (purchase.milligrams == pack.milligrams) counts.back() += purchase.count;
    }
    return counts;
}

int between(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}

/// Up to four sessions of up to 500 g out of one or two packs, with or without stock and a most left over.
PackNeed random_need() {
    PackNeed need;
    const int sessions = between(1, 4), packs = between(1, 2), lots = between(0, 2);
    for (int s = 0; s < sessions; ++s) need.milligrams.push_back(50 * between(0, 10));
    for (int p = 0; p < packs; ++p) need.packs.push_back({50 * between(5, 20), between(20, 60)});
    need.shelf_life = between(1, 5);
    for (int l = 0; l < lots; ++l) need.stock.push_back({50 * between(0, 8), between(-1, need.shelf_life - 1)});
    if (between(0, 2) == 0) need.most_left_over = 50 * between(0, 12);
    return need;
}

/// The season of the bar: 40 sessions, 60 ingredients, 3 pack sizes, shelf life 8.
PackQuestion season(std::mt19937& random, std::int64_t step) {
    const auto pick = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(random); };
    PackQuestion question;
    for (int i = 0; i < 60; ++i) {
        PackNeed need;
        for (int s = 0; s < 40; ++s) need.milligrams.push_back(pick(0, 3) == 0 ? 0 : 1000 * pick(50, 1500));
        const std::int64_t small = 1000 * step * pick(1, 5);
        const int price = pick(80, 400);
        need.packs = {{small, price}, {2 * small + 1000 * step, price * 2}, {5 * small + 1000 * step, price * 4}};
        need.shelf_life = 8;
        question.needs.push_back(std::move(need));
    }
    return question;
}

/// Of the processor, so that other work on the machine counts for nothing.
double milliseconds(const PackQuestion& question) {
    const std::clock_t begin = std::clock();
    const auto answer = buy_packs(question);
    const std::clock_t end = std::clock();
    REQUIRE(answer);
    return 1000.0 * static_cast<double>(end - begin) / CLOCKS_PER_SEC;
}

}  // namespace

TEST_CASE("needs that were rounded to packs by brute force are rounded so here") {
    const std::vector<std::vector<std::int64_t>> expected{{1, 0, 0}, {0, 2, 0}, {0, 0, 1}, {0, 1, 1}, {1, 1, 1}};
    std::size_t rows = 0;
    for (const reference::Row& row : reference::rows_in("pack_rounding.csv")) {
        if (row.at("topic") != "PACK_ROUNDING") continue;
        const double kilograms = reference::numbers_in(row.at("inputs")).front();
        const double pounds = reference::numbers_in(row.at("expected")).front();
        const auto plan = cheapest_packs_over(one_session(std::int64_t(kilograms * 1e6 + 0.5)));
        REQUIRE(plan);
        INFO(row.at("id"));
        CHECK(plan->outlay_minor == std::int64_t(pounds * 100 + 0.5));
        CHECK(counts_of(*plan, sacks()) == expected.at(rows++));
    }
    CHECK(rows == 5);
}

TEST_CASE("of packs that cost the same the ones that leave least over are bought") {
    const auto plan = cheapest_packs_over(one_session(900, {{1000, 200}, {1500, 200}, {500, 100}}));
    REQUIRE(plan);
    CHECK(plan->outlay_minor == 200);
    CHECK(plan->left_over == 100);
    CHECK(plan->bought == 1000);
}

TEST_CASE("a large pack that is cheaper than a small one is bought although most of it is left") {
    const auto plan = cheapest_packs_over(one_session(200, {{250, 300}, {5000, 280}}));
    REQUIRE(plan);
    CHECK(plan->outlay_minor == 280);
    CHECK(plan->left_over == 4800);
}

TEST_CASE("no more is left over than is allowed, though it costs more") {
    PackNeed need = one_session(200, {{250, 300}, {5000, 280}});
    need.most_left_over = 100;
    CHECK(cheapest_packs_over(need)->outlay_minor == 300);
    need.most_left_over = 40;
    CHECK_FALSE(cheapest_packs_over(need));
}

TEST_CASE("a pack is shared by the sessions that it keeps for, and by no others") {
    PackNeed need;
    need.milligrams = {400, 400, 400};
    need.packs = {{1200, 300}, {400, 150}};
    need.shelf_life = 3;
    CHECK(cheapest_packs_over(need)->outlay_minor == 300);
    need.shelf_life = 2;
    const auto two = cheapest_packs_over(need);
    CHECK(two->outlay_minor == 450);
    CHECK(two->left_over == 0);
    need.shelf_life = 1;
    CHECK(cheapest_packs_over(need)->outlay_minor == 450);
}

TEST_CASE("what is past its best is lost and counted") {
    PackNeed need;
    need.milligrams = {100, 0, 100};
    need.packs = {{500, 100}};
    need.shelf_life = 2;
    const auto plan = cheapest_packs_over(need);
    CHECK(plan->outlay_minor == 200);
    CHECK(plan->left_over == 800);
    CHECK(plan->past_best == 400);
}

TEST_CASE("stock is used before anything is bought, the first to go off first") {
    PackNeed need;
    need.milligrams = {300, 300};
    need.packs = {{1000, 200}};
    need.shelf_life = 9;
    need.stock = {{300, 5}, {300, 0}};
    const auto plan = cheapest_packs_over(need);
    CHECK(plan->outlay_minor == 0);
    CHECK(plan->left_over == 0);
    CHECK(plan->purchases.empty());
    need.stock = {{600, 0}};
    CHECK(cheapest_packs_over(need)->outlay_minor == 200);
    CHECK(cheapest_packs_over(need)->left_over == 1000);
}

TEST_CASE("purchases are as late as they can be and are named by session") {
    PackNeed need;
    need.milligrams = {100, 100, 900};
    need.packs = {{1000, 200}, {250, 60}};
    need.shelf_life = 8;
    const auto plan = cheapest_packs_over(need);
    REQUIRE(plan->purchases.size() == 2);
    CHECK(plan->purchases[0].session == 0);
    CHECK(plan->purchases[1].session == 2);
    CHECK(plan->outlay_minor == 260);
}

TEST_CASE("nothing for sale is no answer, unless nothing is needed") {
    CHECK_FALSE(cheapest_packs_over(one_session(100, {})));
    CHECK(cheapest_packs_over(one_session(0, {}))->outlay_minor == 0);
}

TEST_CASE("an ingredient in packs of odd sizes and by the ton is bought with what it may cost too much") {
    const auto plan = cheapest_packs_over(one_session(9'000'000'000, {{997'000, 100}, {1'009'000, 101}}));
    REQUIRE(plan);
    CHECK(plan->bought >= 9'000'000'000);
    CHECK(plan->at_least_minor <= plan->outlay_minor);
    CHECK(plan->at_least_minor >= 900'000);  // by hand: 1009 g at 101 is the cheaper, 9e6/1009*101 = 900,892
    CHECK(plan->outlay_minor <= plan->at_least_minor + 101);
}

TEST_CASE("every way to buy finds nothing cheaper, nor as cheap with less left over") {
    CHECK(rc::check([] {
        const PackNeed need = random_need();
        const auto found = every_way::cheapest(need);
        const auto plan = cheapest_packs_over(need);
        RC_ASSERT(found.has_value() == plan.has_value());
        if (!plan) return;
        RC_ASSERT(plan->outlay_minor == found->outlay);
        RC_ASSERT(plan->bought == found->bought);
        std::int64_t outlay = 0, bought = 0;
        for (const PackBought& purchase : plan->purchases) {
            outlay += purchase.count * purchase.price_minor;
            bought += purchase.count * purchase.milligrams;
        }
        RC_ASSERT(outlay == plan->outlay_minor);
        RC_ASSERT(bought == plan->bought);
    }));
}

TEST_CASE("a shop that asks for delivery is gone to only where it saves more than that") {
    PackQuestion question;
    question.shops = {{"the village shop", 0}, {"the mill", 500}};
    question.needs = {one_session(5000, {{1000, 220, 0}, {5000, 700, 1}})};
    CHECK(buy_packs(question)->total_minor == 1100);  // 700 + 500 is more
    question.needs.push_back(one_session(5000, {{1000, 220, 0}, {5000, 700, 1}}));
    const auto both = buy_packs(question);
    CHECK(both->total_minor == 1900);
    CHECK(both->delivery_minor == 500);
    CHECK(both->shops == std::vector<int>{1});
}

TEST_CASE("everything from one shop costs what the better of them asks") {
    PackQuestion question;
    question.shops = {{"the village shop", 0}, {"the mill", 100}};
    question.one_shop = true;
    question.needs = {one_session(1000, {{1000, 200, 0}, {1000, 150, 1}}),
                      one_session(1000, {{1000, 300, 0}, {1000, 250, 1}})};
    const auto answer = buy_packs(question);
    CHECK(answer->total_minor == 500);
    question.needs.push_back(one_session(1000, {{1000, 50, 1}}));  // sold at the mill alone
    CHECK(buy_packs(question)->total_minor == 550);
    question.needs.push_back(one_session(1000, {{1000, 50, 0}}));  // and this in the village alone
    CHECK_FALSE(buy_packs(question));
}

TEST_CASE("seven shops that ask for delivery are refused") {
    PackQuestion question;
    question.needs = {one_session(100)};
    for (int i = 0; i < 7; ++i) question.shops.push_back({"shop", 100});
    CHECK_THROWS_AS(buy_packs(question), InputError);
    question.shops.pop_back();
    CHECK(buy_packs(question));
}

TEST_CASE("a season of 40 sessions and 60 ingredients is proven cheapest in no time") {
#if defined(__OPTIMIZE__) && !defined(__SANITIZE_ADDRESS__)
    constexpr double long_enough = 50;
#else
    constexpr double long_enough = 1000;  // counted line by line, or watched at each step: nobody waits for that
#endif
    std::mt19937 random(7);
    CHECK(milliseconds(season(random, 250)) < long_enough);
}

TEST_CASE("choosing packs says how far it is, shop by shop and need by need") {
    PackQuestion question;
    question.shops = {{"the village shop", 0}, {"the mill", 500}};
    question.needs = {one_session(5000, {{1000, 220, 0}, {5000, 700, 1}}), one_session(1000)};
    const std::vector<std::string> heard = progress_heard_in([&] { buy_packs(question); });
    CHECK(heard == std::vector<std::string>{"choosing packs 1/4", "choosing packs 2/4", "choosing packs 3/4",
                                            "choosing packs 4/4"});
}

}  // namespace baitwright
