#pragma once

#include <string>

#include "bait/amount.h"
#include "cli/command.h"
#include "quantities/fault.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"

namespace baitwright {

/// Reads the flag's value where it is given; what is wrong with it names the flag.
template <class Read>
void read_flag(const Arguments& arguments, const std::string& flag, Read&& read) {
    if (const auto text = arguments.value(flag)) flag_value(flag, [&] { read(*text); });
}

/// Refuses what is not above zero.
template <class Q>
Q above_zero(Q quantity) {
    if (!(quantity.si() > 0)) throw InputError("out-of-range", "the amount must be above zero");
    return quantity;
}

/// "400 g" or "2 pt", above zero.
MassOrVolume read_amount(const std::string& text);

}  // namespace baitwright
