#include "answers/pellets/pump_expanders.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "answers/soaking.h"
#include "physics/vacuum.h"
#include "quantities/fault.h"

using namespace baitwright;
using draft::soak_of;
using draft::soaked;

namespace {

PumpedAnswer only_pumped(const SoakRequest& request) {
    return soaked(request).pumped.at(0);
}

SoakRequest pumped(double grams, std::optional<int> strokes = std::nullopt) {
    SoakRequest request = soak_of("expander 4 mm", grams * gram);
    request.pump.strokes = strokes;
    return request;
}

}  // namespace

// By hand: 0.69 g/ml and half of it pores; full of water it weighs 1.19 g/ml, at 62 % full it is as heavy as water.
TEST_CASE("an expander sinks from the stroke at which its pores are full enough") {
    const PumpedAnswer answer = only_pumped(pumped(50));
    REQUIRE(answer.fewest);
    const auto fill = [&](int strokes) {
        return double(
            pore_fill(pressure_after(strokes, 100.0 * millilitre, answer.free_volume, answer.air, answer.vapour),
                      answer.air, answer.vapour));
    };
    const double water = water_density(Temperature::from_celsius(15)).in(gram_per_millilitre);
    CHECK(0.69 + 0.5 * fill(*answer.fewest) * water > water);
    CHECK(0.69 + 0.5 * fill(*answer.fewest - 1) * water <= water);
    CHECK(answer.fewest_sure.value() > *answer.fewest);
    CHECK(answer.at.strokes == *answer.fewest_sure);
    CHECK(answer.at.sinking >= 0.95);
}

TEST_CASE("each stroke fills the pores more, the last ones hardly") {
    const PumpedAnswer answer = only_pumped(pumped(50));
    for (std::size_t i = 1; i < answer.by_stroke.size(); ++i) {
        CHECK(answer.by_stroke[i].fill > answer.by_stroke[i - 1].fill);
        CHECK(answer.by_stroke[i].sinking >= answer.by_stroke[i - 1].sinking);
    }
    CHECK(answer.by_stroke.back().fill >= 0.99);
    CHECK(answer.by_stroke.back().fill < 1.0);
    CHECK(answer.by_stroke[answer.by_stroke.size() - 2].fill < 0.99);
    CHECK(answer.by_stroke.back().pressure > answer.vapour);
    const auto gain = [&](std::size_t i) { return answer.by_stroke[i].fill - answer.by_stroke[i - 1].fill; };
    CHECK(gain(answer.by_stroke.size() - 1) < 0.1 * gain(1));
}

// By hand: 50 g of 360 g/l are 138.9 ml poured; a vessel of 500 ml as tall as wide is 8.60 cm across, its base 58.1
// cm2. With 1 cm above them pellets and water come to 197 ml; 72.5 ml of that is pellet, 36.2 ml their pores, which
// drink.
TEST_CASE("the water covers the pellets in their vessel, even once they have drunk") {
    const PumpedAnswer answer = only_pumped(pumped(50));
    const double level = 138.89 + 58.12, pellets = 50 / 0.69, pores = 0.5 * pellets;
    CHECK(answer.lots == 1);
    CHECK(answer.pour.in(gram) == Approx(level - pellets + pores).epsilon(1e-3));
    CHECK(answer.free_volume.in(millilitre) == Approx(500 - level).epsilon(1e-3));
    // A few of them: one layer, 4.8 mm deep, and 1 cm.
    const double few = only_pumped(pumped(5)).pour.in(gram) + 5 / 0.69 * 0.5;
    CHECK(few == Approx(58.12 * 1.48).epsilon(1e-3));
}

TEST_CASE("more than the vessel holds is pumped in equal lots, each as its own would be") {
    SoakRequest request = soak_of("expander 4 mm", 1.0 * imperial_pint);
    const PumpedAnswer pint = only_pumped(request);
    CHECK(pint.lots == 3);
    CHECK(pint.dry_volume.in(imperial_pint) == Approx(1));
    const PumpedAnswer third = only_pumped(soak_of("expander 4 mm", (1.0 * imperial_pint) / 3.0));
    CHECK(third.lots == 1);
    CHECK(pint.at.strokes == third.at.strokes);
    CHECK(pint.free_volume.in(millilitre) == Approx(third.free_volume.in(millilitre)));
    CHECK(pint.pour.in(gram) == Approx(3 * third.pour.in(gram)));
    request.pump.vessel = 2.0 * litre;
    CHECK(only_pumped(request).lots == 1);
}

