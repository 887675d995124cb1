#include "report/drop_plot.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <regex>

#include "answers/drop/drop_feed.h"
#include "answers/soaking.h"
#include "quantities/units.h"
#include "report/drop_report.h"
#include "report/shown_units.h"
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

/// The points of these elements, in order.
std::vector<DrawnLine> lines_of(const std::string& svg, const std::string& element) {
    std::vector<DrawnLine> lines;
    const std::regex shape("<" + element + " points=\"([^\"]*)\""), point("([-0-9.]+),([-0-9.]+)");
    for (std::sregex_iterator at(svg.begin(), svg.end(), shape), end; at != end; ++at) {
        const std::string points = (*at)[1];
        DrawnLine line;
        for (std::sregex_iterator p(points.begin(), points.end(), point); p != end; ++p)
            line.emplace_back(std::stod((*p)[1]), std::stod((*p)[2]));
        lines.push_back(line);
    }
    return lines;
}

std::pair<double, double> span_along(const DrawnLine& line) {
    const auto [low, high] = std::minmax_element(line.begin(), line.end());
    return {low->first, high->first};
}

/// Of what stands on the bed, the lowest points.
std::pair<double, double> span_on_bed(const DrawnLine& line) {
    double bed = 0;
    for (const Svg::Point& point : line) bed = std::max(bed, point.second);
    DrawnLine lowest;
    for (const Svg::Point& point : line)
        if (point.second > bed - 0.5) lowest.push_back(point);
    return span_along(lowest);
}

bool has(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

int times_in(const std::string& text, const std::string& words) {
    int times = 0;
    for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++times;
    return times;
}

struct DrawnWords {
    std::string words;
    double from, to, top, foot;
    [[nodiscard]] bool overlaps(const DrawnWords& other) const {
        return from < other.to && other.from < to && top < other.foot && other.top < foot;
    }
};

/// The words of a picture and the room that they take; letters of 14 pixels' type are about half as wide as high.
std::vector<DrawnWords> drawn_words_of(const std::string& svg) {
    const std::regex text(
        "<text x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" font-size=\"([0-9.]+)\" text-anchor=\"([a-z]+)\"[^>]*>([^<]*)<");
    std::vector<DrawnWords> all;
    for (std::sregex_iterator at(svg.begin(), svg.end(), text), end; at != end; ++at) {
        const double x = std::stod((*at)[1]), y = std::stod((*at)[2]), size = std::stod((*at)[3]),
                     width = 0.56 * size * static_cast<double>((*at)[5].length());
        const std::string anchor = (*at)[4];
        const double from = anchor == "start" ? x : anchor == "end" ? x - width : x - width / 2;
        all.push_back({(*at)[5], from, from + width, y - 0.8 * size, y + 0.25 * size});
    }
    return all;
}

void check_words(const std::string& svg, double across) {
    const std::vector<DrawnWords> all = drawn_words_of(svg);
    CHECK_FALSE(all.empty());
    for (std::size_t i = 0; i < all.size(); ++i) {
        INFO(all[i].words);
        CHECK(all[i].from >= 0);
        CHECK(all[i].to <= across);
        for (std::size_t j = 0; j < i; ++j) {
            INFO(all[j].words);
            CHECK_FALSE(all[i].overlaps(all[j]));
        }
    }
}

const DropForm all_forms[] = {a_cup, a_ball, DroppedFeeder{30.0 * millilitre}, DroppedLoose{100.0 * millilitre}};

}  // namespace

