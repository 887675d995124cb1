#include "report/blend_report.h"

#include <fmt/format.h>

#include <cmath>

#include "quantities/listed.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/rate_text.h"
#include "report/shown_units.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;
using End = BlendLimitEnd::End;

std::string subject_of(const BlendLimitEnd& limit) {
    if (limit.property) return std::string(facts_of(*limit.property).name);
    return listed(limit.of) + (limit.of.size() > 1 ? " together" : "");
}

std::string bound_text(const BlendLimitEnd& limit, const Currency* currency) {
    if (!limit.property) return fmt::format("{:.4g} %", 100 * limit.bound);
    const MixPropertyFacts& facts = facts_of(*limit.property);
    if (facts.property == MixProperty::price) return shown_rate(limit.bound, *currency) + " a kilo";
    return fmt::format("{:.4g}{}{}", limit.bound, facts.symbol.empty() ? "" : " ", facts.symbol);
}

std::string step_text(const BindingLimit& binding, const Currency* currency) {
    BlendLimitEnd step = binding.limit;
    step.bound = binding.step;
    return bound_text(step, currency);
}

std::string measure_of(BlendGoal goal) {
    return goal == BlendGoal::per_litre ? "a litre" : "a kilo";
}

/// A tenth of a minor unit is as close as anybody asks.
std::string small_rate(double minor, const Currency& currency) {
    return minor < 0.1 ? "less than " + shown_rate(0.1, currency) : shown_rate(minor, currency);
}

/// "each further 1 % costs 4.2p a kilo"
std::string price_sentence(const BlendAnswer& answer, const BindingLimit& binding) {
    const std::string step = step_text(binding, answer.currency),
                      rate = small_rate(binding.price_minor, *answer.currency);
    const char* how = binding.limit.end == End::least ? "each further {} costs {} {}" : "each {} more would save {} {}";
    return fmt::format(fmt::runtime(how), step, rate, measure_of(answer.goal));
}

std::string cost_sentence(const BlendAnswer& answer) {
    const std::string kilo = shown_rate(answer.cost_per_kilogram, *answer.currency) + " a kilo",
                      litre = shown_rate(answer.cost_per_litre, *answer.currency) + " a litre dry";
    return answer.goal == BlendGoal::per_litre ? litre + ", " + kilo : kilo + ", " + litre;
}

/// In a column the pounds go with the pounds; of less than a tenth of one the tenths of pennies tell.
std::string price_cell(double minor, const Currency& currency) {
    return minor < 9.95 ? shown_rate(minor, currency) : money_text(Money(round_half_even(minor), currency));
}

/// To the gram, as it is weighed; a pinch in ounces has its grams beside it.
std::string weigh_cell(Mass mass) {
    return units_shown().ounces ? shown_weighed(mass) : shown_mass(mass);
}

TextTable shares_table(const BlendAnswer& answer) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::right});
    table.row({"made of", "share", "weigh", "a kilo costs", "cost"});
    for (const BlendShare& share : answer.shares)
        table.row({share.ingredient.name, shown_percent(share.share), weigh_cell(share.weigh),
                   price_cell(share.price_per_kilogram, *answer.currency), money_text(share.cost)});
    table.rule();
    table.row({"in all", "", shown_mass(answer.batch), "", money_text(answer.cost)});
    return table;
}

Told infeasible_told(const BlendAnswer& answer) {
    Told told;
    told.title(answer.name + ": no mix meets all its limits");
    const bool alone = answer.conflicts.size() == 1;
    told.heading(alone ? "No mix of these candidates meets this limit."
                       : "These limits cannot all be met; without any one of them the others can.");
    for (const BlendLimitEnd& limit : answer.conflicts) told.entry("  - ", limit_text(limit, answer.currency));
    told.gap();
    told.line("Do this", alone ? "Loosen it, or add a candidate that helps."
                               : "Loosen one of them, or add a candidate that helps.");
    return told;
}

}  // namespace

std::string limit_text(const BlendLimitEnd& limit, const Currency* currency) {
    return subject_of(limit) + (limit.end == End::least ? " at least " : " at most ") + bound_text(limit, currency);
}

Told blend_told(const BlendAnswer& answer) {
    if (answer.status == BlendAnswer::Status::infeasible) return infeasible_told(answer);
    Told told;
    told.title(answer.name + ": the cheapest within its limits, " + cost_sentence(answer));
    told.table(shares_table(answer));
    told.gap();
    std::vector<std::string> properties;
    for (const BlendPropertyValue& property : answer.properties)
        if (property.property != MixProperty::price) properties.push_back(property_text(property));
    told.line("Comes to", listed(properties) + ".");
    told.line("Prices", "By the smallest pack of each, or as the blend says; by the sack it may cost less.");
    if (answer.binding.empty()) {
        told.line("Limits", "None of them makes it dearer: this is the cheapest candidate.");
    } else {
        told.gap();
        told.heading("What each limit costs, while you move it only a little");
        for (const BindingLimit& binding : answer.binding)
            told.entry("  - ", limit_text(binding.limit, answer.currency) + ": " + price_sentence(answer, binding));
    }
    if (!answer.warnings.empty()) told.gap();
    told.mind(answer.warnings);
    return told;
}

Json blend_json(const BlendAnswer& answer) {
    const bool optimal = answer.status == BlendAnswer::Status::optimal;
    const auto if_optimal = [&](Json value) { return optimal ? std::move(value) : Json(); };
    Json json = json_record("blend", answer.warnings);
    json["blend"] = answer.name;
    json["status"] = optimal ? "optimal" : "infeasible";
    json["goal"] = answer.goal == BlendGoal::per_litre ? "cost per litre" : "cost per kg";
    json["batch_g"] = answer.batch.in(gram);
    json["currency"] = answer.currency->code;
    json["cost_per_kg_minor"] = if_optimal(answer.cost_per_kilogram);
    json["cost_per_litre_minor"] = if_optimal(answer.cost_per_litre);
    json["cost_minor"] = if_optimal(answer.cost.minor());
    json["shares"] = Json::array();
    for (const BlendShare& share : answer.shares)
        json["shares"].push_back({{"name", share.ingredient.name},
                                  {"share", double(share.share)},
                                  {"mass_g", (share.share * answer.batch).in(gram)},
                                  {"weigh_g", share.weigh.in(gram)},
                                  {"price_per_kg_minor", share.price_per_kilogram},
                                  {"cost_minor", share.cost.minor()}});
    json["properties"] = if_optimal(properties_json(answer.properties));
    json["binding"] = Json::array();
    for (const BindingLimit& binding : answer.binding)
        json["binding"].push_back({{"limit", limit_text(binding.limit, answer.currency)},
                                   {"step", step_text(binding, answer.currency)},
                                   {"price_minor", binding.price_minor}});
    json["conflicts"] = Json::array();
    for (const BlendLimitEnd& limit : answer.conflicts) json["conflicts"].push_back(limit_text(limit, answer.currency));
    json["shared"] = nullptr;
    return json;
}

Rows blend_rows(const BlendAnswer& answer) {
    Rows rows{{"name", "share", "mass_g", "price_per_kg_minor", "currency"}};
    for (const BlendShare& share : answer.shares)
        rows.push_back({share.ingredient.name, number_text(share.share),
                        number_text((share.share * answer.batch).in(gram)), number_text(share.price_per_kilogram),
                        std::string(answer.currency->code)});
    return rows;
}

}  // namespace baitwright
