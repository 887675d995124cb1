#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/entry_register.h"
#include "store/query.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* upsert_strategy =
    "INSERT INTO strategy (name, folded, purpose, avoid, why, note, length, spare, depth, temperature, clarity, tow,"
    " tow_bottom, put_ins_per_hour, fish_per_hour, owner, air_temperature, air_humidity, air_wind, air_sun)"
    " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19, ?20)"
    " ON CONFLICT (folded) DO UPDATE SET name = excluded.name, purpose = excluded.purpose, avoid = excluded.avoid,"
    " why = excluded.why, note = excluded.note, length = excluded.length, spare = excluded.spare,"
    " depth = excluded.depth, temperature = excluded.temperature, clarity = excluded.clarity, tow = excluded.tow,"
    " tow_bottom = excluded.tow_bottom, put_ins_per_hour = excluded.put_ins_per_hour,"
    " fish_per_hour = excluded.fish_per_hour, owner = excluded.owner, air_temperature = excluded.air_temperature,"
    " air_humidity = excluded.air_humidity, air_wind = excluded.air_wind, air_sun = excluded.air_sun RETURNING id";
constexpr const char* delete_feed_parts = "DELETE FROM strategy_feed_part WHERE strategy_id = ?1";
constexpr const char* delete_feeds = "DELETE FROM strategy_feed WHERE strategy_id = ?1";
constexpr const char* delete_hookbaits = "DELETE FROM strategy_hookbait WHERE strategy_id = ?1";
constexpr const char* insert_feed =
    "INSERT INTO strategy_feed VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)";
constexpr const char* insert_feed_part = "INSERT INTO strategy_feed_part VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";
constexpr const char* insert_hookbait = "INSERT INTO strategy_hookbait VALUES (?1, ?2, ?3, ?4, ?5)";

template <class Q>
std::optional<double> in_si(const std::optional<Q>& quantity) {
    return quantity ? std::optional(quantity->si()) : std::nullopt;
}

struct RhythmNumber {
    std::optional<double> operator()(AtOnce once) const { return once.at.si(); }
    std::optional<double> operator()(EveryTime every) const { return every.gap.si(); }
    std::optional<double> operator()(EveryPutIn) const { return std::nullopt; }
    std::optional<double> operator()(EveryFish every) const { return every.fish; }
    std::optional<double> operator()(WhenSlow slow) const { return slow.times; }
};

struct HookbaitNumber {
    double operator()(BitesPerHour bites) const { return bites.bites; }
    double operator()(Mass mass) const { return mass.si(); }
    double operator()(Volume volume) const { return volume.si(); }
};

std::optional<double> in_kelvin(const std::optional<Temperature>& temperature) {
    return temperature ? std::optional(temperature->in_kelvin()) : std::nullopt;
}

std::int64_t write_row(StoreConnection& connection, const Strategy& s, EntryOwner owner) {
    Query row(connection, upsert_strategy, s.name, folded_name(s.name), s.purpose, s.avoid, s.why, s.note,
              s.length.si(), s.spare.si(), in_si(s.water.depth), in_kelvin(s.water.temperature), s.water.clarity,
              in_si(s.water.tow), in_si(s.water.tow_bottom), s.pace.put_ins_per_hour, s.pace.fish_per_hour,
              word_of(owner_words, owner), in_kelvin(s.air.temperature), in_si(s.air.humidity), in_si(s.air.wind),
              std::int64_t{s.air.sun});
    row.next();
    return row.whole(0);
}

void write_feed(StoreConnection& connection, std::int64_t id, std::int64_t position, const Feed& feed) {
    const StoredAmount size = stored(feed.size);
    Query(connection, insert_feed, id, position, rhythm_words[feed.when.rhythm.index()],
          std::visit(RhythmNumber{}, feed.when.rhythm), feed.when.from.si(), in_si(feed.when.until), name_of(feed.form),
          size.measure, size.number, std::int64_t{feed.count}, feed.feel, feed.when.after)
        .run();
    std::int64_t part_position = 0;
    for (const FeedPart& part : feed.parts)
        Query(connection, insert_feed_part, id, position, ++part_position, part.of, part.share,
              word_of(preparation_words, part.prepare), part.feel)
            .run();
}

}  // namespace

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
              std::visit(HookbaitNumber{}, hookbait.amount))
            .run();
}

}  // namespace baitwright