TEST_CASE("the cone leads from where it breaks to where the feed lies: it ends at the ends of the patch") {
    for (const double tow : {2.0, 10.0, 30.0, -10.0}) {
        for (const DropForm& form : all_forms) {
            const DropAnswer answer = drawn_drop(form, tow, form.index() == 1 ? "firm" : "soft");
            const std::string svg = drop_plot(answer);
            INFO(tow << " cm/s, " << answer.form);
            const std::vector<DrawnLine> filled = lines_of(svg, "polygon");  // most and half, from the side
            const DrawnLine fall = lines_of(svg, "polyline").at(0);
            const auto [from, to] = span_on_bed(filled.at(0));
            const auto [half_from, half_to] = span_on_bed(filled.at(1));
            CHECK(half_from >= from - 0.2);
            CHECK(half_to <= to + 0.2);
            if (has(svg, "from above")) {
                const auto [above_from, above_to] = span_along(filled.at(2));
                CHECK(above_from == Approx(from).margin(2.5));
                CHECK(above_to == Approx(to).margin(2.5));
            }
            if (answer.breaks == Breaks::bottom) {
                CHECK(fall.back().first >= from - 1);
                CHECK(fall.back().first <= to + 1);
                continue;
            }
            CHECK(fall.back().second == Approx(filled.at(0).front().second).margin(1));
            if (tow > 5 && answer.breaks == Breaks::midwater) CHECK(fall.back().first > fall.front().first + 2);
            if (tow < -5 && answer.breaks == Breaks::midwater) CHECK(fall.back().first < fall.front().first - 2);
        }
    }
}

TEST_CASE("the picture of a drop tells the tow only where there is one, and the length beside the width") {
    const std::string still = drop_plot(drawn_drop(a_cup, 0)), flowing = drop_plot(drawn_drop(a_cup, 10));
    CHECK_FALSE(has(still, "tow to the"));
    CHECK_FALSE(has(still, "from above"));  // it is round
    CHECK(has(still, " across"));
    CHECK(has(flowing, "top tow to the right"));
    CHECK(has(flowing, "from above"));
    CHECK(has(flowing, " long, "));
    CHECK(has(drop_plot(drawn_drop(a_cup, -10)), "top tow to the left"));
}

TEST_CASE("the scales of a picture are as long as they say") {
    const DropAnswer answer = drawn_drop(a_cup, 10);
    const std::string svg = drop_plot(answer);
    double surface = 0, one = 0, bed = 0;
    for (const DrawnWords& words : drawn_words_of(svg)) {
        if (words.to > 62) continue;  // beside the depths, not along the bed
        if (words.words == "0" && surface == 0) surface = words.top;
        if (words.words == "1 m" && one == 0) one = words.top;
        if (words.words == "2.5 m" && bed == 0) bed = words.top;
    }
    CHECK(bed - surface == Approx(2.5 * (one - surface)).margin(0.5));
}

TEST_CASE("all that is compared is drawn, to one scale, and its words stay on the picture") {
    std::vector<DropAnswer> answers;
    for (const char* feel : {"crumbly", "firm", "soft", "slop"}) answers.push_back(drawn_drop(a_cup, 10, feel));
    for (const PictureWidth width : {PictureWidth::page, PictureWidth::phone}) {
        const std::string svg = drop_plot(answers, width);
        CHECK(times_in(svg, ">half: ") == 4);
        CHECK(times_in(svg, ">2.5 m<") >= 4);
    }
    const std::string svg = drop_plot(answers);
    for (const DropAnswer& answer : answers) CHECK(has(svg, answer.feel + ": a level cup of 250 ml</text>"));
}

TEST_CASE("the words of a picture stay on it and clear of each other, in metres and in feet") {
    for (const bool feet : {false, true}) {
        ShownUnits units;
        units.feet = feet;
        const UnitsShownHere here(units);
        for (const PictureWidth width : {PictureWidth::page, PictureWidth::phone})
            for (const DropForm& form : all_forms)
                for (const double tow : {0.0, 2.0, 10.0, 60.0, -10.0})
                    for (const char* feel : {"crumbly", "firm", "soft", "slop"}) {
                        const DropAnswer answer = drawn_drop(form, tow, feel);
                        INFO(answer.form << ", " << feel << ", " << tow << " cm/s, " << (feet ? "feet" : "metres"));
                        check_words(drop_plot(answer, width), width == PictureWidth::page ? 760 : 340);
                    }
    }
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
