#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/ingredient.h"

namespace baitwright {

/// A value typed for a key, as in a library file but without quotes: {"absorption", "0.7 g/g"}; for a property also its
/// source ("measured: squeeze test, 2026-03-01") and spread ("5 %"), or the usual ones where empty.
struct KeyValue {
    std::string key, value;
    std::string source = {}, spread = {};
};

/// A new ingredient, or one like another, with these values in place of its own. What is read goes through the same
/// reader as a file, so that the same things are faults. Throws InputError with all of them.
Ingredient edited_ingredient(const std::string& name, const std::optional<Ingredient>& like,
                             const std::vector<KeyValue>& values);

}  // namespace baitwright
