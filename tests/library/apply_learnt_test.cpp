#include "library/apply_learnt.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/resolve_mix.h"
#include "library/change_library.h"
#include "library/learn_from_store.h"
#include "library/open_library.h"
#include "quantities/fault.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date learnt_today = parse_date("2026-11-25");

struct Library {
    TemporaryFolder folder;
    Store store = open_store(folder / "library.db");

    [[nodiscard]] Ingredient crumb() const { return store.ingredient("brown crumb"); }
    [[nodiscard]] std::size_t old_versions() const { return store.retired("ingredient", "brown crumb").size(); }
};

/// Brown crumb from seven mixes and maize meal from none.
LearnAnswer seven_mixes() {
    LearnAnswer answer;
    answer.water = {
        0.1,
        0.02,
        {{"brown crumb", std::log(0.75), std::log(0.5), 7}, {"maize meal", std::log(0.4), std::log(0.3), 0}},
        2,
        {0.04, 0, 0, 0.03, 0.05, 0.01, 0, 0.06, 0.04, 0.1, 0.02, 0.1}};
    answer.learnt_mixes = {{"silt bed", LearntFactor{0.05, 0.03, 2}, {}, {}}};
    return answer;
}

Learnt diffusivity_of(const std::string& pellet, double value) {
    Learnt learnt;
    learnt.name = pellet;
    learnt.property = Learnt::Property::diffusivity;
    learnt.sd = 0.1;
    learnt.times = 2;
    learnt.value = value;
    return learnt;
}

}  // namespace

// By hand: B = A + G; a spread s has sigma^2 = ln(1 + s^2), of A 0.05^2 + 0.01^2, of G 0.06^2.
TEST_CASE("what was learnt of a bag in logged mixes is written into it, and its old version is kept") {
    Library library;
    const Ingredient before = library.crumb(), maize = library.store.ingredient("maize meal");
    const LearntApplied applied = apply_learnt(library.store, seven_mixes(), learnt_today);
    CHECK(applied.ingredients == std::vector<std::string>{"brown crumb"});
    CHECK(applied.mixes == std::vector<std::string>{"silt bed"});
    CHECK(applied.water);
    const Ingredient crumb = library.crumb();
    CHECK(crumb.absorption.value == Approx(0.75).epsilon(1e-12));
    CHECK(crumb.slump.value == Approx(1.25).epsilon(1e-12));
    CHECK(source_text(crumb.absorption.source) == "learned: 7 mixes");
    CHECK(source_text(crumb.slump.source) == "learned: 7 mixes");
    CHECK(crumb.absorption.spread == Approx(std::sqrt(std::exp(0.0026) - 1)).epsilon(1e-12));
    CHECK(crumb.slump.spread == Approx(std::sqrt(std::exp(0.0036) - 1)).epsilon(1e-12));
    CHECK(crumb.moisture.value == before.moisture.value);
    CHECK(library.old_versions() == 1);
    CHECK(library.store.ingredient("maize meal").absorption.source.origin == maize.absorption.source.origin);
    CHECK(library.store.learnt_mix("silt bed")->cup_weight->mean == 0.05);
}

TEST_CASE("every answer heeds what was written") {
    Library library;
    apply_learnt(library.store, seven_mixes(), learnt_today);
    const ResolvedMix mix = resolve(library.store.recipe("silt bed"), library.store);
    REQUIRE(mix.learnt);
    CHECK(mix.hand.log_hand == 0.1);
    for (const SolidPart& part : mix.solids)
        if (part.ingredient.name == "brown crumb") CHECK(part.ingredient.absorption.value == Approx(0.75));
}

TEST_CASE("what is written twice is written once, and can be taken back all the same") {
    Library library;
    const double before = library.crumb().absorption.value;
    apply_learnt(library.store, seven_mixes(), learnt_today);
    CHECK_FALSE(apply_learnt(library.store, seven_mixes(), learnt_today).anything());
    CHECK(library.old_versions() == 1);
    undo_learnt(library.store, learnt_today);
    CHECK(library.crumb().absorption.value == before);
}

