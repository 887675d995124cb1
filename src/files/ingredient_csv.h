#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "bait/ingredient.h"
#include "files/library_file.h"

/// Ingredients as a spreadsheet holds them: RFC 4180, one row each below a row of headings, in any order of columns.
///
/// `name` and `kind` must be there; then each property by its key ("moisture": "6.5 %"), with "moisture spread" and
/// "moisture source" beside it; "composition protein" and its like; colour, solute, label_dose, cautions (parted by
/// ";"), "keeps dry", "keeps cold", "keeps frozen", note; "pack 1 size", "pack 1 price", "pack 1 on", "pack 1 shop",
/// "pack 2 size" and so on. Cells are what stands in the quotes of a TOML file; an empty one means not stated. Empty
/// rows, and empty columns without a heading, are passed over.
///
/// Text that a spreadsheet would run as a formula (name, colour, note, shop, source) has an apostrophe in front in the
/// file and none in the library: see `formula_guard.h`. Numbers stand as they are, also below zero.
namespace baitwright {

/// The ingredients with their headings; `read_ingredient_csv` reads them back to the same records. Derived properties
/// are left out, for they are derived again. Spreads, sources and packs have columns where an ingredient states one.
std::string csv_text(const std::vector<Ingredient>& ingredients);

/// Reads them by the rules of the TOML files. Never throws for what a person wrote: every fault is returned with file,
/// line, column (of the cell, in characters), the line itself and a hint. Rows with faults are left out.
LibraryFile read_ingredient_csv(std::string_view text, std::string file_name);

}  // namespace baitwright
