#include "bait/pellets_alone.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/asking.h"
#include "answers/drop/drop_feed.h"
#include "answers/learn/mix_looks.h"
#include "answers/mix/dose_amounts.h"
#include "answers/mix/dry_out.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/plan/plan_session.h"
#include "answers/sessions.h"
#include "answers/shared/mix_amount.h"
#include "answers/strategy/unroll_strategy.h"
#include "quantities/fault_of.h"

/// Micros in a ball, a cup or a feeder: one procedure everywhere, soaked and never wetted like meal.
using namespace baitwright;
using namespace draft_sessions;

namespace {

const std::string micros = "fishmeal micro pellet 2 mm";

/// The bank with a mix of nothing but micros.
class MicroBank : public Bank {
public:
    MicroBank() { put(draft::micro_mix()); }
};

const MicroBank& micro_bank() {
    static const MicroBank shelf;
    return shelf;
}

MixAnswer micros_for(MixTarget target) {
    return answer_mix(micro_bank(), draft::micro_mix(), draft::request_for(std::move(target)));
}

FeedNeed fed_once(const std::string& of, FeedForm form, FeedSize size) {
    const Strategy strategy = session({{at_start, {{of}}, form, size, 1, {}}});
    return unroll_strategy(micro_bank(), strategy).feeds.front();
}

bool warns_of(const MixAnswer& answer, const std::string& code) {
    return draft::warns(answer, code);
}

}  // namespace

TEST_CASE("a feeder of 50 ml takes about 56 g of pressed soaked micros, a level cup far less for its size") {
    // Common practice, no source: some 56 g; 44 g were poured in and levelled.
    const MixAnswer feeders = micros_for(Vessels{10, 50.0 * millilitre, "feeder"});
    CHECK(feeders.state == MixState::squeezed);
    CHECK(feeders.portions->mass_each.in(gram) == Approx(56).margin(2));
    const MixAnswer cups = micros_for(Vessels{10, 50.0 * millilitre, "cup"});
    CHECK(cups.state == MixState::cupped);
    CHECK(cups.portions->mass_each < 0.7 * feeders.portions->mass_each);
}

TEST_CASE("pellets alone take no water in the tub, and weigh when soaked what soaking them gives") {
    const MixAnswer answer = micros_for(DryMass{500.0 * gram});
    CHECK(answer.soaked_alone);
    CHECK(answer.feel == "soaked");
    CHECK(answer.water_to_add == Mass{});
    CHECK_FALSE(warns_of(answer, "takes-no-water"));
    const SoakedAnswer soaked = soak_one(micro_bank().ingredient(micros), 500.0 * gram, answer.water_temperature);
    CHECK(answer.wet_mass.in(gram) == Approx(soaked.wet().in(gram)).epsilon(1e-12));
    CHECK(answer.parts.front().soak->pour.in(gram) == Approx(soaked.pour.in(gram)).epsilon(1e-12));
    CHECK(answer.parts.front().soak->soak.in(second) == Approx(soaked.soak.middle.in(second)).epsilon(1e-12));
}

TEST_CASE("a mix and a session need the same pellets for a ball and for a feeder, named alone or as a mix") {
    const double ball = micros_for(Balls{1, 45.0 * millimetre}).dry_mass.in(gram),
                 feeder = micros_for(Vessels{1, 45.0 * millilitre, "feeder"}).dry_mass.in(gram);
    for (const std::string& of : {micros, draft::micro_mix().name}) {
        CHECK(fed_once(of, FeedForm::ball, 45.0 * millimetre).dry.in(gram) == Approx(ball).epsilon(1e-12));
        CHECK(fed_once(of, FeedForm::feeder, 45.0 * millilitre).dry.in(gram) == Approx(feeder).epsilon(1e-12));
    }
    CHECK(fed_once(draft::micro_mix().name, FeedForm::cup, 250.0 * millilitre).dry.in(gram) ==
          Approx(micros_for(Vessels{1, 250.0 * millilitre, "cup"}).dry_mass.in(gram)).epsilon(1e-12));
}

