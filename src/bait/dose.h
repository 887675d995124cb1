#pragma once

#include <string>
#include <string_view>
#include <variant>

#include "quantities/quantity.h"

namespace baitwright {

/// What an additive is dosed by.
enum class DoseBasis { per_kg_dry, per_kg_wet, per_litre_water, per_pint_pellets, share_of_dry };

/// So much of an additive, by mass or by volume, for each one of the basis ("25 ml per kg dry", "2 %").
struct DoseRate {
    DoseBasis basis = DoseBasis::per_kg_dry;
    std::variant<Mass, Volume> each;  ///< for `share_of_dry`: the mass for each kilogram dry
};

/// Reads "25 ml per kg dry", "5 g per kg wet", "10 ml per l water", "15 ml per pt pellets", "2 %"; throws InputError.
DoseRate parse_dose_rate(std::string_view text);
std::string dose_rate_text(const DoseRate& rate);

}  // namespace baitwright
