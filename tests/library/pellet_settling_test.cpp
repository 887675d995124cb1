// The shipped pellets sink as feed pellets of fish farms were seen to sink: tests/reference/pellet_settling.csv. Theirs
// are extruded and oily, about 1.1 g/ml; ours are pressed, 1.18 to 1.25 g/ml, so sink faster.
#include <catch2/catch.hpp>

#include "answers/drop/feed_in_water.h"
#include "bait/resolve_mix.h"
#include "library/open_library.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

const MemoryShelf& all_shipped() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

/// Sea water of the Mediterranean in summer: 1028 kg/m3, 1.09 mPa s (from memory).
const StillWater& sea() {
    static const StillWater water(Density::from_si(1028), Viscosity::from_si(1.09e-3));
    return water;
}

/// m/s of a dry pellet that still has the air in its pores, as `drop` lets a hook pellet sink.
double dry_speed(const Ingredient& pellet) {
    return terminal_speed(volume_diameter(pellet), pellet.envelope_density.value, sea(), pellet_sphericity).si();
}

/// m/s of the middle one of loose pellets as `drop` feeds them: dry, with the air in their pores.
double fed_speed(const std::string& name) {
    Recipe recipe;
    recipe.name = name;
    recipe.parts.push_back({name, 1.0 * kilogram});
    const ResolvedMix mix = resolve(recipe, all_shipped());
    const MixNumbers numbers = numbers_of(mix);
    const FeedInWater feed =
        feed_in_water(mix, numbers, wet(numbers, 0.0, 0.0), false, Temperature::from_celsius(20), sea());
    return feed.grains.at(feed.grains.size() / 2).settling.si();
}

std::vector<double> seen(const std::string& id) {
    for (const auto& row : reference::rows_in("pellet_settling.csv"))
        if (row.at("id") == id) return reference::numbers_in(row.at("expected"));
    throw std::runtime_error("no row " + id);
}

std::vector<Ingredient> shipped_pellets() {
    std::vector<Ingredient> pellets;
    for (const std::string& name : all_shipped().ingredient_names())
        if (all_shipped().ingredient(name).kind == IngredientKind::pellet)
            pellets.push_back(all_shipped().ingredient(name));
    return pellets;
}

}  // namespace

// Row PELLET_SETTLING-05: salmon feed of 2 to 10 mm sinks at 0.05 to 0.14 m/s. Ours keep to it up to 4 mm, the oily
// ones, which are nearest to salmon feed, up to 6 mm. Pressed fishmeal of 6 and 8 mm is beyond, 0.145 and 0.164 m/s.
TEST_CASE("pellets up to 4 mm, and oily ones up to 6, sink as fast as salmon feed") {
    const std::vector<double> range = seen("PELLET_SETTLING-05");
    int tested = 0;
    for (const Ingredient& pellet : shipped_pellets()) {
        const double size = pellet.diameter.value.in(millimetre);
        const bool oily = pellet.composition.fat.value > 0.2;
        if (size < 2 || size > (oily ? 6 : 4) + 1e-9) continue;
        CAPTURE(pellet.name);
        CHECK(dry_speed(pellet) > range.front());
        CHECK(dry_speed(pellet) < range.back());
        ++tested;
    }
    CHECK(tested == 8);
}

TEST_CASE("pressed pellets of 6 and 8 mm sink faster than salmon feed, by a fifth at most") {
    const std::vector<double> range = seen("PELLET_SETTLING-05");
    for (const char* name : {"fishmeal pellet 6 mm", "fishmeal pellet 8 mm"}) {
        CAPTURE(name);
        CHECK(dry_speed(all_shipped().ingredient(name)) > range.back());
        CHECK(dry_speed(all_shipped().ingredient(name)) < 1.2 * range.back());
    }
}

// Rows PELLET_SETTLING-01 to 03: 0.087 m/s for 3 mm, 0.144 for 5 mm, 0.088 for the extruded 6 mm. What was seen does
// not even rise with the size; the method promises no more than a factor of two. Ours are 20 to 40 % faster at 3 mm,
// within 15 % at 5 mm (between 4 and 6), up to twice as fast as the extruded 6 mm.
TEST_CASE("fishmeal pellets sink as fast as sea-bream pellets of their size, within a factor of two at worst") {
    for (const auto speed_of : {+[](const std::string& name) { return dry_speed(all_shipped().ingredient(name)); },
                                +[](const std::string& name) { return fed_speed(name); }}) {
        const double three = speed_of("fishmeal pellet 3 mm"), four = speed_of("fishmeal pellet 4 mm"),
                     six = speed_of("fishmeal pellet 6 mm");
        CAPTURE(three, four, six);
        CHECK(three > seen("PELLET_SETTLING-01").front());
        CHECK(three < 1.5 * seen("PELLET_SETTLING-01").front());
        CHECK(0.5 * (four + six) == Approx(seen("PELLET_SETTLING-02").front()).epsilon(0.15));
        CHECK(six > seen("PELLET_SETTLING-03").front());
        CHECK(six < 2 * seen("PELLET_SETTLING-03").front());
    }
}
