#include "bait/wetness.h"

#include <limits>

#include "physics/moisture.h"

namespace baitwright {

Ratio added_water_ratio(const WaterMarks& marks, Ratio wetness) {
    if (wetness <= 1) return wetness * marks.absorption;
    return marks.absorption + (wetness - 1) * (marks.slump - marks.absorption);
}

Ratio wetness_at(const WaterMarks& marks, Ratio added_water) {
    if (added_water < marks.absorption) return added_water / marks.absorption;
    const double gap = marks.slump - marks.absorption;
    if (gap > 0) return 1 + (added_water - marks.absorption) / gap;
    return added_water > marks.absorption ? std::numeric_limits<double>::infinity() : 1.0;
}

WaterMarks marks_at_moisture(const WaterMarks& marks, Ratio stated, Ratio actual) {
    return {added_water_at_moisture(marks.absorption, stated, actual),
            added_water_at_moisture(marks.slump, stated, actual)};
}

}  // namespace baitwright
