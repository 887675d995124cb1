#include <algorithm>
#include <array>

#include "bait/beyond_range.h"
#include "quantities/suggestion.h"
#include "store/log_book.h"
#include "store/log_rows.h"
#include "store/shed_rows.h"
#include "store/store_fault.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_log =
    "SELECT e.id, e.what, e.happened_on, e.session_id, e.name, e.at, e.undoes, e.believed, u.id FROM log_entry e"
    " LEFT JOIN log_entry u ON u.undoes = e.id WHERE e.id BETWEEN ?1 AND ?2 ORDER BY e.id";
// What is undone once and what undoes it both fall away.
constexpr const char* count_standing = "SELECT count(*) - 2 * count(undoes) FROM log_entry";
constexpr const char* select_session_of_page =
    "SELECT e.id FROM log_session s JOIN log_entry e ON e.id = s.entry_id WHERE s.page = ?1 AND e.happened_on = ?2"
    " AND e.what = 'session' AND NOT EXISTS (SELECT 1 FROM log_entry u WHERE u.undoes = e.id) ORDER BY e.id DESC LIMIT 1";
constexpr const char* select_session_of_start =
    "SELECT e.id FROM log_session s JOIN log_entry e ON e.id = s.entry_id WHERE e.folded = ?1 AND s.start = ?2"
    " AND e.happened_on = ?3 AND e.what = 'session' AND NOT EXISTS (SELECT 1 FROM log_entry u WHERE u.undoes = e.id)"
    " ORDER BY e.id DESC LIMIT 1";

/// Of a kind, with nothing said of it yet.
const LoggedThing& blank_thing(std::size_t kind) {
    static const std::array<LoggedThing, logged_names.size()> blanks{
        LoggedSession{}, LoggedPutIn{},  LoggedUse{},  LoggedCatch{}, LoggedMix{},
        LoggedSoak{},    LoggedWeight{}, LoggedLook{}, LoggedBag{},   LogUndone{}};
    return blanks.at(kind);
}

struct TakeCommon {
    const Query& row;

    void operator()(LoggedSession& session) const { session.strategy = row.text(4); }
    void operator()(LoggedCatch& caught) const {
        caught.fish = row.text(4);
        caught.at = clock();
    }
    void operator()(LoggedPutIn& put_in) const {
        put_in.of = row.text(4);
        put_in.at = clock();
    }
    void operator()(LogUndone& undone) const { undone.entry = row.whole(6); }
    template <class Thing>
    void operator()(Thing& thing) const {
        thing.of = row.text(4);
    }

private:
    [[nodiscard]] std::optional<Time> clock() const { return row.as<std::optional<Time>>(5); }
};

std::int64_t id_or_none(const Query& row, int column) {
    return row.empty(column) ? 0 : row.whole(column);
}

std::size_t kind_in(const StoreConnection& connection, const Query& row) {
    const std::string word = row.text(1);
    const auto kind = value_of<std::size_t>(logged_names, word);
    if (!kind) throw connection.damaged("the word '" + word + "' in the log");
    return *kind;
}

/// An entry whose kind has a table takes what stands there; it must be the next one of its kind.
class ThingsOfKinds {
public:
    ThingsOfKinds(StoreConnection& connection, LogSpan span) : connection_(connection), span_(span) {}

    LoggedThing thing_of(std::int64_t entry, std::size_t kind) {
        if (!has_log_table(kind)) return blank_thing(kind);
        Kind& known = kinds_.at(kind);
        if (!known.read) known = {true, read_things(connection_, kind, span_), 0};
        if (known.next >= known.things.size() || known.things[known.next].entry != entry)
            throw connection_.damaged("entry " + std::to_string(entry) + " of the log is not whole");
        return std::move(known.things[known.next++].what);
    }

private:
    struct Kind {
        bool read = false;
        std::vector<NumberedThing> things;
        std::size_t next = 0;
    };
    StoreConnection& connection_;
    LogSpan span_;
    std::array<Kind, logged_names.size()> kinds_;
};

void check_log_range(LogEntry& entry) {
    const std::string beyond = beyond_range(entry.what);
    if (beyond.empty()) return;
    if (entry.undone_by == 0) throw stored_log_out_of_range(entry.id, beyond);
    entry.what = blank_thing(entry.what.index());
}

std::vector<LogEntry> standing(std::vector<LogEntry> entries) {
    const auto gone = [](const LogEntry& entry) {
        return entry.undone_by != 0 || std::holds_alternative<LogUndone>(entry.what);
    };
    entries.erase(std::remove_if(entries.begin(), entries.end(), gone), entries.end());
    return entries;
}

}  // namespace

std::vector<LogEntry> read_entries(StoreConnection& connection, LogSpan span) {
    const StoreConnection::Snapshot snapshot(connection);
    std::vector<LogEntry> entries;
    ThingsOfKinds things(connection, span);
    Query rows(connection, select_log, span.first, span.last);
    while (rows.next()) {
        const std::int64_t id = rows.whole(0);
        LogEntry entry{id,
                       date_in(connection, rows, 2),
                       id_or_none(rows, 3),
                       things.thing_of(id, kind_in(connection, rows)),
                       id_or_none(rows, 8),
                       rows.whole(7) != 0};
        std::visit(TakeCommon{rows}, entry.what);
        check_log_range(entry);
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<LogEntry> LogBook::entries() const {
    std::vector<LogEntry> entries = standing(all_entries());
    std::stable_sort(entries.begin(), entries.end(), [](const LogEntry& a, const LogEntry& b) { return a.on < b.on; });
    return entries;
}

std::vector<LogEntry> LogBook::all_entries() const {
    return connection_->guarded([&] { return read_entries(*connection_, {}); });
}

std::optional<LogEntry> LogBook::find(std::int64_t id) const {
    return connection_->guarded([&]() -> std::optional<LogEntry> {
        std::vector<LogEntry> found = read_entries(*connection_, {id, id});
        return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
    });
}

std::optional<std::int64_t> LogBook::session_from(const LoggedSession& session, Date on) const {
    const auto first = [](Query&& row) { return row.next() ? std::optional(row.whole(0)) : std::nullopt; };
    return connection_->guarded([&] {
        const std::string date = date_text(on);
        return session.page.empty() ? first(Query(*connection_, select_session_of_start, folded_name(session.strategy),
                                                  session.start, date))
                                    : first(Query(*connection_, select_session_of_page, session.page, date));
    });
}

std::size_t LogBook::size() const {
    return connection_->guarded([&] {
        Query row(*connection_, count_standing);
        row.next();
        return static_cast<std::size_t>(row.whole(0));
    });
}

}  // namespace baitwright