TEST_CASE("taking it back brings earlier values and what was learnt before, and works once") {
    Library library;
    const Ingredient before = library.crumb();
    apply_learnt(library.store, seven_mixes(), learnt_today);
    LearnAnswer more = seven_mixes();
    more.water.bags[0].log_absorption = std::log(0.8);
    more.water.bags[0].mixes = 9;
    more.learnt_mixes.clear();
    apply_learnt(library.store, more, learnt_today);
    CHECK(library.crumb().absorption.value == Approx(0.8));
    CHECK_FALSE(library.store.learnt_mix("silt bed"));
    const LearntApplied undone = undo_learnt(library.store, learnt_today);
    CHECK(undone.ingredients == std::vector<std::string>{"brown crumb"});
    CHECK(undone.mixes == std::vector<std::string>{"silt bed"});
    CHECK(library.crumb().absorption.value == Approx(0.75));
    CHECK(source_text(library.crumb().slump.source) == "learned: 7 mixes");
    CHECK(library.store.log().learnt_water().bags[0].mixes == 7);
    CHECK(library.store.learnt_mix("silt bed")->cup_weight->times == 2);
    CHECK(fault_of([&] { undo_learnt(library.store, learnt_today); }).code == "nothing-to-undo");
    CHECK(library.crumb().absorption.value == Approx(0.75));
}

namespace {

/// A mix of one ingredient in the log, as a person enters it.
std::int64_t log_mix_of(Store& store, const std::string& name, double water) {
    LoggedMix mix;
    mix.of = name;
    mix.feel = "firm";
    mix.wetness = 1.2;
    mix.within = 0.075;
    mix.dry = 500.0 * gram;
    mix.water = water * gram;
    mix.parts = {{name, 500.0 * gram}};
    std::int64_t id = 0;
    store.change([&] { id = store.log().add({0, learnt_today, 0, mix}); });
    return id;
}

}  // namespace

TEST_CASE("what was learnt from a mix that is taken back is written no more: the library's value stands again") {
    Library library;
    Store& store = library.store;
    const Ingredient before = library.crumb();
    const std::int64_t slip = log_mix_of(store, "brown crumb", 480);
    apply_learnt(store, learn_from_store(store, learnt_today), learnt_today);
    const double learnt = library.crumb().absorption.value;
    REQUIRE(source_text(library.crumb().absorption.source) == "learned: 1 mix");
    store.change([&] { store.log().undo(slip, learnt_today); });
    const LearntApplied applied = apply_learnt(store, learn_from_store(store, learnt_today), learnt_today);
    CHECK(applied.ingredients == std::vector<std::string>{"brown crumb"});
    CHECK(library.crumb().absorption.value == before.absorption.value);
    CHECK(source_text(library.crumb().absorption.source) == source_text(before.absorption.source));
    CHECK(library.crumb().slump.value == before.slump.value);
    CHECK_FALSE(store.log().learnt_water().known());
    undo_learnt(store, learnt_today);
    CHECK(library.crumb().absorption.value == Approx(learnt).epsilon(1e-6));
    CHECK(source_text(library.crumb().slump.source) == "learned: 1 mix");
}

TEST_CASE("what was learnt of a person's own ingredient is not learnt from again") {
    Library library;
    Store& store = library.store;
    Ingredient own = library.crumb();
    own.name = "own crumb";
    put_ingredients(store, {own}, learnt_today);
    log_mix_of(store, "own crumb", 480);
    const LearnAnswer first = learn_from_store(store, learnt_today);
    apply_learnt(store, first, learnt_today);
    REQUIRE(source_text(store.ingredient("own crumb").absorption.source) == "learned: 1 mix");
    CHECK(stands_already(store, first));
    const LearnAnswer again = learn_from_store(store, learnt_today);
    REQUIRE(again.water.bags.size() == 1);
    CHECK(again.water.bags[0].log_absorption == Approx(first.water.bags[0].log_absorption).epsilon(1e-9));
    CHECK(again.water.bags[0].log_gap == Approx(first.water.bags[0].log_gap).epsilon(1e-9));
    CHECK(again.water.covariance(2, 2) == Approx(first.water.covariance(2, 2)).epsilon(1e-9));
    CHECK_FALSE(stands_already(store, seven_mixes()));
}

