#include "bait/learnt.h"

#include <map>

#include "quantities/suggestion.h"

namespace baitwright {

namespace {

void append_row(LearntWater& to, const LearntWater& from, std::size_t row) {
    const double* first = from.factor.data() + row * from.rank;
    to.factor.insert(to.factor.end(), first, first + from.rank);
}

}  // namespace

LearntWater part_of(const LearntWater& water, const std::vector<std::string>& bags) {
    LearntWater part{water.log_hand, water.log_memory, {}, water.rank, {}};
    if (!water.known()) return part;
    std::map<std::string, std::size_t> places;
    for (std::size_t i = 0; i < water.bags.size(); ++i) places.emplace(folded_name(water.bags[i].name), i);
    append_row(part, water, LearntWater::hand);
    append_row(part, water, LearntWater::memory);
    for (const std::string& name : bags) {
        const auto found = places.find(folded_name(name));
        if (found == places.end()) continue;
        part.bags.push_back(water.bags[found->second]);
        append_row(part, water, LearntWater::absorption(found->second));
        append_row(part, water, LearntWater::gap(found->second));
        places.erase(found);  // what is asked for twice is given once
    }
    return part;
}

}  // namespace baitwright
