#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace baitwright {

/// How a table that is kept (`bait/kept_tables.h`) lies in the store. `select` gives the values of a row, `insert`
/// takes them as ?1, ?2 and so on, and behind them the values in `folded` as names are compared. `find` tells whether
/// there is a row of the number, or of the folded name, ?1; null where nothing refers to the table.
struct KeptSql {
    std::string_view name;  ///< of the `KeptTable`
    const char* count;
    const char* select;
    const char* insert;
    std::vector<std::size_t> folded = {};
    const char* find = nullptr;
};

const KeptSql& kept_sql(std::string_view name);

}  // namespace baitwright
