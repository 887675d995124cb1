// Every shipped strategy on its sheet, for 1 to 4 anglers and 3 to 8 hours, with venue and kit: what is needed at the
// water is there, as poppler reads it out of the PDF, in letters of at least 9 pt, and nothing lies on anything.
#include "report/session_sheet.h"
#include "reference/whole_file.h"

#include <cairo.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "answers/plan/plan_session.h"
#include "bait/caution.h"
#include "bait/kitchen_rounding.h"
#include "card/cairo_printer.h"
#include "card/sheet_layout.h"
#include "library/named.h"
#include "library/open_library.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/session_moment.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const MemoryShelf& sheet_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

const Venue& long_pit() {
    static const Venue venue = named_venue("long pit", {}, sheet_shelf()).value;
    return venue;
}

struct Session {
    std::string strategy;
    int people, hours;
};

SessionPlan plan_of(const Session& session) {
    PlanRequest request;
    request.cost.ranges = CostRequest::Ranges::left_out;
    request.cost.what_if.people = session.people;
    request.cost.what_if.length = static_cast<double>(session.hours) * hour;
    request.start = 9 * 60 + 30;
    request.venue = long_pit();
    for (const char* item : {"cup 250", "pot 25", "feeder 30", "tub 12 l"}) request.kit.push_back(parse_kit(item));
    return plan_session(sheet_shelf(), sheet_shelf().strategy(session.strategy), {}, request);
}

std::vector<Session> all_sessions() {
    std::vector<Session> sessions;
    for (const std::string& name : sheet_shelf().strategy_names())
        for (int people = 1; people <= 4; ++people)
            for (int hours = 3; hours <= 8; ++hours) sessions.push_back({name, people, hours});
    return sessions;
}

/// Where all that is drawn lies, a page at a time.
std::vector<std::vector<Inked>> drawn_pages(const CardSheet& sheet, FittedSheet& fit) {
    cairo_surface_t* nowhere = cairo_recording_surface_create(CAIRO_CONTENT_COLOR, nullptr);
    std::vector<std::vector<Inked>> pages;
    {
        Pen pen(nowhere);
        fit = fitted(pen, sheet);
        pages.resize(fit.pages.size());
        for (std::size_t page = 0; page < pages.size(); ++page) {
            pen.note_in(&pages[page]);
            draw_page(pen, fit, page);
        }
    }
    cairo_surface_destroy(nowhere);
    return pages;
}

bool lie_on_each_other(const Inked& a, const Inked& b) {
    constexpr double touch = 0.6;  // points: rows stand close, and a measured line differs from the drawn by a hair
    return std::min(a.x + a.width, b.x + b.width) - std::max(a.x, b.x) > (a.width > 0 && b.width > 0 ? touch : -0.2) &&
           std::min(a.y + a.height, b.y + b.height) - std::max(a.y, b.y) > touch;
}

void check_page(const std::vector<Inked>& page) {
    for (std::size_t i = 0; i < page.size(); ++i) {
        const Inked& one = page[i];
        const bool inside = one.x > page_margin - 0.5 && one.x + one.width < page_width - page_margin + 0.5 &&
                            one.y > page_margin - 0.5 && one.y + one.height < page_height - page_margin + 0.5;
        if (!inside) FAIL_CHECK("outside the margins: '" << one.words << "' at " << one.x << ", " << one.y);
        for (std::size_t j = 0; j < i; ++j)
            if (lie_on_each_other(one, page[j]))
                FAIL_CHECK("'" << one.words << "' lies on '" << page[j].words << "' at " << one.x << ", " << one.y);
    }
}

std::string one_line_of(const std::string& text) {
    std::string line;
    for (const char letter : text) {
        const bool gap = letter == '\n' || letter == '\f' || letter == ' ';
        if (!gap)
            line += letter;
        else if (!line.empty() && line.back() != ' ')
            line += ' ';
    }
    return line;
}

