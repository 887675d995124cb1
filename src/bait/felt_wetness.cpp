#include "bait/felt_wetness.h"

#include <algorithm>

#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr double usual_band = 0.25;

}  // namespace

Ratio reading_spread(const std::vector<Feel>& feels, const Feel& feel) {
    double from = 0, own = usual_band, widest = 0;
    bool at_an_end = true;
    for (std::size_t i = 0; i < feels.size(); ++i) {
        const double band = feels[i].below - from;
        const bool inner = i > 0 && i + 1 < feels.size();
        if (inner) widest = std::max(widest, band);
        if (folded_name(feels[i].name) == folded_name(feel.name)) {
            own = band;
            at_an_end = !inner;
        }
        from = feels[i].below;
    }
    if (at_an_end) own = std::min(own, widest > 0 ? widest : usual_band);
    return own / 3;
}

}  // namespace baitwright
