#include "files/logged_things_reader.h"

#include "bait/strategy.h"
#include "files/value_reader.h"
#include "quantities/amount_range.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr int most_logged = 1000000;

/// A number of hours may stand without its unit, as it is typed on the phone.
Time noted_hours(std::string_view text) {
    return is_bare_number(text) ? parse_number(text) * hour : parse<Time>(text);
}

std::string noted_clock(std::string_view text) {
    return clock_text(parse_clock(text));
}

std::optional<Time> read_moment(TableReader& table) {
    return parsed(table, "at", "75 min", [](std::string_view text) { return parse<Time>(text); });
}

template <class Q>
std::optional<Q> read_seen(TableReader& table, std::string_view key, std::string_view example) {
    return parsed(table, key, example, [](std::string_view text) { return in_range(parse<Q>(text)); });
}

template <class Q>
Q required_amount(TableReader& table, std::string_view key, std::string_view example) {
    if (!table.required(key, '"' + std::string(example) + '"')) return {};
    return amount_of<Q>(table, key, example).value_or(Q{});
}

/// Water by volume, or weighed: a millilitre is a gram.
std::optional<Mass> read_poured(TableReader& table) {
    const auto amount = parsed(table, "water", "740 ml", parse_mass_or_volume);
    if (!amount) return std::nullopt;
    if (const auto* volume = std::get_if<Volume>(&*amount)) {
        check_amount(*table.find("water"), "water", *volume, table.faults());
        return volume->in(millilitre)*gram;
    }
    check_amount(*table.find("water"), "water", std::get<Mass>(*amount), table.faults());
    return std::get<Mass>(*amount);
}

std::optional<Temperature> read_water_temperature(TableReader& table) {
    return parsed(table, "water_temperature", "12 degC",
                  [](std::string_view text) { return parse<Temperature>(text); });
}

std::optional<int> read_whole(TableReader& table, std::string_view key, int lowest) {
    const auto number = table.number(key, lowest, most_logged);
    if (!number || *number == static_cast<int>(*number)) return number;
    table.faults().add(table.place_of_value(key), "out-of-range", in_quotes(key) + " must be a whole number",
                       "write " + std::string(key) + " = 2");
    return std::nullopt;
}

WeighedPart read_weighed_part(TableReader& table) {
    WeighedPart part;
    part.of = table.name("of").value_or("");
    part.mass = required_amount<Mass>(table, "mass", "300 g");
    part.moisture = parsed(table, "moisture", "9 %", [](std::string_view text) { return parse<Ratio>(text); });
    table.refuse_unknown_keys();
    return part;
}

/// One of `cup` and `ball`.
std::variant<Volume, Length> read_seen_form(TableReader& table) {
    const bool cup = table.has("cup"), ball = table.has("ball");
    if (cup == ball)
        table.faults().add(cup ? table.place_of_key("ball") : table.place(), cup ? "two-forms" : "no-form",
                           cup ? "it is a cup and a ball at once" : "it is neither a cup nor a ball",
                           R"(say cup = "250 ml" or ball = "55 mm")");
    const auto volume = parsed(table, "cup", "250 ml", parse_vessel_size);
    const auto width = parsed(table, "ball", "55 mm", parse_ball_size);
    if (width) return *width;
    return volume.value_or(Volume{});
}

}  // namespace

LoggedSession read_logged_session(TableReader& table) {
    LoggedSession session;
    session.strategy = table.other_name("strategy");
    session.start = parsed(table, "start", "09:30", noted_clock).value_or("");
    session.length = parsed(table, "length", "5 h", noted_hours).value_or(Time{});
    session.anglers = read_whole(table, "anglers", 1).value_or(1);
    session.page = table.text("page").value_or("");
    session.venue = table.other_name("venue");
    session.clarity = table.word("clarity", {clarity_names.begin(), clarity_names.end()}).value_or("");
    session.water = read_water_temperature(table);
    session.cost = parsed(table, "cost", "£6.20", [](std::string_view text) { return in_range(parse_money(text)); });
    session.note = table.prose("note");
    return session;
}

LoggedPutIn read_put_in(TableReader& table) {
    LoggedPutIn put_in;
    put_in.at = read_moment(table);
    put_in.of = table.other_name("of");
    return put_in;
}

LoggedUse read_logged_use(TableReader& table) {
    LoggedUse use;
    use.of = table.name("of").value_or("");
    if (table.required("amount", "\"1.5 l\""))
        if (const auto amount = parsed(table, "amount", "1.5 l", parse_mass_or_volume)) {
            std::visit([&](auto each) { check_amount(*table.find("amount"), "amount", each, table.faults()); },
                       *amount);
            use.amount = *amount;
        }
    return use;
}

LoggedCatch read_catch(TableReader& table) {
    LoggedCatch caught;
    caught.at = read_moment(table);
    caught.fish = table.text("fish").value_or("");
    caught.count = read_whole(table, "count", 0).value_or(0);
    caught.mass = amount_of<Mass>(table, "mass", "1.2 kg");
    return caught;
}

LoggedMix read_logged_mix(TableReader& table) {
    LoggedMix mix;
    mix.of = table.name("of").value_or("");
    mix.feel = table.other_name("feel");
    mix.wetness = table.number("wetness", 0, 3);
    mix.within = table.number("within", 0, 3).value_or(0);
    mix.dry = amount_of<Mass>(table, "dry", "1 kg");
    mix.water = read_poured(table);
    mix.wetting = amount_of<Mass>(table, "wetting", "20 g").value_or(Mass{});
    table.each_block("part", "a part", [&](TableReader& part) { mix.parts.push_back(read_weighed_part(part)); });
    return mix;
}

LoggedSoak read_logged_soak(TableReader& table) {
    LoggedSoak soak;
    soak.of = table.name("of").value_or("");
    soak.dry = required_amount<Mass>(table, "dry", "100 g");
    soak.drained = required_amount<Mass>(table, "drained", "138 g");
    soak.under_water = required_amount<Time>(table, "under_water", "6 min");
    if (const auto water = read_water_temperature(table)) soak.water = *water;
    return soak;
}

LoggedWeight read_logged_weight(TableReader& table) {
    LoggedWeight weight;
    weight.of = table.name("of").value_or("");
    weight.feel = table.other_name("feel");
    weight.vessel = required_amount<Volume>(table, "vessel", "1 l");
    weight.mass = required_amount<Mass>(table, "weighs", "420 g");
    return weight;
}

LoggedLook read_logged_look(TableReader& table) {
    LoggedLook look;
    look.of = table.name("of").value_or("");
    look.feel = table.other_name("feel");
    look.form = read_seen_form(table);
    if (const auto squeeze = table.word("squeeze", {squeeze_names.begin(), squeeze_names.end()}))
        look.squeeze = *find_squeeze(*squeeze);
    look.depth = read_seen<Length>(table, "depth", "2 m").value_or(Length{});
    look.holds = read_seen<Time>(table, "hold", "40 s");
    look.breaks_at = read_seen<Length>(table, "breaks_at", "0.6 m");
    look.carpet = read_seen<Length>(table, "carpet_seen", "1.1 m");
    return look;
}

LoggedBag read_logged_bag(TableReader& table) {
    return {table.name("of").value_or("")};
}

}  // namespace baitwright
