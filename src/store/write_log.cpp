#include "quantities/suggestion.h"
#include "store/log_rows.h"
#include "store/shed_entry.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* insert_log_entry =
    "INSERT INTO log_entry (what, happened_on, session_id, name, folded, at, undoes, believed, mark)"
    " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8,"
    " ifnull((SELECT substr(u.mark, 17) || substr(u.mark, 1, 16) FROM log_entry u WHERE u.id = ?7),"
    " lower(hex(randomblob(16))))) RETURNING id";
constexpr const char* insert_session =
    "INSERT INTO log_session VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)";
constexpr const char* insert_use = "INSERT INTO log_use VALUES (?1, ?2, ?3)";
constexpr const char* insert_catch = "INSERT INTO log_catch VALUES (?1, ?2, ?3)";
constexpr const char* insert_mix = "INSERT INTO log_mix VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)";
constexpr const char* insert_part_of_mix = "INSERT INTO log_part VALUES (?1, ?2, ?3, ?4, ?5, ?6)";
constexpr const char* insert_soak = "INSERT INTO log_soak VALUES (?1, ?2, ?3, ?4, ?5)";
constexpr const char* insert_weight = "INSERT INTO log_weight VALUES (?1, ?2, ?3, ?4)";
constexpr const char* insert_look = "INSERT INTO log_look VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)";

std::optional<Time> clock_of(const LoggedThing& what) {
    if (const auto* put_in = std::get_if<LoggedPutIn>(&what)) return put_in->at;
    if (const auto* caught = std::get_if<LoggedCatch>(&what)) return caught->at;
    return std::nullopt;
}

/// What stands in the table of its kind.
struct WriteThing {
    StoreConnection& connection;
    std::int64_t entry;

    void operator()(const LoggedSession& session) const {
        std::optional<std::int64_t> minor;
        std::optional<std::string_view> currency;
        if (session.cost) {
            minor = session.cost->minor();
            currency = session.cost->currency().code;
        }
        Query(connection, insert_session, entry, session.start, session.length, session.anglers, session.page,
              session.venue, folded_name(session.venue), session.clarity, session.water, minor, currency, session.note)
            .run();
    }
    void operator()(const LoggedUse& use) const {
        const StoredAmount amount = stored(use.amount);
        Query(connection, insert_use, entry, amount.measure, amount.number).run();
    }
    void operator()(const LoggedCatch& caught) const {
        Query(connection, insert_catch, entry, caught.count, caught.mass).run();
    }
    void operator()(const LoggedMix& mix) const {
        Query(connection, insert_mix, entry, mix.feel, mix.wetness, mix.within, mix.dry, mix.water, mix.wetting).run();
        std::int64_t position = 0;
        for (const WeighedPart& part : mix.parts)
            Query(connection, insert_part_of_mix, entry, ++position, part.of, folded_name(part.of), part.mass,
                  part.moisture)
                .run();
    }
    void operator()(const LoggedSoak& soak) const {
        Query(connection, insert_soak, entry, soak.dry, soak.drained, soak.under_water, soak.water).run();
    }
    void operator()(const LoggedWeight& weight) const {
        Query(connection, insert_weight, entry, weight.feel, weight.vessel, weight.mass).run();
    }
    void operator()(const LoggedLook& look) const {
        Query(connection, insert_look, entry, look.feel, look_words[look.form.index()], bare_number(look.form),
              word_of(squeeze_names, look.squeeze), look.depth, look.holds, look.breaks_at, look.carpet)
            .run();
    }
    void operator()(const LoggedPutIn&) const {}
    void operator()(const LoggedBag&) const {}
    void operator()(const LogUndone&) const {}
};

}  // namespace

std::int64_t write_log_entry(StoreConnection& connection, const LogEntry& entry) {
    std::optional<std::int64_t> session, undoes;
    if (entry.session != 0) session = entry.session;
    if (const auto* undone = std::get_if<LogUndone>(&entry.what)) undoes = undone->entry;
    const std::string subject = subject_of(entry.what);
    const std::int64_t id =
        number_of(Query(connection, insert_log_entry, name_of(entry.what), date_text(entry.on), session, subject,
                        folded_name(subject), clock_of(entry.what), undoes, entry.believed));
    std::visit(WriteThing{connection, id}, entry.what);
    return id;
}

}  // namespace baitwright