TEST_CASE("the first writing taken back leaves a store that never learnt") {
    Library library;
    const Ingredient before = library.crumb();
    apply_learnt(library.store, seven_mixes(), learnt_today);
    undo_learnt(library.store, learnt_today);
    const Ingredient after = library.crumb();
    CHECK(after.absorption.value == before.absorption.value);
    CHECK(after.absorption.spread == before.absorption.spread);
    CHECK(source_text(after.absorption.source) == source_text(before.absorption.source));
    CHECK(after.slump.value == before.slump.value);
    CHECK_FALSE(library.store.log().learnt_water().known());
    CHECK(library.store.log().learnt_mixes().empty());
}

TEST_CASE("taking it back leaves what was changed since, and a new name does not hide it") {
    Library library;
    const Ingredient before = library.crumb();
    apply_learnt(library.store, seven_mixes(), learnt_today);
    Ingredient edited = library.crumb();
    edited.slump = {1.4, 0.05, {Origin::measured, "up-ended pot"}};
    put_ingredients(library.store, {edited}, learnt_today);
    library.store.change([&] { library.store.entries().rename(EntryKind::ingredient, "brown crumb", "dark crumb"); });
    undo_learnt(library.store, learnt_today);
    const Ingredient after = library.store.ingredient("dark crumb");
    CHECK(after.absorption.value == before.absorption.value);
    CHECK(after.slump.value == 1.4);
}

TEST_CASE("what a person measured is not written over, and is known to be in what was learnt") {
    Library library;
    Ingredient own = library.crumb();
    own.absorption = {0.7, 0.05, {Origin::measured, "squeeze test"}};
    put_ingredients(library.store, {own}, learnt_today);
    apply_learnt(library.store, seven_mixes(), learnt_today);
    CHECK(library.crumb().absorption.value == 0.7);
    CHECK(library.crumb().slump.value == Approx(0.7 + 0.5));
    CHECK(library.store.log().learnt_water().bags[0].measured_absorption == 0.7);
    const ResolvedMix mix = resolve(library.store.recipe("silt bed"), library.store);
    for (const SolidPart& part : mix.solids)
        if (part.ingredient.name == "brown crumb") CHECK(part.ingredient.absorption.value == Approx(0.75));
}

TEST_CASE("what soaks told of a pellet is written into it, and taken back") {
    Library library;
    const std::string name = "fishmeal pellet 4 mm";
    const Ingredient before = library.store.ingredient(name);
    LearnAnswer answer;
    answer.posterior = {diffusivity_of(name, 3e-10)};
    CHECK(apply_learnt(library.store, answer, learnt_today).ingredients == std::vector<std::string>{name});
    CHECK(library.store.ingredient(name).diffusivity.value.si() == 3e-10);
    CHECK(source_text(library.store.ingredient(name).diffusivity.source) == "learned: 2 soaks");
    undo_learnt(library.store, learnt_today);
    CHECK(library.store.ingredient(name).diffusivity.value.si() == before.diffusivity.value.si());
}

TEST_CASE("all that was ever learnt is taken back at once, and that can be taken back too") {
    Library library;
    const Ingredient shipped = library.crumb();
    apply_learnt(library.store, seven_mixes(), learnt_today);
    const Ingredient first = library.crumb();
    LearnAnswer more = seven_mixes();
    more.water.bags.front().log_absorption += 0.05;
    apply_learnt(library.store, more, learnt_today);
    CHECK(forget_learnt(library.store, learnt_today).anything());
    CHECK(library.crumb().absorption.source.origin == shipped.absorption.source.origin);
    CHECK(double(library.crumb().absorption.value) == double(shipped.absorption.value));
    CHECK_FALSE(library.store.log().learnt_water().known());
    CHECK(fault_of([&] { forget_learnt(library.store, learnt_today); }).code == "nothing-to-undo");
    undo_learnt(library.store, learnt_today);
    CHECK(library.crumb().absorption.source.origin == Origin::learned);
    CHECK(double(library.crumb().absorption.value) > double(first.absorption.value));
}
