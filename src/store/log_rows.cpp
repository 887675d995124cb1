#include "store/log_rows.h"

#include <algorithm>

#include "quantities/fault.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_sessions =
    "SELECT entry_id, start, length, anglers, page, venue, clarity, temperature, cost_minor, currency, note"
    " FROM log_session WHERE entry_id BETWEEN ?1 AND ?2 ORDER BY entry_id";
constexpr const char* select_uses =
    "SELECT entry_id, measure, amount FROM log_use WHERE entry_id BETWEEN ?1 AND ?2 ORDER BY entry_id";
constexpr const char* select_catches =
    "SELECT entry_id, count, mass FROM log_catch WHERE entry_id BETWEEN ?1 AND ?2 ORDER BY entry_id";
constexpr const char* select_mixes =
    "SELECT entry_id, feel, wetness, within, dry, water, wetting FROM log_mix WHERE entry_id BETWEEN ?1 AND ?2"
    " ORDER BY entry_id";
constexpr const char* select_parts_of_mixes =
    "SELECT entry_id, name, mass, moisture FROM log_part WHERE entry_id BETWEEN ?1 AND ?2 ORDER BY entry_id, position";
constexpr const char* select_soaks =
    "SELECT entry_id, dry, drained, under_water, temperature FROM log_soak WHERE entry_id BETWEEN ?1 AND ?2"
    " ORDER BY entry_id";
constexpr const char* select_weights =
    "SELECT entry_id, feel, vessel, mass FROM log_weight WHERE entry_id BETWEEN ?1 AND ?2 ORDER BY entry_id";
constexpr const char* select_looks =
    "SELECT entry_id, feel, measure, size, squeeze, depth, holds, breaks_at, carpet FROM log_look"
    " WHERE entry_id BETWEEN ?1 AND ?2 ORDER BY entry_id";

[[noreturn]] void refuse_word(const StoreConnection& connection, const std::string& word) {
    throw connection.damaged("the word '" + word + "' in the log");
}

LoggedThing session_in(const StoreConnection& connection, const Query& row) {
    LoggedSession session;
    session.start = row.text(1);
    session.length = row.as<Time>(2);
    session.anglers = row.as<int>(3);
    session.page = row.text(4);
    session.venue = row.text(5);
    session.clarity = row.text(6);
    session.water = row.as<std::optional<Temperature>>(7);
    session.note = row.text(10);
    if (row.empty(8)) return session;
    try {
        session.cost = Money(row.whole(8), currency_named(row.text(9)));
    } catch (const InputError& error) {
        throw connection.damaged(error.what());
    }
    return session;
}

LoggedThing use_in(const StoreConnection& connection, const Query& row) {
    const auto amount = mass_or_volume(row.text(1), row.number(2));
    if (!amount) refuse_word(connection, row.text(1));
    return LoggedUse{{}, *amount};
}

LoggedThing catch_in(const StoreConnection&, const Query& row) {
    return LoggedCatch{{}, {}, row.as<int>(1), row.as<std::optional<Mass>>(2)};
}

LoggedThing mix_in(const StoreConnection&, const Query& row) {
    return LoggedMix{{},
                     row.text(1),
                     row.as<std::optional<Ratio>>(2),
                     row.number(3),
                     row.as<std::optional<Mass>>(4),
                     row.as<std::optional<Mass>>(5),
                     row.as<Mass>(6)};
}

LoggedThing soak_in(const StoreConnection&, const Query& row) {
    return LoggedSoak{{}, row.as<Mass>(1), row.as<Mass>(2), row.as<Time>(3), row.as<Temperature>(4)};
}

LoggedThing weight_in(const StoreConnection&, const Query& row) {
    return LoggedWeight{{}, row.text(1), row.as<Volume>(2), row.as<Mass>(3)};
}

LoggedThing look_in(const StoreConnection& connection, const Query& row) {
    LoggedLook look{{}, row.text(1)};
    const std::string measure = row.text(2), word = row.text(4);
    const auto form = stored_alternative<decltype(look.form)>(look_words, measure, row.number(3));
    if (!form) refuse_word(connection, measure);
    look.form = *form;
    const auto squeeze = value_of<Squeeze>(squeeze_names, word);
    if (!squeeze) refuse_word(connection, word);
    look.squeeze = *squeeze;
    look.depth = row.as<Length>(5);
    look.holds = row.as<std::optional<Time>>(6);
    look.breaks_at = row.as<std::optional<Length>>(7);
    look.carpet = row.as<std::optional<Length>>(8);
    return look;
}

/// How a kind is read; kinds without a table have none.
struct LogTable {
    const char* select = nullptr;
    LoggedThing (*read)(const StoreConnection&, const Query&) = nullptr;
};
/// In the order of `LoggedThing`.
constexpr std::array<LogTable, logged_names.size()> log_tables{{{select_sessions, session_in},
                                                                {},
                                                                {select_uses, use_in},
                                                                {select_catches, catch_in},
                                                                {select_mixes, mix_in},
                                                                {select_soaks, soak_in},
                                                                {select_weights, weight_in},
                                                                {select_looks, look_in},
                                                                {},
                                                                {}}};

void read_parts_of(StoreConnection& connection, LogSpan span, std::vector<NumberedThing>& mixes) {
    Query rows(connection, select_parts_of_mixes, span.first, span.last);
    auto mix = mixes.begin();
    while (rows.next()) {
        const std::int64_t entry = rows.whole(0);
        while (mix != mixes.end() && mix->entry < entry) ++mix;
        if (mix == mixes.end() || mix->entry != entry) throw connection.damaged("a part of no mix in the log");
        std::get<LoggedMix>(mix->what).parts.push_back(
            {rows.text(1), rows.as<Mass>(2), rows.as<std::optional<Ratio>>(3)});
    }
}

}  // namespace

bool has_log_table(std::size_t kind) {
    return log_tables.at(kind).select != nullptr;
}

std::vector<NumberedThing> read_things(StoreConnection& connection, std::size_t kind, LogSpan span) {
    std::vector<NumberedThing> things;
    if (!has_log_table(kind)) return things;
    Query rows(connection, log_tables[kind].select, span.first, span.last);
    while (rows.next()) things.push_back({rows.whole(0), log_tables[kind].read(connection, rows)});
    if (!things.empty() && std::holds_alternative<LoggedMix>(things.front().what))
        read_parts_of(connection, span, things);
    return things;
}

}  // namespace baitwright
