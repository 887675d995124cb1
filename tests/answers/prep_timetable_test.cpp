#include "answers/plan/prep_timetable.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "answers/plan/crew.h"
#include "answers/plan/plan_session.h"
#include "answers/plan/prep_minutes.h"
#include "answers/plan/shared_moments.h"
#include "answers/sessions.h"
#include "answers/soaking.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

constexpr double hair_of_a_minute = 1e-6;  // minutes

PlannedSoak soak_of(const std::string& name, double minutes, double stand = 10) {
    PlannedSoak soak;
    soak.name = soak.into = name;
    soak.dry = 200.0 * gram;
    soak.pour = 300.0 * gram;
    soak.soak = minutes * minute;
    soak.stand = stand * minute;
    return soak;
}

PlannedBatch as_it_is(const std::string& name, double grams) {
    PlannedBatch batch;
    batch.name = name;
    batch.dry = batch.wet_mass = grams * gram;
    batch.parts = {{name, batch.dry, {}, 1.0 * litre}};
    return batch;
}

PlannedBatch mix_of(const std::string& name, double rest) {
    PlannedBatch batch = as_it_is(name, 1000);
    batch.feel = "soft";
    batch.parts.push_back({"brown crumb", 500.0 * gram, {}, 1.0 * litre});
    batch.water_first = 500.0 * gram;
    batch.water_rest = 100.0 * gram;
    batch.rest = rest * minute;
    return batch;
}

/// The timetable of made-up needs.
struct Bench {
    std::vector<PlannedBatch> batches;
    std::vector<PlannedSoak> soaks;
    int hands = 1;
    Time travel{};
    std::optional<int> start{};
    PrepNeeds::Evening evening = PrepNeeds::Evening::used;

    [[nodiscard]] std::vector<PrepJob> jobs() const {
        return prep_timetable({batches, soaks, {}, 1, start, hands, travel, evening});
    }
};

std::vector<PrepJob> those_of(const std::vector<PrepJob>& jobs, PrepTask task) {
    std::vector<PrepJob> found;
    std::copy_if(jobs.begin(), jobs.end(), std::back_inserter(found),
                 [&](const PrepJob& job) { return job.task == task; });
    return found;
}

const PrepJob& only(const std::vector<PrepJob>& jobs, PrepTask task) {
    const auto found = std::find_if(jobs.begin(), jobs.end(), [&](const PrepJob& job) { return job.task == task; });
    REQUIRE(found != jobs.end());
    REQUIRE(those_of(jobs, task).size() == 1);
    return *found;
}

double end_of(const PrepJob& job) {
    return (job.at + job.hands_on).in(minute);
}

/// The plan of any session.
SessionPlan any_plan(const PrepNeeds::Evening evening, int hands, Time travel, const Strategy& strategy,
                     const Shelf& shelf) {
    PlanRequest request;
    request.hands = hands;
    request.travel = travel;
    if (evening == PrepNeeds::Evening::not_used) request.work_from = 90.0 * 24.0 * hour;
    return plan_session(shelf, strategy, {}, request);
}

}  // namespace

TEST_CASE("jobs that clash are done earlier, never later and never at once") {
    Crew hands(1);
    PrepJob ten;
    ten.hands_on = 10.0 * minute;
    CHECK(hands.do_by({ten}, {}).in(minute) == Approx(-10));
    CHECK(hands.do_by({ten}, {}).in(minute) == Approx(-20));
    // a soak of 8 min, poured in 1 and drained in 2, finds no room for its drain until both are before
    PrepJob pour, drain;
    pour.hands_on = 1.0 * minute;
    drain.hands_on = 2.0 * minute;
    drain.at = 8.0 * minute;
    CHECK(hands.do_by({pour, drain}, {}).in(minute) == Approx(-30));
    CHECK(hands.do_by({ten}, -1.0 * minute).in(minute) == Approx(-40));
}

TEST_CASE("a second pair of hands works beside the first, and a third job waits for one of them") {
    Crew crew(2);
    PrepJob ten, six;
    ten.hands_on = 10.0 * minute;
    six.hands_on = 6.0 * minute;
    CHECK(crew.do_by({ten}, {}).in(minute) == Approx(-10));
    CHECK(crew.do_by({six}, {}).in(minute) == Approx(-6));
    CHECK(crew.do_by({six}, {}).in(minute) == Approx(-12));  // by the second pair, before its six
    const std::vector<PrepJob> done = crew.in_order();
    REQUIRE(done.size() == 3);
    CHECK((done[0].pair == 2 && done[1].pair == 1 && done[2].pair == 2));
}

TEST_CASE("single things are weighed in one job the evening before, with the hands of all of them") {
    Bench bench{{as_it_is("fishmeal pellet 4 mm", 400), mix_of("silt bed", 20), as_it_is("casters", 300)},
                {soak_of("fishmeal micro pellet 2 mm", 3)}};
    const std::vector<PrepJob> weighed = those_of(bench.jobs(), PrepTask::weigh);
    REQUIRE(weighed.size() == 2);  // the parts of the mix are stirred together, and so stay a job of their own
    const PrepJob& singles = weighed[0].portions.size() == 3 ? weighed[0] : weighed[1];
    REQUIRE(singles.portions.size() == 3);
    CHECK(singles.count == 3);
    CHECK(singles.hands_on.in(minute) == Approx(3));
    CHECK(singles.amount.in(gram) == Approx(400 + 300 + 200));
    CHECK(singles.when == PrepJob::When::evening_before);
}

