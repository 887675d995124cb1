#include <catch2/catch.hpp>
#include <regex>

#include "answers/plan/plan_session.h"
#include "answers/plan/rest_of_session.h"
#include "answers/sessions.h"
#include "report/plan_report.h"

using namespace baitwright;
using namespace draft_sessions;

namespace {

/// Balls at the start and after it, and a helping of maggots every 80 s.
SessionPlan plan_of_balls_and_maggots() {
    const auto every = [](Time gap, FeedForm form, FeedSize size, const char* of, const char* feel) {
        return Feed{{EveryTime{gap}, 45.0 * minute, {}}, {{of}}, form, size, 1, feel};
    };
    Strategy strategy = session({{at_start, {{"fishmeal mix"}}, FeedForm::ball, 60.0 * millimetre, 8, "firm"},
                                 every(30.0 * minute, FeedForm::ball, 43.0 * millimetre, "fishmeal mix", "firm"),
                                 every(80.0 * second, FeedForm::loose, 5.0 * millilitre, "maggots", "")});
    PlanRequest request;
    request.start = 9 * 60 + 30;
    return plan_session(bank(), strategy, {}, request);
}

RestOfSession rest_at(const SessionPlan& plan, double minutes, Bites bites = Bites::steady) {
    return rest_of_session(plan,
                           {minutes * minute, {{"fishmeal mix", 3.0 * litre}, {"maggots", 140.0 * millilitre}}, bites});
}

std::string on_one_line(const std::string& text) {
    return std::regex_replace(text, std::regex("\\s+"), " ");
}

double minutes_of(const std::string& number, const std::string& unit) {
    return std::stod(number) / (unit == "s" ? 60 : 1);
}

}  // namespace

TEST_CASE("the rest of a session tells balls by their size, squeezed amounts as such, and what to take home") {
    const SessionPlan plan = plan_of_balls_and_maggots();
    std::string told = on_one_line(rest_told(plan, rest_at(plan, 110)).text());
    CHECK_THAT(told, Catch::Contains("3.0 l left") && Catch::Contains(" squeezed.") &&
                         Catch::Contains("one ball of 43 mm at 11:45, then 5 more, one every 30 min.") &&
                         Catch::Contains("is more than goes in; take home what is left."));
    told = on_one_line(rest_told(plan, rest_at(plan, 0)).text());
    CHECK_THAT(told, Catch::Contains("8 balls of 60 mm now."));
    CHECK_THAT(on_one_line(rest_told(plan, rest_at(plan, 0, Bites::none)).text()),
               Catch::Contains("8 balls of 60 mm now, but only once bites come."));
    told = on_one_line(rest_told(plan, rest_at(plan, 295)).text());
    CHECK_THAT(told, Catch::Contains("No more of it goes in before the end: take it home.") &&
                         !Catch::Contains("Come home Fishmeal mix"));
    CHECK_THAT(told, !Catch::Contains("less than a minute"));
}

TEST_CASE("what the plan has no more of is told as spare, once, and goes in only if bites slow") {
    const SessionPlan plan = plan_session(bank(), session({cups("fishmeal mix", 250, 3, "soft")}), {}, {});
    const auto told_at = [&](double minutes, Bites bites) {
        return on_one_line(
            rest_told(plan, rest_of_session(plan, {minutes * minute, {{"fishmeal mix", 1.0 * litre}}, bites})).text());
    };
    std::string told = told_at(140, Bites::steady);
    CHECK_THAT(told, Catch::Contains("The plan has no more of it: it is spare.") &&
                         Catch::Contains("Spare Fishmeal mix: 4 more cups of 250 ml if bites slow, no sooner than one "
                                         "every 30 min; take home what does not go in.") &&
                         !Catch::Contains("Then ") && !Catch::Contains("Keep the rhythm"));
    CHECK_THAT(told_at(140, Bites::slow), Catch::Contains(" while bites stay slow, no sooner than one every "));
    told = told_at(299, Bites::steady);
    CHECK_THAT(told, Catch::Contains("take it home") && !Catch::Contains("spare") && !Catch::Contains("Spare") &&
                         !Catch::Contains("Come home"));
    CHECK_THAT(told_at(0, Bites::steady), Catch::Contains("Then ") && !Catch::Contains("Spare"));
}

TEST_CASE("so many so far apart as the words say fit into the time that is left, and JSON says the same") {
    const SessionPlan plan = plan_of_balls_and_maggots();
    const std::regex more("then (\\d+|one) more(?:, one every)? ([0-9.]+) (s|min)");
    int told_gaps = 0;
    for (int now = 0; now < 300; now += 7) {
        const RestOfSession rest = rest_at(plan, now);
        const std::string told = on_one_line(rest_told(plan, rest).text());
        std::vector<std::pair<double, double>> in_words, in_json;
        for (auto at = std::sregex_iterator(told.begin(), told.end(), more); at != std::sregex_iterator(); ++at)
            in_words.emplace_back((*at)[1] == "one" ? 1 : std::stod((*at)[1]), minutes_of((*at)[2], (*at)[3]));
        const Json json = rest_json(plan, rest);
        for (const Json& feed : json["now"]["feeds"])
            for (const Json& then : feed["then"])
                if (then["put_ins"].number() > 1)
                    in_json.emplace_back(then["put_ins"].number() - 1, then["every_minutes"].number());
        REQUIRE(in_words.size() == in_json.size());
        for (std::size_t i = 0; i < in_words.size(); ++i) {
            CHECK(in_words[i].first == in_json[i].first);
            CHECK(in_words[i].second == Approx(in_json[i].second).epsilon(1e-9));
            CHECK(in_words[i].first * in_words[i].second <= 300 - now);
            ++told_gaps;
        }
    }
    CHECK(told_gaps > 60);
}
