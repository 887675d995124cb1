#include "bait/ingredient_completion.h"

#include <array>
#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"
#include "bait/ingredient_facts.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using draft::stated;

namespace {

/// The least a kind must state.
Ingredient bare(IngredientKind kind) {
    Ingredient i;
    i.name = "bare";
    i.kind = kind;
    if (kind == IngredientKind::liquid) {
        i.density = stated(1.2 * gram_per_millilitre);
        i.water = stated<Ratio>(0.4);
        return i;
    }
    i.loose_density = stated(500.0 * gram_per_litre);
    if (takes_water(kind)) i.absorption = stated<Ratio>(0.5);
    if (kind == IngredientKind::pellet || kind == IngredientKind::expander) i.diameter = stated(4.0 * millimetre);
    if (kind == IngredientKind::expander) i.porosity = stated<Ratio>(0.5);
    return i;
}

Ingredient completed(Ingredient ingredient) {
    complete(ingredient);
    return ingredient;
}

std::vector<std::string> codes_of(const Ingredient& ingredient) {
    std::vector<std::string> codes;
    for (const PropertyFault& fault : faults_of(ingredient)) codes.push_back(fault.key + ": " + fault.fault.code);
    return codes;
}

using Codes = std::vector<std::string>;

constexpr std::array all_kinds{IngredientKind::base, IngredientKind::pellet,   IngredientKind::expander,
                               IngredientKind::seed, IngredientKind::particle, IngredientKind::powder,
                               IngredientKind::soil, IngredientKind::liquid};

}  // namespace

TEST_CASE("the least that a kind must state is enough") {
    for (const IngredientKind kind : all_kinds) {
        CAPTURE(name_of(kind));
        CHECK(codes_of(bare(kind)).empty());
    }
}

TEST_CASE("a completed ingredient knows all that its kind has, and no more, and has no faults") {
    for (const IngredientKind kind : all_kinds) {
        CAPTURE(name_of(kind));
        const Ingredient whole = completed(bare(kind));
        visit_properties(whole, [&](const auto& facts, const auto& property) {
            CAPTURE(facts.key);
            const bool moot = facts.key == "absorption" || facts.key == "slump";  // filled with 0 for what takes none
            if (!moot) CHECK(property.known() == (need_of(kind, facts.key) != Need::absent));
        });
        CHECK(codes_of(whole).empty());
    }
}

TEST_CASE("every required property that is missing is named at once") {
    Ingredient nothing;
    nothing.name = "nothing";
    CHECK(codes_of(nothing) == Codes{"loose_density: missing-value", "absorption: missing-value"});
    nothing.kind = IngredientKind::liquid;
    CHECK(codes_of(nothing) == Codes{"density: missing-value", "water: missing-value"});
    nothing.kind = IngredientKind::expander;
    CHECK(codes_of(nothing) ==
          Codes{"loose_density: missing-value", "diameter: missing-value", "porosity: missing-value"});
}

TEST_CASE("a property that the kind cannot have is a fault") {
    Ingredient crumb = bare(IngredientKind::base);
    crumb.porosity = stated<Ratio>(0.5);
    crumb.wetting = stated(0.8 * gram_per_millilitre);
    CHECK(codes_of(crumb) == Codes{"porosity: unfit-key", "wetting: unfit-key"});
    Ingredient liquid = bare(IngredientKind::liquid);
    liquid.absorption = stated<Ratio>(0.5);
    CHECK(codes_of(liquid) == Codes{"absorption: unfit-key"});
}

TEST_CASE("slump must be above absorption, envelope above loose density, skeleton not below the envelope") {
    Ingredient crumb = bare(IngredientKind::base);
    crumb.slump = stated<Ratio>(0.5);
    CHECK(codes_of(crumb) == Codes{"slump: inconsistent-values"});
    crumb.slump = stated<Ratio>(0.51);
    CHECK(codes_of(crumb).empty());
    crumb.envelope_density = stated(500.0 * gram_per_litre);
    CHECK(codes_of(crumb) == Codes{"envelope_density: inconsistent-values"});
    crumb.envelope_density = stated(1.3 * gram_per_millilitre);
    crumb.skeleton_density = stated(1.3 * gram_per_millilitre);
    CHECK(codes_of(crumb).empty());
    crumb.skeleton_density = stated(1.29 * gram_per_millilitre);
    CHECK(codes_of(crumb) == Codes{"skeleton_density: inconsistent-values"});
}

