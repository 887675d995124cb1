#include "answers/learn/learn_from_log.h"

#include <cmath>

#include "answers/learn/learn_looks.h"
#include "answers/learn/learn_pellets.h"
#include "answers/learn/learn_water.h"
#include "answers/learn/unlearnt_shelf.h"
#include "answers/learn/water_courses.h"
#include "answers/learn/water_doubts.h"
#include "quantities/sort_stably.h"

namespace baitwright {

LearnAnswer learn_from_log(const Shelf& shelf, const LearnRequest& request) {
    LearnAnswer answer;
    const WaterTaught water = water_taught(shelf, request);
    answer.warnings = water.log.warnings;
    if (water.log.has_mixes) {
        tell_water(water, request, answer);
        const std::vector<MixOfLog> mixes = mixes_of(water, request);
        answer.mixes = mix_doubts(water, mixes);
        answer.next = next_test(water, mixes);
        answer.courses = water_courses(water, request);
    }
    const UnlearntShelf library(shelf);
    learn_pellets(library, request, answer);
    learn_looks(library, request, answer);
    sort_stably(answer.set_aside.begin(), answer.set_aside.end(),
                [](const SetAside& a, const SetAside& b) { return std::abs(a.sigmas) > std::abs(b.sigmas); });
    return answer;
}

}  // namespace baitwright