/// What another program reads out of the PDF.
std::string read_back(const std::string& pdf) {
    std::string name = (fs::temp_directory_path() / "sheet-XXXXXX").string();
    const fs::path folder = mkdtemp(name.data());
    std::ofstream(folder / "sheet.pdf", std::ios::binary) << pdf;
    const std::string in_folder = "cd '" + folder.string() + "' && pdftotext -raw sheet.pdf read";
    const bool done = std::system(in_folder.c_str()) == 0;
    const std::string text = whole_file(folder / "read");
    fs::remove_all(folder);
    REQUIRE(done);
    return one_line_of(text);
}

/// What is never left out, from the plan itself: each put-in, each mark of the water, each soak.
std::vector<std::string> needed_words(const SessionPlan& plan) {
    std::vector<std::string> words;
    for (std::size_t feed = 0; feed < plan.feeds.size(); ++feed) {
        std::string moments;
        std::size_t put_ins = 0;
        for (const PlannedFeed& put_in : plan.put_ins) {
            if (put_in.feed != feed) continue;
            moments += (put_ins++ == 0 ? "" : " ") + session_moment(plan, put_in.at);
        }
        words.push_back(", " + plan.feeds[feed].name);
        if (put_ins <= 24) words.push_back(moments);
        if (put_ins > 1) words.push_back(std::to_string(put_ins) + " times");
    }
    for (const PlannedBatch& batch : plan.batches) {
        if (!(batch.water > 0.5 * gram)) continue;
        words.push_back("never past " + shown_water(kitchen_water(batch.water_range.high)) + " in all");
        words.push_back(shown_water(kitchen_water(batch.water_first)));
        if (batch.water_rest > 0.5 * gram) words.push_back(shown_water(kitchen_water(batch.water_rest)));
    }
    for (const PlannedSoak& soak : plan.soaks) {
        words.push_back(soak.name + ", " + shown_weighed(soak.dry) + ":");
        words.push_back(shown_water(kitchen_water(soak.pour)));
    }
    for (const std::string& rule : plan.venue_notes) words.push_back(rule);
    return words;
}

/// How many strokes the tallies of each feed's row have, by how many it is put in.
void check_tallies(const SessionPlan& plan, const CardSheet& sheet) {
    for (const CardSection& section : sheet.sections) {
        if (section.heading != "At the water") continue;
        REQUIRE(section.rows.size() == plan.feeds.size());
        for (std::size_t feed = 0; feed < plan.feeds.size(); ++feed) {
            std::size_t strokes = 0;
            for (const CardTally& tally : section.rows[feed].tallies)
                strokes += static_cast<std::size_t>(tally.strokes);
            if (plan.feeds[feed].put_ins > 24) CHECK(strokes == plan.feeds[feed].put_ins);
        }
    }
}

}  // namespace

TEST_CASE("no session of a shipped strategy goes below 9 pt or over two pages, and nothing on its sheet overlaps") {
    int two_pages = 0;
    for (const Session& session : all_sessions()) {
        INFO(session.strategy << ", " << session.people << " anglers, " << session.hours << " h");
        const SessionPlan plan = plan_of(session);
        const CardSheet sheet = session_sheet(plan, parse_date("2026-11-25"));
        FittedSheet fit;
        const auto pages = drawn_pages(sheet, fit);
        REQUIRE(fit.fits);
        CHECK(fit.letters >= 9);
        CHECK(pages.size() <= 2);
        if (pages.size() == 2) ++two_pages;
        for (const auto& page : pages) {
            CHECK(page.size() > 10);
            check_page(page);
        }
        check_tallies(plan, sheet);
    }
    CHECK(two_pages > 0);
}

TEST_CASE("each put-in, each mark of the water and each soak can be read out of a sheet's PDF") {
    const std::vector<Session> sessions = all_sessions();
    CairoPrinter printer;
    for (std::size_t i = 0; i < sessions.size(); i += 7) {  // each strategy with other numbers of anglers and hours
        const Session& session = sessions[i];
        INFO(session.strategy << ", " << session.people << " anglers, " << session.hours << " h");
        const SessionPlan plan = plan_of(session);
        const PrintedSheet printed = printer.print(session_sheet(plan, parse_date("2026-11-25")), SheetFormat::pdf);
        REQUIRE(printed.fault.empty());
        const std::string words = read_back(printed.bytes);
        for (const std::string& needed : needed_words(plan)) {
            INFO(needed);
            CHECK(words.find(needed) != std::string::npos);
        }
    }
}

