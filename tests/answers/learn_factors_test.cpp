#include <catch2/catch.hpp>
#include <cmath>

#include "answers/drop/drop_feed.h"
#include "answers/learning.h"
#include "physics/normal_quantile.h"

using namespace baitwright;
using namespace baitwright::learning;
using Taught = Learnt::Property;

namespace {

Date factor_day(int number) {
    return parse_date("2026-03-01") + std::chrono::days(number);
}

class MixShelf : public draft::FilledShelf {
public:
    MixShelf() { put(draft::fishmeal_mix()); }
};

LearnRequest log_of_things(const std::vector<LoggedThing>& things) {
    LearnRequest request;
    for (std::size_t i = 0; i < things.size(); ++i)
        request.log.push_back(entry_on(static_cast<std::int64_t>(i) + 1, factor_day(static_cast<int>(i)), things[i]));
    return request;
}

/// By hand: the conjugate normal. n observations of sigma e of something of sigma s about 0.
void check_conjugate(const Learnt& learnt, double before, double error, const std::vector<double>& logs) {
    double sum = 0;
    for (const double one_of : logs) sum += one_of;
    const double information = 1 / (before * before) + static_cast<double>(logs.size()) / (error * error);
    CHECK(learnt.prior_sd == Approx(before).epsilon(1e-12));
    CHECK(learnt.mean == Approx(sum / (error * error) / information).epsilon(1e-12));
    CHECK(learnt.sd == Approx(1 / std::sqrt(information)).epsilon(1e-12));
    CHECK(learnt.times == static_cast<int>(logs.size()));
}

DropRequest in_water(Length depth) {
    DropRequest request;
    request.depth = depth;
    request.feel = "soft";
    return request;
}

LoggedLook look_at(Length depth) {
    LoggedLook look;
    look.of = "fishmeal mix";
    look.feel = "soft";
    look.form = 250.0 * millilitre;
    look.depth = depth;
    return look;
}

}  // namespace

// Source: tests/reference/learn_cases.json (SciPy's least_squares over Crank's series; see make_learn_tables.py).
TEST_CASE("weighed soaks teach a pellet's diffusivity and capacity as SciPy finds them") {
    const auto all = cases("soaks");
    REQUIRE(all.size() == 20);
    for (const auto& one_of : all) {
        INFO(one_of["name"]);
        const auto& from = one_of["pellet"];
        Ingredient pellet = draft::solid_of(draft::solids[0]);
        pellet.name = "pellet";
        pellet.kind = IngredientKind::pellet;
        pellet.diameter = draft::stated(from["diameter"].get<double>() * metre);
        pellet.length = draft::stated(from["length"].get<double>() * metre);
        pellet.diffusivity = draft::stated(Diffusivity::from_si(from["diffusivity"].get<double>()),
                                           from["diffusivity_spread"].get<double>());
        pellet.capacity = draft::stated<Ratio>(from["capacity"].get<double>(), from["capacity_spread"].get<double>());
        pellet.activation_energy = draft::stated(from["energy"].get<double>() * joule_per_mole);
        MemoryShelf shelf;
        shelf.put(pellet);
        std::vector<LoggedThing> things;
        for (const auto& soak : one_of["soaks"])
            things.emplace_back(LoggedSoak{"pellet", soak["dry"].get<double>() * gram,
                                           soak["drained"].get<double>() * gram, soak["seconds"].get<double>() * second,
                                           Temperature::from_celsius(soak["celsius"].get<double>())});
        LearnRequest request = log_of_things(things);
        for (LogEntry& entry : request.log) entry.believed = true;
        const LearnAnswer answer = learn_from_log(shelf, request);
        CHECK(answer.observations == static_cast<int>(things.size()));
        const Learnt* diffusivity = learnt(answer, "pellet", Taught::diffusivity);
        const Learnt* capacity = learnt(answer, "pellet", Taught::capacity);
        REQUIRE((diffusivity && capacity));
        CHECK(diffusivity->mean == Approx(one_of["mean"][0].get<double>()).margin(2e-6));
        CHECK(capacity->mean == Approx(one_of["mean"][1].get<double>()).margin(2e-6));
        CHECK(diffusivity->sd == Approx(one_of["sigma"][0].get<double>()).epsilon(1e-5));
        CHECK(capacity->sd == Approx(one_of["sigma"][1].get<double>()).epsilon(1e-5));
        CHECK(*diffusivity->value == Approx(from["diffusivity"].get<double>() * std::exp(diffusivity->mean)));
        CHECK(*capacity->library == from["capacity"]);
    }
}

