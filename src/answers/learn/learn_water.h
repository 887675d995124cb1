#pragma once

#include <string>
#include <vector>

#include "answers/learn/far_observations.h"
#include "answers/learn/learn_answer.h"
#include "answers/learn/water_log.h"

namespace baitwright {

/// What the log taught of water, before it is told.
struct WaterTaught {
    WaterLog log;
    BorneOut out;
    WaterCovariance covariance;
    std::vector<std::size_t> ingredients;  ///< that were mixed and take water, and are told of
    struct Times {
        int absorption = 0, gap = 0;  ///< mixes that were heeded
    };
    std::vector<Times> times;  ///< of each of these
};

WaterTaught water_taught(const Shelf& shelf, const LearnRequest& request);

/// For the store: the hand, the error of defaults, and the latest bag of each ingredient that was mixed.
LearntWater learnt_water_of(const WaterTaught& taught);

/// A mark of a bag, or the hand, as it is told.
Learnt told_hand(const WaterTaught& taught);
Learnt told_mark(const WaterTaught& taught, std::size_t ingredient, WaterSeen::Term::Mark mark);

/// The hand, the error of defaults and all bags; what was set aside; how many were heeded.
void tell_water(const WaterTaught& taught, const LearnRequest& request, LearnAnswer& answer);

}  // namespace baitwright
