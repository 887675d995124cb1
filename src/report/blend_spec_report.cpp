#include <cmath>

#include "quantities/listed.h"
#include "quantities/money.h"
#include "quantities/number_text.h"
#include "report/display.h"
#include "report/entry_replies.h"

namespace baitwright {

namespace {

/// "at least 40 %, at most 60 %", each end as `shown` shows it.
template <class Shown>
std::string ends_of(const Limits& limits, Shown&& shown) {
    std::string text;
    if (limits.least) text = "at least " + shown(*limits.least);
    if (limits.most) text += (text.empty() ? "at most " : ", at most ") + shown(*limits.most);
    return text;
}

std::string shown_end(const BlendLimit& limit, double end) {
    const MixPropertyFacts& facts = facts_of(*limit.on);
    if (facts.property == MixProperty::price)
        return money_text(Money(std::llround(end), currency_named(limit.currency))) + " a kg";
    return number_text_within(end, 1e-6) + (facts.symbol.empty() ? "" : " " + std::string(facts.symbol));
}

std::string limit_told(const BlendLimit& limit) {
    if (limit.on)
        return std::string(facts_of(*limit.on).name) + " " +
               ends_of(limit.bounds, [&](double end) { return shown_end(limit, end); });
    return listed(limit.of) + " together " + ends_of(limit.bounds, shown_percent);
}

std::string goal_text(const BlendSpec& blend) {
    return blend.goal == BlendGoal::per_kilogram ? "the least for a kg" : "the least for a litre";
}

Json limits_json(const Limits& limits) {
    return {{"min", limits.least ? Json(*limits.least) : Json()}, {"max", limits.most ? Json(*limits.most) : Json()}};
}

Json record_of_blend(const BlendSpec& blend) {
    Json record{{"name", blend.name},
                {"feel", blend.feel.empty() ? Json() : Json(blend.feel)},
                {"note", blend.note.empty() ? Json() : Json(blend.note)},
                {"goal", blend.goal == BlendGoal::per_kilogram ? "cost per kg" : "cost per litre"},
                {"batch_g", blend.batch ? Json(1000 * blend.batch->si()) : Json()},
                {"candidates", Json::array()},
                {"limits", Json::array()}};
    for (const BlendCandidate& candidate : blend.candidates) {
        Json one = limits_json(candidate.share);
        one["of"] = candidate.of;
        one["price_per_kg_minor"] = candidate.price ? Json(candidate.price->minor()) : Json();
        one["currency"] = candidate.price ? Json(candidate.price->currency().code) : Json();
        record["candidates"].push_back(std::move(one));
    }
    for (const BlendLimit& limit : blend.limits) {
        Json one = limits_json(limit.bounds);
        one["on"] = limit.on ? Json(facts_of(*limit.on).key) : Json();
        one["of"] = limit.of;
        record["limits"].push_back(std::move(one));
    }
    return record;
}

Told blend_list_told(const std::vector<BlendSpec>& blends) {
    using Align = TextTable::Align;
    TextTable table({Align::left, Align::right, Align::right, Align::left});
    table.row({"blend", "may hold", "limits", "looks for"});
    for (const BlendSpec& blend : blends)
        table.row({blend.name, std::to_string(blend.candidates.size()), std::to_string(blend.limits.size()),
                   goal_text(blend)});
    Told told;
    told.table(std::move(table));
    return told;
}

Json blend_list_json(const std::vector<BlendSpec>& blends) {
    Json json = json_record("blend list", {});
    json["blends"] = Json::array();
    for (const BlendSpec& blend : blends) json["blends"].push_back(record_of_blend(blend));
    return json;
}

Told blend_spec_told(const BlendSpec& blend) {
    Told told;
    told.title(blend.name + (blend.feel.empty() ? "" : ", " + blend.feel) + ": " + goal_text(blend));
    std::string label = "May hold";
    for (const BlendCandidate& candidate : blend.candidates) {
        const std::string ends = ends_of(candidate.share, shown_percent);
        told.line(label, candidate.of + (ends.empty() ? "" : ", " + ends) +
                             (candidate.price ? ", " + money_text(*candidate.price) + " a kg" : ""));
        label.clear();
    }
    for (const BlendLimit& limit : blend.limits) told.line("Limit", limit_told(limit));
    if (blend.batch) told.line("Batch", shown_mass(*blend.batch));
    if (!blend.note.empty()) told.line("Note", blend.note);
    return told;
}

Json blend_spec_json(const BlendSpec& blend) {
    Json json = json_record("blend show", {});
    json.update(record_of_blend(blend));
    return json;
}

}  // namespace

Reply blend_list_reply(std::vector<BlendSpec> blends) {
    return reply_of(std::move(blends), blend_list_told, blend_list_json);
}

Reply blend_spec_reply(BlendSpec blend) {
    return reply_of(std::move(blend), blend_spec_told, blend_spec_json);
}

}  // namespace baitwright
