#pragma once

#include <optional>
#include <string_view>

#include "bait/ingredient.h"
#include "files/entry_names.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads an ingredient as stated. Nothing where the table had a fault; all of them are with its `faults()`.
std::optional<Ingredient> read_ingredient(TableReader& table, EntryNames& names);

/// Whether only an ingredient has that key.
bool is_ingredient_key(std::string_view key);

}  // namespace baitwright
