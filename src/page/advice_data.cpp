#include "page/advice_data.h"

#include "page/data_values.h"

namespace baitwright {

namespace {

using Texts = std::vector<std::string>;

template <class Q>
Json bound_data(const std::optional<Q>& bound) {
    return bound ? Json(bare_number(*bound)) : Json();
}

template <class Q>
std::optional<Q> bound_in(const Json& data) {
    if (data.is_null()) return std::nullopt;
    return dressed_number<Q>(data);
}

/// Visits each list of texts with its key.
template <class Rule, class Visit>
void visit_lists(Rule& rule, Visit&& visit) {
    visit("season", rule.when.season);
    visit("clarity", rule.when.clarity);
    visit("bed", rule.when.bed);
    visit("fish", rule.when.fish);
    visit("unless_season", rule.unless.season);
    visit("unless_clarity", rule.unless.clarity);
    visit("unless_bed", rule.unless.bed);
    visit("unless_fish", rule.unless.fish);
    visit("favour", rule.favour);
    visit("against", rule.against);
    visit("colours", rule.colours);
    visit("feels", rule.feels);
}

template <class Rule, class Visit>
void visit_bounds(Rule& rule, Visit&& visit) {
    visit("temperature", rule.when.temperature);
    visit("depth", rule.when.depth);
    visit("tow", rule.when.tow);
    visit("hours", rule.when.hours);
    visit("unless_temperature", rule.unless.temperature);
    visit("unless_depth", rule.unless.depth);
    visit("unless_tow", rule.unless.tow);
    visit("unless_hours", rule.unless.hours);
}

Json rule_data(const AdviceRule& rule) {
    Json data{{"about", rule.about}, {"say", rule.say}, {"why", rule.why}, {"source", rule.source}};
    visit_lists(rule, [&](const char* key, const Texts& texts) { put_texts(data, key, texts); });
    visit_bounds(rule, [&](const char* key, const auto& bounds) {
        if (bounds.stated()) data[key] = Json::array({bound_data(bounds.from), bound_data(bounds.below)});
    });
    for (const FeedForm form : rule.against_forms) data["against_forms"].push_back(static_cast<int>(form));
    put_stated(data, "against_above", rule.against_above);
    if (rule.share) data["share"] = Json::array({rule.share->low, rule.share->high});
    return data;
}

template <class Q>
void take_bounds(const Json& data, FromTo<Q>& bounds) {
    bounds = {bound_in<Q>(data[0]), bound_in<Q>(data[1])};
}

AdviceRule rule_in(const Json& data) {
    AdviceRule rule;
    rule.about = data["about"].text();
    rule.say = data["say"].text();
    rule.why = data["why"].text();
    rule.source = data["source"].text();
    visit_lists(rule, [&](const char* key, Texts& texts) { texts = texts_in(data, key); });
    visit_bounds(rule, [&](const char* key, auto& bounds) {
        if (const Json* stated = data.find(key)) take_bounds(*stated, bounds);
    });
    if (const Json* forms = data.find("against_forms"))
        for (const Json& form : *forms) rule.against_forms.push_back(static_cast<FeedForm>(whole_in(form)));
    take_stated(data, "against_above", rule.against_above);
    if (const Json* share = data.find("share")) rule.share = FeedShare{(*share)[0].number(), (*share)[1].number()};
    return rule;
}

}  // namespace

Json advice_data(const std::vector<AdviceRule>& rules) {
    return list_data(rules, rule_data);
}

std::vector<AdviceRule> advice_in(const Json& data) {
    std::vector<AdviceRule> rules;
    for (const Json& rule : data) rules.push_back(rule_in(rule));
    return rules;
}

}  // namespace baitwright
