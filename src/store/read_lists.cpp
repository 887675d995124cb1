#include "bait/feel.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/query.h"

namespace baitwright {

namespace {

constexpr const char* select_feels = "SELECT name, aim, below, purpose FROM feel ORDER BY below, folded";
constexpr const char* select_ingredient_names = "SELECT name FROM ingredient ORDER BY folded";
constexpr const char* select_recipe_names = "SELECT name FROM recipe ORDER BY folded";
constexpr const char* select_strategy_names = "SELECT name FROM strategy ORDER BY folded";
// In the order in which they lie: all of them are looked through.
constexpr const char* select_any_ingredient_name = "SELECT name FROM ingredient";
constexpr const char* select_any_recipe_name = "SELECT name FROM recipe";
constexpr const char* select_any_strategy_name = "SELECT name FROM strategy";
constexpr const char* select_digest = "SELECT value FROM meta WHERE key = 'shipped_digest'";
constexpr const char* select_usual = "SELECT key, value FROM usual ORDER BY key, position";
constexpr const char* select_retired =
    "SELECT kind, name, retired_on, text FROM retired WHERE kind = ?1 AND folded = ?2 ORDER BY id";

std::vector<std::string> texts(Query&& rows) {
    std::vector<std::string> result;
    while (rows.next()) result.push_back(rows.name(0));
    return result;
}

StoreConnection::Names mended_names(StoreConnection& connection, std::string_view kind) {
    Query rows(connection, kind == "ingredient" ? select_any_ingredient_name
                           : kind == "recipe"   ? select_any_recipe_name
                                                : select_any_strategy_name);
    StoreConnection::Names mended;
    while (rows.next()) {
        const std::string stored = rows.text(0);
        if (const std::string shown = rows.name(0); shown != stored && folded_name(shown) != folded_name(stored))
            mended.emplace(folded_name(shown), stored);
    }
    return mended;
}

}  // namespace

std::vector<Feel> read_feels(StoreConnection& connection) {
    std::vector<Feel> feels;
    Query rows(connection, select_feels);
    while (rows.next()) feels.push_back({rows.text(0), rows.number(1), rows.number(2), rows.text(3)});
    return feels;
}

std::vector<std::string> read_ingredient_names(StoreConnection& connection) {
    return texts(Query(connection, select_ingredient_names));
}

std::vector<std::string> read_recipe_names(StoreConnection& connection) {
    return texts(Query(connection, select_recipe_names));
}

std::vector<std::string> read_strategy_names(StoreConnection& connection) {
    return texts(Query(connection, select_strategy_names));
}

std::optional<std::string> unmended_name(StoreConnection& connection, std::string_view kind, std::string_view name) {
    const auto& names = connection.mended_names(kind, [&] { return mended_names(connection, kind); });
    const auto found = names.find(folded_name(name));
    return found == names.end() ? std::nullopt : std::optional(found->second);
}

Usual read_usual(StoreConnection& connection) {
    Usual usual;
    Query rows(connection, select_usual);
    while (rows.next()) usual[rows.text(0)].push_back(rows.text(1));
    return usual;
}

std::string read_shipped_digest(StoreConnection& connection) {
    Query row(connection, select_digest);
    return row.next() ? row.text(0) : std::string();
}

std::vector<RetiredEntry> read_retired(StoreConnection& connection, std::string_view kind, std::string_view name) {
    std::vector<RetiredEntry> entries;
    Query rows(connection, select_retired, kind, folded_name(name));
    while (rows.next()) entries.push_back({rows.text(0), rows.text(1), rows.text(2), rows.text(3)});
    return entries;
}

}  // namespace baitwright
