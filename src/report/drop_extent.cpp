#include "report/drop_extent.h"

#include <utility>
#include <vector>

#include "answers/drop/drop_sketch.h"
#include "quantities/units.h"
#include "report/display.h"

namespace baitwright {

namespace {

bool is_drawn_out(const DropAnswer& answer) {
    return answer.length.most.si() > 1.05 * answer.width.most.si();
}

}  // namespace

TowExtent along_tow(const DropAnswer& answer, double share, Length width) {
    std::vector<std::pair<double, double>> drifts;
    for (const DropClass& c : answer.classes)
        if (c.sinks) drifts.emplace_back(c.drift.si(), double(c.share));
    const auto at = [&](double q) { return point_of(drifts, q) * metre; };
    return {at(0.5 - share / 2) - 0.5 * width, at(0.5 + share / 2) + 0.5 * width};
}

std::string patch_measures(const DropAnswer& answer, Length length, Length width) {
    if (!is_drawn_out(answer)) return shown_length(width) + " across";
    return shown_length(length) + " long, " + shown_length(width) + " wide";
}

}  // namespace baitwright
