#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <filesystem>
#include <set>
#include <string>

#include "store/temporary_folder.h"

/// A store as a whole, read by SQLite alone.
namespace baitwright {

inline void run_sql(const std::filesystem::path& path, const std::string& sql) {
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 5000).exec(sql);
}

inline std::string value_of_sql(const std::filesystem::path& path, const std::string& sql) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE, 5000);
    return database.execAndGet(sql).getString();
}

/// Every row of every table, and the version.
inline std::string rows_of(const std::filesystem::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE, 5000);
    std::string text = database.execAndGet("PRAGMA user_version").getString() + "\n";
    SQLite::Statement tables(database, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name");
    while (tables.executeStep()) {
        const std::string table = tables.getColumn(0).getString();
        SQLite::Statement rows(database, "SELECT * FROM \"" + table + "\"");
        while (rows.executeStep()) {
            text += table;
            for (int column = 0; column < rows.getColumnCount(); ++column)
                text += "|" + rows.getColumn(column).getString();
            text += "\n";
        }
    }
    return text;
}

inline std::set<std::string> names_in(const std::filesystem::path& folder) {
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        names.insert(entry.path().filename().string());
    return names;
}

}  // namespace baitwright
