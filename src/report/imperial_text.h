#pragma once

#include <string>

#include "quantities/quantity.h"
#include "quantities/temperature.h"

/// Amounts in imperial units, as fine as a kitchen scale or a jug in them can show. What is there at all is never told
/// as nothing. **Valid for**: amounts from 0.
namespace baitwright {

/// To 0.1 oz below a pound, then to the ounce: "14.1 oz", "2 lb 3 oz"; two digits below 0.1 oz, "0.011 oz".
std::string ounces_text(Mass mass);
/// "14.1 to 15.2 oz", "14.1 oz to 1 lb 3 oz".
std::string ounces_text(Mass low, Mass high);
/// What is to be measured: to 0.1 fl oz below 5, to half a one below a pint, then to the fluid ounce; three digits from
/// 10 pt: "2.5 fl oz", "1 pt 6 fl oz", "17.6 pt".
std::string measured_pints_text(Volume volume);
/// The same: "10 to 15.5 fl oz", "15.5 fl oz to 1 pt 13 fl oz".
std::string measured_pints_text(Volume low, Volume high);
/// An estimate, two digits: "4.6 pt", "5 pt"; below half a pint "8.8 fl oz".
std::string pints_text(Volume volume);
std::string pints_text(Volume low, Volume high);
/// To the inch: "8 ft", "12 ft 3 in", "11 in"; one digit below an inch.
std::string feet_text(Length length);
/// An estimate: the same, and from 10 ft to the foot: "1 ft 10 in", "12 ft".
std::string estimated_feet_text(Length length);
/// "4 to 9 in", "9 in to 1 ft 10 in", "12 to 15 ft".
std::string estimated_feet_text(Length low, Length high);
/// Whole degrees: "46 degF".
std::string fahrenheit_text(Temperature temperature);

}  // namespace baitwright
