#include "answers/mix/mix_doubt.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <fstream>
#include <functional>
#include <nlohmann/json.hpp>
#include <vector>

#include "answers/asking.h"
#include "answers/mix_of_json.h"
#include "bait/resolve_mix.h"
#include "physics/normal_quantile.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using draft::stated;

namespace {

MixRequest a_kilo(double wetness) {
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram});
    request.wetness = wetness;
    return request;
}

MixDoubt doubt(const ResolvedMix& mix, double wetness, std::uint64_t seed = 1) {
    return doubt_of(mix, scale_mix(mix, draft::feels(), a_kilo(wetness)), seed);
}

ResolvedMix resolved(const Recipe& recipe) {
    return resolve(recipe, draft::shelf());
}

/// The mix with every spread at zero but those a test sets again, and with published marks, which share no error of
/// memory: only the hand is left.
ResolvedMix certain(ResolvedMix mix) {
    for (SolidPart& part : mix.solids) {
        Ingredient& i = part.ingredient;
        i.absorption.source = i.slump.source = {Origin::published, "a table"};
        for (Property<Ratio>* property : {&i.absorption, &i.slump, &i.moisture}) property->spread = 0.0;
        for (Property<Density>* property : {&i.loose_density, &i.envelope_density}) property->spread = 0.0;
        i.particle_size.spread = 0.0;
    }
    return mix;
}

/// The mix with A and B of every part stretched.
ResolvedMix stretched(ResolvedMix mix, double factor) {
    for (SolidPart& part : mix.solids) {
        part.ingredient.absorption.value = factor * part.ingredient.absorption.value;
        part.ingredient.slump.value = factor * part.ingredient.slump.value;
    }
    return mix;
}

double hand_at(double probability) {
    return std::exp(log_normal_sigma(0.12) * normal_quantile(probability));
}

}  // namespace

// Source: tests/reference/water_ranges.csv (NumPy, a million draws; see make_water_ranges.py), row by row.
TEST_CASE("the water's 5, 50 and 95 % points agree with a million plain draws within 0.5 %") {
    std::ifstream file(std::string(BAITWRIGHT_SOURCE_DIR) + "/tests/reference/water_mixes.json");
    const auto mixes = nlohmann::json::parse(file)["mixes"];
    const auto rows = reference::rows_in("water_ranges.csv");
    REQUIRE(mixes.size() == 28);
    REQUIRE(rows.size() == 28);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CAPTURE(rows[i].at("mix"), rows[i].at("source"));
        REQUIRE(mixes[i]["name"] == rows[i].at("mix"));
        const Range<Mass> water = doubt(draft::mix_of_json(mixes[i]), mixes[i]["wetness"]).water;
        CHECK(water.low.in(gram) == Approx(std::stod(rows[i].at("water_p05_g_per_kg_dry"))).epsilon(0.005));
        CHECK(water.middle.in(gram) == Approx(std::stod(rows[i].at("water_p50_g_per_kg_dry"))).epsilon(0.005));
        CHECK(water.high.in(gram) == Approx(std::stod(rows[i].at("water_p95_g_per_kg_dry"))).epsilon(0.005));
    }
}

TEST_CASE("the same seed gives the same range to the last bit, another seed nearly the same") {
    const ResolvedMix mix = resolved(draft::fishmeal_mix());
    const MixDoubt once = doubt(mix, 1.2, 7), again = doubt(mix, 1.2, 7), other = doubt(mix, 1.2, 8);
    CHECK(once.water.low == again.water.low);
    CHECK(once.water.middle == again.water.middle);
    CHECK(once.water.high == again.water.high);
    CHECK(once.wet_volume.low == again.wet_volume.low);
    CHECK(once.wet_volume.high == again.wet_volume.high);
    CHECK(once.water.low != other.water.low);
    // Two sets of 1,024 plain draws would lie this far apart at 3 sigma: the error of a 5 % point of a log-normal is
    // sigma sqrt(0.05 x 0.95/1024)/0.1031, with sigma from the range itself, which is 3.29 sigma wide.
    const double sigma = std::log(once.water.high / once.water.low) / 3.29;
    const double apart = 3 * std::sqrt(2.0) * sigma * std::sqrt(0.05 * 0.95 / 1024) / 0.1031;
    CHECK(other.water.low.in(gram) == Approx(once.water.low.in(gram)).epsilon(apart));
    CHECK(other.water.high.in(gram) == Approx(once.water.high.in(gram)).epsilon(apart));
}

