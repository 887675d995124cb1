#include "store/kept_rows.h"

#include <sqlite3.h>

#include <array>
#include <cmath>
#include <string>

#include "quantities/suggestion.h"
#include "store/connection.h"
#include "store/kept_sql.h"
#include "store/query.h"
#include "store/stamp.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_kept_clock = "SELECT CAST(value AS INTEGER) FROM meta WHERE key = 'clock'";
constexpr std::array select_owned{
    "SELECT 'ingredient', name, owner FROM ingredient ORDER BY folded",
    "SELECT 'mix', name, owner FROM recipe ORDER BY folded",
    "SELECT 'strategy', name, owner FROM strategy ORDER BY folded",
    "SELECT kind, name, owner FROM written ORDER BY kind DESC, folded",
    "SELECT 'feel', name, owner FROM feel ORDER BY below, folded",
};
constexpr const char* select_unwhole =
    "WITH thing (what, id) AS (SELECT 'session', entry_id FROM log_session UNION ALL SELECT 'used', entry_id FROM log_use"
    " UNION ALL SELECT 'catch', entry_id FROM log_catch UNION ALL SELECT 'mix', entry_id FROM log_mix"
    " UNION ALL SELECT 'soak', entry_id FROM log_soak UNION ALL SELECT 'weighed', entry_id FROM log_weight"
    " UNION ALL SELECT 'look', entry_id FROM log_look)"
    " SELECT id FROM log_entry WHERE what IN ('session', 'used', 'catch', 'mix', 'soak', 'weighed', 'look')"
    " AND (what, id) NOT IN (SELECT what, id FROM thing)"
    " UNION SELECT t.id FROM thing t JOIN log_entry e ON e.id = t.id WHERE e.what <> t.what ORDER BY 1 LIMIT 20";
constexpr const char* put_kept_clock = "INSERT OR REPLACE INTO meta VALUES ('clock', CAST(?1 AS TEXT))";
constexpr const char* forget_stamps = "DELETE FROM stamp";

KeptValue value_in(const SQLite::Column& column) {
    if (column.isNull()) return std::monostate{};
    if (column.isInteger()) return column.getInt64();
    if (column.isText() || column.isBlob()) return column.getString();
    const double stored = column.getDouble();
    return std::isfinite(stored) ? stored : std::copysign(1e300, stored);
}

void bind_value(SQLite::Statement& statement, int index, const KeptValue& value, CellForm form) {
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        statement.bind(index, *whole);
    else if (const auto* number = std::get_if<double>(&value))
        statement.bind(index, *number);
    else if (const auto* text = std::get_if<std::string>(&value); text && form == CellForm::numbers)
        statement.bind(index, text->data(), static_cast<int>(text->size()));
    else if (text)
        statement.bind(index, *text);
    else
        statement.bind(index);
}

struct ResetAtLast {
    SQLite::Statement& statement;
    ~ResetAtLast() { statement.tryReset(); }
};

bool stands_there(StoreConnection& connection, std::string_view table, const KeptValue& value) {
    const char* find = kept_sql(table).find;
    if (const auto* name = std::get_if<std::string>(&value)) return Query(connection, find, folded_name(*name)).next();
    return Query(connection, find, std::get<std::int64_t>(value)).next();
}

/// The first column that names what is not there; of names alone, or of all.
std::optional<std::size_t> unknown_in(StoreConnection& connection, const KeptTable& table, const KeptRow& row,
                                      bool names_alone) {
    std::size_t value = 0;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const KeptColumn& column = table.columns[i];
        const bool named = std::holds_alternative<std::string>(row[value]);
        const bool looked_at = !std::holds_alternative<std::monostate>(row[value]) && (named || !names_alone);
        if (!column.of.empty() && looked_at && !stands_there(connection, column.of, row[value])) return i;
        value += values_in(column.form);
    }
    return std::nullopt;
}

