#include "files/strategy_reader.h"

#include "bait/feed_order.h"
#include "files/feed_reader.h"
#include "files/setting_reader.h"

namespace baitwright {

namespace {

/// All that the list has, and which pace is stated, right or wrong.
void read_settings(TableReader& table, Strategy& strategy, SessionFrame& frame) {
    visit_prose(strategy, SettingReader{table});
    visit_extent(strategy, SettingReader{table});
    visit_blocks(strategy, [&](const BlockFacts& facts, auto&& walk) {
        auto block = table.inner(facts.key, facts.owner);
        if (!block) return;
        walk(SettingReader{*block});
        block->refuse_unknown_keys();
    });
    if (strategy.length > Time{}) frame.length = strategy.length;
    const auto pace = table.table()["pace"];
    frame.put_ins = bool(pace["put_ins_per_hour"]);
    frame.fish = bool(pace["fish_per_hour"]);
}

void read_feeds(TableReader& table, const SessionFrame& frame, Entry<Strategy>& entry) {
    if (!table.has("feed"))
        table.faults().add(table.place(), "missing-value", "a strategy has no feed",
                           R"(add a [[feed]] with at = "0 min", of = "...", as = "cup" and its size)");
    table.each_block("feed", "a feed", [&](TableReader& feed) {
        entry.value.feeds.push_back(read_feed(feed, entry.value.feeds.size() + 1, frame, entry.places));
    });
    table.each_block("hookbait", "a hookbait", [&](TableReader& hookbait) {
        entry.value.hookbaits.push_back(read_hookbait(hookbait, entry.value.hookbaits.size() + 1, entry.places));
    });
}

/// Which feed comes after which can be told when all are read; how long the session is must be known for it.
void check_order(const TableReader& table, const Entry<Strategy>& entry) {
    if (!(entry.value.length > Time{})) return;
    for (const Fault& fault : feed_order_faults(entry.value))
        table.faults().add(entry.places.at(fault.subject), fault.code, fault.message, fault.hint);
}

}  // namespace

Entry<Strategy> read_strategy(TableReader& table, EntryNames& names) {
    const std::size_t faults_before = table.faults().count();
    Entry<Strategy> entry;
    Strategy& strategy = entry.value;
    strategy.name = names.claim(table).value_or("");
    entry.places["name"] = table.place_of_value("name");
    SessionFrame frame;
    read_settings(table, strategy, frame);
    read_feeds(table, frame, entry);
    check_order(table, entry);
    table.refuse_unknown_keys();
    entry.faulty = table.faults().count() > faults_before;
    return entry;
}

}  // namespace baitwright