TEST_CASE("with every bag certain the median is the plain equation and only the hand is left") {
    const ResolvedMix mix = certain(resolved(draft::fishmeal_mix()));
    const MixDoubt sure = doubt(mix, 1.2);
    CHECK(sure.water.middle.in(gram) == Approx(624.4).epsilon(5e-4));
    CHECK(sure.water.low.in(gram) == Approx(624.4 * hand_at(0.05)).epsilon(1e-3));
    CHECK(sure.water.high.in(gram) == Approx(624.4 * hand_at(0.95)).epsilon(1e-3));
    CHECK(sure.measure_first.empty());
}

TEST_CASE("with every bag certain the volume is that of the plain equations at the hand's limits") {
    const ResolvedMix mix = certain(resolved(draft::fishmeal_mix()));
    const MixDoubt sure = doubt(mix, 1.2);
    const auto volume_at = [&](double probability) {
        return scale_mix(stretched(mix, hand_at(probability)), draft::feels(), a_kilo(1.2)).wet_volume.in(millilitre);
    };
    CHECK(sure.wet_volume.low.in(millilitre) == Approx(volume_at(0.05)).epsilon(2e-3));
    CHECK(sure.wet_volume.middle.in(millilitre) == Approx(volume_at(0.5)).epsilon(2e-3));
    CHECK(sure.wet_volume.high.in(millilitre) == Approx(volume_at(0.95)).epsilon(2e-3));
}

TEST_CASE("doubt about densities widens the volume and leaves the water alone") {
    ResolvedMix mix = certain(resolved(draft::fishmeal_mix()));
    const MixDoubt sure = doubt(mix, 1.2);
    for (SolidPart& part : mix.solids) part.ingredient.loose_density.spread = 0.2;
    const MixDoubt unsure = doubt(mix, 1.2);
    CHECK(unsure.wet_volume.high - unsure.wet_volume.low > 1.2 * (sure.wet_volume.high - sure.wet_volume.low));
    CHECK(unsure.water.low == sure.water.low);
    CHECK(unsure.water.high == sure.water.high);
}

TEST_CASE("wider spreads make a wider range about the same middle") {
    ResolvedMix mix = resolved(draft::fishmeal_mix());
    const Range<Mass> narrow = doubt(mix, 1.2).water;
    for (SolidPart& part : mix.solids) part.ingredient.absorption.spread = 0.4;
    const Range<Mass> wide = doubt(mix, 1.2).water;
    CHECK(wide.low < narrow.low);
    CHECK(wide.high > narrow.high);
    CHECK(wide.middle.in(gram) == Approx(narrow.middle.in(gram)).epsilon(0.06));
}

TEST_CASE("the first pour is the lesser of the 5 % point and 70 % of the median, and never below nothing") {
    ResolvedMix mix = certain(resolved(draft::fishmeal_mix()));
    const MixDoubt sure = doubt(mix, 1.2);
    CHECK(sure.first_pour == 0.7 * sure.water.middle);
    for (SolidPart& part : mix.solids) part.ingredient.absorption.spread = 1.0;
    const MixDoubt unsure = doubt(mix, 1.2);
    CHECK(unsure.first_pour == unsure.water.low);
    CHECK(unsure.first_pour < 0.7 * unsure.water.middle);
    const MixDoubt live = doubt(resolved(draft::mix_of("live", {{"maggots", 1}})), 1.2);
    CHECK(live.first_pour == Mass{});
    CHECK(live.water.high == Mass{});
}

// By hand at wetness 1: absorption has sigma^2 = ln(1 + 0.15^2) = 0.0222506, the hand ln(1 + 0.12^2) = 0.0142973; their
// sum is all there is, so the bag makes 0.0222506/0.0365479 = 0.60881 of the variance.
TEST_CASE("the bag to measure first is named with its share of the doubt") {
    ResolvedMix mix = certain(resolved(draft::crumb_mix()));
    mix.solids.front().ingredient.absorption.spread = 0.15;
    const MixDoubt first = doubt(mix, 1.0);
    CHECK(first.measure_first == "brown crumb");
    CHECK(first.measure_first_what == "absorption");
    CHECK(first.measure_first_share == Approx(0.60881).epsilon(1e-4));
}

