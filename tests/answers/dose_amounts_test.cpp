#include "answers/mix/dose_amounts.h"

#include <catch2/catch.hpp>

#include "answers/asking.h"
#include "quantities/fault.h"

using namespace baitwright;

namespace {

/// The draft shelf with a labelled liquid, salt that knows what it is, and two pellets of unlike weight.
const MemoryShelf& shelf() {
    static MemoryShelf shelf(&draft::shelf());
    Ingredient sweet = draft::shelf().ingredient("sweet liquid");
    sweet.name = "labelled liquid";
    sweet.label_dose = parse_dose_rate("25 ml per kg dry");
    shelf.put(sweet);
    Ingredient salt = draft::shelf().ingredient("salt");
    salt.solute = "salt";
    shelf.put(salt);
    Ingredient light = draft::shelf().ingredient("cereal pellet 2 mm");
    light.name = "light pellet";
    light.loose_density.value = 360.0 * gram_per_litre;
    shelf.put(light);
    return shelf;
}

AdditiveRequest on(const std::string& additive, MassOrVolume amount, const std::string& bait = {}) {
    AdditiveRequest request;
    request.additive = additive;
    request.amount = amount;
    request.bait = bait;
    return request;
}

}  // namespace

TEST_CASE("a rate per kilogram is multiplied by the kilograms") {
    AdditiveRequest request = on("sweet liquid", 2.5 * kilogram);
    request.rate = parse_dose_rate("20 ml per kg dry");
    const DoseAnswer answer = dose_additive(shelf(), request);
    CHECK(answer.additives.front().volume.in(millilitre) == Approx(50));
    CHECK(answer.additives.front().mass.in(gram) == Approx(52.5));  // at 1.05 g/ml
    CHECK_FALSE(answer.additives.front().of_label_max.has_value());
}

// By hand: half a pint (284.13 ml) at 650 g/l is 184.7 g; 15 ml over that is 81.2 ml a kilo; 2 pt at 360 g/l are 409.1
// g.
TEST_CASE("an amount is carried from one bait to another by weight, not by volume") {
    AdditiveRequest request = on("sweet liquid", 2.0 * imperial_pint, "light pellet");
    request.carried = {15.0 * millilitre, 0.5 * imperial_pint, "fishmeal micro pellet 2 mm"};
    const DoseAnswer answer = dose_additive(shelf(), request);
    CHECK(answer.additives.front().volume.in(millilitre) == Approx(15.0 * (2 * 360.0) / (0.5 * 650)).epsilon(1e-9));
}

TEST_CASE("the label's dose is taken where no rate is given, and more than it is warned of") {
    const DoseAnswer by_label = dose_additive(shelf(), on("labelled liquid", 1.0 * kilogram));
    CHECK(by_label.additives.front().volume.in(millilitre) == Approx(25));
    CHECK(*by_label.additives.front().of_label_max == Approx(1));
    CHECK(by_label.warnings.empty());
    AdditiveRequest more = on("labelled liquid", 1.0 * kilogram);
    more.rate = parse_dose_rate("100 ml per kg dry");
    const DoseAnswer over = dose_additive(shelf(), more);
    REQUIRE(over.warnings.size() == 1);
    CHECK(over.warnings.front().code == "over-label");
    CHECK(over.warnings.front().answer_is_no);
}

TEST_CASE("salt in water has a strength, a density and a water activity") {
    AdditiveRequest request = on("salt", 1.0 * kilogram);
    request.rate = parse_dose_rate("100 g per l water");
    request.water = 1.0 * litre;
    const DoseAnswer answer = dose_additive(shelf(), request);
    REQUIRE(answer.solution.has_value());
    CHECK(100 * answer.solution->concentration == Approx(100.0 / 1100 * 100));
    CHECK(answer.solution->density->in(gram_per_millilitre) == Approx(1.064).epsilon(0).margin(0.002));
    CHECK(*answer.solution->water_activity < 0.95);
    request.rate = parse_dose_rate("600 g per l water");
    const DoseAnswer too_much = dose_additive(shelf(), request);
    REQUIRE(too_much.warnings.size() == 1);
    CHECK(too_much.warnings.front().code == "undissolved");
}

TEST_CASE("the additives of a mix are those that scaling it gives") {
    Recipe recipe = draft::fishmeal_mix();
    recipe.doses.push_back({"labelled liquid", parse_dose_rate("50 ml per kg dry")});
    const MixRequest two_kilos = draft::request_for(DryMass{2.0 * kilogram});
    const DoseAnswer answer = dose_mix(shelf(), recipe, two_kilos);
    REQUIRE(answer.additives.size() == 1);
    CHECK(answer.additives.front().volume.in(millilitre) == Approx(100));
    CHECK(*answer.additives.front().of_label_max == Approx(2));
    CHECK(answer.warnings.front().code == "over-label");
    CHECK(answer.solution.has_value());
    const DoseAnswer none = dose_mix(shelf(), draft::fishmeal_mix(), two_kilos);
    CHECK(none.warnings.front().code == "no-additive");
}

TEST_CASE("what a dose cannot do without is asked for") {
    const auto code_of = [](const AdditiveRequest& request) {
        try {
            dose_additive(shelf(), request);
        } catch (const Error& error) {
            return error.faults().front().code;
        }
        return std::string("none");
    };
    CHECK(code_of(on("sweet liquid", 1.0 * kilogram)) == "no-rate");
    CHECK(code_of(on("labelled liquid", 2.0 * imperial_pint)) == "no-bait");
    CHECK(code_of(on("labelled liquid", Mass{})) == "out-of-range");
    CHECK(code_of(on("sweat liquid", 1.0 * kilogram)) == "unknown-ingredient");
    AdditiveRequest both = on("labelled liquid", 1.0 * kilogram);
    both.rate = parse_dose_rate("1 ml per kg dry");
    both.carried = {15.0 * millilitre, 100.0 * gram, ""};
    CHECK(code_of(both) == "two-rates");
    AdditiveRequest dry = on("salt", 1.0 * kilogram);
    dry.rate = parse_dose_rate("10 g per l water");
    CHECK(code_of(dry) == "no-water");
    dry.rate = parse_dose_rate("10 g per pt pellets");
    CHECK(code_of(dry) == "no-bait");
}