TEST_CASE("every lot leaves a quarter of the vessel to the air, and one lot fewer would not") {
    CHECK(rc::check([] {
        SoakRequest request = pumped(*rc::gen::inRange(5, 5000));
        request.pump.vessel = *rc::gen::inRange(60, 3000) * millilitre;
        const PumpedAnswer answer = only_pumped(request);
        RC_ASSERT(answer.free_volume - 0.5 * answer.dry / answer.lots / (0.69 * gram_per_millilitre) >=
                  0.2499 * request.pump.vessel);
        if (answer.lots == 1) return;
        request.total = answer.dry / (answer.lots - 1);
        RC_ASSERT(only_pumped(request).lots > 1);
    }));
}

TEST_CASE("unpumped it floats, and the answer is no") {
    const SoakAnswer answer = soaked(pumped(50, 0));
    CHECK(answer.pumped.at(0).at.buoyancy == Buoyancy::floats);
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings[0].code == "floats");
    CHECK(answer.warnings[0].answer_is_no);
}

TEST_CASE("a pellet with too few pores is never sunk by a pump, and the answer is no") {
    const SoakAnswer answer = soaked(soak_of("cork pellet", 50.0 * gram));
    CHECK_FALSE(answer.pumped.at(0).fewest);
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings[0].code == "cannot-sink");
    CHECK(answer.warnings[0].answer_is_no);
}

// By hand: 30 bites an hour for 5 hours, half as many again, a tenth to spare: 247.5.
TEST_CASE("hook pellets are counted by the bites to come") {
    SoakRequest request = soak_of("expander 4 mm", BitesPlanned{30, 5.0 * hour});
    request.spare = 0.1;
    CHECK(only_pumped(request).grains.all == Approx(247.5));
    request.items.push_back({"expander 6 mm", std::nullopt, 2});
    const SoakAnswer both = soaked(request);
    CHECK(both.pumped[0].grains.all == Approx(82.5));
    CHECK(both.pumped[1].grains.all == Approx(165));
    CHECK(both.pumped[1].dry / both.pumped[0].dry == Approx(2 * 3.375));
}

TEST_CASE("the water in the pores is what the fill makes of them") {
    CHECK(rc::check([] {
        const PumpedAnswer answer = only_pumped(pumped(*rc::gen::inRange(5, 70), *rc::gen::inRange(0, 60)));
        const double water = water_density(Temperature::from_celsius(15)).in(gram_per_millilitre);
        const double pores = answer.dry.in(gram) / 0.69 * 0.5;
        RC_ASSERT(std::abs(answer.inside.in(gram)-answer.at.fill * pores * water) < 1e-9);
        // Full pores do not swell a pellet, so that its density is that of the stroke.
        const double dense = (answer.dry.in(gram) + answer.inside.in(gram)) / (answer.dry.in(gram) / 0.69);
        RC_ASSERT(std::abs(dense - answer.at.density.in(gram_per_millilitre)) < 1e-9);
    }));
}

TEST_CASE("a bigger pump needs fewer strokes, and thin air none the more") {
    SoakRequest request = pumped(50);
    const int usual = *only_pumped(request).fewest;
    request.pump.stroke = 500.0 * millilitre;
    CHECK(*only_pumped(request).fewest < usual);
    request.pump.stroke = 100.0 * millilitre;
    request.pump.air = 80.0 * kilopascal;
    CHECK(*only_pumped(request).fewest == usual);
}

TEST_CASE("a pump that cannot be is refused") {
    const auto refused = [](const SoakRequest& request, const std::string& code) {
        try {
            soaked(request);
        } catch (const Error& error) {
            return error.faults().front().code == code;
        }
        return false;
    };
    CHECK_FALSE(refused(pumped(1000), "vessel-too-small"));
    CHECK(refused(pumped(50, 500), "out-of-range"));
    SoakRequest request = pumped(50);
    request.pump.stroke = 0.1 * millilitre;
    CHECK(refused(request, "out-of-range"));
    request = pumped(50);
    request.pump.vessel = 5.0 * millilitre;
    CHECK(refused(request, "out-of-range"));
    request.items.front().of = "expander 6 mm";
    request.pump.vessel = 20.0 * millilitre;
    CHECK_FALSE(refused(request, "vessel-too-small"));
    request.items.front().of = "expander 14 mm";
    CHECK(refused(request, "vessel-too-small"));  // 1.7 cm and 1 cm of water in one of 3 cm
    request = pumped(50);
    request.pump.air = 1.0 * kilopascal;
    CHECK(refused(request, "out-of-range"));
}
