#include "files/feed_timing_reader.h"

#include <cmath>

#include "files/setting_reader.h"
#include "quantities/hair.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using namespace strategy_limits;

constexpr std::string_view rhythms = R"(a time such as "40 min", "put-in", or "6 fish")";
constexpr std::string_view words_of_when = R"(it can be "slow", "start", "put-in" or "6 fish")";

/// A hair less than the end, so that 300 min of a session of 5 h are its end whatever their units round to.
bool is_before(Time moment, Time end) {
    return moment < end - hair;
}

void refuse_after_end(const TableReader& table, std::string_view key) {
    table.faults().add(table.place_of_value(key), "after-end", in_quotes(key) + " is not before the end of the session",
                       "feed earlier, or make the session longer with length = \"...\"");
}

std::optional<FeedRhythm> fish_of(std::string_view text, std::string_view key) {
    std::string_view rest = text;
    const auto count = take_number(rest);
    if (!count || folded_name(rest) != "fish") return std::nullopt;
    if (!(*count >= 1 && *count <= most_fish) || *count != std::floor(*count))
        throw InputError("out-of-range", in_quotes(text) + " must count whole fish, from 1 to 1000",
                         "as in " + std::string(key) + " = \"6 fish\"");
    return EveryFish{static_cast<int>(*count)};
}

FeedRhythm parse_every(std::string_view text) {
    if (folded_name(text) == "put-in") return EveryPutIn{};
    if (const auto fish = fish_of(text, "every")) return *fish;
    std::string_view rest = text;
    if (!take_number(rest)) {
        const std::string near = did_you_mean(text, {"put-in"});
        throw InputError("unknown-word", "'every' cannot be " + in_quotes(text),
                         near.empty() ? "it can be " + std::string(rhythms) : near);
    }
    const Time gap = parse<Time>(text);
    if (!(gap >= shortest_gap && gap <= longest_gap))
        throw InputError("out-of-range", "'every' must be from 1 s to 24 h, not " + in_quotes(text),
                         R"(write it as in every = "40 min")");
    return EveryTime{gap};
}

/// In words. A time has keys of its own.
FeedRhythm parse_when(std::string_view text) {
    const std::string word = folded_name(text);
    if (word == "slow") return WhenSlow{};
    if (word == "start") return AtOnce{};
    if (word == "put-in") return EveryPutIn{};
    if (const auto fish = fish_of(text, "when")) return *fish;
    std::string_view rest = text;
    const std::string near = did_you_mean(text, {"slow", "start", "put-in"});
    throw InputError("unknown-word", "'when' cannot be " + in_quotes(text),
                     take_number(rest) ? R"(a time goes with at = "20 min", or with every = "40 min")"
                     : near.empty()    ? std::string(words_of_when)
                                       : near);
}

void check_pace(const TableReader& table, std::string_view key, const FeedRhythm& rhythm, const SessionFrame& frame) {
    if (std::holds_alternative<EveryPutIn>(rhythm) && !frame.put_ins)
        table.faults().add(table.place_of_value(key), "no-pace", "it is fed by the put-in, but no pace is stated",
                           "add a block [pace] with put_ins_per_hour = 12");
    if (std::holds_alternative<EveryFish>(rhythm) && !frame.fish)
        table.faults().add(table.place_of_value(key), "no-pace", "it is fed by the fish, but no pace is stated",
                           "add a block [pace] with fish_per_hour = 10");
}

void refuse_beside_once(TableReader& table, const FeedTiming& when) {
    visit_span(when, [&](const SettingNames& facts, const auto&) {
        if (table.find(facts.key))
            table.faults().add(table.place_of_key(facts.key), "unfit-key",
                               in_quotes(facts.key) + " goes with 'every', and this feed goes in once",
                               "take the line out, or say every = \"40 min\"");
    });
}

