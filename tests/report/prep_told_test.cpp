#include "report/prep_told.h"

#include <catch2/catch.hpp>
#include <regex>

#include "answers/plan/plan_session.h"
#include "answers/sessions.h"
#include "report/session_sheet.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

PlanRequest begun_at(int start) {
    PlanRequest request;
    request.start = start;
    return request;
}

SessionPlan planned_for_prep(const PlanRequest& request) {
    return plan_session(bank(), session({cups("fishmeal mix", 250, 4, "firm")}), {}, request);
}

std::string prep_on_one_line(const SessionPlan& plan) {
    return std::regex_replace(prep_told(plan).text(), std::regex("\\s+"), " ");
}

}  // namespace

TEST_CASE("the evening before is counted only where something is done in it") {
    PlanRequest request = begun_at(8 * 60);
    CHECK_THAT(prep_on_one_line(planned_for_prep(request)),
               Catch::Contains("The evening before") && Catch::Contains("in all, counting the evening before."));
    request.work_from = 3.0 * hour;
    const std::string told = prep_on_one_line(planned_for_prep(request));
    CHECK_THAT(told, Catch::Contains(" in all.") && !Catch::Contains("evening"));
    request.hands = 2;
    CHECK_THAT(prep_on_one_line(planned_for_prep(request)),
               Catch::Contains(" of work.") && !Catch::Contains("evening"));
}

TEST_CASE("what is done before midnight does not stand under the day") {
    PlanRequest request = begun_at(30);
    request.travel = 1.0 * hour;
    const std::string told = prep_on_one_line(planned_for_prep(request));
    const auto before = told.find("Before midnight"), day = told.find("On the day");
    REQUIRE((before != std::string::npos && day != std::string::npos && before < day));
    CHECK(told.find("travel to the water") < day);
    CHECK(told.find("feel each mix again") > day);
    const std::string rows = told.substr(before, told.find("Begin by") - before);
    CHECK_THAT(rows, !Catch::Contains("the day before"));  // under its heading the clock alone is plain
    CHECK_THAT(prep_on_one_line(planned_for_prep(begun_at(9 * 60))), !Catch::Contains("Before midnight"));
    request = begun_at(5);
    request.work_from = 3.0 * hour;
    CHECK_THAT(prep_on_one_line(planned_for_prep(request)), !Catch::Contains("On the day"));
}

TEST_CASE("plan and sheet tell one number of minutes of work") {
    bool not_to_five = false;
    for (int cups_fed = 1; cups_fed < 30; ++cups_fed) {
        const SessionPlan plan =
            plan_session(bank(), session({cups("fishmeal mix", 250, cups_fed, "firm")}), {}, begun_at(540));
        const std::string told = prep_on_one_line(plan), sheet = session_sheet(plan, {}).subtitle;
        std::smatch work;
        REQUIRE(std::regex_search(sheet, work, std::regex(": ([^:]+) of work")));
        CHECK_THAT(told, Catch::Contains("busy for " + work[1].str() + " in all"));
        not_to_five = not_to_five || std::lround(plan.hands_on.in(minute)) % 5 != 0;
    }
    CHECK(not_to_five);
}