TEST_CASE("a level pint of an ingredient teaches its loose density, by the conjugate normal") {
    const MixShelf shelf;
    // Brown crumb is stated at 420 g/l to 12 %.
    const LearnRequest request = log_of_things({LoggedWeight{"Brown Crumb", {}, 1.0 * litre, 460.0 * gram},
                                                LoggedWeight{"brown crumb", {}, 500.0 * millilitre, 224.0 * gram}});
    const LearnAnswer answer = learn_from_log(shelf, request);
    const Learnt* crumb = learnt(answer, "brown crumb", Taught::loose_weight);
    REQUIRE(crumb);
    check_conjugate(*crumb, log_normal_sigma(0.12), 0.03, {std::log(460.0 / 420), std::log(448.0 / 420)});
    CHECK(Density::from_si(*crumb->library).in(gram_per_litre) == Approx(420));
    CHECK(Density::from_si(*crumb->value).in(gram_per_litre) == Approx(420 * std::exp(crumb->mean)));
    CHECK(answer.learnt_mixes.empty());
    CHECK(answer.observations == 2);
}

TEST_CASE("weighed cups, buckets and carpets of a mix teach factors on what a drop says of them") {
    const MixShelf shelf;
    const DropAnswer model = drop_feed(shelf, *shelf.find_recipe("fishmeal mix"), in_water(2.0 * metre));
    const double cup = model.wet_mass.in(gram), wide = model.width.most.in(metre), depth = model.breaks_depth.in(metre);
    REQUIRE(model.breaks == Breaks::midwater);
    LoggedLook carpet = look_at(2.0 * metre), broke = look_at(2.0 * metre), on_the_bed = look_at(2.0 * metre);
    carpet.carpet = 1.3 * wide * metre;
    broke.breaks_at = depth * metre;
    on_the_bed.breaks_at = 2.0 * metre;
    LoggedWeight weighed{"fishmeal mix", "soft", 250.0 * millilitre, 1.05 * cup * gram};
    const LearnAnswer answer = learn_from_log(shelf, log_of_things({weighed, carpet, broke, on_the_bed}));
    CHECK(answer.observations == 3);  // a cup that came down whole says nothing of when it breaks
    const double at_95 = normal_quantile(0.95);
    check_conjugate(*learnt(answer, "fishmeal mix", Taught::cup_weight), log_normal_sigma(0.08), 0.04,
                    {std::log(1.05)});
    check_conjugate(*learnt(answer, "fishmeal mix", Taught::carpet), std::log(2) / at_95, std::log(1.25),
                    {std::log(1.3)});
    const Learnt* hold = learnt(answer, "fishmeal mix", Taught::hold);
    REQUIRE(hold);
    CHECK(std::abs(hold->mean) < 1e-3);  // it broke where the model has it break
    REQUIRE(answer.learnt_mixes.size() == 1);
    const LearntMix& mix = answer.learnt_mixes[0];
    CHECK(mix.name == "fishmeal mix");
    CHECK(mix.cup_weight->times == 1);
    CHECK(mix.hold->sigma == Approx(hold->sd));
    CHECK(mix.carpet->mean == learnt(answer, "fishmeal mix", Taught::carpet)->mean);
}