// By hand at wetness 1: the water wanted is A1 = (A + M0)(1 - M1)/(1 - M0) - M1, whose slope by M1 is
// -(1 + A)/(1 - M0); beyond 1 the gap's is -G/(1 - M0).
TEST_CASE("what to measure first is the input that moves the water most") {
    ResolvedMix mix = certain(resolved(draft::fishmeal_mix()));
    mix.solids[1].ingredient.slump.spread = 0.3;
    CHECK(doubt(mix, 2.0).measure_first == "brown crumb");
    CHECK(doubt(mix, 2.0).measure_first_what == "slump");
    CHECK(doubt(mix, 1.0).measure_first.empty());
    mix.solids[0].ingredient.moisture.spread = 0.25;
    CHECK(doubt(mix, 1.0).measure_first == "fishmeal, brown");
    CHECK(doubt(mix, 1.0).measure_first_what == "moisture");
    const double by_moisture = 0.4 * 0.10 * log_normal_sigma(0.25) * 1.50 / 0.90,
                 by_hand = log_normal_sigma(0.12) * 0.547;
    CHECK(doubt(mix, 1.0).measure_first_share ==
          Approx(by_moisture * by_moisture / (by_moisture * by_moisture + by_hand * by_hand)).epsilon(1e-9));
}

// Source: tests/reference/learned_hand.csv (NumPy, the whole Gaussian system; see make_water_ranges.py), row by row.
TEST_CASE("what measured bags tell of the hand is what the whole Gaussian system tells") {
    std::ifstream file(std::string(BAITWRIGHT_SOURCE_DIR) + "/tests/reference/water_mixes.json");
    const auto mixes = nlohmann::json::parse(file)["mixes"];
    const auto rows = reference::rows_in("learned_hand.csv");
    REQUIRE(rows.size() == 5);
    for (const auto& row : rows) {
        CAPTURE(row.at("mix"), row.at("source"));
        const auto mix =
            std::find_if(mixes.begin(), mixes.end(), [&](const auto& one) { return one["name"] == row.at("mix"); });
        REQUIRE(mix != mixes.end());
        const Hand hand = draft::mix_of_json(*mix).hand;
        const auto value = [&](const char* column) { return Approx(std::stod(row.at(column))).margin(2e-9); };
        CHECK(hand.log_hand == value("log_hand"));
        CHECK(hand.log_memory == value("log_memory"));
        CHECK(hand.hand_variance == value("hand_variance"));
        CHECK(hand.memory_variance == value("memory_variance"));
        CHECK(hand.covariance == value("covariance"));
    }
}

// By hand: all marks are from memory, so the water is log-normal with the variances of the hand and of memory.
TEST_CASE("defaults from memory share an error of 9 %, published values do not") {
    ResolvedMix mix = certain(resolved(draft::fishmeal_mix()));
    for (SolidPart& part : mix.solids)
        part.ingredient.absorption.source = part.ingredient.slump.source = {Origin::standing, "from memory"};
    const double sigma = std::sqrt(std::log(1 + 0.12 * 0.12) + std::log(1 + 0.09 * 0.09));
    const MixDoubt sure = doubt(mix, 1.2);
    CHECK(sure.water.low.in(gram) == Approx(624.4 * std::exp(sigma * normal_quantile(0.05))).epsilon(1e-4));
    CHECK(sure.water.high.in(gram) == Approx(624.4 * std::exp(sigma * normal_quantile(0.95))).epsilon(1e-4));
}

