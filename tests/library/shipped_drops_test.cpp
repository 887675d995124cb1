// What the shipped mixes do in the water, against what anglers see (common practice, no source), and against
// themselves: a feel, a binder and a form must matter by more than the doubt.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "answers/drop/drop_feed.h"
#include "answers/mix/answer_mix.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/shared/mix_amount.h"
#include "bait/resolve_mix.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const MemoryShelf& library_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

DropRequest cup(const std::string& feel, double metres) {
    DropRequest request;
    request.form = DroppedCup{250.0 * millilitre};
    request.feel = feel;
    request.depth = metres * metre;
    return request;
}

DropRequest ball(const std::string& feel, double metres, Squeeze squeeze = Squeeze::firm) {
    DropRequest request = cup(feel, metres);
    request.form = DroppedBall{55.0 * millimetre};
    request.squeeze = squeeze;
    return request;
}

DropAnswer dropped(const std::string& mix, const DropRequest& request) {
    return drop_feed(library_shelf(), library_shelf().recipe(mix), request);
}

Recipe only(const std::string& ingredient) {
    Recipe recipe;
    recipe.name = "one";
    recipe.parts.push_back({ingredient, 1.0 * kilogram});
    return recipe;
}

}  // namespace

// Common practice, no source: 0.45 to 0.75 m down; in 4 m half of it down in 45 to 70 s.
TEST_CASE("a soft level cup goes down half a metre or so, and in 4 m is half down in about a minute") {
    const DropAnswer answer = dropped("silt bed", cup("soft", 4));
    CHECK(answer.breaks_depth > 0.45 * metre);
    CHECK(answer.breaks_depth < 0.75 * metre);
    CHECK(answer.landed.p50 > 45.0 * second);
    CHECK(answer.landed.p50 < 70.0 * second);
    CHECK(dropped("silt bed", cup("firm", 4)).breaks_depth > answer.breaks_depth);
}

TEST_CASE("a tacky ball lands whole, dusty feed breaks at the surface and clouds, slop spreads at once") {
    CHECK(dropped("silt bed", ball("tacky", 4)).breaks == Breaks::bottom);
    const DropAnswer dusty = dropped("silt bed", cup("dusty", 4));
    CHECK(dusty.breaks == Breaks::surface);
    CHECK(dusty.hanging[1] > dropped("silt bed", cup("soft", 4)).hanging[1]);
    CHECK(dropped("silt bed", cup("slop", 4)).breaks == Breaks::surface);
}

TEST_CASE("a ball too wet to be one breaks as the cupful of its size does") {
    DropRequest heap = cup("soft", 4);
    heap.form = DroppedCup{ball_volume(55.0 * millimetre)};
    const DropAnswer wet = dropped("silt bed", ball("soft", 4)), same = dropped("silt bed", heap);
    CHECK(wet.breaks == Breaks::midwater);
    CHECK(wet.breaks_depth.si() == Approx(same.breaks_depth.si()));
}

TEST_CASE("beyond tacky the wetter breaks the higher") {
    for (const char* mix : {"silt bed", "songbird", "weighted silt"}) {
        double last = 1e9;
        for (const double wetness : {1.45, 1.6, 1.7, 1.8, 1.9, 2.0, 2.05}) {
            DropRequest request = cup("soft", 12);
            request.feel.reset();
            request.wetness = wetness;
            const double now = dropped(mix, request).breaks_depth.si();
            CHECK(now <= last);
            last = now;
        }
    }
}

TEST_CASE("the shipped mixes break at many depths: the lively higher, clay and sticky meal deeper") {
    std::vector<double> depths;
    for (const std::string& name : library_shelf().recipe_names()) {
        const DropAnswer answer = dropped(name, cup("soft", 6));
        if (!answer.raft && !answer.classes.empty()) depths.push_back(std::round(20 * answer.breaks_depth.si()));
    }
    std::sort(depths.begin(), depths.end());
    CHECK(std::unique(depths.begin(), depths.end()) - depths.begin() >= 5);
    const auto breaks = [](const char* mix) { return dropped(mix, cup("soft", 6)).breaks_depth.si(); };
    CHECK(breaks("songbird") < breaks("silt bed"));
    CHECK(breaks("weighted silt") > breaks("silt bed"));
}

TEST_CASE("a heavier binder holds a ball for longer") {
    Recipe bound = library_shelf().recipe("silt bed");
    bound.parts.push_back({"wheat gluten", 50.0 * gram});
    DropRequest request = ball("firm", 2);
    CHECK(drop_feed(library_shelf(), bound, request).lasts > dropped("silt bed", request).lasts);
}

// The feel and the form must matter: the number of one lies outside the likely range of the next.
TEST_CASE("dusty, soft cup, firm cup and hard ball differ by more than their ranges") {
    const std::vector<DropAnswer> ways{dropped("silt bed", cup("dusty", 4)), dropped("silt bed", cup("soft", 4)),
                                       dropped("silt bed", cup("firm", 4)),
                                       dropped("silt bed", ball("firm", 4, Squeeze::hard))};
    for (std::size_t i = 1; i < ways.size(); ++i) {
        const DropAnswer &looser = ways[i - 1], &tighter = ways[i];
        CAPTURE(i);
        CHECK(looser.landed.p50 > tighter.landed_half_range.high);
        CHECK(looser.width.most > tighter.width_range.high);
        CHECK(looser.hanging[0] > tighter.hanging[0] + 0.1);
    }
}