TEST_CASE("a carpet that was seen with where its cupful broke is held against a cupful that breaks there") {
    const MixShelf shelf;
    DropRequest deeper = in_water(2.0 * metre);
    const DropAnswer by_model = drop_feed(shelf, *shelf.find_recipe("fishmeal mix"), deeper);
    deeper.own.breaks_at = 1.6 * by_model.breaks_depth;
    const DropAnswer seen = drop_feed(shelf, *shelf.find_recipe("fishmeal mix"), deeper);
    REQUIRE(seen.width.most < 0.98 * by_model.width.most);
    LoggedLook look = look_at(2.0 * metre);
    look.breaks_at = seen.breaks_depth;
    look.carpet = 1.2 * seen.width.most;
    const LearnAnswer answer = learn_from_log(shelf, log_of_things({look}));
    const Learnt* carpet = learnt(answer, "fishmeal mix", Taught::carpet);
    REQUIRE(carpet);
    check_conjugate(*carpet, std::log(2) / normal_quantile(0.95), std::log(1.25), {std::log(1.2)});
}

TEST_CASE("a ball in a bucket teaches how long a mix holds, and deeper means longer") {
    const MixShelf shelf;
    const auto hold_of = [&](LoggedLook look) {
        const LearnAnswer answer = learn_from_log(shelf, log_of_things({std::move(look)}));
        const Learnt* hold = learnt(answer, "fishmeal mix", Taught::hold);
        REQUIRE(hold);
        return hold->mean;
    };
    LoggedLook ball;
    ball.of = "fishmeal mix";
    ball.feel = "firm";
    ball.form = 60.0 * millimetre;
    // A firm ball of 60 mm at h = 1.2 holds 90 s, times exp(its binder): -0.8 x 0.1 + 1.2 x 0.2 + 0.3 x 0.4 = 0.28.
    ball.holds = 90 * std::exp(0.28) * second;
    CHECK(std::abs(hold_of(ball)) < 1e-9);
    LoggedLook broke = look_at(3.0 * metre);
    double last = -9;
    for (const double depth : {0.3, 0.5, 0.8, 1.2}) {
        broke.breaks_at = depth * metre;
        const double now = hold_of(broke);
        CHECK(now > last);
        last = now;
    }
}

TEST_CASE("an absurd weighing is set aside, unless it is believed") {
    const MixShelf shelf;
    std::vector<LoggedThing> things;
    for (const double mass : {415.0, 428.0, 500.0, 421.0, 433.0})
        things.emplace_back(LoggedWeight{"brown crumb", {}, 1.0 * litre, mass * gram});
    LearnRequest request = log_of_things(things);
    const LearnAnswer answer = learn_from_log(shelf, request);
    REQUIRE(answer.set_aside.size() == 1);
    CHECK(answer.set_aside[0].entry.id == 3);
    CHECK(answer.set_aside[0].observed == Approx(500));
    CHECK(answer.set_aside[0].expected == Approx(424).epsilon(0.01));
    CHECK(answer.set_aside[0].sigmas > 3);
    CHECK(learnt(answer, "brown crumb", Taught::loose_weight)->times == 4);
    request.log[2].believed = true;
    CHECK(learn_from_log(shelf, request).set_aside.empty());
}

TEST_CASE("what was learnt before and written into the shelf is not counted twice") {
    MixShelf shelf;
    const LearnRequest request = log_of_things({LoggedWeight{"brown crumb", {}, 1.0 * litre, 460.0 * gram}});
    const LearnAnswer before = learn_from_log(shelf, request);
    Ingredient crumb = *shelf.find_ingredient("brown crumb");
    const Ingredient usual = crumb;
    crumb.loose_density = {Density::from_si(*before.posterior[0].value), 0.03, {Origin::learned, "1 weighing"}};
    shelf.put(crumb);
    shelf.put_usual(usual);
    const LearnAnswer again = learn_from_log(shelf, request);
    REQUIRE(again.posterior.size() == 1);
    CHECK(again.posterior[0].mean == before.posterior[0].mean);
    CHECK(again.posterior[0].sd == before.posterior[0].sd);
}

TEST_CASE("what was seen of a mix that is no longer in the library says nothing") {
    const MixShelf shelf;
    LoggedLook look = look_at(2.0 * metre);
    look.of = "gone";
    look.holds = 5.0 * second;
    CHECK(learn_from_log(shelf, log_of_things({look, LoggedWeight{"gone", {}, 1.0 * litre, 1.0 * kilogram}}))
              .observations == 0);
}
