// How often the water that an invented angler needs lies in the range that the answer gives: true values are drawn here
// from the spreads that the shipped ingredients state, by the model of docs/method.md, Doubt, apart from the code that
// works the range out. Over every mix and feel: tests/benchmark/coverage_of_water.py.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "answers/mix/answer_mix.h"
#include "bait/resolve_mix.h"
#include "library/change_library.h"
#include "library/edited_ingredient.h"
#include "library/open_library.h"
#include "quantities/number_text.h"
#include "quantities/units.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

constexpr int anglers = 2000;

double sigma_of(double spread) {
    return std::sqrt(std::log1p(spread * spread));
}

/// One angler: the hand in the long run and on the day, and what defaults from memory are off by.
class Angler {
public:
    explicit Angler(std::mt19937_64& random) : random_(random) {
        const double whole = sigma_of(0.12), of_day = sigma_of(0.05);
        hand_ = std::exp(std::sqrt(whole * whole - of_day * of_day) * normal());
        day_ = off_by(0.05);
        memory_ = off_by(0.09);
    }

    [[nodiscard]] double day() const { return day_; }

    /// Grams of wetting that a gram of a bag of theirs needs at a wetness. All shipped marks are from memory.
    double needs(const Ingredient& bag, double h) {
        const double a = bag.absorption.value * hand_ * day_ * memory_ * off_by(bag.absorption.spread);
        const double g = (bag.slump.value - bag.absorption.value) * hand_ * day_ * memory_ * off_by(bag.slump.spread);
        const double stated = bag.moisture.value, found = std::min(0.9, stated * off_by(bag.moisture.spread));
        const double drier = (1 - found) / (1 - stated);
        return std::min(h, 1.0) * ((a + stated) * drier - found) + std::max(h - 1, 0.0) * g * drier;
    }

private:
    double normal() { return std::normal_distribution<double>()(random_); }
    double off_by(double spread) { return std::exp(sigma_of(spread) * normal()); }

    std::mt19937_64& random_;
    double hand_, day_, memory_;
};

MixAnswer a_kilo_of(const Shelf& shelf, const std::string& mix, const std::string& feel) {
    MixRequest request;
    request.target = DryMass{1.0 * kilogram};
    request.feel = feel;
    return answer_mix(shelf, shelf.recipe(mix), request);
}

bool holds(const Range<Mass>& range, Mass water) {
    return water >= range.low && water <= range.high;
}

/// Of the anglers, how many need a water that lies in the range. The mix has neither liquids nor films.
double share_in_range(const Shelf& shelf, const std::string& name, const std::string& feel) {
    const ResolvedMix mix = resolve(shelf.recipe(name), shelf);
    const MixAnswer answer = a_kilo_of(shelf, name, feel);
    REQUIRE(answer.additives.empty());
    std::mt19937_64 random(20261127);
    int inside = 0;
    for (int i = 0; i < anglers; ++i) {
        Angler angler(random);
        double wanted = 0;
        for (const SolidPart& part : mix.solids)
            if (takes_water(part.ingredient.kind)) wanted += part.share * angler.needs(part.ingredient, answer.wetness);
        inside += holds(answer.doubt->water, std::max(0.0, wanted) * answer.dry_mass);
    }
    return static_cast<double>(inside) / anglers;
}

/// What `ingredient measure` puts into the store: A and B so many times what stands there.
void measure(Store& store, const std::string& name, double times) {
    const Ingredient old = store.ingredient(name);
    const auto found = [&](const char* key, Ratio mark) {
        return KeyValue{key, number_text(times * mark) + " g/g", "measured: a test, 2026-11-27", "5 %"};
    };
    const Ingredient mine =
        edited_ingredient(name, old, {found("absorption", old.absorption.value), found("slump", old.slump.value)});
    put_ingredients(store, {mine}, parse_date("2026-11-27"));
}

}  // namespace

