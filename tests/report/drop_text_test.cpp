#include <algorithm>
#include <catch2/catch.hpp>

#include "answers/drop/drop_feed.h"
#include "answers/soaking.h"
#include "quantities/units.h"
#include "report/drop_lines.h"
#include "report/drop_report.h"

using namespace baitwright;

namespace {

DropRequest told_drop(DropForm form, const char* feel, double tow_cm_s) {
    DropRequest request;
    request.form = form;
    request.feel = feel;
    request.depth = 2.5 * metre;
    request.tow = tow_cm_s * 0.01 * metre_per_second;
    return request;
}

DropAnswer fallen(const DropRequest& request) {
    return drop_feed(draft::soaking_shelf(), draft::fishmeal_mix(), request);
}

/// The lines that hold something.
long lines_told(const Told& told) {
    const std::string text = told.text();
    long lines = 0;
    for (std::size_t at = 0; at < text.size(); ++at)
        if (text[at] != '\n' && (at == 0 || text[at - 1] == '\n')) ++lines;
    return lines;
}

const std::string* line_of(const Told& told, const std::string& label) {
    for (const Told::Piece& piece : told.pieces())
        if (piece.label == label) return &piece.text;
    return nullptr;
}

}  // namespace

TEST_CASE("a drop is told in twelve lines: where it breaks, when it is down, how wide, its drift, what hangs") {
    const DropForm forms[] = {DroppedCup{250.0 * millilitre}, DroppedFeeder{50.0 * millilitre},
                              DroppedLoose{100.0 * millilitre}};
    for (const DropForm& form : forms)
        for (const char* feel : {"dusty", "crumbly", "firm", "soft", "slop"})
            for (const double tow : {0.0, 2.0, 30.0}) {
                const Told told = drop_told(fallen(told_drop(form, feel, tow)));
                INFO(told.text());
                CHECK(lines_told(told) <= 12);
                for (const char* label : {"Breaks", "Down", "Wide", "Drift", "Hangs", "How sure"})
                    CHECK(line_of(told, label));
            }
}

TEST_CASE("live feed is told without a feel, falls alike at any, and makes no ball") {
    const auto dropped = [](const char* feel) {
        Recipe casters;
        casters.name = "casters";
        casters.parts.push_back({"casters", 1.0 * kilogram, Preparation::as_bought});
        return drop_feed(draft::soaking_shelf(), casters, told_drop(DroppedCup{250.0 * millilitre}, feel, 0));
    };
    CHECK(drop_told(dropped("firm")).text().starts_with("casters, as it is: a "));
    CHECK(drop_told(dropped("firm")).text() == drop_told(dropped("soft")).text());
    CHECK(dropped("tacky").breaks == Breaks::surface);
}

TEST_CASE("a ball that lands whole, and a hook pellet beside it, still take twelve lines") {
    DropRequest request = told_drop(DroppedBall{45.0 * millimetre}, "firm", 2);
    request.hook = "expander 6 mm";
    request.own.holds = 1.0 * hour;
    const Told told = drop_told(fallen(request));
    INFO(told.text());
    CHECK(lines_told(told) <= 12);
    CHECK(line_of(told, "Breaks")->find("lands whole") != std::string::npos);
    CHECK(line_of(told, "Down")->find("All of it after") != std::string::npos);
    CHECK(line_of(told, "Hook"));
}

TEST_CASE("a ball is only said to land whole that does, and half and nine tenths are told of what wears on the way") {
    struct Way {
        double holds;
        const char *brief, *full, *cell;
    };
    for (const Way& way :
         {Way{600, "it lands whole", "It lands whole", "bottom"},
          Way{24, "of it wears off on the way; the rest", "of it wears off on the way; the rest", "bottom"},
          Way{8, "Most of it, ", "Most of it, ", "worn off"},
          Way{3, "It wears away as it sinks: half by ", "It wears away as it sinks: half", "by "}}) {
        DropRequest request = told_drop(DroppedBall{55.0 * millimetre}, "firm", 0);
        request.own.holds = way.holds * second;
        const DropAnswer answer = fallen(request);
        const Told brief = drop_told(answer), full = drop_full_told(answer), beside = drop_comparison_told({answer});
        INFO(brief.text() << full.text() << beside.text());
        CHECK(line_of(brief, "Breaks")->find(way.brief) != std::string::npos);
        CHECK(line_of(full, "Breaks")->find(way.full) != std::string::npos);
        const bool whole = way.holds > 100;
        for (const Told* told : {&brief, &full})
            CHECK((told->text().find("lands whole") != std::string::npos) == whole);
        CHECK((line_of(brief, "Down")->find("All of it") == 0) == whole);
        const std::vector<std::string> row = beside.pieces().at(1).table.rows().at(1);
        CHECK(row.at(1).find(way.cell) == 0);
        if (whole) continue;
        CHECK(line_of(brief, "Down")->find("Half after " + row.at(2)) == 0);
        CHECK(line_of(brief, "Down")->find("nine tenths after " + row.at(3)) != std::string::npos);
        CHECK(line_of(full, "Landing")->find(" after " + row.at(2) + " (likely ") != std::string::npos);
    }
}

