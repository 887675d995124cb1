#include "bait/soaked_batch.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"

using namespace baitwright;

namespace {

Ingredient micro() {
    return draft::shelf().ingredient("fishmeal micro pellet 2 mm");
}

}  // namespace

// Common practice, no source: a pint of 2 mm pellets weighs about 370 g dry and makes 1.3 to 1.5 pints soaked. The
// model says 1.25 to 1.3, at the low edge of that.
TEST_CASE("a pint of 2 mm pellets weighs 370 g and makes a pint and a quarter soaked") {
    Ingredient pellet = micro();
    pellet.capacity.value = 0.8;
    const Mass dry = 1.0 * imperial_pint * pellet.loose_density.value;
    CHECK(dry.in(gram) == Approx(370).epsilon(0.02));
    const SoakedBatch batch = soaked_batch(pellet, dry, soaked_uptake * 0.8, SoakMethod::covered);
    const double pints = batch.wet_volume.in(imperial_pint);
    CHECK(pints > 1.25);
    CHECK(pints < 1.32);
}

TEST_CASE("the water poured on covers the pellets after they have drunk") {
    const SoakedBatch batch = soaked_batch(micro(), 500.0 * gram, 0.32, SoakMethod::covered);
    const Volume gaps = 500.0 * gram / micro().loose_density.value - 500.0 * gram / micro().envelope_density.value;
    CHECK((batch.pour - batch.inside).in(gram) == Approx(1.2 * gaps.in(millilitre)));
    CHECK(batch.film.in(gram) == Approx(15));
    CHECK(batch.wet().in(gram) == Approx(500 + 160 + 15));
}

TEST_CASE("measured water is all taken: nothing is left over and no film") {
    const SoakedBatch batch = soaked_batch(micro(), 500.0 * gram, 0.32, SoakMethod::measured);
    CHECK(batch.pour == batch.inside);
    CHECK(batch.film == Mass{});
    CHECK((batch.wet() - batch.dry - batch.pour).in(gram) == Approx(0).margin(1e-9));
}

TEST_CASE("water fills a grain's own pores before it swells it") {
    const Density envelope = 0.7 * gram_per_millilitre, skeleton = 1.4 * gram_per_millilitre;
    const SpecificVolume dry = swollen_grain(envelope, skeleton, 0.0);
    CHECK(swollen_grain(envelope, skeleton, 0.7).in(millilitre_per_gram) == Approx(dry.in(millilitre_per_gram)));
    CHECK((swollen_grain(envelope, skeleton, 1.0) - dry).in(millilitre_per_gram) == Approx(1.0 - (1 / 0.7 - 1 / 1.4)));
}

TEST_CASE("more water never makes a batch lighter or smaller") {
    CHECK(rc::check([] {
        const double inside = *rc::gen::inRange(0, 200) * 0.01, more = inside + *rc::gen::inRange(1, 100) * 0.01;
        const SoakedBatch one_batch = soaked_batch(micro(), 1.0 * kilogram, inside, SoakMethod::covered);
        const SoakedBatch other = soaked_batch(micro(), 1.0 * kilogram, more, SoakMethod::covered);
        RC_ASSERT(other.wet().si() > one_batch.wet().si());
        RC_ASSERT(other.pour.si() > one_batch.pour.si());
        RC_ASSERT(other.wet_volume.si() >= one_batch.wet_volume.si());
    }));
}

TEST_CASE("a pellet goes from hard to mushy as it fills") {
    CHECK(std::string(feel_of_uptake(0.0)) == "hard");
    CHECK(std::string(feel_of_uptake(0.2)) == "just soft");
    CHECK(std::string(feel_of_uptake(0.4)) == "soft");
    CHECK(std::string(feel_of_uptake(0.9)) == "mushy");
}
