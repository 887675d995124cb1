#include "answers/money/buy_packs.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <numeric>

#include "quantities/fault_of.h"

using namespace baitwright;

namespace {

int bulk_number(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}

/// Small enough for the exact programme; some of it in the shed.
PackNeed any_bulk_need() {
    PackNeed need;
    for (int sessions = bulk_number(1, 12); sessions > 0; --sessions)
        need.milligrams.push_back(10 * bulk_number(0, 300));
    for (int packs = bulk_number(1, 4); packs > 0; --packs)
        need.packs.push_back({50 * bulk_number(1, 60), bulk_number(10, 900)});
    need.shelf_life = bulk_number(1, 14);
    for (int lots = bulk_number(0, 2); lots > 0; --lots)
        need.stock.push_back({10 * bulk_number(1, 200), bulk_number(0, 12)});
    return need;
}

/// Whether what is bought and what was there reaches for each session, the oldest used first and nothing past its best.
bool reaches(const PackNeed& need, const PackPlan& plan) {
    std::vector<StockedMilligrams> lots = need.stock;
    for (StockedMilligrams& lot : lots) lot.last_session = std::min(lot.last_session, need.shelf_life - 1);
    for (const PackBought& purchase : plan.purchases)
        lots.push_back({purchase.count * purchase.milligrams, purchase.session + need.shelf_life - 1});
    for (int session = 0; session < static_cast<int>(need.milligrams.size()); ++session) {
        std::int64_t wanted = need.milligrams[static_cast<std::size_t>(session)];
        std::stable_sort(lots.begin(), lots.end(), [](const StockedMilligrams& a, const StockedMilligrams& b) {
            return a.last_session < b.last_session;
        });
        for (StockedMilligrams& lot : lots) {
            const bool there = lot.last_session - need.shelf_life + 1 <= session;
            if (!there || lot.last_session < session) continue;
            const std::int64_t taken = std::min(wanted, lot.milligrams);
            lot.milligrams -= taken;
            wanted -= taken;
        }
        if (wanted > 0) return false;
    }
    return true;
}

std::int64_t outlay_of(const PackPlan& plan) {
    std::int64_t outlay = 0;
    for (const PackBought& purchase : plan.purchases) outlay += purchase.count * purchase.price_minor;
    return outlay;
}

/// The question that took 265 s: 120 sessions for 1,000 people.
PackNeed for_a_thousand() {
    PackNeed need;
    for (int session = 0; session < 120; ++session) need.milligrams.push_back(1000 * (204'000 + session % 3));
    need.packs = {{1'000'000, 420, 0}, {5'000'000, 1750, 1}, {25'000'000, 8600, 1}};
    need.shelf_life = 27;
    return need;
}

}  // namespace

TEST_CASE("what is bought in bulk reaches, is never cheaper than the cheapest, and its bound is never dearer") {
    CHECK(rc::check([] {
        const PackNeed need = any_bulk_need();
        const auto exact = cheapest_packs_over(need), bulk = bulk_packs(need);
        RC_ASSERT(exact && bulk);
        RC_ASSERT(exact->proven());
        RC_ASSERT(reaches(need, *bulk));
        RC_ASSERT(outlay_of(*bulk) == bulk->outlay_minor);
        RC_ASSERT(bulk->outlay_minor >= exact->outlay_minor);
        RC_ASSERT(bulk->at_least_minor <= exact->outlay_minor);
        RC_ASSERT(bulk->from_stock == exact->from_stock);
        if (bulk->proven() && bulk->least_left) RC_ASSERT(bulk->bought == exact->bought);
        const std::int64_t needed = std::accumulate(need.milligrams.begin(), need.milligrams.end(), std::int64_t{0});
        const std::int64_t stocked =
            std::accumulate(need.stock.begin(), need.stock.end(), std::int64_t{0},
                            [](std::int64_t sum, const StockedMilligrams& lot) { return sum + lot.milligrams; });
        RC_ASSERT(bulk->left_over == stocked + bulk->bought - needed);
        RC_ASSERT(bulk->past_best >= 0);
        RC_ASSERT(bulk->past_best <= bulk->left_over);
    }));
}

TEST_CASE("120 sessions for 1,000 people are bought in few steps, with a gap that is told and small") {
    const PackNeed need = for_a_thousand();
    std::int64_t ways = most_ways_tried;
    const auto plan = cheapest_packs_over(need, ways);
    REQUIRE(plan);
    CHECK(ways >= 0);  // no step was taken beyond those
    CHECK_FALSE(plan->proven());
    CHECK(reaches(need, *plan));
    const auto gap = static_cast<double>(plan->outlay_minor - plan->at_least_minor);
    CHECK(gap < 0.001 * static_cast<double>(plan->outlay_minor));
}

TEST_CASE("all shops and ingredients together try no more ways than one") {
    PackQuestion question;
    for (int shop = 0; shop < 6; ++shop) question.shops.push_back({"shop", 100 + shop});
    for (int i = 0; i < 8; ++i) {
        question.needs.push_back(for_a_thousand());
        for (int shop = 0; shop < 6; ++shop)
            question.needs.back().packs.push_back({1000 * (900 + 100 * shop), 400 + shop, shop});
    }
    const auto answer = buy_packs(question);
    REQUIRE(answer);
    CHECK(answer->at_least_minor <= answer->total_minor);
    CHECK(static_cast<double>(answer->total_minor - answer->at_least_minor) <
          0.01 * static_cast<double>(answer->total_minor));
}

TEST_CASE("where so much is bought that no way is found to leave so little, it is said in words") {
    PackNeed need = for_a_thousand();
    need.most_left_over = 0;
    need.packs = {{4'999'000, 1750}, {997'000, 420}};
    CHECK(fault_of([&] { cheapest_packs_over(need); }).code == "too-many-ways");
}
