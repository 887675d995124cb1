#include "bait/learnt.h"

#include <catch2/catch.hpp>

#include "bait/memory_shelf.h"
#include "bait/suggesting_shelf.h"

using namespace baitwright;

namespace {

/// Three bags; the number in row r and column c is 10 r + c.
LearntWater three_bags() {
    LearntWater water{
        0.03, -0.02, {{"Brown Crumb", -0.6, -0.1, 7}, {"maize meal", -0.9, 0.2, 3}, {"bran", 0.1, 0.3, 1}}, 9, {}};
    for (int row = 0; row < 8; ++row)
        for (int column = 0; column < 9; ++column) water.factor.push_back(10 * row + column);
    return water;
}

}  // namespace

TEST_CASE("a part of what was learnt has the bags asked for, in that order, with the covariances that they had") {
    const LearntWater all = three_bags(), part = part_of(all, {"bran", "  brown CRUMB", "oats", "bran"});
    REQUIRE(part.bags.size() == 2);
    CHECK(part.bags[0].name == "bran");
    CHECK(part.bags[1].name == "Brown Crumb");
    CHECK(part.bags[1].log_absorption == -0.6);
    CHECK(part.bags[1].mixes == 7);
    CHECK(part.log_hand == 0.03);
    CHECK(part.log_memory == -0.02);
    REQUIRE(part.factor.size() == 6 * 9);
    CHECK(part.covariance(LearntWater::hand, LearntWater::absorption(0)) ==
          all.covariance(LearntWater::hand, LearntWater::absorption(2)));
    CHECK(part.covariance(LearntWater::gap(0), LearntWater::absorption(1)) ==
          all.covariance(LearntWater::gap(2), LearntWater::absorption(0)));
}

TEST_CASE("of bags that nothing was learnt of the hand alone is known") {
    const LearntWater part = part_of(three_bags(), {"oats"});
    CHECK(part.known());
    CHECK(part.bags.empty());
    CHECK(part.covariance(LearntWater::memory, LearntWater::memory) ==
          three_bags().covariance(LearntWater::memory, LearntWater::memory));
    CHECK_FALSE(part_of({}, {"bran"}).known());
}

TEST_CASE("a shelf gives what was learnt that was put on it, or on the one below it") {
    MemoryShelf lower;
    const MemoryShelf upper(&lower);
    CHECK_FALSE(upper.learnt_water({"bran"}).known());
    CHECK_FALSE(upper.learnt_mix("silt bed").has_value());
    lower.put(three_bags());
    lower.put(LearntMix{"Silt Bed", LearntFactor{0.1, 0.05, 4}, {}, {}});
    const NamelessShelf nameless(upper);
    CHECK(nameless.learnt_water({"bran"}).bags.at(0).log_gap == 0.3);
    REQUIRE(nameless.learnt_mix("silt bed").has_value());
    CHECK(nameless.learnt_mix("silt bed")->cup_weight->mean == 0.1);
}

TEST_CASE("what was learnt and is put on a shelf hides what the one below it has") {
    MemoryShelf lower, upper(&lower);
    lower.put(three_bags());
    LearntWater other = three_bags();
    other.log_hand = 0.5;
    upper.put(other);
    CHECK(upper.learnt_water({}).log_hand == 0.5);
}
