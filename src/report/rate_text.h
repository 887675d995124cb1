#pragma once

#include <string>

#include "quantities/money.h"

namespace baitwright {

/// A rate of money, which is no whole number of pence: "4.2p", "£1.57", "0.042 EUR". Three digits at most.
std::string shown_rate(double minor, const Currency& currency);

}  // namespace baitwright
