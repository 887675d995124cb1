#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bait/ingredient.h"

namespace baitwright {

/// A value typed for a key, as in a library file but without quotes: {"absorption", "0.7 g/g"}.
using KeyValue = std::pair<std::string, std::string>;

/// A new ingredient, or one like another, with these values in place of its own. What is read goes through the same
/// reader as a file, so that the same things are faults. Throws InputError with all of them.
/// `source` is written beside each value that has one ("measured: squeeze test, 2026-03-01"), `spread` as text.
Ingredient edited_ingredient(const std::string& name, const std::optional<Ingredient>& like,
                             const std::vector<KeyValue>& values, const std::string& source = {},
                             const std::string& spread = {});

}  // namespace baitwright
