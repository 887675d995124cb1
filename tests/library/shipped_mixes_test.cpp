// Every mix we ship, against the bands of docs/method.md: what a kilo of crumbs and meals gives. The bands are common
// practice, no source; a mix outside them says why in its note.
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <set>

#include "answers/drop/drop_feed.h"
#include "answers/mix/answer_mix.h"
#include "answers/mix/odd_mix.h"
#include "bait/resolve_mix.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const MemoryShelf& shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

MixAnswer kilo(const Recipe& recipe, const char* feel, MixState state) {
    MixRequest request;
    request.target = DryMass{1.0 * kilogram};
    request.feel = feel;
    request.state = state;
    return answer_mix(shelf(), recipe, request);
}

/// Crumbs and meals: no soil, soaked pellets or fresh bread, and not pellets alone.
bool of_crumbs_and_meals(const ResolvedMix& mix) {
    double soil = 0, pellets = 0;
    for (const SolidPart& part : mix.solids) {
        if (part.ingredient.kind == IngredientKind::soil) soil += part.share;
        if (part.ingredient.kind == IngredientKind::pellet) pellets += part.share;
        if (part.prepare == Preparation::soaked || part.ingredient.moisture.value > 0.3) return false;
    }
    return soil < 0.1 && pellets < 0.5;
}

struct InFirm {
    double balls, grams_each, riddled_litres, soft_density;
};

InFirm measured(const Recipe& recipe) {
    const double ball_ml = std::numbers::pi / 6 * 5.5 * 5.5 * 5.5;
    const MixAnswer ball = kilo(recipe, "firm", MixState::squeezed), loose = kilo(recipe, "firm", MixState::riddled),
                    soft = kilo(recipe, "soft", MixState::cupped);
    return {ball.wet_volume.in(millilitre) / ball_ml, (ball.wet_mass / ball.wet_volume).in(gram_per_millilitre)*ball_ml,
            loose.wet_volume.in(litre), (soft.wet_mass / soft.wet_volume).in(gram_per_millilitre)};
}

}  // namespace

TEST_CASE("a kilo of each shipped mix of crumbs and meals balls, riddles and sinks as it should") {
    int tested = 0;
    for (const std::string& name : shelf().recipe_names()) {
        const Recipe recipe = shelf().recipe(name);
        if (!of_crumbs_and_meals(resolve(recipe, shelf()))) continue;
        CAPTURE(name);
        const InFirm firm = measured(recipe);
        CHECK(std::lround(firm.balls) >= 15);
        CHECK(std::lround(firm.balls) <= 18);
        CHECK(std::lround(firm.grams_each) >= 95);
        CHECK(std::lround(firm.grams_each) <= 105);
        CHECK(firm.riddled_litres == Approx(2.75).epsilon(0).margin(0.5));
        CHECK(firm.soft_density >= 1.05);
        ++tested;
    }
    CHECK(tested >= 10);
}

TEST_CASE("a soft cup of every shipped mix of crumbs and meals sinks and breaks in one to three seconds") {
    int tested = 0;
    for (const std::string& name : shelf().recipe_names()) {
        const Recipe recipe = shelf().recipe(name);
        if (!of_crumbs_and_meals(resolve(recipe, shelf()))) continue;
        CAPTURE(name);
        DropRequest request;
        request.feel = "soft";
        request.depth = 2.5 * metre;
        const DropAnswer answer = drop_feed(shelf(), recipe, request);
        CHECK(answer.breaks == Breaks::midwater);
        CHECK(answer.breaks_at.in(second) >= 1);
        CHECK(answer.breaks_at.in(second) <= 3);
        ++tested;
    }
    CHECK(tested >= 10);
}

TEST_CASE("a shipped mix outside the bands says why in its note") {
    for (const std::string& name : shelf().recipe_names()) {
        const Recipe recipe = shelf().recipe(name);
        CAPTURE(name);
        if (!of_crumbs_and_meals(resolve(recipe, shelf()))) CHECK_FALSE(recipe.note.empty());
    }
}

TEST_CASE("every shipped mix says what it is for, when not, and why, and can be made") {
    CHECK(shelf().recipe_names().size() >= 12);
    for (const std::string& name : shelf().recipe_names()) {
        const Recipe recipe = shelf().recipe(name);
        CAPTURE(name);
        CHECK_FALSE(recipe.purpose.empty());
        CHECK_FALSE(recipe.avoid.empty());
        CHECK_FALSE(recipe.why.empty());
        MixRequest request;
        request.target = WetVolume{3.0 * litre};
        const MixAnswer answer = answer_mix(shelf(), recipe, request);
        CHECK(answer.cost.has_value());
        for (const Warning& warning : answer.warnings) CHECK_FALSE(warning.answer_is_no);
    }
}

TEST_CASE("the shipped library has at least 65 ingredients over all kinds, each with a price, a colour and sources") {
    std::set<IngredientKind> kinds;
    const std::vector<std::string> names = shelf().ingredient_names();
    CHECK(names.size() >= 65);
    for (const std::string& name : names) {
        const Ingredient ingredient = shelf().ingredient(name);
        CAPTURE(name);
        kinds.insert(ingredient.kind);
        CHECK_FALSE(ingredient.packs.empty());
        CHECK_FALSE(ingredient.colour.empty());
    }
    CHECK(kinds.size() == 8);
}

// Worked by hand: 200 ml at 0.8 g of wetting a ml save 160 g of water.
TEST_CASE("200 ml of molasses saves about 160 g of water") {
    Recipe plain = shelf().recipe("silt bed"), sweet = plain;
    sweet.parts.push_back({"molasses", 200.0 * millilitre});
    const double saved =
        (kilo(plain, "firm", MixState::riddled).water_to_add - kilo(sweet, "firm", MixState::riddled).water_to_add)
            .in(gram);
    CHECK(saved == Approx(160).epsilon(0).margin(1));
}