// The bar: 90 % of the anglers, give or take three standard errors of 2,000.
TEST_CASE("nine anglers of ten need a water within the range", "[coverage]") {
    const auto shelf = shipped_shelf();
    for (const char* mix : {"silt bed", "grey bottom", "songbird", "weighted silt"})
        for (const char* feel : {"dusty", "firm", "slop"}) {
            CAPTURE(mix, feel);
            const double share = share_in_range(*shelf, mix, feel);
            CHECK(share >= 0.88);
            CHECK(share <= 0.92);
        }
}

TEST_CASE("where a damp mix may need no water at all the range begins at none, and holds 95 of 100", "[coverage]") {
    const auto shipped = shipped_shelf();
    MemoryShelf shelf(shipped.get());
    Ingredient bread = shipped->ingredient("fresh liquidised bread");
    bread.moisture.spread = 0.15;  // of a loaf or two that nobody weighed
    shelf.put(bread);
    const MixAnswer answer = a_kilo_of(shelf, "bread mist", "dusty");
    CHECK(answer.doubt->water.low == Mass{});
    CHECK(answer.doubt->first_pour == Mass{});
    const double share = share_in_range(shelf, "bread mist", "dusty");
    CHECK(share >= 0.935);
    CHECK(share <= 0.965);
}

TEST_CASE("who measured every bag needs a water within a range as wide as their hand from day to day", "[coverage]") {
    const TemporaryFolder folder;
    Store store = open_store(folder / "mine.db");
    const ResolvedMix usual = resolve(store.recipe("silt bed"), store);
    for (const SolidPart& part : usual.solids) measure(store, part.ingredient.name, 1.1);
    for (const char* feel : {"dusty", "firm", "slop"}) {
        CAPTURE(feel);
        const MixAnswer answer = a_kilo_of(store, "silt bed", feel);
        std::mt19937_64 random(20261127);
        int inside = 0;
        for (int i = 0; i < anglers; ++i)
            inside += holds(answer.doubt->water, Angler(random).day() * answer.water_to_add);
        CHECK(inside >= 0.88 * anglers);
        CHECK(inside <= 0.93 * anglers);
        CHECK(answer.doubt->measure_first.empty());
    }
}

TEST_CASE("a measured bag teaches the store what the others take, and the answer says so") {
    const TemporaryFolder folder;
    Store store = open_store(folder / "mine.db");
    const MixAnswer before = a_kilo_of(store, "silt bed", "firm");
    measure(store, "brown crumb", 1.2);
    measure(store, "fishmeal, brown", 1.2);
    const MixAnswer after = a_kilo_of(store, "silt bed", "firm");
    const ResolvedMix mix = resolve(store.recipe("silt bed"), store);
    const double shift = mix.hand.shift(MarkOrigin::from_memory);
    CHECK(shift > 1.05);
    CHECK(shift < 1.2);
    // The measured bags are 0.7 of the mix: 0.4 of fishmeal and 0.3 of crumb.
    CHECK(after.marks.absorption ==
          Approx(1.2 * (0.4 * 0.50 + 0.3 * 0.65) + shift * (0.2 * 0.55 + 0.1 * 0.42)).epsilon(1e-6));
    CHECK(after.doubt->water.high / after.doubt->water.low < before.doubt->water.high / before.doubt->water.low);
    const auto said = std::find_if(after.warnings.begin(), after.warnings.end(),
                                   [](const Warning& warning) { return warning.code == "hand-learned"; });
    REQUIRE(said != after.warnings.end());
    CHECK_FALSE(said->answer_is_no);
    CHECK(std::none_of(before.warnings.begin(), before.warnings.end(),
                       [](const Warning& warning) { return warning.code == "hand-learned"; }));
}

TEST_CASE("what is shipped by a name is found again, whatever a person put in its place") {
    REQUIRE(shipped_ingredient("Brown Crumb").has_value());
    CHECK(shipped_ingredient("Brown Crumb")->absorption.value == 0.65);
    CHECK_FALSE(shipped_ingredient("crumb of my own").has_value());
    const auto shelf = shipped_shelf();
    for (const std::string& name : shelf->ingredient_names()) {
        CAPTURE(name);
        const auto shipped = shipped_ingredient(name);
        REQUIRE(shipped.has_value());
        CHECK(shipped->name == name);
        CHECK(shipped->absorption.value == shelf->ingredient(name).absorption.value);
    }
}
