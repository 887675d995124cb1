#include "answers/mix/several_targets.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "answers/asking.h"
#include "answers/mix/let_down.h"
#include "bait/random_mixes.h"
#include "quantities/fault_of.h"

using namespace baitwright;

namespace {

TargetAtFeel cups(int count, double millilitres, std::string feel) {
    return {Vessels{count, millilitres * millilitre, "cup"}, std::move(feel)};
}

TargetAtFeel balls(int count, double millimetres, std::string feel) {
    return {Balls{count, millimetres * millimetre}, std::move(feel)};
}

MixRequest asked_for(std::vector<TargetAtFeel> targets) {
    MixRequest request;
    request.several = std::move(targets);
    std::visit([&](const auto& of) { request.target = of; }, request.several.front().of);
    return request;
}

MixRequest alone(const MixRequest& request, const TargetAtFeel& target) {
    MixRequest one = request;
    one.several.clear();
    std::visit([&](const auto& of) { one.target = of; }, target.of);
    one.feel = target.feel;
    return one;
}

MixAnswer batch_of(const Recipe& recipe, const MixRequest& request) {
    return scale_batch(resolve(recipe, draft::shelf()), draft::feels(), request);
}

/// Two to five cups and balls of any size, each at a feel that it can have.
std::vector<TargetAtFeel> drawn_targets() {
    const std::vector<std::string> for_cups{"dusty", "crumbly", "firm", "tacky", "soft", "slop"},
        for_balls{"crumbly", "firm", "tacky"};
    std::vector<TargetAtFeel> targets;
    for (int left = *rc::gen::inRange(2, 6); left > 0; --left)
        if (*rc::gen::arbitrary<bool>())
            targets.push_back(cups(*rc::gen::inRange(1, 40), draft::drawn(20, 600, 1), *rc::gen::elementOf(for_cups)));
        else
            targets.push_back(balls(*rc::gen::inRange(1, 40), draft::drawn(25, 90, 1), *rc::gen::elementOf(for_balls)));
    return targets;
}

void assert_same(Mass one, Mass other, Mass whole) {
    RC_ASSERT(std::abs((one - other) / whole) < 1e-9);
}

}  // namespace

TEST_CASE("several targets together weigh what they weigh alone, and the batch is their sum") {
    CHECK(rc::check([] {
        const Recipe recipe = draft::drawn_recipe(draft::Extras::all);
        MixRequest request = asked_for(drawn_targets());
        request.people = *rc::gen::inRange(1, 5);
        request.spare = draft::drawn(0, 50, 0.01);
        const MixAnswer batch = batch_of(recipe, request);
        RC_ASSERT(batch.targets.size() == request.several.size());
        Mass dry, wet, first, poured;
        std::vector<Mass> additives(batch.additives.size());
        for (std::size_t i = 0; i < batch.targets.size(); ++i) {
            const TargetAnswer& target = batch.targets[i];
            const MixAnswer single = draft::scaled(recipe, alone(request, request.several[i]));
            RC_PRE(single.dry_to_add == Mass{});
            assert_same(target.dry_mass, single.dry_mass, single.dry_mass);
            assert_same(target.water, single.water_to_add, single.dry_mass);
            assert_same(target.wet_mass, single.wet_mass, single.dry_mass);
            RC_ASSERT(target.portions.count == single.portions->count);
            assert_same(target.portions.mass_each, single.portions->mass_each, single.portions->mass_each);
            // What is taken of the batch, with what lets it down, is the target.
            Mass made = target.take + target.let_down_water;
            for (std::size_t j = 0; j < additives.size(); ++j) {
                assert_same(target.additives[j], single.additives[j].mass, single.dry_mass);
                additives[j] += single.additives[j].mass;
                made += target.let_down_additives[j];
            }
            assert_same(made, single.wet_mass, single.dry_mass);
            dry += single.dry_mass;
            wet += single.wet_mass;
            first += target.take;
            poured += single.water_to_add - target.let_down_water;
        }
        assert_same(batch.dry_mass, dry, dry);
        assert_same(batch.wet_mass, first, dry);
        assert_same(batch.water_to_add, poured, dry);
        Mass weighed;
        for (const PartAnswer& part : batch.parts) weighed += part.mass;
        assert_same(weighed, dry, dry);
        for (std::size_t j = 0; j < additives.size(); ++j) assert_same(batch.additives[j].mass, additives[j], dry);
    }));
}

// By hand, for the fishmeal mix just holds at 0.547 g/g and slumps at 0.934 (A and B of its parts, weighted): firm is
// 0.547 + 0.2 x 0.387 = 0.6244, soft 0.547 + 0.7 x 0.387 = 0.8179 g/g. A kilo at each: 624.4 g first for each, and
// 193.5 g more for the soft one.
TEST_CASE("a kilo firm and a kilo soft take the same first, and the soft one so much more") {
    const ResolvedMix mix = resolve(draft::fishmeal_mix(), draft::shelf());
    const LetDownShare down = let_down(mix, {1.0 * kilogram, 1.2, 1.7});
    CHECK(down.take.in(gram) == Approx(1624.4).epsilon(0).margin(0.05));
    CHECK(down.water.in(gram) == Approx(193.5).epsilon(0).margin(0.05));
    const LetDownShare same = let_down(mix, {1.0 * kilogram, 1.2, 1.2});
    CHECK(same.water == Mass{});
}