void check_span(const TableReader& table, const SessionFrame& frame, const FeedTiming& when) {
    if (frame.length && !is_before(when.from, *frame.length)) refuse_after_end(table, "from");
    if (!when.until) return;
    if (!is_before(when.from, *when.until))
        table.faults().add(table.place_of_value("until"), "inconsistent-values", "'until' must be after 'from'",
                           "a feed runs from the one up to the other");
    if (frame.length && is_before(*frame.length, *when.until))
        table.faults().add(table.place_of_value("until"), "after-end", "'until' is after the end of the session",
                           "leave it out, to feed until the end");
}

/// What it waits for. `from` would say a second time when it begins.
void check_after(const TableReader& table, FeedTiming& when) {
    if (!table.has("after")) return;
    if (std::holds_alternative<WhenSlow>(when.rhythm))
        table.faults().add(table.place_of_key("after"), "unfit-key",
                           "'after' goes with 'every', and this feed goes in as bites slow",
                           "take the line out, or say from = \"60 min\"");
    else if (table.has("from"))
        table.faults().add(table.place_of_key("from"), "unfit-key", "'from' and 'after' both say when the feed begins",
                           "take one of the two lines out");
    else
        return;
    when.after.clear();
}

/// How often bites are reckoned to slow; only what is fed then has it.
void read_expected(TableReader& table, FeedTiming& when) {
    auto* slow = std::get_if<WhenSlow>(&when.rhythm);
    if (!slow) {
        if (table.find("expected"))
            table.faults().add(table.place_of_key("expected"), "unfit-key",
                               "'expected' goes with when = \"slow\", and this feed goes in at set times",
                               "take the line out");
        return;
    }
    const auto times = table.number("expected", fewest_slow_times, most_slow_times);
    slow->times = times.value_or(slow->times);
}

/// The key that says when; empty where none does, or several do, which is a fault.
std::string_view key_of_timing(TableReader& table) {
    std::string_view said;
    for (const std::string_view key : {"at", "every", "when"}) {
        if (!table.find(key)) continue;
        if (!said.empty()) {
            table.faults().add(table.place_of_key(key), "two-times", "the feed says twice when it goes in",
                               R"(say at = "0 min", or every = "40 min")");
            return {};
        }
        said = key;
    }
    if (said.empty())
        table.faults().add(table.place(), "no-time", "the feed does not say when it goes in",
                           R"(say at = "0 min", or every = "40 min", or when = "slow")");
    return said;
}

std::optional<FeedRhythm> read_rhythm(TableReader& table, std::string_view key, const SessionFrame& frame) {
    if (key == "every") return parsed(table, key, "40 min", parse_every);
    if (key == "when") return parsed(table, key, "slow", parse_when);
    std::optional<Time> moment;
    SettingReader{table}(MomentFacts{called(key, {}), "0 min"}, moment);
    if (moment && frame.length && !is_before(*moment, *frame.length)) refuse_after_end(table, key);
    return moment ? std::optional<FeedRhythm>(AtOnce{*moment}) : std::nullopt;
}

}  // namespace

FeedTiming read_timing(TableReader& table, const SessionFrame& frame) {
    FeedTiming when{AtOnce{}, {}, {}};
    const std::string_view key = key_of_timing(table);
    const auto rhythm = key.empty() ? std::nullopt : read_rhythm(table, key, frame);
    if (!rhythm) {  // what is said of a time that could not be read is not looked at
        for (const char* beside : {"at", "every", "when", "expected"}) table.find(beside);
        visit_span(when, [&](const SettingNames& facts, const auto&) { table.find(facts.key); });
        return when;
    }
    when.rhythm = *rhythm;
    check_pace(table, key, *rhythm, frame);
    read_expected(table, when);
    if (std::holds_alternative<AtOnce>(*rhythm)) {
        refuse_beside_once(table, when);
        return when;
    }
    visit_span(when, SettingReader{table});
    check_after(table, when);
    check_span(table, frame, when);
    return when;
}

}  // namespace baitwright
