// A ball wears by one law, whether it reaches the bed or is gone before: what it does changes smoothly with its hold,
// the depth and the feel, and one that holds for longer clouds no more.
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "answers/drop/drop_feed.h"
#include "answers/drop/drop_setup.h"
#include "answers/drop/drop_sketch.h"
#include "bait/resolve_mix.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const MemoryShelf& worn_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

const char* const worn_mixes[] = {"silt bed", "deep drain", "grey bottom", "barge wash", "pale cloud"};

DropRequest worn_ball(double metres) {
    DropRequest request;
    request.form = DroppedBall{55.0 * millimetre};
    request.depth = metres * metre;
    return request;
}

/// The middle answer, without its ranges.
DropSketch sketched(const char* mix, const DropRequest& request, double wetness) {
    static std::map<std::string, ResolvedMix> resolved;
    auto known = resolved.find(mix);
    if (known == resolved.end()) known = resolved.emplace(mix, resolve(worn_shelf().recipe(mix), worn_shelf())).first;
    DropAnswer answer;
    const DropSetup setup = setup_of(known->second, portion_of(request.form, wetness), request, wetness, answer);
    return follow(setup, setup.usual).sketch;
}

DropSketch held(const char* mix, double metres, double seconds) {
    DropRequest request = worn_ball(metres);
    request.own.holds = seconds * second;
    return sketched(mix, request, 1.2);
}

double landing_of(const char* mix, double metres) {
    const DropSketch whole = held(mix, metres, 3000);
    REQUIRE(whole.breaks == Breaks::bottom);
    return whole.breaks_at.si();
}

double half_down(const DropSketch& sketch) {
    return std::log(sketch.landed.p50.si());
}

/// What is left of a change of the half-down time between two points, however near they come: a jump, where it is one.
template <class At>
double jump_between(At at, double from, double to) {
    for (int halving = 0; halving < 16; ++halving) {
        const double middle = 0.5 * (from + to), there = half_down(at(middle));
        const bool before = std::abs(there - half_down(at(from))) > std::abs(half_down(at(to)) - there);
        (before ? to : from) = middle;
    }
    return std::abs(half_down(at(to)) - half_down(at(from)));
}

/// Along a sweep: the greatest jump of the logarithm of the half-down time, and the greatest change of a share that
/// hangs in one step; and whether the ball was gone before the bed, and reached it.
struct Swept {
    double jump = 0, hangs = 0;
    bool gone_before = false, reached = false;
};

template <class At>
Swept swept(At at, double from, double to, double step) {
    Swept sweep;
    DropSketch last = at(from);
    for (double point = from * step; point < to; point *= step) {
        const DropSketch now = at(point);
        const double change = std::abs(half_down(now) - half_down(last));
        sweep.jump = std::max(sweep.jump, change < 0.02 ? change : jump_between(at, point / step, point));
        for (std::size_t i = 0; i < now.hanging.size(); ++i)
            sweep.hangs = std::max(sweep.hangs, std::abs(now.hanging[i] - last.hanging[i]));
        sweep.gone_before = sweep.gone_before || now.breaks == Breaks::midwater;
        sweep.reached = sweep.reached || now.breaks == Breaks::bottom;
        last = now;
    }
    return sweep;
}

/// What hangs goes by whole sizes of an ingredient as they pass the minute that is asked for.
void check_no_jump(const Swept& sweep) {
    CAPTURE(sweep.jump, sweep.hangs);
    CHECK((sweep.gone_before && sweep.reached));
    CHECK(sweep.jump < 0.03);
    CHECK(sweep.hangs < 0.05);
}

}  // namespace

// Between two sizes of grains the half-down time moves fast, but it does not jump; it did by a factor of twelve, and
// what hung by two thirds of it all.
TEST_CASE("what a ball does changes by no jump with its hold, through the hold that just reaches the bed") {
    for (const char* mix : worn_mixes)
        for (const double metres : {1.0, 3.0, 10.0}) {
            CAPTURE(mix, metres);
            const double lands = landing_of(mix, metres);
            const auto at = [&](double hold) { return held(mix, metres, hold); };
            check_no_jump(swept(at, 0.5 * lands, 2.5 * lands, 1.01));
        }
}