TEST_CASE("a ball of which nothing to speak of is left to land is not said to be all gone and yet to land") {
    int nearly = 0;
    for (double holds = 4; holds < 12; holds += 0.1) {
        DropRequest request = told_drop(DroppedBall{55.0 * millimetre}, "firm", 0);
        request.own.holds = holds * second;
        const std::string breaks = *line_of(drop_told(fallen(request)), "Breaks");
        CAPTURE(holds, breaks);
        CHECK(breaks.find("100 %") == std::string::npos);
        nearly += breaks.starts_with("Nearly all of it wears off");
    }
    CHECK(nearly > 0);
}

TEST_CASE("a trail is told by its length from the first line on") {
    const DropAnswer answer = fallen(told_drop(DroppedCup{250.0 * millilitre}, "slop", 30));
    const std::string line = expect_line(answer);
    INFO(line);
    CHECK(line.find(" long and ") != std::string::npos);
    CHECK(expect_line(fallen(told_drop(DroppedCup{250.0 * millilitre}, "slop", 0))).find(" long ") ==
          std::string::npos);
}

TEST_CASE("what is on the bottom at once is said to be so in plain words, and its lengths in one unit") {
    const Told told = drop_told(fallen(told_drop(DroppedFeeder{45.0 * millilitre}, "firm", 0)));
    CHECK(*line_of(told, "Down") == "All of it at once.");
    const std::string wide = *line_of(told, "Wide");
    CHECK(wide.find(" cm") != std::string::npos);
    CHECK(wide.find(" m ") == std::string::npos);
}

TEST_CASE("in full a drop tells each part's own fate and where to fish, and the same numbers") {
    const DropAnswer answer = fallen(told_drop(DroppedCup{250.0 * millilitre}, "soft", 2));
    const Told brief = drop_told(answer), full = drop_full_told(answer);
    CHECK(lines_told(full) > lines_told(brief));
    CHECK(line_of(full, "Fish"));
    CHECK_FALSE(line_of(brief, "Fish"));
    CHECK(full.text().find("its own fate") != std::string::npos);
    CHECK(brief.text().find("its own fate") == std::string::npos);
    CHECK(line_of(brief, "Drift")->find(*line_of(full, "Drift")) == 0);
}

TEST_CASE("in full a drop leads with what to expect, then how sure, and its sentence has the numbers of its lines") {
    const DropForm forms[] = {DroppedCup{250.0 * millilitre}, DroppedBall{45.0 * millimetre},
                              DroppedLoose{100.0 * millilitre}};
    for (const DropForm& form : forms)
        for (const char* feel : {"crumbly", "firm", "soft"}) {
            const Told full = drop_full_told(fallen(told_drop(form, feel, 2)));
            INFO(full.text());
            const auto& pieces = full.pieces();
            REQUIRE(pieces.size() > 3);
            CHECK(pieces[1].kind == Told::Piece::Kind::say);
            CHECK(pieces[2].label == "How sure");
            const std::string expect = pieces[1].text, lies = expect.substr(expect.find(", lies ") + 7);
            CHECK(line_of(full, "Carpet")->find(lies.substr(0, lies.find(" wide"))) != std::string::npos);
            const bool lands = expect.find("Lands whole") == 0;
            CHECK(lands == (line_of(full, "Breaks")->find("lands whole") != std::string::npos));
        }
}

TEST_CASE("side by side, what is the same stands in the title, and a ball that cannot be made is minded") {
    std::vector<DropAnswer> feels, forms;
    for (const char* feel : {"dusty", "firm"})
        feels.push_back(fallen(told_drop(DroppedBall{45.0 * millimetre}, feel, 2)));
    forms.push_back(fallen(told_drop(DroppedCup{250.0 * millilitre}, "firm", 2)));
    forms.push_back(fallen(told_drop(DroppedLoose{100.0 * millilitre}, "firm", 2)));
    const Told by_feel = drop_comparison_told(feels), by_form = drop_comparison_told(forms);
    CHECK(by_feel.pieces().front().text.find(", a ball of 45 mm, in 2.5 m of water") != std::string::npos);
    CHECK(by_form.pieces().front().text.find(", firm, in 2.5 m of water") != std::string::npos);
    CHECK(by_form.pieces().at(1).table.rows().at(2).front() == "a loose handful of 100 ml");
    REQUIRE(line_of(by_feel, "Mind"));
    CHECK(line_of(by_feel, "Mind")->find("Dusty: at this feel the mix is too dry to be a ball") == 0);
    CHECK_FALSE(line_of(by_form, "Mind"));
}

TEST_CASE("the tow that was taken is said in brief too, but not the one that was told to the bed") {
    DropRequest request = told_drop(DroppedCup{250.0 * millilitre}, "soft", 2);
    CHECK(line_of(drop_told(fallen(request)), "Drift")->find("Taken for still water") != std::string::npos);
    request.kind = WaterKind::river;
    CHECK(line_of(drop_told(fallen(request)), "Drift")->find("Taken for flowing water") != std::string::npos);
    request.kind.reset();
    request.tow_bottom = 0.01 * metre_per_second;
    CHECK(line_of(drop_told(fallen(request)), "Drift")->find("Taken") == std::string::npos);
}

TEST_CASE("own numbers are named in brief too") {
    DropRequest request = told_drop(DroppedCup{250.0 * millilitre}, "soft", 0);
    CHECK(line_of(drop_told(fallen(request)), "How sure")->find("Your own") == std::string::npos);
    request.own.carpet = 1.4 * metre;
    CHECK(line_of(drop_told(fallen(request)), "How sure")->find("carpet") != std::string::npos);
}
