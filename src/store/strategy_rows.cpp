#include "bait/beyond_range.h"
#include "bait/strategy_settings.h"
#include "quantities/listed.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/entry_register.h"
#include "store/query.h"
#include "store/store_fault.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

using ColumnNames = std::vector<std::string>;

/// The columns named, then those of the settings.
template <class Record>
ColumnNames columns_of(const Record& record, ColumnNames columns) {
    const auto add = [&](const SettingNames& facts, const auto&) { columns.emplace_back(facts.column); };
    if constexpr (std::is_same_v<Record, Strategy>)
        visit_settings(record, add);
    else
        visit_feed_settings(record, add);
    return columns;
}

std::string insert_into(const std::string& table, const ColumnNames& columns) {
    return "INSERT INTO " + table + " (" + joined(columns, ", ") + ") VALUES (" +
           joined(ColumnNames(columns.size(), "?"), ", ") + ")";
}

// Each is made once, and stays where it is.
const char* select_strategy() {
    static const std::string sql =
        "SELECT " + joined(columns_of(Strategy{}, {"id", "name"}), ", ") + " FROM strategy WHERE folded = ?1";
    return sql.c_str();
}

const char* upsert_strategy() {
    static const std::string sql = [] {
        ColumnNames replaced = columns_of(Strategy{}, {"name", "owner"});
        for (std::string& column : replaced) column += " = excluded." + column;
        return insert_into("strategy", columns_of(Strategy{}, {"folded", "name", "owner"})) +
               " ON CONFLICT (folded) DO UPDATE SET " + joined(replaced, ", ") + " RETURNING id";
    }();
    return sql.c_str();
}

const char* select_feeds() {
    static const std::string sql =
        "SELECT " + joined(columns_of(Feed{}, {"position", "rhythm", "every", "form", "measure", "size"}), ", ") +
        " FROM strategy_feed WHERE strategy_id = ?1 ORDER BY position";
    return sql.c_str();
}

const char* insert_feed() {
    static const std::string sql = insert_into(
        "strategy_feed", columns_of(Feed{}, {"strategy_id", "position", "rhythm", "every", "form", "measure", "size"}));
    return sql.c_str();
}

constexpr const char* select_feed_parts =
    "SELECT part_of, share, prepare, feel FROM strategy_feed_part WHERE strategy_id = ?1 AND feed = ?2 ORDER BY position";
constexpr const char* select_hookbaits =
    "SELECT bait, measure, amount FROM strategy_hookbait WHERE strategy_id = ?1 ORDER BY position";

constexpr const char* delete_feed_parts = "DELETE FROM strategy_feed_part WHERE strategy_id = ?1";
constexpr const char* delete_feeds = "DELETE FROM strategy_feed WHERE strategy_id = ?1";
constexpr const char* delete_hookbaits = "DELETE FROM strategy_hookbait WHERE strategy_id = ?1";
constexpr const char* insert_feed_part = "INSERT INTO strategy_feed_part VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";
constexpr const char* insert_hookbait = "INSERT INTO strategy_hookbait VALUES (?1, ?2, ?3, ?4, ?5)";

/// Takes what stands in the columns from the given one on into the members that it is shown in turn.
auto columns_from(int column, const Query& row) {
    return [column, &row](const SettingNames&, auto& member) mutable {
        member = row.as<std::decay_t<decltype(member)>>(column++);
    };
}

/// Binds the members that it is shown in turn.
auto next_of(Query& row) {
    return [&row](const SettingNames&, const auto& member) { row.bind_next(member); };
}

