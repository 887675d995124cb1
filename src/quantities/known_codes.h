#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "quantities/unit_table.h"

/// What a person may choose from where a code or a unit is typed.
namespace baitwright {

/// The ISO 4217 codes of the currencies that are known here (`money.h`), those used most first.
std::vector<std::string> currency_codes();

/// "g", "kg", "oz", "lb": the units of that measure that messages offer.
std::vector<std::string_view> units_offered(Measure measure);

}  // namespace baitwright