TEST_CASE("a ball that holds for longer leaves no more hanging, and is half down no later") {
    for (const char* mix : worn_mixes)
        for (const double metres : {1.0, 3.0, 10.0}) {
            const double lands = landing_of(mix, metres);
            DropSketch last = held(mix, metres, 0.02 * lands);
            for (double hold = 0.021 * lands; hold < 30 * lands; hold *= 1.05) {
                const DropSketch now = held(mix, metres, hold);
                CAPTURE(mix, metres, hold, lands);
                CHECK(now.hanging[0] <= last.hanging[0] + 1e-9);
                CHECK(now.hanging[2] <= last.hanging[2] + 1e-9);
                // The middle lies between the sizes that we reckon with: to half a hundredth.
                CHECK(now.landed.p50.si() <= 1.005 * last.landed.p50.si());
                CHECK(now.lands_as_one >= last.lands_as_one);
                last = now;
            }
        }
}

TEST_CASE("what a ball does changes by no jump with the depth, through the depth that it just reaches") {
    for (const char* mix : worn_mixes)
        for (const double seconds : {2.0, 7.0, 25.0}) {
            CAPTURE(mix, seconds);
            check_no_jump(swept([&](double metres) { return held(mix, metres, seconds); }, 0.5, 30, 1.01));
        }
}

TEST_CASE("what a ball does changes by no jump with the feel, from crumbly to where it is no ball") {
    for (const char* mix : worn_mixes)
        for (const double metres : {1.0, 3.0, 10.0}) {
            CAPTURE(mix, metres);
            const auto at = [&](double wetness) { return sketched(mix, worn_ball(metres), wetness); };
            check_no_jump(swept(at, 0.86, 1.59, 1.001));
        }
}

TEST_CASE("the middle answer of every shipped mix as a ball lies within its own range") {
    for (const std::string& mix : worn_shelf().recipe_names())
        for (const char* feel : {"crumbly", "firm", "tacky"})
            for (const double metres : {1.0, 2.9, 30.0}) {
                DropRequest request = worn_ball(metres);
                request.feel = feel;
                request.tow = 20.0 * centimetre_per_second;
                const DropAnswer answer = drop_feed(worn_shelf(), worn_shelf().recipe(mix), request);
                if (answer.classes.empty()) continue;
                CAPTURE(mix, feel, metres);
                const auto holds = [](const auto& range, auto middle) {
                    return range.low.si() <= middle.si() * (1 + 1e-9) && middle.si() <= range.high.si() * (1 + 1e-9);
                };
                CHECK(holds(answer.landed_half_range, answer.landed.p50));
                CHECK(holds(answer.landed_most_range, answer.landed.p90));
                CHECK(holds(answer.breaks_depth_range, answer.breaks_depth));
                CHECK(holds(answer.width_range, answer.width.most));
                CHECK(holds(answer.length_range, answer.length.most));
                CHECK(holds(answer.drift_range, answer.drift.p50));
                CHECK(double(answer.hanging_10_range.low) <= answer.hanging[2] + 1e-12);
                CHECK(answer.hanging[2] <= double(answer.hanging_10_range.high) + 1e-12);
            }
}

// By hand: of a lump that holds T, (1 - t/T)^1.5 is left after t.
TEST_CASE("what of a ball lands in one piece is what its wearing has left, and half of one that does not is told") {
    const double lands = landing_of("silt bed", 3);
    CHECK(held("silt bed", 3, 4 * lands).lands_as_one == Approx(std::pow(0.75, 1.5)).epsilon(1e-6));
    CHECK_FALSE(held("silt bed", 3, 4 * lands).half_worn);
    const DropSketch gone = held("silt bed", 3, 0.5 * lands);
    CHECK(gone.lands_as_one == 0);
    REQUIRE(gone.half_worn);
    CHECK(gone.half_worn->si() < 0.37 * gone.breaks_depth.si());  // after 0.37 of its hold, and it starts from rest
    CHECK(gone.half_worn->si() > 0.2 * gone.breaks_depth.si());
}

TEST_CASE("what is slow makes a trail in a river, the longer the faster it runs, and the range of its drift is wide") {
    DropRequest request = worn_ball(1);
    request.form = DroppedCup{250.0 * millilitre};
    request.kind = WaterKind::river;
    double length = 0, drift = 0;
    for (const double tow : {5.0, 15.0, 30.0, 60.0}) {
        request.tow = tow * centimetre_per_second;
        const DropAnswer answer = drop_feed(worn_shelf(), worn_shelf().recipe("canal milk"), request);
        CAPTURE(tow);
        CHECK(answer.length.most.si() > length);
        CHECK(answer.drift.p50.si() > drift);
        CHECK(answer.drift.p90 > 2 * answer.drift.p10);
        CHECK(answer.drift_range.high > 1.15 * answer.drift_range.low);
        length = answer.length.most.si();
        drift = answer.drift.p50.si();
        if (tow == 30.0) CHECK(answer.length.most > 5.0 * metre);
    }
}