namespace {

CardSheet long_sheet(int rows) {
    CardSheet sheet;
    sheet.title = "long";
    sheet.subtitle = "6 h.";
    sheet.foot = "Go by the feel.";
    sheet.day = "2026-11-25";
    CardSection water;
    water.heading = "At the water";
    water.side = CardSection::Side::water;
    for (int i = 0; i < rows; ++i) {
        CardRow row;
        row.what = "put-in number " + std::to_string(i);
        row.amount = "250 g";
        row.boxes = {"09:30", "10:30", "11:30"};
        water.rows.push_back(row);
    }
    CardSection mind;
    mind.heading = "Mind";
    mind.look = CardSection::Look::notes;
    mind.side = CardSection::Side::water;
    for (int i = 0; i < 12; ++i) {
        mind.rows.emplace_back();
        mind.rows.back().what =
            "a caution of many words, which fills more than one line of the sheet in any letters, " +
            std::to_string(i) + ", and then a few more";
    }
    mind.in_short = {mind.rows.front()};
    mind.gives = CardSection::Gives::cautions_in_full;
    mind.left_out = 11;
    sheet.sections = {water, mind};
    return sheet;
}

FittedSheet fit_of(const CardSheet& sheet) {
    FittedSheet fit;
    for (const auto& page : drawn_pages(sheet, fit)) check_page(page);
    return fit;
}

}  // namespace

TEST_CASE("as a sheet fills, its letters shrink to 9 pt, then cautions go, then a second page comes, then more") {
    std::size_t pages = 1, left_out = 0;
    double letters = 12;
    bool short_on_one_page = false, three_pages = false;
    for (int rows = 2; rows <= 60; ++rows) {
        CAPTURE(rows);
        const FittedSheet fit = fit_of(long_sheet(rows));
        REQUIRE(fit.fits);
        CHECK(fit.letters >= 9);
        CHECK(fit.pages.size() >= pages);
        if (fit.pages.size() == pages && fit.rows_left_out == left_out) CHECK(fit.letters <= letters);
        short_on_one_page = short_on_one_page || (fit.pages.size() == 1 && fit.rows_left_out == 11);
        three_pages = three_pages || fit.pages.size() > 2;
        std::size_t shown = 0;
        for (const auto& page : fit.pages)
            for (const CardSection& section : page)
                if (section.side == CardSection::Side::water && section.look == CardSection::Look::lines)
                    shown += section.rows.size();
        CHECK(shown == static_cast<std::size_t>(rows));
        pages = fit.pages.size();
        left_out = fit.rows_left_out;
        letters = fit.letters;
    }
    CHECK(short_on_one_page);
    CHECK(three_pages);
}

TEST_CASE("a line that fills more than a page is refused, not cut") {
    CardSheet sheet = long_sheet(2);
    for (int i = 0; i < 2000; ++i) sheet.sections.front().rows.front().what += " word";
    CHECK_FALSE(fit_of(sheet).fits);
    CHECK_FALSE(CairoPrinter().print(sheet, SheetFormat::pdf).fault.empty());
}

TEST_CASE("the brief form of each caution is shorter, and what has none stays whole") {
    std::vector<std::string> all;
    for (const Caution& caution : all_cautions())
        if (!caution.allergen) {
            CHECK_FALSE(caution.brief.empty());
            CHECK(caution.brief.size() < caution.sentence.size());
            all.emplace_back(caution.sentence);
        }
    const std::string brief = brief_cautions(all);
    CHECK(brief.find("boil hard 30 minutes") != std::string::npos);
    CHECK(brief_cautions({"Mind the step."}) == "Mind the step.");
}