TEST_CASE("no grain of any shipped mix lands later than it would alone") {
    for (const std::string& name : library_shelf().recipe_names())
        for (const char* feel : {"dusty", "crumbly", "firm", "soft", "slop"})
            for (const double depth : {1.0, 4.0}) {
                const DropAnswer answer = dropped(name, cup(feel, depth));
                if (answer.raft) continue;
                for (const DropClass& c : answer.classes) {
                    if (!c.sinks || !(c.settling > Speed{})) continue;
                    CAPTURE(name, feel, c.name, c.size.in(millimetre));
                    CHECK(c.lands.si() <= answer.breaks_at.si() + depth / c.settling.si() + 1e-6);
                }
            }
}

// Common practice, no source: a ball of 55 mm, of squeezed liquidised bread, weighs 75 to 90 g.
TEST_CASE("squeezed liquidised bread is dense, and an unsqueezed cup of it floats until it has drunk") {
    const DropAnswer pressed = dropped("bread mist", ball("firm", 2));
    CHECK(pressed.wet_mass > 75.0 * gram);
    CHECK(pressed.wet_mass < 90.0 * gram);
    CHECK(pressed.breaks == Breaks::bottom);
    const DropAnswer loose = dropped("bread mist", cup("dusty", 2));
    REQUIRE(loose.raft);
    CHECK(*loose.raft > 10.0 * second);
    CHECK(*loose.raft < 10.0 * minute);
    CHECK(loose.warnings.empty());
    CHECK(loose.landed.p10 > *loose.raft);
}

TEST_CASE("an expander that floats unpumped in soak floats in drop") {
    for (const std::string& name : library_shelf().ingredient_names()) {
        const Ingredient in = library_shelf().ingredient(name);
        if (in.kind != IngredientKind::expander) continue;
        SoakRequest soak;
        soak.items.emplace_back().of = name;
        soak.total = 50.0 * gram;
        soak.pump.strokes = 0;
        const SoakAnswer unpumped = soak_pellets(library_shelf(), soak);
        const DropAnswer answer = drop_feed(library_shelf(), only(name), cup("firm", 2));
        CAPTURE(name);
        CHECK(unpumped.pumped.at(0).at.buoyancy == Buoyancy::floats);
        CHECK(answer.classes.empty());
        REQUIRE(answer.warnings.size() == 1);
        CHECK(answer.warnings.front().code == "floats");
    }
}

TEST_CASE("a dry seed is slow, for its pores hold air") {
    DropRequest request = cup("dusty", 2);
    request.form = DroppedLoose{100.0 * millilitre};
    MemoryShelf shelf(&library_shelf());
    Ingredient dry = library_shelf().ingredient("hemp seed, raw");
    dry.name = "soft seed";
    dry.cautions.clear();  // with them nobody drops it
    shelf.put(dry);
    const DropAnswer raw = drop_feed(shelf, only("soft seed"), request);
    const DropAnswer cooked = drop_feed(shelf, only("cooked hemp"), request);
    REQUIRE_FALSE(raw.classes.empty());
    CHECK(raw.landed.p50 > 1.5 * cooked.landed.p50);
}

TEST_CASE("a wind on a lake carries one way what hangs high and the other what hangs deep; a river only one way") {
    DropRequest request = cup("soft", 4);
    request.tow = 5.0 * centimetre_per_second;
    const DropAnswer lake = dropped("silt bed", request);
    CHECK(lake.water == TowProfile::lake);
    request.kind = WaterKind::river;
    const DropAnswer river = dropped("silt bed", request);
    CHECK(river.water == TowProfile::river);
    CHECK(river.drift.p10 > Length{});
    CHECK(river.drift.p50 > lake.drift.p50);
    request.kind.reset();
    request.tow = 20.0 * centimetre_per_second;
    CHECK(dropped("silt bed", request).water == TowProfile::river);
}

TEST_CASE("a ball that wears away in a river leaves a trail, in still water a patch") {
    DropRequest request = ball("firm", 2, Squeeze::light);
    CHECK(dropped("silt bed", request).length.most == dropped("silt bed", request).width.most);
    request.tow = 30.0 * centimetre_per_second;
    const DropAnswer trail = dropped("silt bed", request);
    CHECK(trail.breaks == Breaks::bottom);
    CHECK(trail.length.most > 1.5 * trail.width.most);
}

TEST_CASE("a bucket test of a cupful moves where it breaks, and its lumps with it") {
    DropRequest request = cup("soft", 4);
    const DropAnswer usual = dropped("silt bed", request);
    request.own.holds = 3 * usual.breaks_at;
    const DropAnswer longer = dropped("silt bed", request);
    CHECK(longer.breaks_at.si() == Approx(3 * usual.breaks_at.si()).epsilon(1e-6));
    CHECK(longer.breaks_depth > usual.breaks_depth);
    CHECK(longer.landed.p50 < usual.landed.p50);
    CHECK(longer.own == std::vector<std::string>{"hold time"});
}
