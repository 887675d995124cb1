#pragma once

#include <array>
#include <string_view>

#include "bait/strategy.h"
#include "bait/strategy_limits.h"
#include "quantities/units.h"

/// The one list of what a strategy and its feeds state, but for the rhythm, the parts and the size of a feed. Reading,
/// writing, checking, storing, showing, JSON and a page's data all walk it, so that a new key is one member in
/// `strategy.h`, one line here and one column of the store.
namespace baitwright {

/// What a setting is called.
struct SettingNames {
    std::string_view key;     ///< in files
    std::string_view column;  ///< in the store
    std::string_view json;
    std::string_view carried;  ///< in a page's data
    std::string_view told;     ///< its value in place of the braces; of prose, the word before it
};
/// Called alike but in JSON, where the unit is in the name.
constexpr SettingNames called(std::string_view key, std::string_view json, std::string_view told = {}) {
    return {key, key, json, key, told};
}

struct ProseFacts : SettingNames {};
struct NameFacts : SettingNames {};
struct TruthFacts : SettingNames {};
struct RateFacts : SettingNames {};  ///< so many an hour: above 0, at most `fastest_pace`
struct MomentFacts : SettingNames {  ///< of the session
    std::string_view example;
};
struct WordFacts : SettingNames {
    const std::array<std::string_view, 3>& words;
};
template <class Q>
struct RangeFacts : SettingNames {
    std::string_view example;
    Q lowest, highest;
    std::string_view range;              ///< in words, behind "must be"
    std::string_view what;               ///< before "must be", where it is a stored one
    std::string_view stored_range = {};  ///< what then stands behind it, where that is not `range`
};
template <class D>
struct MeasureFacts : RangeFacts<Quantity<D>> {
    Unit<D> unit;  ///< in files and JSON, but that a ratio is a plain number in JSON
    std::string_view symbol;
};
template <class D>
constexpr MeasureFacts<D> measure(const SettingNames& names, std::string_view example, Quantity<D> lowest,
                                  Quantity<D> highest, std::string_view range, Unit<D> unit, std::string_view symbol,
                                  std::string_view what, std::string_view stored_range = {}) {
    return {{names, example, lowest, highest, range, what, stored_range}, unit, symbol};
}
constexpr RangeFacts<Temperature> warmth(const SettingNames& names, std::string_view example, double coldest_celsius,
                                         double warmest_celsius, std::string_view range, std::string_view what) {
    return {names, example, Temperature::from_celsius(coldest_celsius), Temperature::from_celsius(warmest_celsius),
            range, what};
}

struct BlockFacts {
    std::string_view key;
    std::string_view owner;  ///< of its keys, in messages
    std::string_view told;
};

/// Each of these calls `visit(facts, strategy.member)` for each setting, in the order in which files are written.
template <class AStrategy, class Visit>
void visit_prose(AStrategy& s, Visit&& visit) {
    visit(ProseFacts{called("purpose", "purpose", "For")}, s.purpose);
    visit(ProseFacts{called("avoid", "avoid", "Not for")}, s.avoid);
    visit(ProseFacts{called("why", "why", "Why")}, s.why);
    visit(ProseFacts{called("note", "note", "Note")}, s.note);
}

template <class AStrategy, class Visit>
void visit_extent(AStrategy& s, Visit&& visit) {
    visit(measure(called("length", "length_minutes"), "5 h", 1.0 * minute, 24.0 * hour, "from 1 min to 24 h", minute,
                  "min", "the session"),
          s.length);
    visit(measure(called("spare", "spare"), "10 %", 0.0 * one, 5.0 * one, "from 0 to 500 %", percent, "%",
                  "what is to spare"),
          s.spare);
}

/// Calls `visit(facts, walk)` for each block; `walk(visit_setting)` walks what stands in it.
template <class AStrategy, class Visit>
void visit_blocks(AStrategy& s, Visit&& visit) {
    using namespace strategy_limits;
    visit(BlockFacts{"water", "the water of a strategy", "Water"}, [&w = s.water](auto&& each) {
        each(measure(called("depth", "depth_m", "{} deep"), "2.5 m", 1.0 * centimetre, deepest, "from 1 cm to 100 m",
                     metre, "m", "the depth"),
             w.depth);
        each(warmth(called("temperature", "temperature_c", "{}"), "12 degC", coldest_celsius, warmest_celsius,
                    "from 0 to 40 degC", "the water"),
             w.temperature);
        each(WordFacts{called("clarity", "clarity", "{}"), clarity_names}, w.clarity);
        each(measure(called("tow", "tow_cm_s", "tow {}"), "2 cm/s", Speed{}, fastest_tow, "from 0 to 5 m/s",
                     centimetre_per_second, "cm/s", "the tow", "at most 5 m/s"),
             w.tow);
        each(measure(called("tow_bottom", "tow_bottom_cm_s", "{} at the bottom"), "1 cm/s", -fastest_tow, fastest_tow,
                     "from -5 to 5 m/s", centimetre_per_second, "cm/s", "the tow", "at most 5 m/s"),
             w.tow_bottom);
    });
    visit(BlockFacts{"air", "the air of a strategy", "Air"}, [&a = s.air](auto&& each) {
        each(warmth({"temperature", "air_temperature", "temperature_c", "air", "{}"}, "30 degC", -5, 45,
                    "from -5 to 45 degC", "the air"),
             a.temperature);
        each(measure({"humidity", "air_humidity", "humidity", "humidity", "{} humid"}, "40 %", 0.0 * one, 1.0 * one,
                     "from 0 to 100 %", percent, "%", "the humidity"),
             a.humidity);
        each(measure({"wind", "air_wind", "wind_m_s", "wind", "wind {}"}, "3 m/s", Speed{}, 20.0 * metre_per_second,
                     "from 0 to 20 m/s", metre_per_second, "m/s", "the wind"),
             a.wind);
        each(TruthFacts{{"sun", "air_sun", "sun", "sun", "in the sun"}}, a.sun);
    });
    visit(BlockFacts{"pace", "the pace of a strategy", "Pace"}, [&p = s.pace](auto&& each) {
        each(RateFacts{called("put_ins_per_hour", "put_ins_per_hour", "{} put-ins an hour")}, p.put_ins_per_hour);
        each(RateFacts{called("fish_per_hour", "fish_per_hour", "{} fish an hour")}, p.fish_per_hour);
    });
}

/// All of them, but for the name.
template <class AStrategy, class Visit>
void visit_settings(AStrategy& s, Visit&& visit) {
    visit_prose(s, visit);
    visit_extent(s, visit);
    visit_blocks(s, [&](const BlockFacts&, auto&& walk) { walk(visit); });
}

/// What stands beside the rhythm of a feed that repeats.
template <class ATiming, class Visit>
void visit_span(ATiming& t, Visit&& visit) {
    visit(MomentFacts{{"from", "starts", "from_minute", "from", " from {}"}, "60 min"}, t.from);
    visit(MomentFacts{called("until", "until_minute", " to {}"), "270 min"}, t.until);
    visit(NameFacts{{"after", "begins_after", "after", "after", " once {} is used up"}}, t.after);
}

/// What stands beside the size of a feed.
template <class AFeed, class Visit>
void visit_helping(AFeed& f, Visit&& visit) {
    constexpr int most = strategy_limits::most_at_once;
    visit(RangeFacts<int>{called("count", "count"), "3", 1, most, "from 1 to 1000", "the count"}, f.count);
    visit(NameFacts{called("feel", "feel", "{}")}, f.feel);
}

template <class AFeed, class Visit>
void visit_feed_settings(AFeed& f, Visit&& visit) {
    visit_span(f.when, visit);
    visit_helping(f, visit);
}

}  // namespace baitwright