namespace {

/// A mix of two dry parts, with casters, soaked pellets and a liquid.
PlannedBatch lively_mix() {
    PlannedBatch batch = mix_of("silt bed", 20);
    batch.parts.push_back({"casters", 100.0 * gram, {}, {}, false, 0, IngredientKind::particle});
    batch.parts.push_back({"micros", 200.0 * gram, 200.0 * gram, {}, false, 0, IngredientKind::pellet});
    batch.parts.push_back({"corn steep liquor", 20.0 * gram, {}, {}, true, 0, IngredientKind::liquid});
    batch.dry = 1800.0 * gram;
    return batch;
}

}  // namespace

// By hand: 1000 g of one part and 500 g of another are dry: 2 min to weigh, 2 to stir. The liquid is a minute more with
// the first water. At the end a minute to weigh the casters and 2 to stir them and the pellets in, then 5 to settle.
TEST_CASE("dry parts alone are weighed the evening before; live and soaked feed is stirred in after the riddle") {
    const Bench bench{{lively_mix()}, {soak_of("micros", 3)}};
    const std::vector<PrepJob> jobs = bench.jobs();
    const std::vector<PrepJob> weighed = those_of(jobs, PrepTask::weigh);
    REQUIRE(weighed.size() == 2);
    const PrepJob& dry = weighed[0].count == 2 ? weighed[0] : weighed[1];
    CHECK(dry.count == 2);
    CHECK(dry.amount.in(gram) == Approx(1500));
    CHECK(dry.hands_on.in(minute) == Approx(4));
    CHECK(dry.when == PrepJob::When::evening_before);
    const PrepJob &last = only(jobs, PrepTask::stir_in), &second = only(jobs, PrepTask::second_wetting);
    CHECK(last.hands_on.in(minute) == Approx(3));
    CHECK(last.amount.in(gram) == Approx(100));
    REQUIRE(last.portions.size() == 2);
    CHECK((last.portions[0].of == "casters" && last.portions[0].amount == 100.0 * gram));
    CHECK((last.portions[1].of == "micros" && last.portions[1].amount == Mass{}));
    CHECK(last.feel.empty());
    CHECK(end_of(last) == Approx(-10 - 5));
    CHECK(end_of(second) == Approx(last.at.in(minute)));
    CHECK(only(jobs, PrepTask::riddle).amount.in(gram) == Approx(1500 + 500));
    CHECK(only(jobs, PrepTask::first_wetting).hands_on.in(minute) == Approx(5 + 1));
}

TEST_CASE(
    "where one part alone is dry it is weighed by its own name, and what is to be let down is stirred in before") {
    PlannedBatch batch = as_it_is("bread", 1000);
    batch.feel = "firm";
    batch.rest = 10.0 * minute;
    batch.water_first = batch.water_rest = 200.0 * gram;
    batch.parts.push_back({"casters", 100.0 * gram, {}, {}, false, 0, IngredientKind::particle});
    batch.dry = 1100.0 * gram;
    batch.name = "bread and casters";
    batch.let_downs.emplace_back();
    batch.let_downs.back().feel = "soft";
    const std::vector<PrepJob> jobs = Bench{{batch}, {}}.jobs();
    CHECK(only(jobs, PrepTask::weigh).subject == "bread");
    CHECK(only(jobs, PrepTask::weigh).amount.in(gram) == Approx(1000));
    CHECK(only(jobs, PrepTask::stir_in).feel == "firm");
    CHECK(end_of(only(jobs, PrepTask::stir_in)) <= only(jobs, PrepTask::let_down).at.in(minute) + hair_of_a_minute);
}

TEST_CASE("live feed is weighed on the day, by itself and where nothing dry is in the tub with it") {
    PlannedBatch alone = as_it_is("casters", 300), wetted = as_it_is("hemp", 400);
    alone.parts.front().kind = wetted.parts.front().kind = IngredientKind::particle;
    wetted.feel = "firm";
    const std::vector<PrepJob> jobs = Bench{{alone, wetted}, {}}.jobs();
    double weighed = 0;
    for (const PrepJob& job : those_of(jobs, PrepTask::weigh)) {
        CHECK(job.when == PrepJob::When::on_the_day);
        weighed += job.amount.in(gram);
    }
    CHECK(weighed == Approx(700));
    CHECK(those_of(jobs, PrepTask::stir_in).empty());
}

