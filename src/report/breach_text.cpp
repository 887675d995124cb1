#include "report/breach_text.h"

#include "quantities/units.h"
#include "report/display.h"

namespace baitwright {

namespace {

bool is_said_in(const PlanBreach& breach, const char* unit) {
    return breach.rule.find(std::string(" ") + unit + " of ") != std::string::npos;
}

std::string amount_text(const PlanBreach& breach, const std::variant<Mass, Volume>& amount) {
    if (const Mass* mass = std::get_if<Mass>(&amount))
        return is_said_in(breach, "lb") ? shown_ounces(*mass) : shown_mass(scale_mass(*mass));
    const Volume volume = std::get<Volume>(amount);
    return is_said_in(breach, "pt") ? shown_pints(volume) : shown_volume(volume);
}

}  // namespace

std::string planned_against(const PlanBreach& breach) {
    const std::string planned = amount_text(breach, breach.planned);
    return breach.limit && amount_text(breach, *breach.limit) == planned ? "just over that" : planned;
}

}  // namespace baitwright
