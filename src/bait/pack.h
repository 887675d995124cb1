#pragma once

#include <optional>
#include <string>
#include <variant>

#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A pack as a shop sells it: its size, and what it cost there on a day ("2026-03-01"), if known.
struct Pack {
    std::variant<Mass, Volume> size;
    std::optional<Money> price;
    std::string on;    ///< ISO 8601 date; empty where not stated
    std::string shop;  ///< empty where not stated
};

}  // namespace baitwright
