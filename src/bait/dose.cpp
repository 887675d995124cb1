#include "bait/dose.h"

#include <array>
#include <utility>

#include "quantities/amount_range.h"
#include "quantities/fault.h"
#include "quantities/quantity_text.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr std::array<std::pair<std::string_view, DoseBasis>, 4> bases{
    {{"per kg dry", DoseBasis::per_kg_dry},
     {"per kg wet", DoseBasis::per_kg_wet},
     {"per l water", DoseBasis::per_litre_water},
     {"per pt pellets", DoseBasis::per_pint_pellets}}};
constexpr std::string_view usage =
    R"(write it as in "25 ml per kg dry", "5 g per kg wet", "10 ml per l water", "15 ml per pt pellets" or "2 %")";

std::variant<Mass, Volume> parse_each(std::string_view text) {
    try {
        return parse<Mass>(text);
    } catch (const InputError& as_mass) {
        if (as_mass.faults().front().code != "wrong-dimension") throw;
        return parse<Volume>(text);
    }
}

double si_of(const std::variant<Mass, Volume>& amount) {
    return std::visit([](auto quantity) { return quantity.si(); }, amount);
}

}  // namespace

DoseRate parse_dose_rate(std::string_view text) {
    const std::string folded = folded_name(text);
    const auto per = folded.find(" per ");
    DoseRate rate;
    if (per == std::string::npos) {
        if (folded.find('%') == std::string::npos && folded.find("g/g") == std::string::npos)
            throw InputError("no-basis", "'" + std::string(text) + "' does not say what it is dosed by",
                             std::string(usage));
        rate = {DoseBasis::share_of_dry, parse<Ratio>(folded) * (1.0 * kilogram)};
    } else {
        const std::string basis = folded.substr(per + 1);
        bool found = false;
        for (const auto& [words, meaning] : bases)
            if (basis == words) {
                rate.basis = meaning;
                found = true;
            }
        if (!found) throw InputError("unknown-basis", "'" + basis + "' is not a basis for a dose", std::string(usage));
        rate.each = parse_each(std::string_view(folded).substr(0, per));
    }
    const bool measured = std::visit([](auto amount) { return lies_in_range(amount); }, rate.each);
    if (si_of(rate.each) > 0 && !measured)
        throw InputError("out-of-range",
                         "a dose must be " + range_text<Mass>() + ", or " + range_text<Volume>() + ", not '" +
                             std::string(text) + "'",
                         std::string(usage));
    if (!measured)
        throw InputError("out-of-range", "a dose must be above zero, not '" + std::string(text) + "'",
                         std::string(usage));
    return rate;
}

std::string dose_rate_text(const DoseRate& rate) {
    if (rate.basis == DoseBasis::share_of_dry) return exact_text(Ratio(std::get<Mass>(rate.each).si()), percent, "%");
    std::string text = std::holds_alternative<Mass>(rate.each)
                           ? exact_text(std::get<Mass>(rate.each), gram, "g")
                           : exact_text(std::get<Volume>(rate.each), millilitre, "ml");
    text += ' ';
    for (const auto& [words, meaning] : bases)
        if (meaning == rate.basis) text += words;
    return text;
}

}  // namespace baitwright
