#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>

#include <filesystem>
#include <string>
#include <vector>

namespace baitwright {

/// Runs SQL that the triggers would not let pass; they are there again after. False where the tables refuse it.
inline bool run_past_triggers(const std::filesystem::path& path, const std::string& sql) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    std::vector<std::string> triggers, drops;
    SQLite::Statement rows(database, "SELECT sql, 'DROP TRIGGER ' || name FROM sqlite_schema WHERE type = 'trigger'");
    while (rows.executeStep()) {
        triggers.push_back(rows.getColumn(0).getString());
        drops.push_back(rows.getColumn(1).getString());
    }
    rows.reset();
    for (const std::string& drop : drops) database.exec(drop);
    bool changed = false;
    try {
        changed = database.exec(sql) > 0;
    } catch (const SQLite::Exception&) {
        changed = false;
    }
    for (const std::string& trigger : triggers) database.exec(trigger);
    return changed;
}

}  // namespace baitwright
