#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "bait/key_value.h"

namespace baitwright {

/// A new ingredient, or one like another, with these values in place of its own. What is read goes through the same
/// reader as a file, so that the same things are faults. Throws InputError with all of them.
Ingredient edited_ingredient(const std::string& name, const std::optional<Ingredient>& like,
                             const std::vector<KeyValue>& values);

}  // namespace baitwright
