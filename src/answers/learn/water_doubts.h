#pragma once

#include <optional>
#include <vector>

#include "answers/learn/learn_water.h"

namespace baitwright {

/// A mix of the log, as its latest entry has it, made of the latest bags.
struct MixOfLog {
    const LoggedMix* last;
    int times = 0;
    std::vector<WaterSeen::Term> terms = {};
};
/// The most often logged first, then by name.
std::vector<MixOfLog> mixes_of(const WaterTaught& taught, const LearnRequest& request);

/// How far the water of each may be off, with the hand of the day: 1.645 sigma of its logarithm, to first order, and as
/// much more as the water is less than the wetting that it makes up. Before, by the library; now, by the log.
/// **Valid for**: doubts of up to a half.
std::vector<MixDoubtNow> mix_doubts(const WaterTaught& taught, const std::vector<MixOfLog>& mixes);

/// The test that would make the mean doubt of these mixes the least: a squeeze test or an up-ended pot of a bag in
/// them, good to 2 % beside the hand of its day, or one more logged mix. What it shows moves the covariance C to
/// C - C j j' C/(j' C j + s^2), whatever that is. **Valid for**: the 200 mixes logged most often. **Test**:
/// `tests/answers/next_test_test.cpp`, against learning anew.
std::optional<NextTest> next_test(const WaterTaught& taught, const std::vector<MixOfLog>& mixes);

}  // namespace baitwright
