#include "answers/learn/learn_from_log.h"

#include "answers/learn/learn_water.h"

namespace baitwright {

LearnAnswer learn_from_log(const Shelf& shelf, const LearnRequest& request) {
    LearnAnswer answer;
    const WaterTaught water = water_taught(shelf, request);
    answer.warnings = water.log.warnings;
    if (water.log.has_mixes) tell_water(water, request, answer);
    return answer;
}

}  // namespace baitwright
