#pragma once

#include <cstdint>
#include <string>
#include <utility>

#include "quantities/amount_range.h"
#include "quantities/fault.h"
#include "quantities/mass_or_volume.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "questions/arguments.h"

namespace baitwright {

/// Reads the flag's value where it is given; what is wrong with it names the flag.
template <class Read>
void read_flag(const Arguments& arguments, const std::string& flag, Read&& read) {
    if (const auto text = arguments.value(flag)) flag_value(flag, [&] { read(*text); });
}

/// "400 g" or "2 pt".
MassOrVolume read_amount(const std::string& text);

/// "8 degC", "46 F"; a bare number is degC, as the water's thermometer shows it, but where a person's usual units are
/// imperial, who may mean degF: InputError "no-unit". The range is not looked at.
Temperature read_temperature(const Arguments& arguments, const std::string& text);

/// "5", as people say hours, or with a unit: "90min". The range is not looked at.
Time read_hours(const std::string& text);

/// Where in the text the word `between` (" of ", " in ") stands behind an amount: at "15ml" of "15ml in 2pt of ...",
/// not inside "quarter of a pint". Where it stands first, if behind none; npos where it does not stand at all.
std::size_t behind_amount(const std::string& text, const std::string& between, std::size_t from = 0);

/// "25 kg": a batch of dry mix, from 1 g to 10 t.
Mass read_batch(const std::string& text);

/// The currency that the person always uses; null where they told none. Throws UsageError "unknown-currency".
const Currency* usual_currency(const Arguments& arguments);

/// "£3.40"; a bare "3.40" is of the currency that the person always uses.
Money read_money(const std::string& text, const Arguments& arguments);

/// A whole number from 1 to 1000; `example` is the hint where it is none.
int read_count(const std::string& text, const char* example);

/// A whole number from 0 to 9e15.
std::uint64_t read_seed(const std::string& text);

/// The part before the last '=' and the part behind it: "brown crumb=400g"; InputError where there is none. `what` it
/// does not say, and an `example` of how it would.
std::pair<std::string, std::string> parted_at_equals(const std::string& text, const char* what, const char* example);

}  // namespace baitwright
