#include "report/pump_words.h"

#include <fmt/format.h>

namespace baitwright {

std::string stroke_count(int strokes) {
    return fmt::format("{} stroke{}", strokes, strokes == 1 ? "" : "s");
}

std::string pump_words(const PlannedSoak& soak) {
    const std::string strokes = stroke_count(soak.strokes);
    return soak.lots > 1 ? fmt::format("{} lots, {} each", soak.lots, strokes) : strokes + " of the pump";
}

}  // namespace baitwright