// Section 2 of the method: the defaults that are not stated.
TEST_CASE("what is not stated is derived by the rules and says so") {
    const Ingredient crumb = completed(bare(IngredientKind::base));
    CHECK(crumb.skeleton_density.value.in(gram_per_millilitre) == Approx(1.42));
    CHECK(crumb.envelope_density.value.in(gram_per_millilitre) == Approx(1.15));
    CHECK(crumb.slump.value == Approx(1.7 * 0.5));
    CHECK(crumb.uptake_time.value.in(minute) == Approx(20));
    CHECK(crumb.binder.value == 0);
    CHECK(crumb.fines.value == Approx(0.04));
    CHECK(crumb.particle_spread.value == Approx(2.1));
    CHECK(crumb.moisture.value == Approx(0.10));
    CHECK(crumb.inside_share.value == Approx(0.8));
    CHECK(crumb.slump.source.origin == Origin::derived);
    CHECK(crumb.absorption.source.origin == Origin::standing);
    CHECK(completed(bare(IngredientKind::powder)).particle_spread.value == Approx(2.1));
    CHECK(completed(bare(IngredientKind::soil)).particle_spread.value == Approx(2.1));
    CHECK(completed(bare(IngredientKind::seed)).particle_spread.value == Approx(1.15));
    CHECK(completed(bare(IngredientKind::particle)).particle_spread.value == Approx(1.15));
    CHECK(completed(bare(IngredientKind::pellet)).particle_spread.value == Approx(1.05));
    CHECK(completed(bare(IngredientKind::soil)).inside_share.value == Approx(0.4));
}

// Section 5 of the method.
TEST_CASE("a pellet derives its length, capacity and diffusivity") {
    const Ingredient pellet = completed(bare(IngredientKind::pellet));
    CHECK(pellet.length.value.in(millimetre) == Approx(4.8));
    CHECK(pellet.particle_size.value.in(millimetre) == Approx(4.0));
    CHECK(pellet.capacity.value == Approx(1.0));
    CHECK(pellet.diffusivity.value.in(square_metre_per_second) == Approx(2.5e-10));
    CHECK(pellet.activation_energy.value.in(kilojoule_per_mole) == Approx(35));
}

// Source: tests/reference/peleg.csv, row 07: paddy soaked at 10 to 30 degC.
TEST_CASE("a pellet's usual activation energy is that measured on paddy, within its spread") {
    const auto& usual = completed(bare(IngredientKind::pellet)).activation_energy;
    for (const auto& row : reference::rows_in("peleg.csv"))
        if (row.at("id") == "PELEG-07")
            CHECK(usual.value.in(kilojoule_per_mole) == Approx(std::stod(row.at("expected"))).epsilon(0.05));
    CHECK(usual.spread >= 0.05);
}

// The number is that of skeleton_from_composition, which has its own tests: 65 % protein, 9 % fat, 15 % ash, 10 %
// water.
TEST_CASE("a skeleton not stated follows from the composition, and the envelope stays below it") {
    Ingredient fishmeal = bare(IngredientKind::base);
    fishmeal.composition.protein = stated<Ratio>(0.65);
    fishmeal.composition.fat = stated<Ratio>(0.09);
    fishmeal.composition.ash = stated<Ratio>(0.15);
    const Ingredient whole = completed(fishmeal);
    CHECK(whole.skeleton_density.value.in(gram_per_millilitre) == Approx(1.317).epsilon(0).margin(0.001));
    CHECK(whole.skeleton_density.source.origin == Origin::derived);
    CHECK(whole.skeleton_density.spread == 0.03);
    CHECK(whole.envelope_density.value <= whole.skeleton_density.value);
    fishmeal.skeleton_density = stated(1.4 * gram_per_millilitre);
    CHECK(completed(fishmeal).skeleton_density.value.in(gram_per_millilitre) == 1.4);
}