// By hand: what was measured is drawn with the 5 % from day to day alone, once for all bags.
TEST_CASE("measured bags are as sure as the hand is from day to day, and none of them is named to be measured") {
    ResolvedMix mix = resolved(draft::fishmeal_mix());
    for (SolidPart& part : mix.solids)
        for (Property<Ratio>* mark : {&part.ingredient.absorption, &part.ingredient.slump})
            *mark = {mark->value, 0.05, {Origin::measured, "a test"}};
    const double sigma = std::sqrt(std::log(1 + 0.05 * 0.05));
    const MixDoubt sure = doubt(mix, 1.2);
    CHECK(sure.water.low.in(gram) == Approx(624.4 * std::exp(sigma * normal_quantile(0.05))).epsilon(1e-4));
    CHECK(sure.water.middle.in(gram) == Approx(624.4).epsilon(1e-4));
    CHECK(sure.water.high.in(gram) == Approx(624.4 * std::exp(sigma * normal_quantile(0.95))).epsilon(1e-4));
    CHECK(sure.measure_first.empty());
    mix.solids[1].ingredient.absorption.source = {Origin::standing, "from memory"};
    CHECK(doubt(mix, 1.2).measure_first == "brown crumb");
}

TEST_CASE("what was asked before changes no range, whatever changes from one question to the next") {
    const ResolvedMix mix = resolved(draft::fishmeal_mix());
    using Change = std::function<void(ResolvedMix&, MixAnswer&, std::uint64_t&)>;
    const std::vector<Change> changes{
        [](ResolvedMix&, MixAnswer&, std::uint64_t& seed) { ++seed; },
        [](ResolvedMix&, MixAnswer& answer, std::uint64_t&) { answer.wetness = answer.wetness + 0.01; },
        [](ResolvedMix&, MixAnswer& answer, std::uint64_t&) { answer.state = MixState::squeezed; },
        [](ResolvedMix&, MixAnswer& answer, std::uint64_t&) { answer.water_already_in = 100.0 * gram; },
        [](ResolvedMix&, MixAnswer& answer, std::uint64_t&) { answer.dry_mass *= 3; },
        [](ResolvedMix& one, MixAnswer&, std::uint64_t&) {
            one.solids[0].ingredient.absorption.value = 1.01 * one.solids[0].ingredient.absorption.value;
        },
        [](ResolvedMix& one, MixAnswer&, std::uint64_t&) {
            one.solids[0].ingredient.slump.spread = 1.5 * one.solids[0].ingredient.slump.spread;
        },
        [](ResolvedMix& one, MixAnswer&, std::uint64_t&) {
            one.solids[1].ingredient.moisture.value = 1.01 * one.solids[1].ingredient.moisture.value;
        },
        [](ResolvedMix& one, MixAnswer&, std::uint64_t&) {
            one.solids[0].ingredient.loose_density.value = 1.01 * one.solids[0].ingredient.loose_density.value;
        },
        [](ResolvedMix& one, MixAnswer&, std::uint64_t&) {
            one.solids[0].ingredient.envelope_density.spread = 1.5 * one.solids[0].ingredient.envelope_density.spread;
        },
        [](ResolvedMix& one, MixAnswer&, std::uint64_t&) {
            one.solids[1].ingredient.particle_size.value = 2 * one.solids[1].ingredient.particle_size.value;
        },
        [](ResolvedMix& one, MixAnswer&, std::uint64_t&) { one.hand.hand_variance *= 2; },
    };
    const MixAnswer answer = scale_mix(mix, draft::feels(), a_kilo(1.2));
    const auto numbers = [](const MixDoubt& doubt) {
        return std::vector<double>{doubt.water.low.si(),      doubt.water.middle.si(),      doubt.water.high.si(),
                                   doubt.wet_volume.low.si(), doubt.wet_volume.middle.si(), doubt.wet_volume.high.si()};
    };
    const auto of_another = [&] { return doubt(resolved(draft::crumb_mix()), 1.4, 77); };
    for (std::size_t i = 0; i < changes.size(); ++i) {
        CAPTURE(i);
        ResolvedMix changed_mix = mix;
        MixAnswer changed_answer = answer;
        std::uint64_t seed = 1;
        changes[i](changed_mix, changed_answer, seed);
        of_another();
        const auto alone = numbers(doubt_of(changed_mix, changed_answer, seed));
        of_another();
        const auto usual = numbers(doubt_of(mix, answer, 1));
        CHECK(numbers(doubt_of(changed_mix, changed_answer, seed)) == alone);
        CHECK(alone != usual);
        CHECK(numbers(doubt_of(mix, answer, 1)) == usual);
    }
}
