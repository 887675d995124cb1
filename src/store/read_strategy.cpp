#include <algorithm>

#include "bait/beyond_range.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/query.h"
#include "store/store_fault.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_strategy =
    "SELECT id, name, purpose, avoid, why, note, length, spare, depth, temperature, clarity, tow, tow_bottom,"
    " put_ins_per_hour, fish_per_hour, air_temperature, air_humidity, air_wind, air_sun FROM strategy WHERE folded = ?1";
constexpr const char* select_feeds =
    "SELECT position, rhythm, every, starts, until, form, measure, size, count, feel, begins_after FROM strategy_feed"
    " WHERE strategy_id = ?1 ORDER BY position";
constexpr const char* select_feed_parts =
    "SELECT part_of, share, prepare, feel FROM strategy_feed_part WHERE strategy_id = ?1 AND feed = ?2 ORDER BY position";
constexpr const char* select_hookbaits =
    "SELECT bait, measure, amount FROM strategy_hookbait WHERE strategy_id = ?1 ORDER BY position";

constexpr std::int64_t beyond_any_count = 1'000'000;

std::optional<double> number_or_nothing(const Query& row, int column) {
    return row.empty(column) ? std::nullopt : std::optional(row.number(column));
}

template <class Q>
std::optional<Q> quantity_or_nothing(const Query& row, int column) {
    return row.empty(column) ? std::nullopt : std::optional(Q::from_si(row.number(column)));
}

Strategy strategy_in(const Query& row) {
    Strategy s;
    s.name = row.name(1);
    s.purpose = row.text(2);
    s.avoid = row.text(3);
    s.why = row.text(4);
    s.note = row.text(5);
    s.length = Time::from_si(row.number(6));
    s.spare = row.number(7);
    s.water.depth = quantity_or_nothing<Length>(row, 8);
    if (!row.empty(9)) s.water.temperature = Temperature::from_kelvin(row.number(9));
    s.water.clarity = row.text(10);
    s.water.tow = quantity_or_nothing<Speed>(row, 11);
    s.water.tow_bottom = quantity_or_nothing<Speed>(row, 12);
    s.pace = {number_or_nothing(row, 13), number_or_nothing(row, 14)};
    if (!row.empty(15)) s.air.temperature = Temperature::from_kelvin(row.number(15));
    s.air.humidity = quantity_or_nothing<Ratio>(row, 16);
    s.air.wind = quantity_or_nothing<Speed>(row, 17);
    s.air.sun = row.whole(18) != 0;
    return s;
}

Feed feed_in(StoreConnection& connection, std::int64_t id, const Query& row) {
    const auto rhythm = feed_rhythm(row.text(1), number_or_nothing(row, 2).value_or(0));
    const auto form = value_of<FeedForm>(feed_form_names, row.text(5));
    const auto size = feed_size(row.text(6), row.number(7));
    if (!rhythm || !form || !size)
        throw connection.damaged("a feed as '" + row.text(5) + "', " + row.text(1) + ", " + row.text(6));
    Feed feed;
    feed.when = {*rhythm, Time::from_si(row.number(3)), quantity_or_nothing<Time>(row, 4), row.text(10)};
    feed.form = *form;
    feed.size = *size;
    feed.count = static_cast<int>(std::clamp<std::int64_t>(row.whole(8), -1, beyond_any_count));
    feed.feel = row.text(9);
    Query parts(connection, select_feed_parts, id, row.whole(0));
    while (parts.next()) {
        const auto prepare = value_of<Preparation>(preparation_words, parts.text(2));
        if (!prepare) throw connection.damaged("a part of a feed that is '" + parts.text(2) + "'");
        feed.parts.push_back({parts.text(0), parts.number(1), *prepare, parts.text(3)});
    }
    return feed;
}

Hookbait hookbait_in(const StoreConnection& connection, const Query& row) {
    const std::string measure = row.text(1);
    Hookbait hookbait{row.text(0), BitesPerHour{row.number(2)}};
    if (measure == hookbait_words[1])
        hookbait.amount = Mass::from_si(row.number(2));
    else if (measure == hookbait_words[2])
        hookbait.amount = Volume::from_si(row.number(2));
    else if (measure != hookbait_words[0])
        throw connection.damaged("a hookbait by '" + measure + "'");
    return hookbait;
}

}  // namespace

std::optional<Strategy> read_strategy(StoreConnection& connection, std::string_view name, Reading reading) {
    const StoreConnection::Snapshot snapshot(connection);
    Query row(connection, select_strategy, folded_name(name));
    if (!row.next()) return std::nullopt;
    Strategy strategy = strategy_in(row);
    Query feeds(connection, select_feeds, row.whole(0));
    while (feeds.next()) strategy.feeds.push_back(feed_in(connection, row.whole(0), feeds));
    Query hookbaits(connection, select_hookbaits, row.whole(0));
    while (hookbaits.next()) strategy.hookbaits.push_back(hookbait_in(connection, hookbaits));
    if (const std::string beyond = beyond_range(strategy); reading == Reading::checked && !beyond.empty())
        throw stored_strategy_out_of_range(strategy.name, beyond);
    return strategy;
}

}  // namespace baitwright
