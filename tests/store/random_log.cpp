#include "store/random_log.h"

#include <cstdio>

#include "quantities/units.h"
#include "store/random_entries.h"

namespace baitwright {

namespace {

int log_below(int end) {
    return *rc::gen::inRange(0, end);
}
bool log_coin() {
    return log_below(2) == 1;
}

double between(double low, double high) {
    return low + (high - low) * static_cast<double>(*rc::gen::arbitrary<std::uint32_t>()) / 4294967296.0;
}
template <class Q>
Q up_to(Q most) {
    return Q::from_si(between(0, most.si()));
}
template <class Q>
std::optional<Q> perhaps(Q value) {
    return log_coin() ? std::optional(value) : std::nullopt;
}
Mass any_logged_mass() {
    return up_to(10000.0 * kilogram);
}
std::optional<Time> any_clock() {
    return perhaps(Time::from_si(between(-80000, 80000)));
}
Temperature any_water() {
    return Temperature::from_celsius(between(0, 40));
}

LoggedSession any_session() {
    LoggedSession session{any_text()};
    session.start = any_text();
    session.length = up_to(72.0 * hour);
    session.anglers = 1 + log_below(1000);
    session.page = any_text();
    session.venue = any_text();
    session.clarity = any_text();
    if (log_coin()) session.water = any_water();
    if (log_coin()) session.cost = Money(log_below(100000000), currency_named(log_coin() ? "GBP" : "JPY"));
    session.note = any_text();
    return session;
}

LoggedMix any_logged_mix() {
    LoggedMix mix{any_text(), any_text()};
    mix.wetness = perhaps(Ratio(between(0, 3)));
    mix.within = between(0, 1);
    mix.dry = perhaps(any_logged_mass());
    mix.water = perhaps(any_logged_mass());
    mix.wetting = any_logged_mass();
    for (int left = log_below(7); left > 0; --left)
        mix.parts.push_back({any_text(), any_logged_mass(), perhaps(Ratio(between(0, 0.9)))});
    return mix;
}

LoggedLook any_look() {
    LoggedLook look{any_text(), any_text()};
    if (log_coin())
        look.form = up_to(0.2 * metre);
    else
        look.form = up_to(20.0 * litre);
    look.squeeze = static_cast<Squeeze>(log_below(3));
    look.depth = up_to(100.0 * metre);
    look.holds = perhaps(up_to(24.0 * hour));
    look.breaks_at = perhaps(up_to(100.0 * metre));
    look.carpet = perhaps(up_to(20.0 * metre));
    return look;
}

// Hexadecimal: every bit shows.
std::string log_line(double number) {
    char text[64];
    std::snprintf(text, sizeof text, "%a\n", number);
    return text;
}
std::string log_line(const std::string& text) {
    return std::to_string(text.size()) + ":" + text + "\n";
}
template <class D>
std::string log_line(Quantity<D> quantity) {
    return log_line(quantity.si());
}
std::string log_line(Temperature temperature) {
    return log_line(temperature.in_kelvin());
}
std::string log_line(const Money& money) {
    return std::to_string(money.minor()) + std::string(money.currency().code) + "\n";
}
template <class... Either>
std::string log_line(const std::variant<Either...>& either) {
    return std::to_string(either.index()) + " " + std::visit([](auto one_of) { return log_line(one_of); }, either);
}
template <class Q>
std::string log_line(const std::optional<Q>& said) {
    return said ? log_line(*said) : "none\n";
}

struct WriteOut {
    std::string operator()(const LoggedSession& s) const {
        return log_line(s.strategy) + log_line(s.start) + log_line(s.length) + std::to_string(s.anglers) +
               log_line(s.page) + log_line(s.venue) + log_line(s.clarity) + log_line(s.water) + log_line(s.cost) +
               log_line(s.note);
    }
    std::string operator()(const LoggedPutIn& p) const { return log_line(p.at) + log_line(p.of); }
    std::string operator()(const LoggedUse& u) const { return log_line(u.of) + log_line(u.amount); }
    std::string operator()(const LoggedCatch& c) const {
        return log_line(c.at) + log_line(c.fish) + std::to_string(c.count) + " " + log_line(c.mass);
    }
    std::string operator()(const LoggedMix& m) const {
        std::string text = log_line(m.of) + log_line(m.feel) + log_line(m.wetness) + log_line(m.within) +
                           log_line(m.dry) + log_line(m.water) + log_line(m.wetting);
        for (const WeighedPart& part : m.parts)
            text += log_line(part.of) + log_line(part.mass) + log_line(part.moisture);
        return text;
    }
    std::string operator()(const LoggedSoak& s) const {
        return log_line(s.of) + log_line(s.dry) + log_line(s.drained) + log_line(s.under_water) + log_line(s.water);
    }
    std::string operator()(const LoggedWeight& w) const {
        return log_line(w.of) + log_line(w.feel) + log_line(w.vessel) + log_line(w.mass);
    }
    std::string operator()(const LoggedLook& l) const {
        return log_line(l.of) + log_line(l.feel) + log_line(l.form) + std::to_string(static_cast<int>(l.squeeze)) +
               log_line(l.depth) + log_line(l.holds) + log_line(l.breaks_at) + log_line(l.carpet);
    }
    std::string operator()(const LoggedBag& bag) const { return log_line(bag.of); }
    std::string operator()(const LogUndone& undone) const { return std::to_string(undone.entry); }
};

}  // namespace

LoggedThing any_logged(std::size_t kind) {
    switch (kind) {
        case 0:
            return any_session();
        case 1:
            return LoggedPutIn{any_clock(), any_text()};
        case 2: {
            LoggedUse use{any_text(), any_logged_mass()};
            if (log_coin()) use.amount = up_to(10000.0 * litre);
            return use;
        }
        case 3:
            return LoggedCatch{any_clock(), any_text(), log_below(100000), perhaps(any_logged_mass())};
        case 4:
            return any_logged_mix();
        case 5:
            return LoggedSoak{any_text(), any_logged_mass(), any_logged_mass(), up_to(72.0 * hour), any_water()};
        case 6:
            return LoggedWeight{any_text(), any_text(), up_to(20.0 * litre), any_logged_mass()};
        case 7:
            return any_look();
        default:
            return LoggedBag{any_text()};
    }
}

LogEntry any_log_entry() {
    LogEntry entry;
    entry.on = parse_date("2000-01-01") + std::chrono::days(log_below(20000));
    entry.what = any_logged(static_cast<std::size_t>(log_below(9)));
    entry.believed = log_coin();
    return entry;
}

std::string written_out(const LogEntry& entry) {
    return std::string(name_of(entry.what)) + " " + date_text(entry.on) + " of " + std::to_string(entry.session) +
           (entry.believed ? " believed\n" : "\n") + std::visit(WriteOut{}, entry.what);
}

LearntWater any_learnt(std::size_t bags, std::size_t rank) {
    LearntWater water{between(-1, 1), between(-1, 1), {}, rank, {}};
    for (std::size_t i = 1; i <= bags; ++i)
        water.bags.push_back({"bag " + std::to_string(i), between(-2, 1), between(-2, 1), log_below(50),
                              log_below(2) ? between(0, 1) : 0.0, log_below(2) ? between(0, 1) : 0.0});
    for (std::size_t i = 0; i < (2 + 2 * bags) * rank; ++i) water.factor.push_back(between(-1, 1));
    return water;
}

std::string written_out(const LearntWater& water) {
    std::string text = log_line(water.log_hand) + log_line(water.log_memory);
    for (const LearntWater::Bag& bag : water.bags)
        text += log_line(bag.name) + log_line(bag.log_absorption) + log_line(bag.log_gap) + std::to_string(bag.mixes) +
                log_line(bag.measured_absorption) + log_line(bag.measured_slump);
    text += " rank " + std::to_string(water.rank) + "\n";
    for (const double number : water.factor) text += log_line(number);
    return text;
}

}  // namespace baitwright
