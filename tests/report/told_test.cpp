#include "report/told.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <sstream>

#include "answers/asking.h"
#include "answers/drop/drop_feed.h"
#include "answers/mix/right_a_mix.h"
#include "answers/plan/plan_session.h"
#include "answers/plan/rest_of_session.h"
#include "answers/sessions.h"
#include "answers/soaking.h"
#include "report/cost_report.h"
#include "report/drop_report.h"
#include "report/mix_text.h"
#include "report/plan_report.h"
#include "report/soak_text.h"
#include "report/tub_report.h"

using namespace baitwright;

namespace {

using Align = TextTable::Align;

std::vector<std::string> words_of(const std::string& text) {
    std::istringstream stream(text);
    std::vector<std::string> words;
    for (std::string word; stream >> word;) words.push_back(word);
    return words;
}

/// All strings that a page would show, in reading order, as a terminal numbers its steps.
std::vector<std::string> strings_of(const Json& told) {
    std::vector<std::string> strings;
    const auto all_of = [&](const Json& cells) {
        for (const Json& cell : cells) strings.push_back(cell.text());
    };
    for (const Json& piece : told) {
        if (piece.contains("label")) strings.push_back(piece["label"].text() + (piece["kind"] == "step" ? "." : ""));
        if (piece.contains("cells")) all_of(piece["cells"]);
        if (piece.contains("text")) strings.push_back(piece["text"].text());
        if (piece.contains("rows"))
            for (const Json& row : piece["rows"]) all_of(row);
    }
    return strings;
}

bool is_rule(const std::string& word) {
    return word.size() > 10 && word.find_first_not_of('-') == std::string::npos;
}

bool is_trimmed(const std::string& text) {
    return text.empty() || (text.front() != ' ' && text.back() != ' ' && text.find('\n') == std::string::npos);
}

/// A page has every word of the terminal, in the order of the terminal, and no other.
void check_same_words(const Told& told) {
    std::vector<std::string> on_page, on_terminal = words_of(told.text());
    on_terminal.erase(std::remove_if(on_terminal.begin(), on_terminal.end(), is_rule), on_terminal.end());
    for (const std::string& text : strings_of(told_json(told))) {
        CAPTURE(text);
        CHECK(is_trimmed(text));
        for (const std::string& word : words_of(text)) on_page.push_back(word);
    }
    CHECK(on_page.size() > 30);
    CHECK(on_page == on_terminal);
}

class TellingBank : public draft_sessions::Bank {
public:
    TellingBank() { put(draft::expander("expander 4 mm", 4)); }
};

SessionPlan planned(std::optional<int> start) {
    static const TellingBank bank;
    Strategy strategy = draft_sessions::session(
        {draft_sessions::cups("fishmeal mix", 250, 3, "firm"), draft_sessions::cups("casters", 100, 2)}, 0.1);
    strategy.hookbaits = {{"expander 4 mm", BitesPerHour{10}}};
    PlanRequest request;
    request.start = start;
    return plan_session(bank, strategy, {}, request);
}

}  // namespace

TEST_CASE("a terminal gets the pieces one under the other, each laid out by its kind") {
    Told told;
    told.title("silt bed, firm: 3 l riddled");
    told.amounts("water", {"735 g", "1.3 pt"});
    told.gap();
    told.line("Makes", "3 l.");
    told.line("", "More of it.");
    told.heading("On the day");
    told.row({"clock", "hands"}, "do this");
    told.row({"07:35", "5 min"}, "riddle silt bed");
    told.row({}, "as it comes");
    CHECK(told.text() ==
          "silt bed, firm: 3 l riddled\n"
          "\n"
          "  water        735 g   1.3 pt\n"
          "\n"
          "Makes     3 l.\n"
          "          More of it.\n"
          "On the day\n"
          "   clock    hands  do this\n"
          "   07:35    5 min  riddle silt bed\n"
          "  as it comes\n");
}

TEST_CASE("long pieces are broken under their own beginning") {
    const std::string x(50, 'x'), y(40, 'y');
    Told told;
    told.title(x + " " + y);
    told.line("Makes", x + " " + y);
    told.row({"07:35"}, x + " " + y);
    told.step(x + " " + y);
    CHECK(told.text() == x + "\n" + y + "\n\n" + "Makes     " + x + "\n          " + y + "\n" + "   07:35  " + x +
                             "\n          " + y + "\n" + "  1. " + x + "\n     " + y + "\n");
}

TEST_CASE("one empty line stands before and after a title, none at the top") {
    Told told;
    told.title("first");
    told.title("second");
    told.line("Makes", "3 l.");
    told.title("third");
    told.gap();
    told.title("fourth");
    CHECK(told.text() == "first\n\nsecond\n\nMakes     3 l.\n\nthird\n\n\nfourth\n\n");
}

TEST_CASE("steps count from 1 after each heading") {
    Told told;
    told.heading("Do this");
    for (int i = 0; i < 10; ++i) told.step("stir");
    told.heading("Then");
    told.step("rest");
    const std::string text = told.text();
    CHECK(text.find("Do this\n  1. stir\n  2. stir\n") == 0);
    CHECK(text.find("  9. stir\n 10. stir\nThen\n  1. rest\n") != std::string::npos);
}

