#pragma once

#include <string>
#include <string_view>

#include "bait/kept_tables.h"

/// The cells of the tables that are kept (`bait/kept_tables.h`), from values and back, to the last bit.
namespace baitwright {

/// How the cell of a column is written: `values` points at the first of its values.
std::string kept_cell(const KeptColumn& column, const KeptValue* values);

/// Reads a cell into the column's values. Throws InputError for what cannot stand there.
void read_kept_cell(const KeptColumn& column, std::string_view cell, KeptValue* values);

}  // namespace baitwright
