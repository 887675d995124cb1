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

template <class Q>
Q logged(const Query& row, int column) {
    return Q::from_si(row.number(column));
}

template <class Q>
std::optional<Q> logged_or_nothing(const Query& row, int column) {
    return row.empty(column) ? std::nullopt : std::optional(logged<Q>(row, column));
}

/// What is too large for a count lies outside every range.
int logged_count(const Query& row, int column) {
    return static_cast<int>(std::clamp<std::int64_t>(row.whole(column), -1, 2'000'000'000));
}

[[noreturn]] void refuse_word(const StoreConnection& connection, const std::string& word) {
    throw connection.damaged("the word '" + word + "' in the log");
}

LoggedThing session_in(const StoreConnection& connection, const Query& row) {
    LoggedSession session;
    session.start = row.text(1);
    session.length = logged<Time>(row, 2);
    session.anglers = logged_count(row, 3);
    session.page = row.text(4);
    session.venue = row.text(5);
    session.clarity = row.text(6);
    if (!row.empty(7)) session.water = Temperature::from_kelvin(row.number(7));
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
    return LoggedCatch{{}, {}, logged_count(row, 1), logged_or_nothing<Mass>(row, 2)};
}

LoggedThing mix_in(const StoreConnection&, const Query& row) {
    return LoggedMix{{},
                     row.text(1),
                     logged_or_nothing<Ratio>(row, 2),
                     row.number(3),
                     logged_or_nothing<Mass>(row, 4),
                     logged_or_nothing<Mass>(row, 5),
                     logged<Mass>(row, 6)};
}

LoggedThing soak_in(const StoreConnection&, const Query& row) {
    return LoggedSoak{
        {}, logged<Mass>(row, 1), logged<Mass>(row, 2), logged<Time>(row, 3), Temperature::from_kelvin(row.number(4))};
}

LoggedThing weight_in(const StoreConnection&, const Query& row) {
    return LoggedWeight{{}, row.text(1), logged<Volume>(row, 2), logged<Mass>(row, 3)};
}

LoggedThing look_in(const StoreConnection& connection, const Query& row) {
    LoggedLook look{{}, row.text(1)};
    const std::string measure = row.text(2), word = row.text(4);
    if (measure == look_words[0])
        look.form = logged<Volume>(row, 3);
    else if (measure == look_words[1])
        look.form = logged<Length>(row, 3);
    else
        refuse_word(connection, measure);
    const auto squeeze = value_of<Squeeze>(squeeze_names, word);
    if (!squeeze) refuse_word(connection, word);
    look.squeeze = *squeeze;
    look.depth = logged<Length>(row, 5);
    look.holds = logged_or_nothing<Time>(row, 6);
    look.breaks_at = logged_or_nothing<Length>(row, 7);
    look.carpet = logged_or_nothing<Length>(row, 8);
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
            {rows.text(1), logged<Mass>(rows, 2), logged_or_nothing<Ratio>(rows, 3)});
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
