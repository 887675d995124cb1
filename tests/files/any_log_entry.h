#pragma once

#include <rapidcheck.h>

#include <cmath>
#include <string>
#include <tuple>
#include <vector>

#include "bait/log_entry.h"
#include "bait/strategy.h"
#include "quantities/units.h"

/// Random entries of the log, and whether two are the same but for the last digits that a text rounds away.
namespace any_log {

using namespace baitwright;

inline double between(int low, int high, double step) {
    return *rc::gen::inRange(low, high) * step;
}
inline std::string words() {
    return *rc::gen::element<std::string>("silt bed", "brown crumb", "rich feed", "\"maggots\" & co",
                                          "caf\u00e9 crumb");
}
inline bool maybe() {
    return *rc::gen::arbitrary<bool>();
}
template <class Make>
auto perhaps(Make make) -> std::optional<decltype(make())> {
    return maybe() ? std::optional(make()) : std::nullopt;
}

inline LoggedSession session() {
    LoggedSession made;
    if (maybe()) made.strategy = words();
    if (maybe()) made.start = "09:30";
    if (maybe()) made.length = between(1, 4320, 1) * minute;
    made.anglers = *rc::gen::inRange(1, 1001);
    if (maybe()) made.page = "5d1f0c9a";
    if (maybe()) made.venue = words();
    if (maybe()) made.clarity = clarity_names[static_cast<std::size_t>(*rc::gen::inRange(0, 3))];
    made.water = perhaps([] { return Temperature::from_celsius(between(0, 400, 0.1)); });
    made.cost = perhaps([] { return Money(*rc::gen::inRange(0, 100000), currency_named("GBP")); });
    if (maybe()) made.note = "wind got up,\n\"gusty\"\tand \\ cold";
    return made;
}
inline LoggedMix mix() {
    LoggedMix made;
    made.of = words();
    if (maybe()) made.feel = "firm";
    made.wetness = perhaps([] { return Ratio(between(50, 3000, 0.001)); });
    made.within = between(0, 500, 0.001);
    const Mass dry = between(1, 5000, 1) * gram;
    if (maybe()) made.dry = dry;
    made.water = perhaps([&] { return between(1, 3000, 0.001) * dry; });
    made.wetting = between(0, 500, 0.1) * gram;
    for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
        made.parts.push_back(
            {words(), between(1, 250, 0.001) * dry, perhaps([] { return Ratio(between(0, 900, 0.001)); })});
    return made;
}
inline LoggedLook look() {
    LoggedLook made;
    made.of = words();
    if (maybe()) made.feel = "soft";
    if (maybe())
        made.form = between(1, 2000, 1) * millilitre;
    else
        made.form = between(5, 200, 1) * millimetre;
    if (std::holds_alternative<Length>(made.form)) made.squeeze = static_cast<Squeeze>(*rc::gen::inRange(0, 3));
    made.holds = between(1, 5000, 1) * second;
    if (maybe()) made.depth = between(100, 1000, 1) * centimetre;
    made.breaks_at = perhaps([] { return between(1, 100, 1) * centimetre; });
    made.carpet = perhaps([] { return between(1, 1000, 1) * centimetre; });
    return made;
}
inline LoggedSoak soak() {
    const Mass dry = between(1, 1000, 1) * gram;
    return {words(), dry, between(101, 600, 0.01) * dry, between(1, 4320, 1) * minute,
            Temperature::from_celsius(between(0, 40, 1))};
}
inline LoggedCatch caught() {
    return {perhaps([] { return between(-600, 600, 1) * minute; }), maybe() ? "bream" : "", *rc::gen::inRange(0, 200),
            perhaps([] { return between(1, 90000, 1) * gram; })};
}

/// One of any kind; those that only a session can hold where that is asked for.
enum class Belonging { to_none, to_a_session };
inline LoggedThing thing(Belonging belonging) {
    switch (*rc::gen::inRange(0, belonging == Belonging::to_none ? 6 : 8)) {
        case 0:
            return mix();
        case 1:
            return soak();
        case 2:
            return LoggedWeight{words(), maybe() ? "soft" : "", 1.0 * litre, between(50, 3000, 1) * gram};
        case 3:
            return look();
        case 4:
            return LoggedBag{words()};
        case 5:
            return caught();
        case 6:
            return LoggedPutIn{perhaps([] { return between(0, 300, 1) * minute; }), maybe() ? words() : ""};
        default:
            return LoggedUse{words(), maybe() ? MassOrVolume(between(1, 900, 1) * gram)
                                              : MassOrVolume(between(1, 900, 1) * millilitre)};
    }
}
inline LogEntry entry(LoggedThing what, std::int64_t id, std::int64_t session_id, Date on) {
    LogEntry made;
    made.id = id;
    made.on = on;
    made.session = session_id;
    made.what = std::move(what);
    made.believed = maybe();
    return made;
}

// Whether two are the same.
inline bool near(double a, double b) {
    return std::abs(a - b) <= 1e-11 * std::max(1.0, std::max(std::abs(a), std::abs(b)));
}
template <class D>
bool near(Quantity<D> a, Quantity<D> b) {
    return std::abs(a.si() - b.si()) <= 2e-12 * std::abs(a.si());
}
inline bool near(Temperature a, Temperature b) {
    return near(a.in_kelvin(), b.in_kelvin());
}
inline bool near(const Money& a, const Money& b) {
    return a == b;
}
template <class T>
bool near(const std::optional<T>& a, const std::optional<T>& b) {
    return a.has_value() == b.has_value() && (!a || near(*a, *b));
}
template <class... Ts>
bool near(const std::variant<Ts...>& a, const std::variant<Ts...>& b) {
    return a.index() == b.index() &&
           std::visit([&](const auto& one) { return near(one, std::get<std::decay_t<decltype(one)>>(b)); }, a);
}
inline bool near(const LoggedSession& a, const LoggedSession& b) {
    return std::tie(a.strategy, a.start, a.anglers, a.page, a.venue, a.clarity, a.note) ==
               std::tie(b.strategy, b.start, b.anglers, b.page, b.venue, b.clarity, b.note) &&
           near(a.length, b.length) && near(a.water, b.water) && near(a.cost, b.cost);
}
inline bool near(const LoggedPutIn& a, const LoggedPutIn& b) {
    return a.of == b.of && near(a.at, b.at);
}
inline bool near(const LoggedUse& a, const LoggedUse& b) {
    return a.of == b.of && near(a.amount, b.amount);
}
inline bool near(const LoggedCatch& a, const LoggedCatch& b) {
    return a.fish == b.fish && a.count == b.count && near(a.at, b.at) && near(a.mass, b.mass);
}
inline bool near(const LoggedMix& a, const LoggedMix& b) {
    if (a.parts.size() != b.parts.size()) return false;
    for (std::size_t i = 0; i < a.parts.size(); ++i)
        if (a.parts[i].of != b.parts[i].of || !near(a.parts[i].mass, b.parts[i].mass) ||
            !near(a.parts[i].moisture, b.parts[i].moisture))
            return false;
    return a.of == b.of && a.feel == b.feel && near(a.wetness, b.wetness) && near(a.within, b.within) &&
           near(a.dry, b.dry) && near(a.water, b.water) && near(a.wetting, b.wetting);
}
inline bool near(const LoggedSoak& a, const LoggedSoak& b) {
    return a.of == b.of && near(a.dry, b.dry) && near(a.drained, b.drained) && near(a.under_water, b.under_water) &&
           near(a.water, b.water);
}
inline bool near(const LoggedWeight& a, const LoggedWeight& b) {
    return a.of == b.of && a.feel == b.feel && near(a.vessel, b.vessel) && near(a.mass, b.mass);
}
inline bool near(const LoggedLook& a, const LoggedLook& b) {
    return a.of == b.of && a.feel == b.feel && near(a.form, b.form) && a.squeeze == b.squeeze &&
           near(a.depth, b.depth) && near(a.holds, b.holds) && near(a.breaks_at, b.breaks_at) &&
           near(a.carpet, b.carpet);
}
inline bool near(const LoggedBag& a, const LoggedBag& b) {
    return a.of == b.of;
}
inline bool near(const LogUndone& a, const LogUndone& b) {
    return a.entry == b.entry;
}
inline bool same(const LogEntry& a, const LogEntry& b) {
    return a.on == b.on && a.believed == b.believed && a.what.index() == b.what.index() &&
           std::visit([&](const auto& one) { return near(one, std::get<std::decay_t<decltype(one)>>(b.what)); },
                      a.what);
}

}  // namespace any_log
