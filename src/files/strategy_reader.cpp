#include "files/strategy_reader.h"

#include "bait/feed_order.h"
#include "bait/strategy_limits.h"
#include "files/feed_reader.h"
#include "files/value_reader.h"
#include "quantities/in_quotes.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using namespace strategy_limits;

/// A value that must lie in the range, which `range` names in words.
template <class Q>
std::optional<Q> between(TableReader& table, std::string_view key, std::string_view example, Q lowest, Q highest,
                         std::string_view range) {
    const auto value = parsed(table, key, example, [](std::string_view text) { return parse<Q>(text); });
    if (!value || (*value >= lowest && *value <= highest)) return value;
    table.faults().add(table.place_of_value(key), "out-of-range",
                       in_quotes(key) + " must be " + std::string(range) + ", not " + shown(*table.find(key)),
                       "write it as in \"" + std::string(example) + "\"");
    return std::nullopt;
}

std::optional<Time> read_length(TableReader& table) {
    if (!table.required("length", "\"5 h\"")) return std::nullopt;
    return between<Time>(table, "length", "5 h", shortest_session, longest_session, session_range);
}

WaterSetting read_water(TableReader& table) {
    WaterSetting water;
    auto block = table.inner("water", "the water of a strategy");
    if (!block) return water;
    water.depth = between<Length>(*block, "depth", "2.5 m", shallowest, deepest, depth_range);
    water.temperature =
        between<Temperature>(*block, "temperature", "12 degC", Temperature::from_celsius(coldest_celsius),
                             Temperature::from_celsius(warmest_celsius), warmth_range);
    water.clarity = block->word("clarity", {clarity_names.begin(), clarity_names.end()}).value_or("");
    water.tow = between<Speed>(*block, "tow", "2 cm/s", Speed{}, fastest_tow, "from 0 to 5 m/s");
    water.tow_bottom = between<Speed>(*block, "tow_bottom", "1 cm/s", -fastest_tow, fastest_tow, "from -5 to 5 m/s");
    block->refuse_unknown_keys();
    return water;
}

AirSetting read_air(TableReader& table) {
    AirSetting air;
    auto block = table.inner("air", "the air of a strategy");
    if (!block) return air;
    air.temperature =
        between<Temperature>(*block, "temperature", "30 degC", Temperature::from_celsius(coldest_air_celsius),
                             Temperature::from_celsius(warmest_air_celsius), air_range);
    air.humidity = between<Ratio>(*block, "humidity", "40 %", 0.0, 1.0, humidity_range);
    air.wind = between<Speed>(*block, "wind", "3 m/s", Speed{}, strongest_wind, wind_range);
    air.sun = block->truth("sun").value_or(false);
    block->refuse_unknown_keys();
    return air;
}

std::optional<double> read_rate(TableReader& table, std::string_view key) {
    const auto rate = table.number(key, 0, fastest_pace);
    if (!rate || *rate > 0) return rate;
    table.faults().add(table.place_of_value(key), "out-of-range", in_quotes(key) + " must be above 0",
                       "write " + std::string(key) + " = 6");
    return std::nullopt;
}

/// The pace, and which of it is stated, right or wrong.
Pace read_pace(TableReader& table, SessionFrame& frame) {
    Pace pace;
    auto block = table.inner("pace", "the pace of a strategy");
    if (!block) return pace;
    frame.put_ins = block->has("put_ins_per_hour");
    frame.fish = block->has("fish_per_hour");
    pace.put_ins_per_hour = read_rate(*block, "put_ins_per_hour");
    pace.fish_per_hour = read_rate(*block, "fish_per_hour");
    block->refuse_unknown_keys();
    return pace;
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
    strategy.purpose = table.prose("purpose");
    strategy.avoid = table.prose("avoid");
    strategy.why = table.prose("why");
    strategy.note = table.prose("note");
    SessionFrame frame;
    frame.length = read_length(table);
    strategy.length = frame.length.value_or(Time{});
    strategy.spare = between<Ratio>(table, "spare", "10 %", 0.0, most_spare, spare_range).value_or(0.10);
    strategy.water = read_water(table);
    strategy.air = read_air(table);
    strategy.pace = read_pace(table, frame);
    read_feeds(table, frame, entry);
    check_order(table, entry);
    table.refuse_unknown_keys();
    entry.faulty = table.faults().count() > faults_before;
    return entry;
}

}  // namespace baitwright