TEST_CASE("targets of one feel are not let down, and the driest is not") {
    const MixAnswer one = batch_of(draft::fishmeal_mix(), asked_for({cups(2, 250, "firm"), balls(6, 55, "firm")}));
    for (const TargetAnswer& target : one.targets) CHECK(target.let_down_water == Mass{});
    const MixAnswer two = batch_of(draft::fishmeal_mix(), asked_for({cups(2, 250, "soft"), balls(6, 55, "firm")}));
    CHECK(two.feel == "firm");
    CHECK(two.targets[0].let_down_water > Mass{});
    CHECK(two.targets[1].let_down_water == Mass{});
}

TEST_CASE("the water of each target is as sure as alone, and that which lets it down lies about its middle") {
    const MixRequest request = asked_for({cups(2, 250, "soft"), balls(6, 55, "firm")});
    const MixAnswer batch = answer_mix(draft::shelf(), draft::fishmeal_mix(), request);
    for (std::size_t i = 0; i < 2; ++i) {
        const MixAnswer single = answer_mix(draft::shelf(), draft::fishmeal_mix(), alone(request, request.several[i]));
        const TargetAnswer& target = batch.targets[i];
        CHECK(target.water_range.low.in(gram) == Approx(single.doubt->water.low.in(gram)));
        CHECK(target.water_range.high.in(gram) == Approx(single.doubt->water.high.in(gram)));
        CHECK(double(target.count_range.low) == Approx(double(single.doubt->portions->low)));
        CHECK(double(target.count_range.high) == Approx(double(single.doubt->portions->high)));
    }
    const TargetAnswer& soft = batch.targets[0];
    CHECK(soft.let_down_range.low < soft.let_down_water);
    CHECK(soft.let_down_range.high > soft.let_down_water);
    // w(1.7) - w(1.2) is half the gap B - A of its parts, and so lies no further out than all of the water does.
    CHECK(soft.let_down_range.high < soft.water_range.high);
    CHECK(batch.targets[1].let_down_range.high == Mass{});
}

TEST_CASE("a batch costs what its targets cost, but for the rounding of each") {
    const MixRequest request = asked_for({cups(12, 250, "soft"), balls(40, 55, "firm")});
    const MixAnswer batch = answer_mix(draft::shelf(), draft::fishmeal_mix(), request);
    std::int64_t together = 0;
    for (const TargetAtFeel& target : request.several) {
        const MixAnswer single = answer_mix(draft::shelf(), draft::fishmeal_mix(), alone(request, target));
        REQUIRE(single.cost.has_value() == batch.cost.has_value());
        if (single.cost) together += single.cost->minor();
    }
    if (batch.cost) CHECK(std::abs(batch.cost->minor() - together) <= 1);
}

TEST_CASE("an additive is as near to its label as in the target that comes nearest, and its masses are summed") {
    Recipe recipe = draft::fishmeal_mix();
    recipe.doses.push_back({"salt", {DoseBasis::per_litre_water, 20.0 * gram}});
    const MixRequest request = asked_for({cups(2, 250, "soft"), balls(6, 55, "firm")});
    const MixAnswer batch = batch_of(recipe, request);
    // 20 g to the litre of all the water, whichever share it goes into.
    const Mass water = batch.targets[0].water + batch.targets[1].water;
    CHECK(batch.additives.back().mass.in(gram) == Approx(0.02 * water.in(gram)));
    CHECK(batch.targets[0].let_down_additives.back().in(gram) ==
          Approx(0.02 * batch.targets[0].let_down_water.in(gram)));
}

TEST_CASE("what is added for once is so much of the whole batch") {
    MixRequest request = asked_for({cups(2, 250, "soft"), balls(6, 55, "firm")});
    request.once.with = {{"maize meal", 100.0 * gram}};
    request.once.without = {"brown crumb"};
    const MixAnswer plain = answer_mix(draft::shelf(), draft::fishmeal_mix(), [&] {
        MixRequest without = request;
        without.once.with.clear();
        return without;
    }());
    const MixAnswer batch = answer_mix(draft::shelf(), draft::fishmeal_mix(), request);
    Mass maize, plain_maize;
    for (const PartAnswer& part : batch.parts)
        if (part.name == "maize meal") maize += part.mass;
    for (const PartAnswer& part : plain.parts)
        if (part.name == "maize meal") plain_maize += part.mass;
    const Ratio rest = (batch.dry_mass - 100.0 * gram) / plain.dry_mass;
    CHECK(maize.in(gram) == Approx(100 + (rest * plain_maize).in(gram)).epsilon(1e-6));
}

TEST_CASE("too many targets, water in the tub already, and balls of a feel that makes none are refused") {
    const auto refused = [](const MixRequest& request) {
        return fault_of([&] { batch_of(draft::fishmeal_mix(), request); }).code;
    };
    MixRequest request = asked_for({cups(2, 250, "soft"), balls(6, 55, "firm")});
    request.already_added = 100.0 * millilitre;
    CHECK(refused(request) == "unfit-flag");
    CHECK(refused(asked_for({cups(2, 250, "soft"), balls(6, 55, "soft")})) == "unfit-state");
    CHECK(refused(asked_for({cups(2, 250, "soft"), balls(6, 55, "frim")})) == "unknown-feel");
    CHECK(refused(asked_for(std::vector<TargetAtFeel>(21, cups(1, 250, "soft")))) == "too-many");
}
