#include "report/drop_plot.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdio>
#include <regex>

#include "answers/drop/drop_feed.h"
#include "answers/soaking.h"
#include "quantities/units.h"
#include "report/drop_report.h"
#include "report/svg.h"

using namespace baitwright;

namespace {

DropAnswer drawn_drop(DropForm form, double tow_cm_s, const char* feel = "soft") {
    DropRequest request;
    request.form = form;
    request.feel = feel;
    request.depth = 2.5 * metre;
    request.tow = tow_cm_s * 0.01 * metre_per_second;
    return drop_feed(draft::soaking_shelf(), draft::fishmeal_mix(), request);
}

const DropForm a_cup = DroppedCup{250.0 * millilitre};
const DropForm a_ball = DroppedBall{45.0 * millimetre};

using DrawnLine = std::vector<Svg::Point>;

/// The polylines of that dash ("" for solid ones), in order.
std::vector<DrawnLine> lines_of(const std::string& svg, const std::string& dash) {
    std::vector<DrawnLine> lines;
    const std::regex polyline("<polyline points=\"([^\"]*)\"([^>]*)>");
    for (std::sregex_iterator at(svg.begin(), svg.end(), polyline), end; at != end; ++at) {
        const std::string look = (*at)[2], points = (*at)[1];
        const bool dashed = look.find("dasharray") != std::string::npos;
        if (dash.empty() ? dashed : look.find("\"" + dash + "\"") == std::string::npos) continue;
        DrawnLine line;
        const std::regex point("([-0-9.]+),([-0-9.]+)");
        for (std::sregex_iterator p(points.begin(), points.end(), point); p != end; ++p)
            line.emplace_back(std::stod((*p)[1]), std::stod((*p)[2]));
        lines.push_back(line);
    }
    return lines;
}

std::string fmt_tenth(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f", value);
    return text;
}

std::pair<double, double> span_along(const DrawnLine& line) {
    const auto [low, high] = std::minmax_element(line.begin(), line.end());
    return {low->first, high->first};
}

bool has(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

int times_in(const std::string& text, const std::string& words) {
    int times = 0;
    for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++times;
    return times;
}

/// No words run off either edge; letters of 14 pixels' type are about half as wide as high, at the least.
void check_words_inside(const std::string& svg, double across) {
    const std::regex words(
        "<text x=\"([-0-9.]+)\" y=\"[^\"]*\" font-size=\"([0-9.]+)\" text-anchor=\"([a-z]+)\"[^>]*>([^<]*)<");
    for (std::sregex_iterator at(svg.begin(), svg.end(), words), end; at != end; ++at) {
        const double x = std::stod((*at)[1]),
                     width = 0.52 * std::stod((*at)[2]) * static_cast<double>((*at)[4].length());
        const std::string anchor = (*at)[3];
        const double from = anchor == "start" ? x : anchor == "end" ? x - width : x - width / 2;
        INFO((*at)[4]);
        CHECK(from >= 0);
        CHECK(from + width <= across);
    }
}

}  // namespace

TEST_CASE("in a tow the fall leads to where the feed lies: its lines end at the ends of the patch") {
    for (const double tow : {0.0, 2.0, 10.0, 30.0, -10.0}) {
        for (const DropForm& form : {a_cup, a_ball}) {
            const DropAnswer answer = drawn_drop(form, tow, form.index() == 0 ? "soft" : "firm");
            const std::string svg = drop_plot(answer);
            INFO(tow << " cm/s, " << answer.form);
            const DrawnLine fall = lines_of(svg, "6 4").at(0);
            const auto [from, to] = span_along(lines_of(svg, "").at(1));  // after the curve: nine tenths from above
            if (answer.breaks == Breaks::bottom) {
                CHECK(fall.back().first >= from - 1);
                CHECK(fall.back().first <= to + 1);
                continue;
            }
            CHECK(has(svg, "x2=\"" + fmt_tenth(from) + "\""));
            CHECK(has(svg, "x2=\"" + fmt_tenth(to) + "\""));
            if (tow > 5) CHECK(fall.back().first > fall.front().first + 2);
            if (tow < -5) CHECK(fall.back().first < fall.front().first - 2);
        }
    }
}

TEST_CASE("the picture of a drop tells the tow only where there is one, and the length beside the width") {
    const std::string still = drop_plot(drawn_drop(a_cup, 0)), flowing = drop_plot(drawn_drop(a_cup, 10));
    CHECK(has(still, "no tow"));
    CHECK_FALSE(has(still, "tow to the"));
    CHECK(has(still, " across"));
    CHECK(has(flowing, "top tow to the right"));
    CHECK(has(flowing, " long, "));
    CHECK(has(drop_plot(drawn_drop(a_cup, -10)), "top tow to the left"));
    for (const std::string& svg : {still, flowing}) {
        CHECK_FALSE(has(svg, "to scale<"));  // the heap's height is not
        CHECK(has(svg, "much higher than it is"));
    }
}

TEST_CASE("all that is compared is drawn, to one scale, and its words stay on the picture") {
    std::vector<DropAnswer> answers;
    for (const char* feel : {"crumbly", "firm", "soft", "slop"}) answers.push_back(drawn_drop(a_cup, 10, feel));
    for (const PictureWidth width : {PictureWidth::page, PictureWidth::phone}) {
        const std::string svg = drop_plot(answers, width);
        CHECK(times_in(svg, "from above, the same scale") == 4);
        CHECK(times_in(svg, ">1 m<") + times_in(svg, ">2 m<") + times_in(svg, ">5 m<") == 4);
        check_words_inside(svg, width == PictureWidth::page ? 760 : 340);
        for (const DropAnswer& answer : answers) check_words_inside(drop_plot(answer, width), 760);
    }
    const std::string svg = drop_plot(answers);
    for (const DropAnswer& answer : answers) CHECK(has(svg, answer.feel + ": a level cup of 250 ml</text>"));
}

TEST_CASE("a drop's words send nobody further past a patch than it reaches, and know which way the tow runs") {
    for (const double tow : {0.0, 2.0, 10.0}) {
        for (const DropForm& form : {a_cup, a_ball, DropForm(DroppedBall{30.0 * millimetre})}) {
            const DropAnswer answer = drawn_drop(form, tow, form.index() == 0 ? "soft" : "firm");
            CHECK(answer.start_beyond <= answer.length.most * (1 + 1e-12));
            const Length reach = std::min(0.5 * answer.length.most, answer.length.half);  // of a trail, its thick end
            CHECK(answer.start_beyond > reach);
            CHECK(answer.start_beyond <= reach + half_section);
        }
    }
    const std::string right = drop_told(drawn_drop(a_ball, 30, "firm")).text(),
                      left = drop_told(drawn_drop(a_ball, -30, "firm")).text();
    CHECK(has(right, "down the top"));
    CHECK(right == left);
}
