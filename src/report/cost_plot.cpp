#include "report/cost_plot.h"

#include <algorithm>
#include <cmath>

#include "report/cost_report.h"
#include "report/display.h"
#include "report/svg.h"

namespace baitwright {

namespace {

constexpr double chart_across = 860, chart_left = 30, chart_right = 720, chart_top = 84, chart_block = 88,
                 chart_bar = 24;
constexpr int dark = 110, light = 250, faint = 200;

/// Maps minor units to places across the picture.
struct MoneyScale {
    double most, step;
    [[nodiscard]] double at(double minor) const { return chart_left + (chart_right - chart_left) * minor / most; }
};

MoneyScale money_scale(double most) {
    const double step = std::max(1.0, round_step(std::max(most, 1.0), 5));
    return {step * std::max(1.0, std::ceil(most / step - 1e-9)), step};
}

double most_of(const std::vector<StrategyCost>& costs) {
    double most = 0;
    for (const StrategyCost& cost : costs) {
        most = std::max({most, static_cast<double>(cost.used_minor), static_cast<double>(cost.outlay_minor)});
        if (cost.used_range) most = std::max(most, cost.used_range->high);
    }
    return most;
}

std::string range_words(const StrategyCost& cost) {
    const std::string range = used_range_text(cost);
    return range.empty() ? range : ", 9 times in 10 from " + range;
}

std::string in_words(const StrategyCost& cost) {
    if (!cost.currency) return cost_name(cost) + ": no price is known.";
    return cost_name(cost) + (cost.complete() ? ": " : ": at least ") +
           shown_money(static_cast<double>(cost.used_minor), *cost.currency) + " used" + range_words(cost) + "; " +
           shown_money(static_cast<double>(cost.outlay_minor), *cost.currency) + " to pay" +
           (cost.complete() ? "." : "; " + not_in_sum_text(cost) + ".");
}

std::string description(const std::vector<StrategyCost>& costs) {
    std::string words;
    for (const StrategyCost& cost : costs) words += (words.empty() ? "" : " ") + in_words(cost);
    return words;
}

void draw_axis(Svg& svg, const MoneyScale& scale, double bottom, const Currency& currency) {
    for (int i = 0; i * scale.step <= scale.most * (1 + 1e-9); ++i) {
        const double x = scale.at(i * scale.step);
        svg.line({x, chart_top - 16}, {x, bottom}, {faint, 1});
        svg.text({x, bottom + 20}, shown_money(i * scale.step, currency), 14, Svg::Anchor::middle);
    }
}

/// From low to high, with a light rim so that it shows on the bar and off it.
void draw_range(Svg& svg, const Range<double>& range, const MoneyScale& scale, double y) {
    const double low = scale.at(range.low), high = scale.at(range.high);
    for (const Svg::Pen pen : {Svg::Pen{255, 5}, Svg::Pen{0, 2}}) {
        svg.line({low, y}, {high, y}, pen);
        svg.line({low, y - 6}, {low, y + 6}, pen);
        svg.line({high, y - 6}, {high, y + 6}, pen);
    }
}

void draw_bars(Svg& svg, const StrategyCost& cost, const MoneyScale& scale, double y) {
    svg.text({chart_left, y}, cost_name(cost) + (cost.complete() ? "" : ", at least: " + not_in_sum_text(cost)), 15,
             Svg::Anchor::start, true);
    if (!cost.currency) return svg.text({chart_left, y + 24}, "no price is known");
    const auto used = static_cast<double>(cost.used_minor), outlay = static_cast<double>(cost.outlay_minor);
    const double used_end = cost.used_range ? std::max(used, cost.used_range->high) : used;
    svg.rectangle({chart_left, y + 8}, scale.at(used) - chart_left, chart_bar, dark);
    if (cost.used_range && cost.complete()) draw_range(svg, *cost.used_range, scale, y + 8 + chart_bar / 2);
    svg.text({scale.at(used_end) + 10, y + 25}, shown_money(used, *cost.currency) + " used");
    svg.rectangle({chart_left, y + 12 + chart_bar}, scale.at(outlay) - chart_left, chart_bar, light);
    svg.text({scale.at(outlay) + 10, y + 29 + chart_bar}, shown_money(outlay, *cost.currency) + " to pay");
}

}  // namespace

std::string cost_plot(const std::vector<StrategyCost>& costs) {
    const MoneyScale scale = money_scale(most_of(costs));
    const double bottom = chart_top + chart_block * static_cast<double>(costs.size()) - 14;
    Svg svg(chart_across, bottom + 36, "What a session costs", description(costs));
    svg.text({chart_left, 30}, "What a session costs", 18, Svg::Anchor::start, true);
    svg.text({chart_left, 52},
             "dark: the share of the packs that is used, with its 5 to 95 % range; light: whole packs to pay for");
    for (const StrategyCost& cost : costs)
        if (cost.currency) {
            draw_axis(svg, scale, bottom, *cost.currency);
            break;
        }
    for (std::size_t i = 0; i < costs.size(); ++i)
        draw_bars(svg, costs[i], scale, chart_top + chart_block * static_cast<double>(i));
    return svg.document();
}

}  // namespace baitwright
