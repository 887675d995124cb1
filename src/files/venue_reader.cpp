#include "files/venue_reader.h"

#include "bait/venue_names.h"
#include "files/value_reader.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr std::string_view everything = "all feed", wetted = "groundbait";

std::vector<std::string> subject_words() {
    std::vector<std::string> words{ingredient_kind_names.begin(), ingredient_kind_names.end()};
    words.emplace_back(everything);
    words.emplace_back(wetted);
    return words;
}

RuleSubject subject_called(const std::string& word) {
    if (word == everything) return AllFeed{};
    if (word == wetted) return Groundbait{};
    for (std::size_t i = 0; i < ingredient_kind_names.size(); ++i)
        if (word == ingredient_kind_names[i]) return static_cast<IngredientKind>(i);
    return AllFeed{};
}

/// One of `kind` and `of`.
RuleSubject read_subject(TableReader& table) {
    const bool kind = table.has("kind"), of = table.has("of");
    if (kind == of)
        table.faults().add(kind ? table.place_of_key("of") : table.place(), kind ? "two-subjects" : "no-subject",
                           kind ? "the rule says twice what it is about" : "the rule does not say what it is about",
                           R"(say kind = "pellet", "groundbait" or "all feed", or of = "cooked hemp")");
    RuleSubject subject;
    if (kind)
        if (const auto word = table.word("kind", subject_words())) subject = subject_called(*word);
    if (of) {
        const auto name = table.name("of");
        if (!kind) subject = OneIngredient{name.value_or("")};
    }
    return subject;
}

void refuse_wet_volume(TableReader& table, const VenueLimit& limit) {
    const bool whole =
        std::holds_alternative<AllFeed>(limit.subject) || std::holds_alternative<Groundbait>(limit.subject);
    if (whole || limit.reckoned == VenueLimit::Reckoned::dry || std::holds_alternative<Mass>(limit.most)) return;
    table.faults().add(table.place_of_value("as"), "unfit-value", "the wet volume of one thing in a mix cannot be told",
                       "limit it by mass, or dry, or limit all groundbait or all feed");
}

VenueLimit read_limit(TableReader& table) {
    VenueLimit limit;
    limit.subject = read_subject(table);
    if (table.required("max", "\"2 kg\""))
        if (const auto most = parsed(table, "max", "2 kg", parse_mass_or_volume)) {
            std::visit([&](auto each) { check_amount(*table.find("max"), "max", each, table.faults()); }, *most);
            limit.most = *most;
        }
    if (table.word("as", {"dry", "wet"}) == "wet") limit.reckoned = VenueLimit::Reckoned::wet;
    if (table.word("per", {"angler", "everyone"}) == "everyone") limit.per = VenueLimit::Per::everyone;
    refuse_wet_volume(table, limit);
    table.refuse_unknown_keys();
    return limit;
}

VenueBan read_ban(TableReader& table) {
    VenueBan ban;
    ban.subject = read_subject(table);
    ban.why = table.prose("why");
    table.refuse_unknown_keys();
    return ban;
}

std::string read_rule(TableReader& table) {
    table.required("text", "\"No wading.\"");
    std::string text = table.prose("text");
    table.refuse_unknown_keys();
    return text;
}

}  // namespace

Entry<Venue> read_venue(TableReader& table, EntryNames& names) {
    const std::size_t faults_before = table.faults().count();
    Entry<Venue> entry;
    Venue& venue = entry.value;
    venue.name = names.claim(table).value_or("");
    venue.note = table.prose("note");
    table.each_block("limit", "a limit", [&](TableReader& limit) {
        venue.limits.push_back(read_limit(limit));
        entry.places[limit_subject(venue.limits.size())] = limit.place_of_value("of");
    });
    table.each_block("ban", "a ban", [&](TableReader& ban) {
        venue.bans.push_back(read_ban(ban));
        entry.places[ban_subject(venue.bans.size())] = ban.place_of_value("of");
    });
    table.each_block("rule", "a rule", [&](TableReader& rule) { venue.rules.push_back(read_rule(rule)); });
    table.refuse_unknown_keys();
    entry.faulty = table.faults().count() > faults_before;
    return entry;
}

}  // namespace baitwright
