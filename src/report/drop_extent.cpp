#include "report/drop_extent.h"

#include <array>

#include "report/display.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

TowExtent around(const std::array<Length, 2>& drift, Length width) {
    return {drift[0] - 0.5 * width, drift[1] + 0.5 * width};
}

}  // namespace

bool is_drawn_out(const DropAnswer& answer) {
    return answer.length.most.si() > 1.05 * answer.width.most.si();
}

LengthUnit lengths_unit(const DropAnswer& answer) {
    std::vector<Length> lengths{answer.width.most, answer.width.half, answer.width_range.low, answer.width_range.high};
    if (is_drawn_out(answer)) lengths.insert(lengths.end(), {answer.length.most, answer.length.half});
    if (answer.breaks == Breaks::midwater)
        lengths.insert(lengths.end(), {answer.breaks_depth, answer.breaks_depth_range.low,
                                       answer.breaks_depth_range.high, answer.half_worn.value_or(answer.breaks_depth)});
    return one_unit(lengths);
}

TowExtent half_along_tow(const DropAnswer& answer) {
    return around(answer.drift_of_half, answer.width.half);
}

TowExtent most_along_tow(const DropAnswer& answer) {
    return around(answer.drift_of_most, answer.width.most);
}

std::string form_text(const DropAnswer& answer) {
    const auto of = answer.form.rfind(" of ");
    if (!units_shown().pints || of == std::string::npos || !answer.form.ends_with(" ml")) return answer.form;
    return answer.form.substr(0, of) + " of " + shown_volume(answer.volume);
}

std::string patch_measures(const DropAnswer& answer, Length length, Length width) {
    if (!is_drawn_out(answer)) return shown_length(width) + " across";
    const LengthUnit unit = one_unit({length, width});
    return shown_length(length, unit) + " long, " + shown_length(width, unit) + " wide";
}

}  // namespace baitwright