TEST_CASE("a plan soaks the micros of a ball, and neither wets nor riddles them") {
    const Strategy strategy = session({{at_start, {{micros}}, FeedForm::ball, 45.0 * millimetre, 4, "firm"}});
    const SessionPlan plan = plan_session(micro_bank(), strategy, {}, {});
    REQUIRE(plan.soaks.size() == 1);
    CHECK(plan.soaks.front().dry.in(gram) == Approx(plan.dry.in(gram)).epsilon(1e-12));
    REQUIRE(plan.batches.size() == 1);
    CHECK(plan.batches.front().feel.empty());
    CHECK(plan.batches.front().water == Mass{});
    std::vector<PrepTask> tasks;
    for (const PrepJob& job : plan.prep) tasks.push_back(job.task);
    CHECK(tasks ==
          std::vector<PrepTask>{PrepTask::weigh, PrepTask::pour_on, PrepTask::drain, PrepTask::shape, PrepTask::load});
    const PrepJob &drain = plan.prep[2], &shape = plan.prep[3];
    CHECK(drain.at + drain.hands_on + drain.waiting <= shape.at + 1e-6 * second);
}

TEST_CASE("pellets that go in dry by the cup stay dry, and with meal they are part of its mix") {
    CHECK(fed_once("fishmeal pellet 4 mm", FeedForm::cup, 100.0 * millilitre).soak_water == Mass{});
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram});
    request.once.with.push_back({"brown crumb", 300.0 * gram});
    const MixAnswer mixed = answer_mix(micro_bank(), draft::micro_mix(), request);
    CHECK_FALSE(mixed.soaked_alone);
    CHECK(mixed.water_to_add > Mass{});
}

TEST_CASE("dosed, dried and weighed in a cup, pellets alone are the same soaked pellets") {
    const MixRequest request = draft::request_for(WetVolume{2.0 * litre});
    const DoseAnswer dosed = dose_mix(micro_bank(), draft::micro_mix(), request);
    const MixAnswer mixed = answer_mix(micro_bank(), draft::micro_mix(), request);
    CHECK(dosed.dry_mass.in(gram) == Approx(mixed.dry_mass.in(gram)).epsilon(1e-12));
    CHECK(dosed.water == Mass{});
    DryRequest tub;
    tub.face = (40.0 * centimetre) * (30.0 * centimetre);
    tub.hours = 5.0 * hour;
    CHECK(fault_of([&] { dry_out(micro_bank(), draft::micro_mix(), tub); }).code == "soaked-alone");
    const LoggedWeight cup{draft::micro_mix().name, {}, 250.0 * millilitre, 150.0 * gram};
    const MixAnswer cups = micros_for(Vessels{1, 250.0 * millilitre, "cup"});
    CHECK(cup_seen(micro_bank(), cup).value().modelled == Approx(cups.wet_mass.in(gram)).epsilon(1e-9));
    LoggedWeight at_a_feel = cup;
    at_a_feel.feel = "firm";
    CHECK_FALSE(cup_seen(micro_bank(), at_a_feel));
}

TEST_CASE("what pellets alone keep is what the weight says") {
    const ResolvedMix mix = resolve_as_made(draft::micro_mix(), micro_bank());
    CHECK(is_soaked_alone(mix));
    const MixAnswer kilo = micros_for(DryMass{1.0 * kilogram});
    CHECK(1000 * water_kept_soaked(mix) == Approx((kilo.wet_mass - kilo.dry_mass).in(gram)).epsilon(1e-9));
}

TEST_CASE("a feel asked of pellets alone is told off, and water in the tub is refused") {
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram}, "soft");
    CHECK(warns_of(answer_mix(micro_bank(), draft::micro_mix(), request), "soaked-whatever-the-feel"));
    request.feel.reset();
    request.already_added = 100.0 * millilitre;
    CHECK(fault_of([&] { answer_mix(micro_bank(), draft::micro_mix(), request); }).code == "unfit-flag");
    request = draft::request_for(Balls{3, 40.0 * millimetre});
    request.state = MixState::cupped;
    CHECK(fault_of([&] { answer_mix(micro_bank(), draft::micro_mix(), request); }).code == "two-states");
}

TEST_CASE("a dropped ball of micros weighs what the mix says a ball of them weighs") {
    DropRequest request;
    request.form = DroppedBall{40.0 * millimetre};
    request.depth = 2.0 * metre;
    const DropAnswer dropped = drop_feed(micro_bank(), draft::micro_mix(), request);
    CHECK(dropped.feel == "soaked");
    CHECK(dropped.state == MixState::squeezed);
    CHECK(dropped.wet_mass.in(gram) ==
          Approx(micros_for(Balls{1, 40.0 * millimetre}).portions->mass_each.in(gram)).epsilon(1e-9));
}