Feed feed_in(StoreConnection& connection, std::int64_t id, const Query& row) {
    const auto rhythm = stored_alternative<FeedRhythm>(rhythm_words, row.text(1), row.empty(2) ? 0 : row.number(2));
    const auto form = value_of<FeedForm>(feed_form_names, row.text(3));
    const auto size = stored_alternative<FeedSize>(size_words, row.text(4), row.number(5));
    if (!rhythm || !form || !size)
        throw connection.damaged("a feed as '" + row.text(3) + "', " + row.text(1) + ", " + row.text(4));
    Feed feed;
    feed.when.rhythm = *rhythm;
    feed.form = *form;
    feed.size = *size;
    visit_feed_settings(feed, columns_from(6, row));
    Query parts(connection, select_feed_parts, id, row.whole(0));
    while (parts.next()) {
        const auto prepare = value_of<Preparation>(preparation_words, parts.text(2));
        if (!prepare) throw connection.damaged("a part of a feed that is '" + parts.text(2) + "'");
        feed.parts.push_back({parts.text(0), parts.number(1), *prepare, parts.text(3)});
    }
    return feed;
}

Hookbait hookbait_in(const StoreConnection& connection, const Query& row) {
    const auto amount = stored_alternative<decltype(Hookbait::amount)>(hookbait_words, row.text(1), row.number(2));
    if (!amount) throw connection.damaged("a hookbait by '" + row.text(1) + "'");
    return {row.text(0), *amount};
}

std::int64_t write_row(StoreConnection& connection, const Strategy& strategy, EntryOwner owner) {
    Query row(connection, upsert_strategy(), folded_name(strategy.name), strategy.name, word_of(owner_words, owner));
    visit_settings(strategy, next_of(row));
    row.next();
    return row.whole(0);
}

void write_feed(StoreConnection& connection, std::int64_t id, std::int64_t position, const Feed& feed) {
    const FeedRhythm& rhythm = feed.when.rhythm;
    const bool is_bare = std::holds_alternative<EveryPutIn>(rhythm);
    Query row(connection, insert_feed(), id, position, rhythm_words[rhythm.index()],
              is_bare ? std::nullopt : std::optional(bare_number(rhythm)), name_of(feed.form),
              size_words[feed.size.index()], bare_number(feed.size));
    visit_feed_settings(feed, next_of(row));
    row.run();
    std::int64_t part_position = 0;
    for (const FeedPart& part : feed.parts)
        Query(connection, insert_feed_part, id, position, ++part_position, part.of, part.share,
              word_of(preparation_words, part.prepare), part.feel)
            .run();
}

}  // namespace

std::optional<Strategy> read_strategy(StoreConnection& connection, std::string_view name, Reading reading) {
    const StoreConnection::Snapshot snapshot(connection);
    Query row(connection, select_strategy(), folded_name(name));
    if (!row.next()) return std::nullopt;
    Strategy strategy;
    strategy.name = row.name(1);
    visit_settings(strategy, columns_from(2, row));
    Query feeds(connection, select_feeds(), row.whole(0));
    while (feeds.next()) strategy.feeds.push_back(feed_in(connection, row.whole(0), feeds));
    Query hookbaits(connection, select_hookbaits, row.whole(0));
    while (hookbaits.next()) strategy.hookbaits.push_back(hookbait_in(connection, hookbaits));
    if (const std::string beyond = beyond_range(strategy); reading == Reading::checked && !beyond.empty())
        throw stored_strategy_out_of_range(strategy.name, beyond);
    return strategy;
}

void write_strategy(StoreConnection& connection, const Strategy& strategy, EntryOwner owner) {
    if (owner == EntryOwner::person) stamp_put(connection, EntryKind::strategy, folded_name(strategy.name));
    const std::int64_t id = write_row(connection, strategy, owner);
    forget_gone(connection, EntryKind::strategy, folded_name(strategy.name));
    for (const char* clear : {delete_feed_parts, delete_feeds, delete_hookbaits}) Query(connection, clear, id).run();
    std::int64_t position = 0;
    for (const Feed& feed : strategy.feeds) write_feed(connection, id, ++position, feed);
    position = 0;
    for (const Hookbait& hookbait : strategy.hookbaits)
        Query(connection, insert_hookbait, id, ++position, hookbait.of, hookbait_words[hookbait.amount.index()],
              bare_number(hookbait.amount))
            .run();
}

}  // namespace baitwright
