#include "report/entry_replies.h"

#include <fmt/format.h>

#include "answers/plan/venue_breaches.h"
#include "quantities/units.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

Json limit_json(const VenueLimit& limit) {
    const Mass* mass = std::get_if<Mass>(&limit.most);
    return {{"of", name_of(limit.subject)},
            {"max_g", mass ? Json(mass->in(gram)) : Json()},
            {"max_ml", mass ? Json() : Json(std::get<Volume>(limit.most).in(millilitre))},
            {"as", limit.reckoned == VenueLimit::Reckoned::dry ? "dry" : "wet"},
            {"per", limit.per == VenueLimit::Per::angler ? "angler" : "everyone"}};
}

Json record_of(const Venue& venue) {
    Json record{{"name", venue.name},
                {"note", venue.note.empty() ? Json() : Json(venue.note)},
                {"limits", Json::array()},
                {"bans", Json::array()},
                {"rules", venue.rules}};
    for (const VenueLimit& limit : venue.limits) record["limits"].push_back(limit_json(limit));
    for (const VenueBan& ban : venue.bans)
        record["bans"].push_back({{"of", name_of(ban.subject)}, {"why", ban.why.empty() ? Json() : Json(ban.why)}});
    return record;
}

Told venue_list_told(const std::vector<Venue>& venues) {
    using Align = TextTable::Align;
    TextTable table({Align::left, Align::right, Align::right, Align::right});
    table.row({"venue", "limits", "bans", "other rules"});
    for (const Venue& venue : venues)
        table.row({venue.name, std::to_string(venue.limits.size()), std::to_string(venue.bans.size()),
                   std::to_string(venue.rules.size())});
    Told told;
    told.table(std::move(table));
    return told;
}

Json venue_list_json(const std::vector<Venue>& venues) {
    Json json = json_record("venue list", {});
    json["venues"] = Json::array();
    for (const Venue& venue : venues) json["venues"].push_back(record_of(venue));
    return json;
}

Told venue_told(const Venue& venue) {
    Told told;
    told.title(venue.name);
    for (const VenueLimit& limit : venue.limits) told.line("Limit", sentence(rule_text(limit)));
    for (const VenueBan& ban : venue.bans) told.line("Ban", sentence(rule_text(ban)));
    for (const std::string& rule : venue.rules) told.line("Rule", sentence(rule));
    if (!venue.note.empty()) told.line("Note", venue.note);
    told.line("First", "What is written at the water and the byelaws count; this is only your note of them.");
    return told;
}

Json venue_json(const Venue& venue) {
    Json json = json_record("venue show", {});
    json.update(record_of(venue));
    return json;
}

}  // namespace

Reply venue_list_reply(std::vector<Venue> venues) {
    return reply_of(std::move(venues), venue_list_told, venue_list_json);
}

Reply venue_reply(Venue venue) {
    return reply_of(std::move(venue), venue_told, venue_json);
}

}  // namespace baitwright
