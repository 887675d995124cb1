#include "report/pump_words.h"

#include <fmt/format.h>

namespace baitwright {

std::string pump_words(const PlannedSoak& soak) {
    const std::string strokes = fmt::format("{} stroke{}", soak.strokes, soak.strokes == 1 ? "" : "s");
    return soak.lots > 1 ? fmt::format("{} lots, {} each", soak.lots, strokes) : strokes + " of the pump";
}

}  // namespace baitwright
