#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>

#include "answers/asking.h"
#include "answers/drop/drop_feed.h"
#include "answers/mix/answer_mix.h"
#include "answers/mix/few_normals.h"
#include "answers/mix/first_to_measure.h"
#include "answers/mix/mix_doubt.h"
#include "answers/mix/right_a_mix.h"
#include "answers/mix_of_json.h"
#include "bait/own_values.h"
#include "bait/resolve_mix.h"
#include "physics/normal_quantile.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

nlohmann::json learnt_mixes() {
    std::ifstream file(std::string(BAITWRIGHT_SOURCE_DIR) + "/tests/reference/learnt_mixes.json");
    return nlohmann::json::parse(file)["mixes"];
}

LearntWater learnt_of_json(const nlohmann::json& from) {
    LearntWater learnt{
        from["log_hand"], from["log_memory"], {}, from["rank"], from["factor"].get<std::vector<double>>()};
    for (const auto& bag : from["bags"])
        learnt.bags.push_back({bag["name"].get<std::string>(), bag["log_absorption"], bag["log_gap"], bag["mixes"]});
    return learnt;
}

Ingredient bag_of_json(const nlohmann::json& part) {
    Ingredient i = draft::grain(part["name"], IngredientKind::base);
    const auto mark = [&](const char* key, const char* spread) {
        Property<Ratio> one{part[key].get<double>(), part[spread].get<double>(), {Origin::standing, "from memory"}};
        if (part["kind"] == "learnt") one.source = {Origin::learned, "some mixes"};
        if (part["kind"] == "measured") one.source = {Origin::measured, "a test"};
        if (part["kind"] == "published") one.source = {Origin::published, "a table"};
        return one;
    };
    i.absorption = mark("absorption", "absorption_spread");
    i.slump = mark("slump", "slump_spread");
    i.moisture = draft::stated<Ratio>(part["moisture"].get<double>(), part["moisture_spread"].get<double>());
    return i;
}

struct LearntShelf {
    MemoryShelf shelf;
    Recipe recipe;

    explicit LearntShelf(const nlohmann::json& mix) {
        shelf.put(draft::feels());
        recipe.name = mix["name"];
        for (const auto& part : mix["parts"]) {
            shelf.put(bag_of_json(part));
            recipe.parts.push_back({part["name"].get<std::string>(), part["weight"].get<double>() * kilogram});
        }
        shelf.put(learnt_of_json(mix["learnt"]));
    }
};

nlohmann::json named(const std::string& name) {
    for (const auto& mix : learnt_mixes())
        if (mix["name"] == name) return mix;
    throw std::runtime_error(name);
}

}  // namespace

// Source: tests/reference/learnt_ranges.csv (NumPy, a million draws; see make_learnt_ranges.py), row by row.
TEST_CASE("where bags were learnt, the water's 5, 50 and 95 % points are those of their joint normal within 0.5 %") {
    const auto mixes = learnt_mixes();
    const auto rows = reference::rows_in("learnt_ranges.csv");
    REQUIRE(mixes.size() == 8);
    REQUIRE(rows.size() == 8);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CAPTURE(rows[i].at("mix"), rows[i].at("source"));
        REQUIRE(mixes[i]["name"] == rows[i].at("mix"));
        const LearntShelf on(mixes[i]);
        const Range<Mass> water =
            water_to_wet(resolve(on.recipe, on.shelf), mixes[i]["wetness"].get<double>(), 1.0 * kilogram, 1);
        CHECK(water.low.in(gram) == Approx(std::stod(rows[i].at("water_p05_g_per_kg_dry"))).epsilon(0.005));
        CHECK(water.middle.in(gram) == Approx(std::stod(rows[i].at("water_p50_g_per_kg_dry"))).epsilon(0.005));
        CHECK(water.high.in(gram) == Approx(std::stod(rows[i].at("water_p95_g_per_kg_dry"))).epsilon(0.005));
    }
}

TEST_CASE("few normals make the same distribution as many, and the bags need two each at the most") {
    for (const auto& mix : learnt_mixes()) {
        CAPTURE(mix["name"].get<std::string>());
        const LearntWater learnt = learnt_of_json(mix["learnt"]), few = few_normals(learnt);
        const std::size_t rows = 2 + 2 * learnt.bags.size();
        for (std::size_t a = 0; a < rows; ++a)
            for (std::size_t b = 0; b < rows; ++b)
                CHECK(few.covariance(a, b) == Approx(learnt.covariance(a, b)).margin(1e-12));
        for (std::size_t row = 2; row < rows; ++row)
            for (std::size_t k = rows - 2; k < few.rank; ++k) CHECK(few.factor[row * few.rank + k] == 0);
    }
    const LearntShelf six(named("six learnt bags of many, soft"));
    CHECK(doubtful_mix(resolve(six.recipe, six.shelf)).learnt_normals == 12);
    const LearntShelf two(named("three learnt of rank two, firm"));
    CHECK(doubtful_mix(resolve(two.recipe, two.shelf)).learnt_normals == 2);
}

