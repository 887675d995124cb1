#include "store/schema.h"

#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <string>

#include "store/content_mark.h"
#include "store/log_schema_steps.h"
#include "store/merge_schema_steps.h"
#include "store/phone_schema_steps.h"
#include "store/schema_steps.h"

namespace baitwright {

const std::vector<Migration>& migrations() {
    static const std::vector<Migration> all{{1, version_1}, {2, version_2}, {3, version_3}, {4, version_4},
                                            {5, version_5}, {6, version_6}, {7, version_7}, {8, version_8}};
    return all;
}

int newest_version() {
    return migrations().back().version;
}

int version_of(SQLite::Database& database) {
    return database.execAndGet("PRAGMA user_version").getInt();
}

void migrate(SQLite::Database& database, const std::vector<Migration>& steps, const std::function<void()>& before) {
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    const int present = version_of(database);  // another process may have been quicker
    if (present >= steps.back().version) return;
    before();
    know_mark_of(database);
    for (const Migration& step : steps) {
        if (step.version <= present) continue;
        database.exec(step.sql);
        database.exec("PRAGMA user_version = " + std::to_string(step.version));
    }
    transaction.commit();
}

}  // namespace baitwright
