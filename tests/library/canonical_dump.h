#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

namespace baitwright {

/// The text of a column in a dump: what the row numbers of entries and names refer to in place of the numbers, which
/// may be others in another store.
inline std::string dumped_column(const std::string& table, const std::string& column) {
    const auto name_in = [&](const char* of) {
        return "(SELECT folded FROM " + std::string(of) + " WHERE id = t." + column + ")";
    };
    if (column == "ingredient_id") return name_in("ingredient");
    if (column == "recipe_id") return name_in("recipe");
    if (column == "strategy_id") return name_in("strategy");
    if (column == "item_id") return name_in("stock_item");
    for (const char* renumbered :
         {"ingredient", "recipe", "strategy", "retired", "old_price", "price_of_removed", "shop", "stock_item"})
        if (column == "id" && table == renumbered) return {};
    return "t." + column;
}

/// All that a store holds, read by SQLite itself: every row of every table, sorted, each value as SQL would write it,
/// numbers to the last bit. Old versions stay in their order, which counts.
inline std::vector<std::string> canonical_dump(const std::filesystem::path& store) {
    SQLite::Database database(store.string(), SQLite::OPEN_READONLY);
    std::vector<std::string> dump;
    SQLite::Statement tables(database,
                             "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'");
    while (tables.executeStep()) {
        const std::string table = tables.getColumn(0).getString();
        std::string values;
        SQLite::Statement columns(database, "SELECT name FROM pragma_table_info('" + table + "')");
        while (columns.executeStep()) {
            const std::string column = dumped_column(table, columns.getColumn(0).getString());
            if (!column.empty()) values += (values.empty() ? "quote(" : " || ' ' || quote(") + column + ")";
        }
        std::vector<std::string> rows;
        SQLite::Statement row(
            database, "SELECT " + values + " FROM " + table + " t" + (table == "retired" ? " ORDER BY id" : ""));
        while (row.executeStep()) rows.push_back(table + ": " + row.getColumn(0).getString());
        if (table != "retired") std::sort(rows.begin(), rows.end());
        dump.insert(dump.end(), rows.begin(), rows.end());
    }
    return dump;
}

/// The first rows that only one of them has.
inline std::string first_differences(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    std::string told;
    int left = 6;
    const auto only_in = [&](const std::vector<std::string>& mine, const std::vector<std::string>& other,
                             const char* sign) {
        for (const std::string& row : mine)
            if (std::find(other.begin(), other.end(), row) == other.end() && left-- > 0) told += sign + row + "\n";
    };
    if (a == b) return {};
    only_in(a, b, "- ");
    left = 6;
    only_in(b, a, "+ ");
    return told.empty() ? "the same rows in another order" : told;
}

}  // namespace baitwright