// By hand: one bag at wetness 1 wants exp(ln A) grams a gram, log-normal with the bag's variance and the day's.
TEST_CASE("the water of a learnt bag is the median that was learnt, as sure as the bag and the day are") {
    const auto mix = named("one learnt bag, just holding");
    const LearntShelf on(mix);
    const ResolvedMix resolved = resolve(on.recipe, on.shelf);
    const double median = std::exp(mix["learnt"]["bags"][0]["log_absorption"].get<double>());
    CHECK(resolved.solids[0].ingredient.absorption.value == Approx(median).epsilon(1e-12));
    const LearntWater learnt = learnt_of_json(mix["learnt"]);
    const double sigma = std::sqrt(learnt.covariance(2, 2) + std::log(1 + 0.05 * 0.05));
    const Range<Mass> water = water_to_wet(resolved, 1.0, 1.0 * kilogram, 1);
    CHECK(water.middle.in(gram) == Approx(1000 * median).epsilon(1e-3));
    CHECK(water.high / water.low == Approx(std::exp(2 * 1.644854 * sigma)).epsilon(2e-3));
}

TEST_CASE("a bag that was edited since stands as it is stated, in the hand that was learnt") {
    const auto mix = named("one learnt bag, just holding");
    LearntShelf on(mix);
    Ingredient edited = bag_of_json(mix["parts"][0]);
    edited.absorption.source = edited.slump.source = {Origin::published, "a table"};
    on.shelf.put(edited);
    const ResolvedMix resolved = resolve(on.recipe, on.shelf);
    const double hand = std::exp(mix["learnt"]["log_hand"].get<double>());
    CHECK(numbers_of(resolved).solids[0].marks.absorption == Approx(hand * edited.absorption.value).epsilon(1e-12));
}

TEST_CASE("what was measured before is in what was learnt, and what was measured since stands") {
    const auto mix = named("one learnt bag, just holding");
    LearntShelf on(mix);
    Ingredient measured = bag_of_json(mix["parts"][0]);
    measured.absorption.source = {Origin::measured, "squeeze test"};
    on.shelf.put(measured);
    CHECK(resolve(on.recipe, on.shelf).solids[0].ingredient.absorption.value == measured.absorption.value);
    LearntWater learnt = learnt_of_json(mix["learnt"]);
    learnt.bags[0].measured_absorption = measured.absorption.value;
    on.shelf.put(learnt);
    CHECK(resolve(on.recipe, on.shelf).solids[0].ingredient.absorption.value ==
          Approx(std::exp(learnt.bags[0].log_absorption)).epsilon(1e-12));
}

TEST_CASE("learnt marks of which nothing else is known stand as stated, as sure as they say, in this hand") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient crumb = draft::shelf().ingredient("brown crumb");
    crumb.absorption = {0.72, 0.04, {Origin::learned, "6 mixes"}};
    crumb.slump = {1.20, 0.0, {Origin::learned, "6 mixes"}};
    shelf.put(crumb);
    const ResolvedMix mix = resolve(draft::crumb_mix(), shelf);
    const double sigma = std::sqrt(std::log(1 + 0.05 * 0.05) + std::log(1 + 0.04 * 0.04));
    const Range<Mass> water = water_to_wet(mix, 1.0, 1.0 * kilogram, 1);
    CHECK(water.middle.in(gram) == Approx(720.0).epsilon(1e-3));
    CHECK(water.high / water.low == Approx(std::exp(2 * 1.644854 * sigma)).epsilon(2e-3));
}

// By hand: w = sum of share x A at wetness 1. With rows (1, 0) x 0.1 and (0, 1) x 0.05 of ln A and nothing else, bag 1
// moves it by s1 A1 0.1, bag 2 by s2 A2 0.05, independently; the day moves all of it by its sigma.
TEST_CASE("the bag to measure first is the one that would take most of what is learnt away") {
    MemoryShelf shelf(&draft::shelf());
    LearntWater learnt{
        0,
        0,
        {{"brown crumb", std::log(0.6), std::log(0.4), 3}, {"maize meal", std::log(0.4), std::log(0.3), 3}},
        2,
        {0, 0, 0, 0, 0.1, 0, 0, 0, 0, 0.05, 0, 0}};
    for (const char* name : {"brown crumb", "maize meal"}) {
        Ingredient i = draft::shelf().ingredient(name);
        i.absorption.source = i.slump.source = {Origin::learned, "3 mixes"};
        shelf.put(i);
    }
    shelf.put(learnt);
    const ResolvedMix mix = resolve(draft::mix_of("two", {{"brown crumb", 1}, {"maize meal", 1}}), shelf);
    const auto first = first_to_measure(doubtful_mix(mix), 1.0);
    REQUIRE(first);
    CHECK(mix.solids[first->solid].ingredient.name == "brown crumb");
    CHECK(std::string(first->what) == "absorption");
    const double one = 0.5 * 0.6 * 0.1, two = 0.5 * 0.4 * 0.05, day = 0.5 * (0.6 + 0.4) * log_normal_sigma(0.05);
    CHECK(first->share == Approx(one * one / (one * one + two * two + day * day)).epsilon(1e-9));
}