void bind_row(SQLite::Statement& statement, const KeptTable& table, const KeptSql& sql, const KeptRow& row) {
    int index = 0;
    std::size_t value = 0;
    for (const KeptColumn& column : table.columns)
        for (std::size_t i = 0; i < values_in(column.form); ++i)
            bind_value(statement, ++index, row[value++], column.form);
    for (const std::size_t folded : sql.folded)
        if (const auto* name = std::get_if<std::string>(&row[folded]))
            statement.bind(++index, folded_name(*name));
        else
            statement.bind(++index);
}

}  // namespace

void KeptRows::each(const KeptTable& table, const std::function<void(const KeptRow&)>& each) const {
    connection_->guarded([&] {
        SQLite::Statement& rows = connection_->prepared(kept_sql(table.name).select);
        const ResetAtLast reset{rows};
        KeptRow row;
        while (rows.executeStep()) {
            row.clear();
            for (int i = 0; i < rows.getColumnCount(); ++i) row.push_back(value_in(rows.getColumn(i)));
            each(row);
        }
    });
}

std::int64_t KeptRows::count(const KeptTable& table) const {
    return connection_->guarded([&] {
        Query row(*connection_, kept_sql(table.name).count);
        row.next();
        return row.whole(0);
    });
}

KeptOutcome KeptRows::write(const KeptTable& table, const KeptRow& row) {
    using What = KeptOutcome::What;
    connection_->require_change();
    return connection_->guarded([&]() -> KeptOutcome {
        if (const auto unknown = unknown_in(*connection_, table, row, true)) return {What::unknown, *unknown};
        const KeptSql& sql = kept_sql(table.name);
        SQLite::Statement& insert = connection_->prepared(sql.insert);
        const ResetAtLast reset{insert};
        bind_row(insert, table, sql, row);
        try {
            insert.exec();
            return {};
        } catch (const SQLite::Exception& error) {
            if (error.getErrorCode() != SQLITE_CONSTRAINT) throw;
            if (const auto unknown = unknown_in(*connection_, table, row, false)) return {What::unknown, *unknown};
            const int why = error.getExtendedErrorCode();
            const bool twice = why == SQLITE_CONSTRAINT_PRIMARYKEY || why == SQLITE_CONSTRAINT_UNIQUE ||
                               why == SQLITE_CONSTRAINT_ROWID;
            return {twice ? What::twice : What::impossible, 0};
        }
    });
}

std::vector<OwnedEntry> KeptRows::entries() const {
    return connection_->guarded([&] {
        std::vector<OwnedEntry> entries;
        for (const char* select : select_owned) {
            Query row(*connection_, select);
            while (row.next())
                entries.push_back({row.text(0), row.name(1),
                                   value_of<EntryOwner>(owner_words, row.text(2)).value_or(EntryOwner::person)});
        }
        return entries;
    });
}

std::vector<std::int64_t> KeptRows::unwhole_in_log() const {
    return connection_->guarded([&] {
        std::vector<std::int64_t> entries;
        Query row(*connection_, select_unwhole);
        while (row.next()) entries.push_back(row.whole(0));
        return entries;
    });
}

std::int64_t KeptRows::clock() const {
    return connection_->guarded([&] {
        Query row(*connection_, select_kept_clock);
        return row.next() ? row.whole(0) : 1;
    });
}

void KeptRows::set_clock(std::int64_t clock) {
    connection_->require_change();
    connection_->guarded([&] {
        Query(*connection_, forget_stamps).run();
        Query(*connection_, put_kept_clock, clock).run();
    });
}

void KeptRows::stamp_change(std::string_view kind, std::string_view name, Change change) {
    connection_->require_change();
    connection_->guarded([&] {
        const std::string folded = folded_name(name);
        if (change == Change::changed)
            stamp(*connection_, kind, folded);
        else
            stamp_new(*connection_, kind, folded);
    });
}

}  // namespace baitwright
