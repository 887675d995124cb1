// The limits that are named where no mix keeps them all, against every subset of them.
#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include <algorithm>

#include "answers/blending.h"
#include "drawn_number.h"

namespace baitwright {

namespace {

using namespace blending;
using P = MixProperty;

/// One end a limit, each of its own property or share.
BlendSpec crossed_spec(const std::vector<Made>& all) {
    BlendSpec spec = spec_of(all, {});
    for (const P property : {P::protein, P::fibre, P::salt}) {
        if (between(0, 1) == 1) spec.limits.push_back(on(property, between(0, 60)));
        if (between(0, 2) == 0) spec.limits.push_back(on(property, {}, between(0, 40)));
    }
    for (const Made& made : all)
        if (between(0, 3) == 0) spec.limits.push_back({{}, {made.name}, {std::nullopt, between(0, 50) / 100.0}});
    return spec;
}

BlendSpec with(const BlendSpec& spec, unsigned chosen) {
    BlendSpec some = spec;
    some.limits.clear();
    for (std::size_t i = 0; i < spec.limits.size(); ++i)
        if ((chosen >> i & 1U) != 0) some.limits.push_back(spec.limits[i]);
    return some;
}

bool names(const BlendLimitEnd& end, const BlendLimit& limit) {
    const bool least = end.end == BlendLimitEnd::End::least;
    return end.property == limit.on && end.of == limit.of && least == limit.bounds.least.has_value();
}

}  // namespace

TEST_CASE("the limits named cannot hold together, and without any one of them the others can") {
    int conflicts = 0;
    CHECK(rc::check([&] {
        std::vector<Made> all;
        for (int i = 0; i < 3; ++i)
            all.push_back({"made " + std::to_string(i), double(between(0, 70)), double(between(0, 40)),
                           double(between(0, 30)), between(50, 400)});
        const BlendSpec spec = crossed_spec(all);
        const BlendAnswer answer = blended(all, spec);
        const auto can_hold = [&](unsigned chosen) {
            return blended(all, with(spec, chosen)).status == BlendAnswer::Status::optimal;
        };
        if (answer.status == BlendAnswer::Status::optimal) {
            RC_ASSERT(answer.conflicts.empty());
            return;
        }
        unsigned named = 0;
        for (const BlendLimitEnd& end : answer.conflicts)
            for (std::size_t i = 0; i < spec.limits.size(); ++i)
                if (names(end, spec.limits[i])) named |= 1U << i;
        RC_ASSERT(static_cast<std::size_t>(
                      std::count_if(spec.limits.begin(), spec.limits.end(), [&](const BlendLimit& limit) {
                          return (named >> (&limit - spec.limits.data()) & 1U) != 0;
                      })) == answer.conflicts.size());
        RC_ASSERT(named != 0);
        for (unsigned subset = 0; subset < named; ++subset)  // every subset of those named, and the whole below
            if ((subset & ~named) == 0) RC_ASSERT(can_hold(subset));
        RC_ASSERT(!can_hold(named));
        ++conflicts;
    }));
    CHECK(conflicts > 10);
}

// 7 % of salt at a limit of 7 %: 7 - 7 x 1 came to 9e-16, and Clp found no mix where "zero" alone is one.
TEST_CASE("what lies on a limit but for its rounding leaves the rest a mix") {
    const std::vector<Made> all{{"zero", 0, 0, 0, 79}, {"salty", 0, 0, 7, 50}, {"cheap", 0, 0, 0, 50}};
    BlendSpec spec = spec_of(all, {on(P::salt, {}, 7)});
    for (const char* name : {"salty", "cheap"}) spec.limits.push_back({{}, {name}, {std::nullopt, 0.0}});
    const BlendAnswer answer = blended(all, spec);
    REQUIRE(answer.status == BlendAnswer::Status::optimal);
    CHECK(share_in(answer, "zero") == Approx(1));
}

TEST_CASE("shares that come to more than all of it are named") {
    const std::vector<Made> all{{"one", 10, 2, 0, 100}, {"two", 20, 2, 0, 100}, {"three", 30, 2, 0, 100}};
    BlendSpec spec = spec_of(all, {on(P::protein, 5)});
    spec.candidates[0].share.least = 0.6;
    spec.candidates[2].share.least = 0.5;
    const BlendAnswer answer = blended(all, spec);
    CHECK(answer.status == BlendAnswer::Status::infeasible);
    REQUIRE(answer.conflicts.size() == 2);
    CHECK(answer.conflicts[0].of == std::vector<std::string>{"one"});
    CHECK(answer.conflicts[1].of == std::vector<std::string>{"three"});
}

}  // namespace baitwright
