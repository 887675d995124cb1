#pragma once

#include <optional>
#include <string_view>

#include "quantities/date.h"

namespace baitwright {

/// The day of that text; nothing where it is empty.
inline std::optional<Date> day_of(std::string_view text) {
    return text.empty() ? std::nullopt : std::optional<Date>(parse_date(text));
}

}  // namespace baitwright
