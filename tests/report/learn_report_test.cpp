#include "report/learn_report.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "day_of.h"
#include "quantities/units.h"
#include "report/learn_plot.h"
#include "report/learn_words.h"

using namespace baitwright;
using Catch::Matchers::Contains;

namespace {

Learnt learnt_thing(Learnt::Property property, double factor, double sd, int times, std::string name = "brown crumb") {
    return {std::move(name), property, 0, 0.2, std::log(factor), sd, times, {}, {}};
}

LogEntry mix_entry(std::int64_t id) {
    LogEntry entry;
    entry.id = id;
    entry.on = *day_of("2026-08-02");
    LoggedMix mix;
    mix.of = "silt bed";
    entry.what = mix;
    return entry;
}

LearnAnswer answer_of_a_season() {
    LearnAnswer answer;
    answer.observations = 9;
    answer.posterior = {learnt_thing(Learnt::Property::hand, 1.06, 0.05, 9, ""),
                        learnt_thing(Learnt::Property::absorption, 1.12, 0.0335, 7),
                        learnt_thing(Learnt::Property::absorption, 0.9, 0.19, 1, "maize meal")};
    answer.mixes = {{"silt bed", "firm", 0.28, 0.11, 7}};
    answer.set_aside = {{mix_entry(8), 7.2, 1480, 741}};
    answer.next = NextTest{NextTest::Kind::squeeze, "fishmeal, brown", "silt bed", 0.11, 0.09, 0.11, 0.09};
    LearntCourse course;
    course.last = answer.posterior[1];
    course.steps = {{*day_of("2026-04-12"), 0.08, 0.1}, {*day_of("2026-08-02"), 0.113, 0.0335}};
    course.seen = {{*day_of("2026-04-12"), 0.12, 0.07, false}, {*day_of("2026-08-02"), 0.69, 0.07, true}};
    answer.courses.push_back(course);
    return answer;
}

std::string told_text(const LearnReport& report) {
    return learn_reply(report).told().text();
}

}  // namespace

TEST_CASE("what was learnt of a bag is told as more or less than the library says, with its range") {
    CHECK(told_of(learnt_thing(Learnt::Property::absorption, 1.12, 0.0335, 7)) ==
          "takes 12 % more than the library says (9 in 10: 6 to 18 % more)");
    CHECK(told_of(learnt_thing(Learnt::Property::absorption, 0.95, 0.05, 7)) ==
          "takes 5 % less than the library says (9 in 10: 13 % less to 3 % more)");
    CHECK(told_of(learnt_thing(Learnt::Property::absorption, 0.95, 0.0306, 7)) ==
          "takes 5 % less than the library says (9 in 10: 0 to 10 % less)");
    CHECK(told_of(learnt_thing(Learnt::Property::hold, 2.5, 0.2, 3)) ==
          "holds 2.5 times as long as reckoned (9 in 10: 1.8 to 3.5 times)");
    CHECK(told_of(learnt_thing(Learnt::Property::carpet, 1.001, 0.1, 2)) ==
          "lies about as wide as reckoned (9 in 10: 15 % less to 18 % more)");
    CHECK(from_so_many(learnt_thing(Learnt::Property::absorption, 1, 1, 1)) == "from 1 mix");
    CHECK(from_so_many(learnt_thing(Learnt::Property::diffusivity, 1, 1, 3)) == "from 3 soaks");
}

TEST_CASE("a log says what it taught, what is too far off, and what would help most") {
    const std::string text = told_text({answer_of_a_season()});
    CHECK_THAT(text, Contains("from 9 observations"));
    CHECK_THAT(text, Contains("brown crumb takes 12 % more than the library says"));
    CHECK_THAT(text, Contains("number 8, silt bed on 2026-08-02: 1480 ml, where"));
    CHECK_THAT(text, Contains("28 % either way"));
    CHECK_THAT(text, Contains("Squeeze-test the fishmeal, brown"));
    CHECK_THAT(text, Contains("baitwright learn --apply"));
    // One mix that leaves a bag as unsure as it was says nothing of it.
    CHECK_THAT(text, !Contains("maize meal"));
}

TEST_CASE("an empty log says how to begin, and no line is wider than a terminal") {
    CHECK_THAT(told_text({LearnAnswer{}}), Contains("baitwright log mix"));
    CHECK_THAT(told_text({LearnAnswer{}, LearnReport::Done::written, {"your hand"}}), Contains("again: your hand."));
    CHECK_THAT(told_text({answer_of_a_season(), LearnReport::Done::nothing_to_write}),
               Contains("Nothing new to keep: your answers go by all of it already."));
    CHECK_THAT(told_text({answer_of_a_season(), LearnReport::Done::stands_already}),
               Contains("Your answers go by all of it already."));
    std::string text = told_text({answer_of_a_season(), LearnReport::Done::written, {"brown crumb", "silt bed"}});
    CHECK_THAT(text, Contains("Kept: brown crumb; silt bed."));
    std::size_t start = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos; start = end + 1, end = text.find('\n', start))
        CHECK(text_width(text.substr(start, end - start)) <= text_columns);
}

TEST_CASE("the JSON of what was learnt has every property, unrounded, and what was set aside") {
    const Json json = learn_reply({answer_of_a_season()}).json();
    CHECK(json["observations"].number() == 9);
    CHECK(json["posterior"].size() == 3);
    CHECK(json["posterior"][1]["property"].text() == "absorption");
    CHECK(json["posterior"][1]["mean"].number() == std::log(1.12));
    CHECK(json["posterior"][0]["name"].is_null());
    CHECK(json["outliers"][0]["entry"].number() == 8);
    CHECK(json["next_test"]["test"].text() == "squeeze");
    CHECK_FALSE(json["applied"].truth());
}

TEST_CASE("the picture of what was learnt has a panel for each bag, and a cross for what was set aside") {
    const std::string svg = learn_plot(answer_of_a_season());
    CHECK_THAT(svg, Contains("brown crumb: water until it just holds"));
    CHECK_THAT(svg, Contains("2026-04-12"));
    CHECK_THAT(svg, Contains("<desc id=\"desc\">brown crumb takes 12 % more"));
    CHECK_THAT(svg, !Contains("nan"));
    CHECK_THAT(learn_plot(LearnAnswer{}), Contains("Nothing in the log"));
}

TEST_CASE("a panel of a mix says how much water it takes, and a thing that says nothing by itself is not drawn") {
    LearnAnswer answer = answer_of_a_season();
    LearntCourse course = answer.courses.front();
    course.last = learnt_thing(Learnt::Property::water, 1.1, 0.06, 7, "silt bed");
    course.seen = {{*day_of("2026-04-12"), 0.12, 0.07, false}};
    answer.courses = {course};
    const std::string closely = learn_plot(answer);
    CHECK_THAT(closely, Contains("silt bed: the water it takes"));
    CHECK_THAT(closely, Contains("silt bed takes 10 % more water than by the library"));
    answer.courses.front().seen.front().sd = 0.5;
    CHECK(learn_plot(answer).size() < closely.size());
}

TEST_CASE("each entry that was set aside has its way to be mended or believed") {
    LearnReport report{answer_of_a_season()};
    report.answer.set_aside.push_back({mix_entry(12), 5.1, 300, 741});
    const std::string text = told_text(report);
    CHECK_THAT(text, Contains("log edit 8") && Contains("log edit 12"));
    CHECK_THAT(text, Contains("--believe 8") && Contains("--believe 12"));
}