TEST_CASE("an answer says once that its water is by the person's own mixes") {
    const auto mix = named("six learnt bags, firm");
    const LearntShelf on(mix);
    const MixAnswer answer = answer_mix(on.shelf, on.recipe, draft::request_for(DryMass{1.0 * kilogram}));
    int most = 0;
    for (const auto& bag : mix["learnt"]["bags"]) most = std::max(most, bag["mixes"].get<int>());
    const auto says = [](const Warning& warning) { return warning.code == "learnt"; };
    const auto said = std::find_if(answer.warnings.begin(), answer.warnings.end(), says);
    REQUIRE(said != answer.warnings.end());
    CHECK(said->message == "water by your own " + std::to_string(most) + " mixes");
    CHECK(std::count_if(answer.warnings.begin(), answer.warnings.end(), says) == 1);
}

// By hand: a level cup that weighs e^0.1 of what our model says holds e^0.1 of the dry mix; what is riddled or squeezed
// is as before.
TEST_CASE("a cup that was weighed holds as much more as it weighed more, in mixes, tubs and drops") {
    MemoryShelf shelf(&draft::shelf());
    const Recipe recipe = draft::fishmeal_mix();
    MixRequest cups = draft::request_for(Vessels{4, 250.0 * millilitre, "cup"}),
               balls = draft::request_for(Balls{10, 55.0 * millimetre});
    DropRequest drop;
    drop.depth = 2.0 * metre;
    drop.feel = "soft";
    const MixAnswer cups_before = answer_mix(shelf, recipe, cups), balls_before = answer_mix(shelf, recipe, balls);
    const DropAnswer drop_before = drop_feed(shelf, recipe, drop);
    shelf.put(LearntMix{recipe.name, LearntFactor{0.1, 0.03, 3}, {}, {}});
    const MixAnswer more = answer_mix(shelf, recipe, cups);
    CHECK(more.dry_mass / cups_before.dry_mass == Approx(std::exp(0.1)).epsilon(1e-9));
    CHECK(more.portions->mass_each / cups_before.portions->mass_each == Approx(std::exp(0.1)).epsilon(1e-9));
    CHECK(more.learnt.cups_weighed == 3);
    CHECK(more.warnings.back().message == "a cup's weight by your own 3 weighings");
    CHECK(answer_mix(shelf, recipe, balls).dry_mass == balls_before.dry_mass);
    CHECK(answer_mix(shelf, recipe, balls).learnt.cups_weighed == 0);
    const DropAnswer heavier = drop_feed(shelf, recipe, drop);
    CHECK(heavier.wet_mass / drop_before.wet_mass == Approx(std::exp(0.1)).epsilon(1e-9));
    drop.own.cup_weighs = drop_before.wet_mass;
    CHECK(drop_feed(shelf, recipe, drop).wet_mass / drop_before.wet_mass == Approx(1).epsilon(1e-9));
}

TEST_CASE("a hold that was seen often makes the ball hold so, and what was seen just now goes before") {
    MemoryShelf shelf(&draft::shelf());
    const Recipe recipe = draft::fishmeal_mix();
    DropRequest drop;
    drop.form = DroppedCup{250.0 * millilitre};
    drop.feel = "soft";
    drop.depth = 4.0 * metre;
    const DropAnswer before = drop_feed(shelf, recipe, drop);
    shelf.put(LearntMix{recipe.name, {}, LearntFactor{std::log(2), 0.02, 5}, LearntFactor{std::log(1.5), 0.05, 2}});
    const DropAnswer longer = drop_feed(shelf, recipe, drop);
    CHECK(longer.breaks_at / before.breaks_at == Approx(2).epsilon(1e-6));
    CHECK(longer.learnt.holds_seen == 5);
    CHECK(longer.warnings.back().message ==
          "how long it holds by your own 5 looks and how wide it lies by your own 2 looks");
    const auto width = [](const Range<Length>& range) { return double(range.high / range.low); };
    CHECK(width(longer.breaks_depth_range) < width(before.breaks_depth_range));
    CHECK(width(longer.width_range) < width(before.width_range));
    drop.own.breaks_at = before.breaks_depth;
    drop.own.carpet = 1.0 * metre;
    const DropAnswer seen = drop_feed(shelf, recipe, drop);
    CHECK(seen.breaks_depth.si() == Approx(before.breaks_depth.si()).epsilon(1e-6));
    CHECK(seen.width.most.si() == Approx(1.0).epsilon(1e-6));
    CHECK_FALSE(seen.learnt.anything());
}

TEST_CASE("a tub says that its water is by the person's own mixes") {
    const auto mix = named("six learnt bags, firm");
    const LearntShelf on(mix);
    TubRequest tub;
    tub.dry_mass = 1.0 * kilogram;
    tub.water = WaterPoured{400.0 * millilitre};
    const TubAnswer answer = right_a_mix(on.shelf, on.recipe, tub);
    CHECK(answer.learnt.bags.size() == 6);
    CHECK(answer.warnings.back().code == "learnt");
}
