#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// A column of ingredients as CSV, and what its cells stand for in the TOML of a library file.
struct IngredientColumn {
    /// `text` is taken as it stands; of the others the blanks around go, and blank means not stated.
    enum class Form { text, value, number, date, words };

    std::string heading;  ///< "moisture spread"
    std::string key;      ///< "moisture.spread"; in a pack its own: "size"
    Form form;
    std::string companion_of = {};  ///< heading of the value that a spread or a source belongs to
    int pack = 0;                   ///< which pack, from 1; 0 for none
};

/// All columns that ingredients with up to so many packs can have, in the order in which they are written.
std::vector<IngredientColumn> ingredient_columns(int packs);

/// The number in "pack 3 size" or "pack 3 prise"; 0 where there is none from 1 to 999.
int pack_number(std::string_view heading);

}  // namespace baitwright