TEST_CASE("a skeleton from the composition is never below the grain that was stated, nor the heap") {
    Ingredient oily = bare(IngredientKind::base);
    oily.composition.protein = stated<Ratio>(0.05);
    oily.composition.fat = stated<Ratio>(0.80);
    oily.composition.ash = stated<Ratio>(0.01);
    oily.envelope_density = stated(1.1 * gram_per_millilitre);
    CHECK(completed(oily).skeleton_density.value == oily.envelope_density.value);
    oily.envelope_density = {};
    oily.loose_density = stated(950.0 * gram_per_litre);
    const Ingredient heavy = completed(oily);
    CHECK(heavy.skeleton_density.value > heavy.loose_density.value);
    CHECK(codes_of(heavy).empty());
}

// By hand: a powder of 0.15 mm and 2.1 has ln(0.1/0.15)/ln 2.1 = -0.5465, so 29.2 % under 0.1 mm.
TEST_CASE("fines not stated are those of the sizes, and of a meal at least the usual dust") {
    CHECK(completed(bare(IngredientKind::powder)).fines.value == Approx(0.292).epsilon(0).margin(0.001));
    CHECK(completed(bare(IngredientKind::soil)).fines.value == Approx(0.5));
    CHECK(completed(bare(IngredientKind::base)).fines.value == 0.04);
    CHECK(completed(bare(IngredientKind::pellet)).fines.value == 0.0);
    Ingredient even = bare(IngredientKind::powder);
    even.particle_size = stated(0.05 * millimetre);
    even.particle_spread = stated<Ratio>(1.0);
    CHECK(completed(even).fines.value == 1.0);
    even.particle_size = stated(0.5 * millimetre);
    CHECK(completed(even).fines.value == 0.04);
}

TEST_CASE("a liquid derives 0.8 g of wetting per ml, and live feed takes no water") {
    CHECK(completed(bare(IngredientKind::liquid)).wetting.value.in(gram_per_millilitre) == Approx(0.8));
    const Ingredient live = completed(bare(IngredientKind::particle));
    CHECK(live.absorption.value == 0);
    CHECK(live.slump.value == 0);
}

TEST_CASE("completing twice changes nothing") {
    for (const IngredientKind kind : all_kinds) {
        const Ingredient once = completed(bare(kind)), twice = completed(once);
        std::vector<double> before, after;
        visit_properties(once, [&](const auto&, const auto& property) { before.push_back(property.value.si()); });
        visit_properties(twice, [&](const auto&, const auto& property) { after.push_back(property.value.si()); });
        CHECK(before == after);
    }
}

TEST_CASE("what was stated is not overwritten") {
    Ingredient crumb = bare(IngredientKind::base);
    crumb.uptake_time = stated(8.0 * minute);
    crumb.slump = stated<Ratio>(1.0);
    crumb.inside_share = stated<Ratio>(0.5);
    complete(crumb);
    CHECK(crumb.uptake_time.value.in(minute) == Approx(8));
    CHECK(crumb.slump.value == 1.0);
    CHECK(crumb.inside_share.value == 0.5);
}

TEST_CASE("a heavy powder's envelope is derived above its loose density") {
    Ingredient salt = bare(IngredientKind::powder);
    salt.loose_density = stated(1300.0 * gram_per_litre);
    complete(salt);
    CHECK(salt.envelope_density.value > salt.loose_density.value);
    CHECK(salt.skeleton_density.value >= salt.envelope_density.value);
}

TEST_CASE("an envelope is never derived above a skeleton that was stated") {
    Ingredient live = bare(IngredientKind::particle);
    live.skeleton_density = stated(1.06 * gram_per_millilitre);
    CHECK(codes_of(live).empty());
    complete(live);
    CHECK(live.envelope_density.value <= live.skeleton_density.value);
}
