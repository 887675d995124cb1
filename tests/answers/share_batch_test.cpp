#include "answers/blend/share_batch.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include <cmath>
#include <numeric>

#include "answers/blending.h"

namespace baitwright {

namespace {

using namespace blending;

double grams_in(const std::vector<Mass>& masses) {
    double sum = 0;
    for (const Mass& mass : masses) sum += mass.in(gram);
    return sum;
}

std::int64_t minor_in(const std::vector<Money>& parts) {
    std::int64_t sum = 0;
    for (const Money& part : parts) sum += part.minor();
    return sum;
}

}  // namespace

TEST_CASE("what is shared out comes to the whole to the gram") {
    CHECK(rc::check([] {
        const int grams = *rc::gen::inRange(1, 60000), count = *rc::gen::inRange(1, 12);
        std::vector<double> shares;
        for (int i = 0; i < count; ++i) shares.push_back(*rc::gen::inRange(1, 1000));
        const double sum = std::accumulate(shares.begin(), shares.end(), 0.0);
        for (double& share : shares) share /= sum;
        const std::vector<Mass> masses = shared_out(grams * gram, shares);
        RC_ASSERT(masses.size() == shares.size());
        RC_ASSERT(std::abs(grams_in(masses) - grams) < 1e-6);
        for (std::size_t i = 0; i < masses.size(); ++i) {
            RC_ASSERT(masses[i] >= -1e-9 * gram);
            RC_ASSERT(std::abs(masses[i].in(gram)-shares[i] * grams) <=
                      30);  // two steps of a kitchen scale, and the odd grams
        }
    }));
}

TEST_CASE("a pinch beside a sack is weighed to the gram") {
    const std::vector<Mass> masses = shared_out(25 * kilogram, {0.9992, 0.0008});
    CHECK(masses[1].in(gram) == Approx(20));
    CHECK(masses[0].in(gram) == Approx(24980));
}

TEST_CASE("six bags of 25 kg differ by a step of the scale and come to 25 kg") {
    const std::vector<Mass> bags = shared_out(25 * kilogram, std::vector<double>(6, 1.0 / 6));
    CHECK(grams_in(bags) == Approx(25000));
    for (const Mass& bag : bags) CHECK(std::abs(bag.in(gram)-25000.0 / 6) < 10);
}

// By hand: 25 kg of crumb at packs of 1 kg £2.20 and 5 kg £7.90 are five sacks, £39.50; by the bag £6.58 or £6.59. By
// the smallest packs, as `mix` has it, it is £55.00.
TEST_CASE("a sack shared by six costs each a sixth, to the penny") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient crumb = draft::solid_of(draft::solids[0]);
    Pack small, sack;
    small.size = 1.0 * kilogram;
    small.price = parse_money("£2.20");
    sack.size = 5.0 * kilogram;
    sack.price = parse_money("£7.90");
    crumb.packs = {small, sack};
    crumb.cautions = {"pulse", "gluten"};  // as a meal of peas has them
    shelf.put(crumb);
    BlendSpec spec;
    spec.name = "sack";
    spec.candidates = {{"brown crumb", {}, {}}};
    ClpSolver solver;
    BlendRequest request;
    request.batch = 25.0 * kilogram;
    const BlendAnswer answer = blend_mix(shelf, spec, request, solver);
    const SharedBatch shared = share_batch(shelf, answer, 6);
    CHECK(answer.cost == parse_money("£55.00"));
    CHECK(shared.used == parse_money("£39.50"));
    CHECK(minor_in(shared.used_a_head) == 3950);
    REQUIRE(shared.packs.size() == 1);
    CHECK(shared.packs[0].count == 5);
    CHECK(shared.outlay == parse_money("£39.50"));
    CHECK(minor_in(shared.outlay_a_head) == 3950);
    CHECK(shared.left_over.empty());
    for (const Money& part : shared.used_a_head) CHECK((part.minor() == 658 || part.minor() == 659));
    CHECK(grams_in(shared.bags) == Approx(25000));
    CHECK(shared.cautions == std::vector<std::string>{"raw meal", "gluten"});
}

}  // namespace baitwright
