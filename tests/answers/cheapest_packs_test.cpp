#include "answers/money/pack_sums.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <limits>
#include <utility>

#include "quantities/units.h"

using namespace baitwright;

namespace {

/// As the packs of an ingredient are: no more than they hold.
PackOnOffer offer(Mass mass, std::int64_t pence) {
    return {static_cast<std::int64_t>(mass.in(gram)*1000 + 1e-6), pence};
}

std::vector<PackOnOffer> offers(const std::vector<std::pair<double, std::int64_t>>& grams_and_pence) {
    std::vector<PackOnOffer> result;
    for (const auto& [grams, pence] : grams_and_pence) result.push_back(offer(grams * gram, pence));
    return result;
}

PackChoice cheapest_packs(const std::vector<PackOnOffer>& packs, Mass need) {
    return PackSums(packs).cheapest(whole_milligrams(need));
}

/// The least outlay and then the least bought, by a table over every sum of `unit` grams: another way altogether.
std::pair<std::int64_t, int> by_table(const std::vector<std::pair<int, std::int64_t>>& units_and_pence, int need) {
    int largest = 0;
    for (const auto& [size, price] : units_and_pence) largest = std::max(largest, size);
    constexpr std::int64_t never = std::numeric_limits<std::int64_t>::max() / 2;
    std::vector<std::int64_t> exactly(static_cast<std::size_t>(need + largest) + 1, never);
    exactly[0] = 0;
    for (std::size_t sum = 1; sum < exactly.size(); ++sum)
        for (const auto& [size, price] : units_and_pence)
            if (sum >= static_cast<std::size_t>(size))
                exactly[sum] = std::min(exactly[sum], exactly[sum - static_cast<std::size_t>(size)] + price);
    std::pair<std::int64_t, int> best{never, 0};
    for (int sum = need; sum <= need + largest; ++sum)
        best = std::min(best, std::pair(exactly[static_cast<std::size_t>(sum)], sum));
    return best;
}

}  // namespace

// 4.2 kg of 1 kg at 2.10 and 5 kg at 7.90: five small ones are 10.50, one large one 7.90.
TEST_CASE("one large pack is bought where it costs less than the small ones") {
    const PackChoice choice = cheapest_packs(offers({{1000, 210}, {5000, 790}}), 4.2 * kilogram);
    CHECK(choice.counts == std::vector<std::int64_t>{0, 1});
    CHECK(choice.outlay_minor == 790);
    CHECK(choice.proven());
}

// 6.5 kg: 5 + 1 + 1 is 12.10 and leaves half a kilo; 5 + 5 is 15.80.
TEST_CASE("large and small packs go together") {
    const PackChoice choice = cheapest_packs(offers({{1000, 210}, {5000, 790}}), 6.5 * kilogram);
    CHECK(choice.counts == std::vector<std::int64_t>{2, 1});
    CHECK(choice.milligrams == 7'000'000);
}

TEST_CASE("of packs that cost the same those that leave least over are taken") {
    CHECK(cheapest_packs(offers({{1000, 300}, {900, 300}}), 850.0 * gram).counts == std::vector<std::int64_t>{0, 1});
    CHECK(cheapest_packs(offers({{2000, 400}, {1000, 200}}), 3.0 * kilogram).milligrams == 3'000'000);
}

TEST_CASE("nothing needed, nothing bought; what is free is bought all the same") {
    CHECK(cheapest_packs(offers({{1000, 210}}), Mass{}).counts == std::vector<std::int64_t>{0});
    CHECK(cheapest_packs({}, 1.0 * kilogram).outlay_minor == 0);
    const PackChoice free = cheapest_packs(offers({{1000, 0}, {500, 10}}), 1.2 * kilogram);
    CHECK(free.outlay_minor == 0);
    CHECK(free.counts == std::vector<std::int64_t>{2, 0});
}

TEST_CASE("a need of just so many packs is met by just so many") {
    CHECK(cheapest_packs(offers({{340, 115}}), 3 * 340.0 * gram).counts == std::vector<std::int64_t>{3});
    CHECK(cheapest_packs(offers({{340, 115}}), 3 * 340.0 * gram + 1.0 * gram).counts == std::vector<std::int64_t>{4});
}

TEST_CASE("the packs chosen are those that a table of all sums finds") {
    CHECK(rc::check([] {
        std::vector<std::pair<int, std::int64_t>> plain;
        std::vector<PackOnOffer> offered;
        for (int i = *rc::gen::inRange(1, 5); i > 0; --i) {
            plain.emplace_back(*rc::gen::inRange(1, 60), *rc::gen::inRange(0, 900));
            offered.push_back(offer(plain.back().first * 50.0 * gram, plain.back().second));
        }
        const int need = *rc::gen::inRange(1, 400);
        const PackChoice choice = cheapest_packs(offered, need * 50.0 * gram);
        const auto [outlay, bought] = by_table(plain, need);
        RC_ASSERT(choice.proven());
        RC_ASSERT(choice.outlay_minor == outlay);
        RC_ASSERT(choice.milligrams == 50'000 * bought);
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < offered.size(); ++i) sum += choice.counts[i] * offered[i].price_minor;
        RC_ASSERT(sum == choice.outlay_minor);
    }));
}

TEST_CASE("packs of an odd size are enough, however many it takes") {
    const PackChoice choice = cheapest_packs({offer(1.0037 * gram, 1)}, 753.0 * gram);
    CHECK(choice.milligrams >= 753'000);
}

TEST_CASE("needing more never costs less, whatever the sizes") {
    CHECK(rc::check([] {
        std::vector<PackOnOffer> offered;
        for (int i = *rc::gen::inRange(1, 5); i > 0; --i)
            offered.push_back(offer(*rc::gen::inRange(1, 6000) * 1.0037 * gram, *rc::gen::inRange(1, 2000)));
        const Mass need = *rc::gen::inRange(1, 30000) * gram, more = *rc::gen::inRange(0, 5000) * gram;
        const PackChoice less = cheapest_packs(offered, need);
        RC_ASSERT(less.milligrams >= whole_milligrams(need));
        if (less.proven()) RC_ASSERT(cheapest_packs(offered, need + more).outlay_minor >= less.outlay_minor);
    }));
}

// 4,999 g and 997 g: 8 t can be met to the gram, for the two have no common measure, but that is not looked for.
TEST_CASE("where not all packs are weighed it is not said that none leave less over, whatever they cost") {
    const PackChoice free = cheapest_packs(offers({{4999, 0}, {997, 0}}), 8000.0 * kilogram);
    CHECK(free.milligrams >= 8'000'000'000);
    CHECK(free.proven());
    CHECK((free.milligrams == 8'000'000'000 || !free.least_left));
    CHECK(cheapest_packs(offers({{5000, 0}, {1000, 0}}), 8000.0 * kilogram).least_left);
}
