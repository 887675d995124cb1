#pragma once

#include "quantities/date.h"
#include "quantities/money.h"

namespace baitwright {

/// A question to `convert_prices`.
struct ConvertRequest {
    const Currency* to = nullptr;    ///< null: all prices are taken out of use
    const Currency* from = nullptr;  ///< null: the only other one
    double rate = 1;                 ///< units of `to` that a unit of the other buys; above 0, at most 1e6
    Date on;                         ///< the day of the new prices
    enum class Doing { done, only_shown };
    Doing doing = Doing::done;
};

}  // namespace baitwright
