#include <functional>

#include "quantities/suggestion.h"
#include "store/content_mark.h"
#include "store/log_book.h"
#include "store/query.h"

namespace baitwright {

namespace {

constexpr const char* select_noted_session =
    "SELECT s.page, e.happened_on, e.folded, s.start FROM log_entry e JOIN log_session s ON s.entry_id = e.id"
    " WHERE e.id = ?1";
// What an entry says is what its table has of it, but for what was worked out from a library.
#define BAITWRIGHT_TOLD_OF_ENTRY                                                                     \
    "mark_of((SELECT mark_of(measure, amount) FROM log_use WHERE entry_id = e.id),"                  \
    " (SELECT mark_of(count, mass) FROM log_catch WHERE entry_id = e.id),"                           \
    " (SELECT mark_of(feel, dry, water) FROM log_mix WHERE entry_id = e.id),"                        \
    " (SELECT mark_of(dry, drained, under_water, temperature) FROM log_soak WHERE entry_id = e.id)," \
    " (SELECT mark_of(feel, vessel, mass) FROM log_weight WHERE entry_id = e.id),"                   \
    " (SELECT mark_of(feel, measure, size, squeeze, depth, holds, breaks_at, carpet) FROM log_look"  \
    " WHERE entry_id = e.id))"
constexpr const char* mark_in_session =
    "SELECT mark_of('from notes', o.mark, e.what, e.folded, e.at, " BAITWRIGHT_TOLD_OF_ENTRY
    ", ?2) FROM log_entry e JOIN log_entry o ON o.id = e.session_id WHERE e.id = ?1";
constexpr const char* mark_of_alone =
    "SELECT mark_of('alone from notes', e.happened_on, e.what, e.folded, e.at, " BAITWRIGHT_TOLD_OF_ENTRY
    ", ?2) FROM log_entry e WHERE e.id = ?1";
#undef BAITWRIGHT_TOLD_OF_ENTRY
constexpr const char* knows_logged_mark = "SELECT 1 FROM log_entry WHERE mark = ?1";
constexpr const char* select_logged_marks = "SELECT id, mark FROM log_entry";
constexpr const char* select_logged_mark = "SELECT mark FROM log_entry WHERE id = ?1";
constexpr const char* move_belief_stamp =
    "UPDATE OR REPLACE stamp SET folded = ?2 WHERE kind = 'believed'"
    " AND folded = (SELECT mark FROM log_entry WHERE id = ?1)";
constexpr const char* mark_undoings =
    "UPDATE log_entry SET mark = (SELECT substr(u.mark, 17) || substr(u.mark, 1, 16) FROM log_entry u WHERE u.id = ?1)"
    " WHERE undoes = ?1";
constexpr const char* put_logged_mark = "UPDATE log_entry SET mark = ?2 WHERE id = ?1";

/// Gives the entry the first mark that is free: of those alike, the first has the first.
template <class MarkOf>
void give_mark(StoreConnection& connection, std::int64_t id, MarkOf&& nth_mark) {
    for (std::int64_t nth = 1;; ++nth) {
        const std::string mark = nth_mark(nth);
        if (Query(connection, knows_logged_mark, mark).next()) continue;
        Query(connection, put_logged_mark, id, mark).run();
        return;
    }
}

std::string mark_by(StoreConnection& connection, const char* sql, std::int64_t id, std::int64_t nth) {
    Query row(connection, sql, id, nth);
    return row.next() ? row.text(0) : std::string();
}

/// What gives a session, or an entry alone, its marks, by how many are alike.
std::function<std::string(std::int64_t)> marks_by_notes(StoreConnection& connection, std::int64_t id) {
    Query row(connection, select_noted_session, id);
    if (!row.next()) return [&connection, id](std::int64_t nth) { return mark_by(connection, mark_of_alone, id, nth); };
    return [page = row.text(0), day = row.text(1), folded = row.text(2), start = row.text(3)](std::int64_t nth) {
        return page.empty() ? mark_of({"session of notes", folded, start, day, std::to_string(nth)})
                            : mark_of({"session from notes", page, day, std::to_string(nth)});
    };
}

}  // namespace

void LogBook::mark_from_notes(std::int64_t first, const std::vector<std::int64_t>& belonging) {
    connection_->require_change();
    connection_->guarded([&] {
        connection_->know_marks();
        give_mark(*connection_, first, marks_by_notes(*connection_, first));
        for (const std::int64_t id : belonging)
            give_mark(*connection_, id,
                      [&](std::int64_t nth) { return mark_by(*connection_, mark_in_session, id, nth); });
    });
}

std::map<std::int64_t, std::string> LogBook::marks() const {
    return connection_->guarded([&] {
        std::map<std::int64_t, std::string> marks;
        Query rows(*connection_, select_logged_marks);
        while (rows.next()) marks[rows.whole(0)] = rows.text(1);
        return marks;
    });
}

bool LogBook::is_from_notes(std::int64_t id) const {
    constexpr std::int64_t most_alike = 20;
    return connection_->guarded([&] {
        connection_->know_marks();
        std::string mark;
        if (Query row(*connection_, select_logged_mark, id); row.next()) mark = row.text(0);
        const auto nth_mark = marks_by_notes(*connection_, id);
        for (std::int64_t nth = 1; nth <= most_alike; ++nth)
            if (nth_mark(nth) == mark) return true;
        return false;
    });
}

void LogBook::put_marks(const std::map<std::int64_t, std::string>& marks) {
    connection_->require_change();
    connection_->guarded([&] {
        for (const auto& [id, mark] : marks) {
            Query(*connection_, move_belief_stamp, id, mark).run();
            Query(*connection_, put_logged_mark, id, mark).run();
            Query(*connection_, mark_undoings, id).run();
        }
    });
}

}  // namespace baitwright
