#include "report/learn_plot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/date.h"
#include "report/learn_words.h"
#include "report/svg.h"

namespace baitwright {

namespace {

constexpr double course_across = 860, course_left = 96, course_right = 830, course_top = 112, course_block = 250,
                 course_height = 170, library_wide = 70;
constexpr int course_faint = 200, course_mid = 150;

/// Logarithms of factors to the page: the library in the middle, as far up as down.
struct FactorScale {
    double most, top;
    [[nodiscard]] double y(double log_factor) const {
        const double kept = std::clamp(log_factor, -most, most);
        return top + course_height / 2 * (1 - kept / most);
    }
};

FactorScale factor_scale(const LearntCourse& course, double top) {
    double most = nine_in_ten * course.last.prior_sd + std::abs(course.last.prior_mean);
    for (const LearntStep& step : course.steps) most = std::max(most, std::abs(step.mean) + nine_in_ten * step.sd);
    return {std::clamp(1.25 * most, 0.05, 3.0), top};
}

/// Days to the page, right of the library's own range.
struct DayScale {
    Date first, last;
    [[nodiscard]] double x(Date day) const {
        const double from = course_left + library_wide + 24;
        const auto span = static_cast<double>(std::max<long>(1, (last - first).count()));
        return from + (course_right - 14 - from) * static_cast<double>((day - first).count()) / span;
    }
};

DayScale day_scale(const std::vector<LearntCourse>& courses) {
    DayScale scale{Date::max(), Date::min()};
    const auto take = [&](Date day) {
        scale.first = std::min(scale.first, day);
        scale.last = std::max(scale.last, day);
    };
    for (const LearntCourse& course : courses) {
        for (const LearntStep& step : course.steps) take(step.on);
        for (const LearntCourse::Seen& seen : course.seen) take(seen.on);
    }
    return scale;
}

std::string per_cent_sign(double per_cent) {
    return per_cent == 0 ? "as the library" : fmt::format("{:+.0f} %", per_cent);
}

void draw_levels(Svg& svg, const FactorScale& scale) {
    const double span = 100 * std::expm1(scale.most), step = round_step(span, 3);
    for (int i = -3; i <= 4; ++i) {
        const double per_cent = step * i;
        if (per_cent <= -95) continue;
        const double log_factor = std::log1p(per_cent / 100);
        if (std::abs(log_factor) > scale.most) continue;
        const double y = scale.y(log_factor);
        svg.line({course_left, y}, {course_right, y}, {i == 0 ? course_mid : course_faint, i == 0 ? 1.5 : 1});
        svg.text({course_left - 8, y + 5}, i == 0 ? "library" : per_cent_sign(per_cent), 14, Svg::Anchor::end);
    }
}

/// A range as a box with its middle.
void draw_box(Svg& svg, const FactorScale& scale, double x, double width, const LearntStep& step, int grey) {
    const double high = scale.y(step.mean + nine_in_ten * step.sd), low = scale.y(step.mean - nine_in_ten * step.sd);
    svg.rectangle({x, high}, width, std::max(1.0, low - high), grey);
    svg.line({x, scale.y(step.mean)}, {x + width, scale.y(step.mean)}, {0, 2});
}

void draw_seen(Svg& svg, const FactorScale& scale, double x, const LearntCourse::Seen& seen) {
    const double y = scale.y(seen.log_factor);
    if (seen.set_aside) {
        svg.line({x - 5, y - 5}, {x + 5, y + 5}, {0, 2});
        svg.line({x - 5, y + 5}, {x + 5, y - 5}, {0, 2});
        return;
    }
    svg.line({x, scale.y(seen.log_factor - seen.sd)}, {x, scale.y(seen.log_factor + seen.sd)}, {0, 1, "2 3"});
    svg.line({x - 5, y}, {x + 5, y}, {0, 2});
}

std::string course_title(const LearntCourse& course) {
    const std::string& name = course.last.name;
    switch (course.last.property) {
        case Learnt::Property::hand:
            return "your hand: how much water you put to the same feel";
        case Learnt::Property::water:
            return name + ": the water it takes";
        case Learnt::Property::gap:
            return name + ": water from just holding to slumping";
        case Learnt::Property::absorption:
            return name + ": water until it just holds";
        default:
            return name + ": " + key_of(course.last.property);
    }
}

void draw_course(Svg& svg, const LearntCourse& course, const DayScale& days, double top) {
    const FactorScale scale = factor_scale(course, top);
    svg.text({course_left, top - 14}, course_title(course), 15, Svg::Anchor::start, true);
    draw_levels(svg, scale);
    draw_box(svg, scale, course_left + 8, library_wide - 16, {{}, course.last.prior_mean, course.last.prior_sd}, 245);
    const double wide = std::clamp(300.0 / static_cast<double>(course.steps.size() + 1), 4.0, 22.0);
    for (const LearntStep& step : course.steps) draw_box(svg, scale, days.x(step.on) - wide / 2, wide, step, 225);
    for (const LearntCourse::Seen& seen : course.seen)
        if (seen.set_aside || seen.sd < course.last.prior_sd) draw_seen(svg, scale, days.x(seen.on), seen);
    svg.text({course_left + library_wide / 2, top + course_height + 20}, "before", 14, Svg::Anchor::middle);
    if (days.first == days.last)
        return svg.text({days.x(days.first), top + course_height + 20}, date_text(days.first), 14, Svg::Anchor::start);
    svg.text({days.x(days.first) - 10, top + course_height + 20}, date_text(days.first), 14, Svg::Anchor::start);
    svg.text({days.x(days.last) + 12, top + course_height + 20}, date_text(days.last), 14, Svg::Anchor::end);
}

std::string course_words(const std::vector<LearntCourse>& courses) {
    std::string words;
    for (const LearntCourse& course : courses) {
        const std::string name = course.last.name.empty() ? "Your hand" : course.last.name;
        words +=
            (words.empty() ? "" : " ") + name + " " + told_of(course.last) + ", " + from_so_many(course.last) + ".";
    }
    return words.empty() ? "Nothing in the log to draw yet." : words;
}

}  // namespace

std::string learn_plot(const LearnAnswer& answer) {
    const std::vector<LearntCourse>& courses = answer.courses;
    Svg svg(course_across,
            course_top + course_block * static_cast<double>(std::max<std::size_t>(1, courses.size())) - 24,
            "What the log taught", course_words(courses));
    svg.text({30, 30}, "What the log taught, against the library", 18, Svg::Anchor::start, true);
    svg.text({30, 52},
             "boxes: where it lies 9 times in 10, by all that was logged up to that day; left, before any of it");
    svg.text({30, 72}, "ticks: what one mix alone says, and how closely, where it says something; a cross: set aside");
    if (courses.empty()) svg.text({30, course_top}, "Nothing in the log to draw yet.");
    const DayScale days = day_scale(courses);
    for (std::size_t i = 0; i < courses.size(); ++i)
        draw_course(svg, courses[i], days, course_top + course_block * static_cast<double>(i));
    return svg.document();
}

}  // namespace baitwright
