#include "answers/plan/plan_batches.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/plan/plan_session.h"
#include "answers/sessions.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

const std::vector<std::string> feels_let_down{"crumbly", "firm", "tacky", "soft"};

Strategy at_feels(const std::vector<std::string>& feels) {
    std::vector<Feed> feeds;
    for (std::size_t i = 0; i < feels.size(); ++i)
        feeds.push_back(cups("fishmeal mix", 100 + 50 * static_cast<double>(i), static_cast<int>(i) + 1, feels[i]));
    return session(std::move(feeds), 0.1);
}

SessionPlan plan_at(const std::vector<std::string>& feels) {
    return plan_session(bank(), at_feels(feels), {}, {});
}

const PrepJob& first_job(const SessionPlan& plan, PrepTask task) {
    return *std::find_if(plan.prep.begin(), plan.prep.end(), [&](const PrepJob& job) { return job.task == task; });
}

}  // namespace

TEST_CASE("a mix at several feels is one tub, wetted to the driest, the others let down from it") {
    const SessionPlan plan = plan_at({"soft", "firm", "slop"});
    REQUIRE(plan.batches.size() == 1);
    const PlannedBatch& tub = plan.batches.front();
    CHECK(tub.name == "fishmeal mix");
    CHECK(tub.feel == "firm");
    REQUIRE(tub.let_downs.size() == 2);
    CHECK(tub.let_downs[0].feel == "soft");
    CHECK(tub.let_downs[1].feel == "slop");
    CHECK(tub.containers == 3);
    std::vector<PrepTask> tasks;
    for (const PrepJob& job : plan.prep) tasks.push_back(job.task);
    CHECK(tasks == std::vector<PrepTask>{PrepTask::weigh, PrepTask::first_wetting, PrepTask::riddle,
                                         PrepTask::second_wetting, PrepTask::let_down, PrepTask::let_down,
                                         PrepTask::load});
    CHECK(first_job(plan, PrepTask::let_down).feel == "soft");
}

TEST_CASE("feeds of one mix at several feels come to what they come to alone") {
    CHECK(rc::check([] {
        std::vector<std::string> feels;
        for (int i = *rc::gen::inRange(1, 5); i > 0; --i) feels.push_back(*rc::gen::elementOf(feels_let_down));
        const SessionPlan together = plan_at(feels);
        double dry = 0, water = 0, wet = 0;
        for (std::size_t i = 0; i < feels.size(); ++i) {
            Strategy alone = at_feels(feels);
            alone.feeds = {alone.feeds[i]};
            const SessionPlan plan = plan_session(bank(), alone, {}, {});
            dry += plan.dry.in(gram);
            water += plan.batches.front().water.in(gram);
            wet += plan.wet_mass.in(gram);
        }
        RC_ASSERT(together.batches.size() == 1U);
        const PlannedBatch& tub = together.batches.front();
        RC_ASSERT(std::abs(tub.dry.in(gram) / dry - 1) < 1e-12);
        RC_ASSERT(std::abs(tub.water.in(gram) / water - 1) < 1e-12);
        RC_ASSERT(std::abs(tub.wet_mass.in(gram) / wet - 1) < 1e-12);
        double poured = (tub.water_first + tub.water_rest).in(gram), in_tub = 0;
        for (const LetDown& wetter : tub.let_downs) {
            RC_ASSERT(wetter.water >= Mass{});
            // What is taken, with its water, is what goes in: the mix has no dose by its water.
            RC_ASSERT(std::abs((wetter.take + wetter.water).in(gram) / wetter.wet_mass.in(gram)-1) < 1e-9);
            poured += wetter.water.in(gram);
            in_tub += wetter.take.in(gram);
        }
        RC_ASSERT(std::abs(poured / water - 1) < 1e-12);
        RC_ASSERT(in_tub <= tub.wet_mass.in(gram));
        double by_jobs = 0;
        for (const PrepJob& job : together.prep)
            if (job.task == PrepTask::first_wetting || job.task == PrepTask::second_wetting ||
                job.task == PrepTask::let_down)
                by_jobs += job.amount.in(gram);
        RC_ASSERT(std::abs(by_jobs / together.water_to_carry.in(gram)-1) < 1e-12);
    }));
}
