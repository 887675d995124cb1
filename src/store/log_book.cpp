#include "store/log_book.h"

#include "bait/beyond_range.h"
#include "quantities/fault.h"
#include "store/log_rows.h"
#include "store/stamp.h"

namespace baitwright {

namespace {

constexpr const char* last_that_stands =
    "SELECT id FROM log_entry e WHERE undoes IS NULL"
    " AND NOT EXISTS (SELECT 1 FROM log_entry u WHERE u.undoes = e.id) ORDER BY id DESC LIMIT 1";
constexpr const char* select_logged =
    "SELECT e.what, e.session_id, e.undoes, u.id FROM log_entry e LEFT JOIN log_entry u ON u.undoes = e.id"
    " WHERE e.id = ?1";
constexpr const char* select_belonging =
    "SELECT id FROM log_entry e WHERE session_id = ?1 AND undoes IS NULL"
    " AND NOT EXISTS (SELECT 1 FROM log_entry u WHERE u.undoes = e.id) ORDER BY id";
constexpr const char* put_believed = "UPDATE log_entry SET believed = ?2 WHERE id = ?1 RETURNING mark";

constexpr const char* see_log = "see them with: baitwright log list";

[[noreturn]] void refuse_unknown_entry(std::int64_t id) {
    throw NotFound("unknown-entry", "there is no entry " + std::to_string(id) + " in the log", see_log);
}

[[noreturn]] void refuse_undoing(const std::string& message) {
    throw Error(FaultClass::answer_is_no, Fault{"cannot-undo", message, "write down again what happened"});
}

std::int64_t logged_to_undo(StoreConnection& connection, std::optional<std::int64_t> id) {
    if (id) return *id;
    Query row(connection, last_that_stands);
    if (!row.next()) throw NotFound("nothing-to-undo", "there is no entry in the log that could be undone", see_log);
    return row.whole(0);
}

/// The session that a standing entry belongs to; refuses where it does not stand.
std::int64_t session_of_standing(StoreConnection& connection, std::int64_t id) {
    Query row(connection, select_logged, id);
    const std::string number = std::to_string(id);
    if (!row.next()) refuse_unknown_entry(id);
    if (!row.empty(2))
        refuse_undoing("entry " + number + " is itself the undoing of entry " + std::to_string(row.whole(2)));
    if (!row.empty(3))
        refuse_undoing("entry " + number + " is undone already, by entry " + std::to_string(row.whole(3)));
    return row.empty(1) ? 0 : row.whole(1);
}

std::int64_t write_undoing(StoreConnection& connection, std::int64_t id, Date on) {
    return write_log_entry(connection, {0, on, session_of_standing(connection, id), LogUndone{id}});
}

void refuse_what_cannot_stand(StoreConnection& connection, const LogEntry& entry) {
    if (const std::string beyond = beyond_range(entry.what); !beyond.empty())
        throw InputError("logged-out-of-range",
                         "of the " + std::string(name_of(entry.what)) + " that is to be logged, " + beyond,
                         "say it again with the right number");
    if (entry.session == 0) return;
    Query row(connection, select_logged, entry.session);
    if (!row.next() || row.text(0) != logged_names[0] || !row.empty(3))
        throw NotFound("unknown-session",
                       "entry " + std::to_string(entry.session) + " of the log is no session that stands", see_log);
}

}  // namespace

std::int64_t LogBook::add(const LogEntry& entry) {
    connection_->require_change();
    return connection_->guarded([&] {
        if (const auto* undone = std::get_if<LogUndone>(&entry.what))
            return write_undoing(*connection_, undone->entry, entry.on);
        refuse_what_cannot_stand(*connection_, entry);
        return write_log_entry(*connection_, entry);
    });
}

std::vector<LogEntry> LogBook::undo(std::optional<std::int64_t> id, Date on) {
    connection_->require_change();
    return connection_->guarded([&] {
        std::vector<std::int64_t> numbers{logged_to_undo(*connection_, id)};
        {
            Query rows(*connection_, select_belonging, numbers.front());
            while (rows.next()) numbers.push_back(rows.whole(0));
        }
        std::vector<LogEntry> taken;
        for (const std::int64_t number : numbers) {
            write_undoing(*connection_, number, on);
            taken.push_back(read_entries(*connection_, {number, number}).at(0));
        }
        return taken;
    });
}

void LogBook::believe(std::int64_t id, bool believed) {
    connection_->require_change();
    connection_->guarded([&] {
        Query row(*connection_, put_believed, id, std::int64_t{believed});
        if (!row.next()) refuse_unknown_entry(id);
        stamp(*connection_, stamp_of_belief, row.text(0));
    });
}

}  // namespace baitwright
