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

bool mark_session(StoreConnection& connection, std::int64_t id) {
    std::string page, day, folded, start;
    {
        Query row(connection, select_noted_session, id);
        if (!row.next()) return false;
        page = row.text(0), day = row.text(1), folded = row.text(2), start = row.text(3);
    }
    give_mark(connection, id, [&](std::int64_t nth) {
        return page.empty() ? mark_of({"session of notes", folded, start, day, std::to_string(nth)})
                            : mark_of({"session from notes", page, day, std::to_string(nth)});
    });
    return true;
}

}  // namespace

void LogBook::mark_from_notes(std::int64_t first, const std::vector<std::int64_t>& belonging) {
    connection_->require_change();
    connection_->guarded([&] {
        connection_->know_marks();
        if (!mark_session(*connection_, first))
            give_mark(*connection_, first,
                      [&](std::int64_t nth) { return mark_by(*connection_, mark_of_alone, first, nth); });
        for (const std::int64_t id : belonging)
            give_mark(*connection_, id,
                      [&](std::int64_t nth) { return mark_by(*connection_, mark_in_session, id, nth); });
    });
}

}  // namespace baitwright
