#include "bait/label.h"

#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"

using namespace baitwright;

namespace {

/// Two kilograms dry that weigh three wet, with a litre of water, and two pints of pellets among them.
const DoseGround ground{2.0 * kilogram, 3.0 * kilogram, 1.0 * kilogram, 2.0 * imperial_pint};

double grams_of(const char* rate, const char* additive, const DoseGround& on = ground) {
    return dosed_mass(parse_dose_rate(rate), draft::shelf().ingredient(additive), on).in(gram);
}

Ingredient labelled(const char* rate) {
    Ingredient sweet = draft::shelf().ingredient("sweet liquid");
    sweet.label_dose = parse_dose_rate(rate);
    return sweet;
}

}  // namespace

// By hand: the sweet liquid weighs 1.05 g/ml, so that 20 ml are 21 g; and so on.
TEST_CASE("a dose is its rate times what there is of its measure") {
    CHECK(grams_of("10 ml per kg dry", "sweet liquid") == Approx(21));
    CHECK(grams_of("5 g per kg wet", "betaine powder") == Approx(15));
    CHECK(grams_of("20 ml per l water", "sweet liquid") == Approx(21));
    CHECK(grams_of("15 ml per pt pellets", "sweet liquid") == Approx(31.5));
    CHECK(grams_of("2 %", "salt") == Approx(40));
}

TEST_CASE("each measure minds only its own ground") {
    DoseGround other = ground;
    other.wet = 6.0 * kilogram;
    CHECK(grams_of("5 g per kg wet", "betaine powder", other) == Approx(30));
    CHECK(grams_of("10 ml per kg dry", "sweet liquid", other) == Approx(21));
    other = ground;
    other.pellets = 1.0 * imperial_pint;
    CHECK(grams_of("15 ml per pt pellets", "sweet liquid", other) == Approx(15.75));
    CHECK(grams_of("20 ml per l water", "sweet liquid", other) == Approx(21));
}

TEST_CASE("the share of a label is what is planned over the most that it allows, by any measure") {
    CHECK(*share_of_label(labelled("10 ml per kg dry"), 42.0 * gram, ground) == Approx(2));
    CHECK(*share_of_label(labelled("10 g per kg wet"), 15.0 * gram, ground) == Approx(0.5));
    CHECK(*share_of_label(labelled("15 ml per pt pellets"), 31.5 * gram, ground) == Approx(1));
}

TEST_CASE("where there is no label, or nothing that it goes by, there is no share of it") {
    CHECK_FALSE(share_of_label(draft::shelf().ingredient("sweet liquid"), 42.0 * gram, ground).has_value());
    DoseGround no_pellets = ground;
    no_pellets.pellets = Volume{};
    CHECK_FALSE(share_of_label(labelled("15 ml per pt pellets"), 31.5 * gram, no_pellets).has_value());
}