TEST_CASE("warnings and cautions are told a line each, warnings as sentences") {
    Told told;
    told.mind({{"code", "it is too wet"}, {"code", "The bag is old."}});
    told.take_care({"Dust."});
    CHECK(told.text() == "Mind      It is too wet.\nMind      The bag is old.\nTake care Dust.\n");
}

TEST_CASE("the JSON of what is told leaves gaps out and keeps a rule as an empty row") {
    TextTable table({Align::left, Align::right});
    table.row({"weigh", "grams"});
    table.rule();
    table.row({"in all"});
    Told told;
    told.title("silt bed");
    told.table(table);
    told.amounts("water", {"735 g", "1.3 pt"});
    told.gap();
    told.heading("Do this");
    told.step("Stir.");
    told.row({"07:35", "5 min"}, "riddle");
    told.line("", "more");
    CHECK(told_json(told) == parsed_json(R"([
        {"kind": "title", "text": "silt bed"},
        {"kind": "table", "columns": ["left", "right"], "rows": [["weigh", "grams"], [], ["in all", ""]]},
        {"kind": "amounts", "label": "water", "cells": ["735 g", "1.3 pt"]},
        {"kind": "heading", "text": "Do this"},
        {"kind": "step", "label": "1", "text": "Stir."},
        {"kind": "row", "cells": ["07:35", "5 min"], "text": "riddle"},
        {"kind": "line", "text": "more"}
    ])"));
}

TEST_CASE("a mix is told to a page in the words of a terminal") {
    check_same_words(
        mix_told(answer_mix(draft::shelf(), draft::fishmeal_mix(), draft::request_for(Balls{12, 55.0 * millimetre}))));
    check_same_words(mix_told(answer_mix(draft_sessions::bank(), draft_sessions::bank().recipe("fishmeal mix"),
                                         draft::request_for(DryMass{1.0 * kilogram}, "soft"))));
}

TEST_CASE("a tub is told to a page in the words of a terminal") {
    TubRequest request;
    request.dry_mass = 1.0 * kilogram;
    request.water = WaterPoured{800.0 * millilitre};
    check_same_words(tub_told(right_a_mix(draft::shelf(), draft::fishmeal_mix(), request)));
    request.since = 2.0 * minute;
    check_same_words(tub_told(right_a_mix(draft::shelf(), draft::fishmeal_mix(), request)));
}

TEST_CASE("a soak is told to a page in the words of a terminal") {
    const BitesPlanned bites{10, 5.0 * hour};
    SoakRequest request = draft::soak_of("fishmeal pellet 4 mm", bites);
    request.items.push_back({"expander 4 mm", std::nullopt, 1});
    request.spare = 0.1;
    request.ready_at = 9 * 60 + 30;
    check_same_words(soak_told(draft::soaked(request)));
    const SoakAnswer cold = draft::soaked(draft::soak_of("fishmeal pellet 4 mm", 100.0 * gram, 5));
    check_same_words(soak_told(cold));
    check_same_words(
        soak_comparison_told({cold, draft::soaked(draft::soak_of("fishmeal pellet 4 mm", 100.0 * gram, 20))}));
}

TEST_CASE("feed on its way down is told to a page in the words of a terminal") {
    DropRequest request;
    request.form = DroppedCup{250.0 * millilitre};
    request.feel = "soft";
    request.depth = 2.5 * metre;
    const DropAnswer soft = drop_feed(draft::soaking_shelf(), draft::fishmeal_mix(), request);
    check_same_words(drop_told(soft));
    request.feel = "firm";
    check_same_words(drop_comparison_told({soft, drop_feed(draft::soaking_shelf(), draft::fishmeal_mix(), request)}));
}

TEST_CASE("what a session costs is told to a page in the words of a terminal") {
    check_same_words(cost_told(
        cost_strategy(draft_sessions::bank(),
                      draft_sessions::session({draft_sessions::cups("fishmeal mix", 250, 3, "firm")}), {}, {})));
}

TEST_CASE("a plan is told to a page in the words of a terminal, with and without a clock") {
    check_same_words(plan_told(planned(9 * 60 + 30)));
    check_same_words(plan_told(planned(std::nullopt)));
}

TEST_CASE("a plan without a clock tells how long before the start its jobs are, and no minute below zero") {
    const SessionPlan plan = planned(std::nullopt);
    REQUIRE(plan.begin < Time{});
    bool evening = false;
    for (const PrepJob& job : plan.prep) evening = evening || job.at < -8.0 * hour;
    CHECK(evening);
    const std::string text = plan_told(plan).text();
    for (std::size_t at = text.find(" -"); at != std::string::npos; at = text.find(" -", at + 1))
        CHECK_FALSE((text[at + 2] >= '0' && text[at + 2] <= '9'));
    CHECK_THAT(text, Catch::Contains("The evening before") && Catch::Contains("before    hands  do this"));
    CHECK_THAT(text, !Catch::Contains("12 h"));  // an evening is no clock
}

TEST_CASE("the rest of a session is told to a page in the words of a terminal") {
    const SessionPlan plan = planned(9 * 60 + 30);
    check_same_words(
        rest_told(plan, rest_of_session(plan, {2.0 * hour, {{"fishmeal mix", 1.0 * litre}}, Bites::slow})));
}
