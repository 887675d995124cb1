#include "report/log_json.h"

#include <array>

#include "quantities/date.h"
#include "quantities/units.h"
#include "report/stock_json.h"

namespace baitwright {

namespace {

constexpr std::array<const char*, 3> mixes_became{"added", "replaced", "known"};

template <class Q, class U>
Json in_or_null(const std::optional<Q>& value, U unit) {
    return value ? Json(value->in(unit)) : Json();
}
Json ratio_or_null(const std::optional<Ratio>& value) {
    return value ? Json(double(*value)) : Json();
}
Json celsius_or_null(const std::optional<Temperature>& water) {
    return water ? Json(water->in_celsius()) : Json();
}
Json whole_or_null(std::int64_t number) {
    return number == 0 ? Json() : Json(number);
}

/// What a kind of entry holds, by its keys.
struct LogFieldsJson {
    Json operator()(const LoggedSession& session) const {
        return {{"strategy", text_or_null(session.strategy)},
                {"start", text_or_null(session.start)},
                {"length_minutes", session.length > Time{} ? Json(session.length.in(minute)) : Json()},
                {"anglers", session.anglers},
                {"page", text_or_null(session.page)},
                {"venue", text_or_null(session.venue)},
                {"clarity", text_or_null(session.clarity)},
                {"water_temp_c", celsius_or_null(session.water)},
                {"cost_minor", json_minor(session.cost)},
                {"currency", session.cost ? Json(session.cost->currency().code) : Json()},
                {"note", text_or_null(session.note)}};
    }
    Json operator()(const LoggedPutIn& put_in) const {
        return {{"of", text_or_null(put_in.of)}, {"at_minutes", in_or_null(put_in.at, minute)}};
    }
    Json operator()(const LoggedUse& use) const {
        const auto* mass = std::get_if<Mass>(&use.amount);
        return {{"of", use.of},
                {"mass_g", mass ? Json(mass->in(gram)) : Json()},
                {"volume_ml", mass ? Json() : Json(std::get<Volume>(use.amount).in(millilitre))}};
    }
    Json operator()(const LoggedCatch& caught) const {
        return {{"fish", text_or_null(caught.fish)},
                {"count", whole_or_null(caught.count)},
                {"mass_g", in_or_null(caught.mass, gram)},
                {"at_minutes", in_or_null(caught.at, minute)}};
    }
    Json operator()(const LoggedMix& mix) const {
        Json parts = Json::array();
        for (const WeighedPart& part : mix.parts)
            parts.push_back(
                {{"of", part.of}, {"mass_g", part.mass.in(gram)}, {"moisture", ratio_or_null(part.moisture)}});
        return {{"of", mix.of},
                {"feel", text_or_null(mix.feel)},
                {"wetness", ratio_or_null(mix.wetness)},
                {"within", double(mix.within)},
                {"dry_g", in_or_null(mix.dry, gram)},
                {"water_g", in_or_null(mix.water, gram)},
                {"wetting_g", mix.wetting.in(gram)},
                {"parts", std::move(parts)}};
    }
    Json operator()(const LoggedSoak& soak) const {
        return {{"of", soak.of},
                {"dry_g", soak.dry.in(gram)},
                {"drained_g", soak.drained.in(gram)},
                {"under_water_minutes", soak.under_water.in(minute)},
                {"water_temp_c", soak.water.in_celsius()}};
    }
    Json operator()(const LoggedWeight& weight) const {
        return {{"of", weight.of},
                {"feel", text_or_null(weight.feel)},
                {"vessel_ml", weight.vessel.in(millilitre)},
                {"mass_g", weight.mass.in(gram)}};
    }
    Json operator()(const LoggedLook& look) const {
        const auto* cup = std::get_if<Volume>(&look.form);
        return {{"of", look.of},
                {"feel", text_or_null(look.feel)},
                {"cup_ml", cup ? Json(cup->in(millilitre)) : Json()},
                {"ball_mm", cup ? Json() : Json(std::get<Length>(look.form).in(millimetre))},
                {"squeeze", cup ? Json() : Json(name_of(look.squeeze))},
                {"depth_m", look.depth > Length{} ? Json(look.depth.in(metre)) : Json()},
                {"hold_s", in_or_null(look.holds, second)},
                {"breaks_at_m", in_or_null(look.breaks_at, metre)},
                {"carpet_seen_m", in_or_null(look.carpet, metre)}};
    }
    Json operator()(const LoggedBag& bag) const { return {{"of", Json(bag.of)}}; }
    Json operator()(const LogUndone& undone) const { return {{"undoes", Json(undone.entry)}}; }
};

Json entry_of_log_json(const LogEntry& entry) {
    Json json{{"number", entry.id},         {"what", name_of(entry.what)},
              {"on", date_text(entry.on)},  {"session", whole_or_null(entry.session)},
              {"believed", entry.believed}, {"undone_by", whole_or_null(entry.undone_by)}};
    json.update(std::visit(LogFieldsJson{}, entry.what));
    return json;
}

void add_group(Json& entries, const LoggedGroup& group) {
    entries.push_back(entry_of_log_json(group.entry));
    for (const LogEntry& entry : group.belonging) entries.push_back(entry_of_log_json(entry));
}

std::string cell_of(const Json& json, const char* key) {
    const Json* value = json.find(key);
    if (!value || value->is_null()) return {};
    const std::string text = json_line(*value, JsonLetters::utf8);
    return text.size() >= 2 && text.front() == '"' ? value->text() : text;
}

/// The mixes and what of the shed came with notes.
void add_brought(Json& json, const LogAnswer& answer) {
    json["mixes"] = Json::array();
    for (const MixFromNotes& mix : answer.mixes)
        json["mixes"].push_back(
            {{"name", mix.name}, {"became", mixes_became.at(static_cast<std::size_t>(mix.became))}});
    json["stock"] = Json::array();
    for (const StockReceipt& receipt : answer.stock) json["stock"].push_back(receipt_json(receipt));
    json["known_stock"] = answer.known_stock;
}

}  // namespace

Json log_json(const std::string& command, const LogAnswer& answer) {
    Json json = json_record(command, answer.warnings);
    json["entered"] = Json::array();
    for (const LoggedGroup& group : answer.entered) add_group(json["entered"], group);
    json["known"] = Json::array();
    for (const KnownSession& known : answer.known) {
        Json record = entry_of_log_json(known.entry);
        record["differs"] = known.differs;
        json["known"].push_back(std::move(record));
    }
    json["known_alone"] = answer.known_alone;
    json["undone"] = Json::array();
    for (const LogEntry& entry : answer.undone) json["undone"].push_back(entry_of_log_json(entry));
    add_brought(json, answer);
    return json;
}

Json log_list_json(const LogListAnswer& answer) {
    Json json = json_record("log list", {});
    json["entries"] = Json::array();
    for (const LoggedGroup& group : answer.groups) add_group(json["entries"], group);
    json["not_shown"] = answer.not_shown;
    return json;
}

Json log_shown_json(const LoggedGroup& group) {
    Json json = json_record("log show", {});
    json["entries"] = Json::array();
    add_group(json["entries"], group);
    return json;
}

Rows log_rows(const LogListAnswer& answer) {
    constexpr std::array<const char*, 31> keys{"number",
                                               "what",
                                               "on",
                                               "session",
                                               "strategy",
                                               "of",
                                               "fish",
                                               "count",
                                               "mass_g",
                                               "volume_ml",
                                               "dry_g",
                                               "water_g",
                                               "feel",
                                               "wetness",
                                               "drained_g",
                                               "cup_ml",
                                               "ball_mm",
                                               "vessel_ml",
                                               "under_water_minutes",
                                               "hold_s",
                                               "breaks_at_m",
                                               "carpet_seen_m",
                                               "depth_m",
                                               "length_minutes",
                                               "anglers",
                                               "venue",
                                               "clarity",
                                               "water_temp_c",
                                               "cost_minor",
                                               "currency",
                                               "note"};
    Rows rows{{keys.begin(), keys.end()}};
    Json entries = Json::array();
    for (const LoggedGroup& group : answer.groups) add_group(entries, group);
    for (const Json& entry : entries.items()) {
        std::vector<std::string> row;
        row.reserve(keys.size());
        for (const char* key : keys) row.push_back(cell_of(entry, key));
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace baitwright
