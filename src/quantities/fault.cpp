#include "quantities/fault.h"

#include <algorithm>

namespace baitwright {

namespace {

Fault how_many_more(std::size_t more, std::string file) {
    Fault last{"more-faults",
               more == 1 ? "1 more thing is wrong" : std::to_string(more) + " more things are wrong",
               "mend the first " + std::to_string(most_faults_told) + ", then look again",
               {},
               0,
               0,
               std::move(file)};
    last.more = more;
    return last;
}

}  // namespace

std::vector<Fault> first_faults(std::vector<Fault> faults, std::size_t untold) {
    std::vector<Fault> first;
    std::string file;
    for (Fault& fault : faults) {
        if (fault.more == 0 && first.size() < most_faults_told) {
            first.push_back(std::move(fault));
            continue;
        }
        untold += std::max<std::size_t>(fault.more, 1);
        file = std::move(fault.file);
    }
    if (untold > 0) first.push_back(how_many_more(untold, std::move(file)));
    return first;
}

}  // namespace baitwright
