#include "quantities/unit_system.h"

#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"

namespace baitwright {

UnitSystem parse_unit_system(std::string_view word) {
    const std::string folded = folded_name(word);
    if (folded == "both") return UnitSystem::both;
    if (folded == "metric") return UnitSystem::metric;
    if (folded == "imperial") return UnitSystem::imperial;
    throw InputError("unknown-units", in_quotes(word) + " is no system of units known here",
                     "say metric, imperial or both");
}

}  // namespace baitwright
