#include "answers/pellets/soak_timetable.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/soaking.h"

using namespace baitwright;
using draft::soaked;

namespace {

SoakRequest random_batches() {
    SoakRequest request;
    const std::vector<std::string> names{"fishmeal micro pellet 1 mm",
                                         "fishmeal micro pellet 2 mm",
                                         "fishmeal pellet 4 mm",
                                         "fishmeal pellet 8 mm",
                                         "expander 4 mm",
                                         "long pellet"};
    const int count = *rc::gen::inRange(1, 7);
    for (int i = 0; i < count; ++i) request.items.push_back({*rc::gen::elementOf(names), 50.0 * gram, 1});
    request.water = Temperature::from_celsius(*rc::gen::inRange(1, 30));
    request.method = *rc::gen::element(SoakMethod::covered, SoakMethod::measured);
    return request;
}

}  // namespace

TEST_CASE("three sizes start apart and are ready together") {
    SoakRequest request = draft::soak_of("fishmeal micro pellet 2 mm", 3.0 * imperial_pint);
    request.items.push_back({"fishmeal pellet 4 mm", std::nullopt, 1});
    request.items.push_back({"fishmeal pellet 8 mm", std::nullopt, 1});
    const std::vector<SoakTask> tasks = soaked(request).timetable;
    REQUIRE(tasks.size() == 6);
    CHECK(tasks[0].name == "fishmeal pellet 8 mm");
    CHECK(tasks[0].before_ready.in(minute) == Approx(22.4 + 113.2).margin(0.5));
    CHECK(tasks[1].kind == SoakTask::Kind::drain);
    CHECK(tasks[2].name == "fishmeal pellet 4 mm");
    CHECK(tasks.back().name == "fishmeal micro pellet 2 mm");
    CHECK(tasks.back().kind == SoakTask::Kind::drain);
}

TEST_CASE("one pair of hands is enough, every soak lasts as long as it should, and no stand is cut short") {
    CHECK(rc::check([] {
        const SoakRequest request = random_batches();
        const SoakAnswer answer = soaked(request);
        for (std::size_t i = 0; i < answer.timetable.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) {
                // A soak of under a minute keeps its own two tasks closer than that.
                if (answer.timetable[i].name == answer.timetable[j].name) continue;
                RC_ASSERT(std::abs((answer.timetable[i].before_ready - answer.timetable[j].before_ready).si()) >
                          60 - 1e-6);
            }
        for (const SoakedAnswer& batch : answer.soaked) {
            double poured = -1, drained = 0;
            for (const SoakTask& task : answer.timetable) {
                if (task.name != batch.name) continue;
                if (task.kind == SoakTask::Kind::pour_on) poured = std::max(poured, task.before_ready.si());
                if (task.kind == SoakTask::Kind::drain) drained = std::max(drained, task.before_ready.si());
            }
            RC_ASSERT(poured >= (batch.soak.middle + batch.stand_ready.middle).si() - 1e-6);
            if (request.method == SoakMethod::covered) {
                RC_ASSERT(drained >= batch.stand_ready.middle.si() - 1e-6);
            }
        }
    }));
}