// Three soaks of 8 min: 3 min to pour, 6 to drain, from the eighth minute on; the last lies 8 + 2 = 10 min, a quarter
// longer. A fourth would lie 11.
TEST_CASE("pellets of one soak are poured on together and drained together, but not so many that the last lies long") {
    const std::vector<PlannedSoak> three{soak_of("a", 8, 4), soak_of("b", 8.2, 12), soak_of("c", 8)};
    const Bench bench{{}, three};
    const std::vector<PrepJob> jobs = bench.jobs();
    const PrepJob &pour = only(jobs, PrepTask::pour_on), &drain = only(jobs, PrepTask::drain);
    CHECK(pour.hands_on.in(minute) == Approx(3));
    CHECK(drain.hands_on.in(minute) == Approx(6));
    CHECK(drain.waiting.in(minute) == Approx(12));
    CHECK((drain.at - pour.at).in(minute) >= 8.2 - hair_of_a_minute);
    CHECK(end_of(drain) + 12 <= -10 + hair_of_a_minute);
    CHECK(pour.subject == "a, b and c");
    CHECK(pour.amount.in(gram) == Approx(900));
    const Bench four{{}, {soak_of("a", 8), soak_of("b", 8), soak_of("c", 8), soak_of("d", 8)}};
    CHECK(those_of(four.jobs(), PrepTask::pour_on).size() == 2);
    const Bench apart{{}, {soak_of("a", 8), soak_of("b", 12)}};
    CHECK(those_of(apart.jobs(), PrepTask::pour_on).size() == 2);
    const Bench short_ones{{}, {soak_of("a", 1), soak_of("b", 1)}};  // the first is to be drained after a minute
    CHECK(those_of(short_ones.jobs(), PrepTask::pour_on).size() == 2);
}

TEST_CASE("work at home is over before the way begins, what stands does so on it, and at the water it is felt again") {
    Bench bench{{mix_of("silt bed", 20)}, {soak_of("fishmeal micro pellet 2 mm", 3, 30)}};
    bench.travel = 40.0 * minute;
    const std::vector<PrepJob> jobs = bench.jobs();
    const PrepJob &load = only(jobs, PrepTask::load), &travel = only(jobs, PrepTask::travel);
    const PrepJob& to_hand = only(jobs, PrepTask::bring_to_hand);
    CHECK(to_hand.at.in(minute) == Approx(-5));
    CHECK(travel.at.in(minute) == Approx(-45));
    CHECK(travel.waiting.in(minute) == Approx(40));
    CHECK(load.at.in(minute) == Approx(-55));
    for (const PrepJob& job : jobs)
        if (job.task != PrepTask::travel && job.task != PrepTask::bring_to_hand)
            CHECK(end_of(job) <= -45 + hair_of_a_minute);
    // the stand of 30 min fits into loading and the way: the drain may end as the loading begins, at -55, but for the
    // 4 min of the second wetting and the 5 of the riddle, which are placed first
    CHECK(end_of(only(jobs, PrepTask::second_wetting)) == Approx(-55));
    CHECK(end_of(only(jobs, PrepTask::drain)) == Approx(-64));
    bench.travel = {};
    CHECK(those_of(bench.jobs(), PrepTask::travel).empty());
    CHECK(end_of(only(bench.jobs(), PrepTask::load)) == Approx(0));
}

TEST_CASE("two pairs of hands wet two mixes at once, and the day begins later for it") {
    Bench bench{{mix_of("silt bed", 20), mix_of("pale bed", 20)}, {}};
    const Time alone = those_of(bench.jobs(), PrepTask::first_wetting).front().at;
    bench.hands = 2;
    const std::vector<PrepJob> first = those_of(bench.jobs(), PrepTask::first_wetting);
    CHECK(first[0].at == first[1].at);
    CHECK(first[0].pair != first[1].pair);
    CHECK(first[0].at > alone);
    // back by hand: 10 to load, 5 to settle, 4, 5, 20 of rest, 5
    CHECK(first[0].at.in(minute) == Approx(-49));
}

TEST_CASE("in any plan no pair of hands does two things at once, no more work than there are pairs, all hands alike") {
    CHECK(rc::check([] {
        MemoryShelf shelf(&bank());
        shelf.put(draft::expander("expander 4 mm", 4));
        const Strategy strategy = any_session(shelf);
        const int hands = *rc::gen::inRange(1, 5);
        const Time travel = *rc::gen::inRange(0, 120) * minute;
        const auto evening = *rc::gen::element(PrepNeeds::Evening::used, PrepNeeds::Evening::not_used);
        const SessionPlan plan = any_plan(evening, hands, travel, strategy, shelf);
        std::map<int, double> free_from;
        for (const PrepJob& job : plan.prep) {
            RC_ASSERT(job.pair >= 1 && job.pair <= hands);
            if (free_from.count(job.pair)) RC_ASSERT(job.at.in(minute) >= free_from[job.pair] - hair_of_a_minute);
            free_from[job.pair] = end_of(job);
            if (travel > Time{} && job.task != PrepTask::travel && job.task != PrepTask::bring_to_hand)
                RC_ASSERT(end_of(job) <= -(travel.in(minute) + feel_it_again.in(minute)) + hair_of_a_minute);
        }
        const SessionPlan one = any_plan(evening, 1, travel, strategy, shelf);
        RC_ASSERT(plan.begin >= one.begin - 1e-3 * second);
    }));
}
