#include "report/cost_plot.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/cost_report.h"

namespace baitwright {

namespace {

constexpr double width = 960, left = 40, right = 830, top = 84, block = 92, bar = 26;

std::string escaped(std::string_view text) {
    std::string result;
    for (const char c : text) {
        switch (c) {
            case '&':
                result += "&amp;";
                break;
            case '<':
                result += "&lt;";
                break;
            case '>':
                result += "&gt;";
                break;
            case '"':
                result += "&quot;";
                break;
            default:
                result += c;
        }
    }
    return result;
}

/// Maps minor units to places across the picture.
struct Scale {
    double most = 1, step = 1;
    [[nodiscard]] double at(double minor) const { return left + (right - left) * minor / most; }
};

/// A step of 1, 2 or 5 times a power of ten, five or so of them to the end.
Scale scale_for(double most) {
    const double rough = std::max(most, 1.0) / 5;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    double step = 10 * power;
    for (const double nice : {1.0, 2.0, 5.0})
        if (nice * power >= rough && nice * power < step) step = nice * power;
    step = std::max(step, 1.0);
    return {step * std::max(1.0, std::ceil(most / step)), step};
}

double most_of(const std::vector<StrategyCost>& costs) {
    double most = 0;
    for (const StrategyCost& cost : costs) {
        most = std::max({most, static_cast<double>(cost.used_minor), static_cast<double>(cost.outlay_minor)});
        if (cost.currency && cost.used_range) most = std::max(most, cost.used_range->high);
    }
    return most;
}

std::string in_words(const StrategyCost& cost) {
    if (!cost.currency) return cost_name(cost) + ": no price is known.";
    std::string text =
        cost_name(cost) + ": " + shown_money(static_cast<double>(cost.used_minor), *cost.currency) + " used";
    if (cost.used_range)
        text += ", 9 times in 10 from " + shown_money(cost.used_range->low, *cost.currency) + " to " +
                shown_money(cost.used_range->high, *cost.currency);
    text += "; " + shown_money(static_cast<double>(cost.outlay_minor), *cost.currency) + " to pay";
    return text + (cost.complete() ? "." : "; not everything has a price.");
}

std::string axis(const Scale& scale, double bottom, const Currency& currency) {
    std::string text;
    for (double minor = 0; minor <= scale.most * (1 + 1e-9); minor += scale.step) {
        const double x = scale.at(minor);
        text += fmt::format("<line x1=\"{0:.1f}\" y1=\"{1:.0f}\" x2=\"{0:.1f}\" y2=\"{2:.0f}\" stroke=\"#bbb\"/>\n", x,
                            top - 14, bottom);
        text += fmt::format("<text x=\"{:.1f}\" y=\"{:.0f}\" text-anchor=\"middle\">{}</text>\n", x, bottom + 20,
                            escaped(shown_money(minor, currency)));
    }
    return text;
}

std::string one_bar(double y, double x_end, std::string_view fill, const std::string& label) {
    return fmt::format(
        "<rect x=\"{0:.0f}\" y=\"{1:.1f}\" width=\"{2:.1f}\" height=\"{3:.0f}\" fill=\"{4}\" stroke=\"#000\"/>\n"
        "<text x=\"{5:.1f}\" y=\"{6:.1f}\">{7}</text>\n",
        left, y, x_end - left, bar, fill, x_end + 8, y + 18, escaped(label));
}

std::string whisker(double y, double low, double high) {
    return fmt::format(
        "<path d=\"M{0:.1f} {2:.1f} H{1:.1f} M{0:.1f} {3:.1f} v12 M{1:.1f} {3:.1f} v12\" fill=\"none\" "
        "stroke=\"#fff\" stroke-width=\"5\"/>\n"
        "<path d=\"M{0:.1f} {2:.1f} H{1:.1f} M{0:.1f} {3:.1f} v12 M{1:.1f} {3:.1f} v12\" fill=\"none\" "
        "stroke=\"#000\" stroke-width=\"2\"/>\n",
        low, high, y + bar / 2, y + bar / 2 - 6);
}

std::string bars(const StrategyCost& cost, const Scale& scale, double y) {
    std::string text = fmt::format("<text x=\"{:.0f}\" y=\"{:.0f}\" font-weight=\"bold\">{}</text>\n", left, y,
                                   escaped(cost_name(cost)));
    if (!cost.currency)
        return text + fmt::format("<text x=\"{:.0f}\" y=\"{:.0f}\">no price is known</text>\n", left, y + 24);
    const auto used = static_cast<double>(cost.used_minor), outlay = static_cast<double>(cost.outlay_minor);
    const double used_end = cost.used_range ? std::max(used, cost.used_range->high) : used;
    text += fmt::format(
        "<rect x=\"{:.0f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.0f}\" fill=\"#666\" stroke=\"#000\"/>\n", left,
        y + 8, scale.at(used) - left, bar);
    if (cost.used_range) text += whisker(y + 8, scale.at(cost.used_range->low), scale.at(cost.used_range->high));
    text += fmt::format("<text x=\"{:.1f}\" y=\"{:.1f}\">{} used</text>\n", scale.at(used_end) + 10, y + 26,
                        escaped(shown_money(used, *cost.currency)));
    return text +
           one_bar(y + 8 + bar + 4, scale.at(outlay), "url(#hatched)", shown_money(outlay, *cost.currency) + " to pay");
}

}  // namespace

std::string cost_plot_svg(const std::vector<StrategyCost>& costs) {
    const Currency* currency = nullptr;
    std::string words;
    for (const StrategyCost& cost : costs) {
        if (cost.currency) currency = cost.currency;
        words += (words.empty() ? "" : " ") + in_words(cost);
    }
    const Scale scale = scale_for(most_of(costs));
    const double bottom = top + block * static_cast<double>(costs.size()) - 14, height = bottom + 36;
    std::string svg = fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0:.0f} {1:.0f}\" width=\"{0:.0f}\" "
        "height=\"{1:.0f}\" "
        "role=\"img\" aria-labelledby=\"t d\" font-family=\"DejaVu Sans, Verdana, Arial, sans-serif\" font-size=\"15\" "
        "fill=\"#000\">\n<title id=\"t\">What a session costs</title>\n<desc id=\"d\">{2}</desc>\n",
        width, height, escaped(words));
    svg +=
        "<defs><pattern id=\"hatched\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">"
        "<rect width=\"8\" height=\"8\" fill=\"#fff\"/><path d=\"M-2 2 L2 -2 M0 8 L8 0 M6 10 L10 6\" stroke=\"#000\"/>"
        "</pattern></defs>\n";
    svg += fmt::format("<rect width=\"{:.0f}\" height=\"{:.0f}\" fill=\"#fff\"/>\n", width, height);
    svg +=
        "<text x=\"40\" y=\"30\" font-size=\"18\" font-weight=\"bold\">What a session costs</text>\n"
        "<text x=\"40\" y=\"52\">grey: the share of the packs that is used, with its 5 to 95 % range; hatched: whole "
        "packs "
        "to pay for</text>\n";
    if (currency) svg += axis(scale, bottom, *currency);
    for (std::size_t i = 0; i < costs.size(); ++i) svg += bars(costs[i], scale, top + block * static_cast<double>(i));
    return svg + "</svg>\n";
}

}  // namespace baitwright
