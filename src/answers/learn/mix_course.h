#pragma once

#include <vector>

#include "answers/learn/learn_answer.h"
#include "answers/learn/learn_request.h"
#include "answers/learn/water_doubts.h"

namespace baitwright {

/// The last day of a while, and where its observations end.
struct EndOfDay {
    Date on;
    std::size_t end;
};

/// How what is known of the water of a mix came about, against the library's, with the hand of the day; its bags the
/// latest ones throughout. A fit for each of the days.
LearntCourse mix_course(const WaterTaught& taught, const LearnRequest& request, const MixOfLog& mix,
                        const std::vector<EndOfDay>& days, const std::vector<WaterFit>& fits);

}  // namespace baitwright
