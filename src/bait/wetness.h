#pragma once

#include "quantities/quantity.h"

/// Our scale of wetness h: 0 as bought, 1 where a squeezed handful just holds (A), 2 where an up-ended pot will not
/// stand (B), linear between and beyond. The two marks play the parts of the plastic and liquid limits of soil
/// (ISO 17892-12), and h that of the consistency index turned round: an analogy, not that test.
/// **Valid for**: B > A >= 0. **Test**: `tests/bait/wetness_test.cpp`, rows CONSISTENCY_INDEX.
namespace baitwright {

/// Added water per gram as bought at the two marks, of an ingredient or of a mix.
struct WaterMarks {
    Ratio absorption;  ///< A
    Ratio slump;       ///< B
    friend bool operator==(const WaterMarks&, const WaterMarks&) = default;
};

/// Above this our scale says nothing more than "soup".
inline constexpr double wettest = 3.0;

/// w(h) = h A up to 1, then A + (h - 1)(B - A).
Ratio added_water_ratio(const WaterMarks& marks, Ratio wetness);

/// The inverse, not capped: w/A up to A, then 1 + (w - A)/(B - A). For A = 0 and w = 0 it is 1: it already just holds.
Ratio wetness_at(const WaterMarks& marks, Ratio added_water);

/// A mark stated for moisture `stated`, for a bag that is at `actual`.
WaterMarks marks_at_moisture(const WaterMarks& marks, Ratio stated, Ratio actual);

}  // namespace baitwright
