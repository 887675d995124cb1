#include "report/paid_report.h"

#include <fmt/format.h>

#include <algorithm>

#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/paid_words.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

TextTable paid_table(std::size_t columns) {
    std::vector<Align> aligned(columns, Align::right);
    aligned[0] = Align::left;
    return TextTable(aligned);
}

/// "£1": a unit of the money that the bait cost.
std::string one_of(const Currency& currency) {
    return currency.sign.empty() ? "1 " + std::string(currency.code) : std::string(currency.sign) + "1";
}

std::string caught_cell(Mass mass) {
    return fmt::format("{:.1f} {}", double(in_fish_unit(mass.in(kilogram))), fish_unit());
}

std::string bait_cost_cell(const PaidStrategy& strategy) {
    if (!strategy.cost) return "not told";
    if (strategy.priced == strategy.sessions) return money_text(*strategy.cost);
    return fmt::format("{} ({} of {})", money_text(*strategy.cost), strategy.priced, strategy.sessions);
}

TextTable used_table(const PaidGroup& group, const PaidAnswer& answer) {
    TextTable table = paid_table(answer.currency ? 6 : 5);
    const auto row = [&](std::vector<std::string> cells) {
        if (!answer.currency) cells.pop_back();
        table.row(std::move(cells));
    };
    row({"fed by", "sessions", "blanks", "fished", "caught", "bait cost"});
    for (const PaidStrategy& strategy : group.strategies)
        row({strategy.name, std::to_string(strategy.sessions), std::to_string(strategy.blanks),
             shown_time(strategy.hours), caught_cell(strategy.caught), bait_cost_cell(strategy)});
    return table;
}

TextTable expected_table(const PaidGroup& group, const PaidAnswer& answer) {
    TextTable table = paid_table(answer.currency ? 5 : 3);
    const auto row = [&](std::vector<std::string> cells) {
        if (!answer.currency) cells.resize(3);
        table.row(std::move(cells));
    };
    row({"to expect", fish_unit() + " an hour", "9 in 10",
         answer.currency ? fish_unit() + " for " + one_of(*answer.currency) : "", "9 in 10"});
    for (const PaidStrategy& strategy : group.strategies) {
        const Range<double> an_hour = in_fish_unit(strategy.kilos_an_hour);
        const Range<double> money = in_fish_unit(strategy.kilos_a_pound.value_or(Range<double>{}));
        const bool priced = strategy.kilos_a_pound.has_value();
        row({strategy.name, shown_takings(an_hour.middle), shown_takings(an_hour),
             priced ? shown_takings(money.middle) : "", priced ? shown_takings(money) : ""});
    }
    return table;
}

int sessions_in(const PaidGroup& group) {
    int sessions = 0;
    for (const PaidStrategy& strategy : group.strategies) sessions += strategy.sessions;
    return sessions;
}

void tell_verdicts(Told& told, const PaidGroup& group, const PaidAnswer& answer) {
    if (group.strategies.size() == 1) told.say("Only one way of feeding: there is nothing to hold it against yet.");
    if (group.verdict) told.line("An hour", verdict_text(group, *group.verdict, "more an hour"));
    if (!group.money || !answer.currency) return;
    const std::string unit = one_of(*answer.currency);
    told.line("For " + unit, verdict_text(group, *group.money, "more for " + unit));
}

/// "Tinged water", "Winter"; a venue as it is written.
std::string heading_of(const PaidGroup& group, PaidBy by) {
    if (by == PaidBy::venue) return group.of;
    std::string text = group.of;
    if (by == PaidBy::clarity) text += " water";
    if (by == PaidBy::temperature) text = "water, " + text;
    if (text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

void tell_group(Told& told, const PaidGroup& group, const PaidAnswer& answer) {
    if (!group.of.empty()) told.heading(heading_of(group, answer.by));
    told.table(used_table(group, answer));
    told.gap();
    const bool none = std::all_of(group.strategies.begin(), group.strategies.end(),
                                  [](const PaidStrategy& strategy) { return strategy.blanks == strategy.sessions; });
    if (none) {
        told.say(
            fmt::format("Nothing was caught yet: {} blank{}.", sessions_in(group), sessions_in(group) == 1 ? "" : "s"));
        told.gap();
        return;
    }
    told.table(expected_table(group, answer));
    told.gap();
    tell_verdicts(told, group, answer);
    told.gap();
}

Json range_json(const Range<double>& range) {
    return {{"low", range.low}, {"middle", range.middle}, {"high", range.high}};
}

Json verdict_json(const std::optional<PaidVerdict>& verdict) {
    if (!verdict) return {};
    return {{"better", verdict->better},
            {"than", verdict->than},
            {"probability", verdict->probability},
            {"times", range_json(verdict->times)},
            {"sure", verdict->is_sure},
            {"more_sessions", verdict->more_sessions ? Json(*verdict->more_sessions) : Json()}};
}

Json paid_strategy_json(const PaidStrategy& strategy) {
    const bool known = strategy.kilos_an_hour.high > 0;
    return {{"name", strategy.name},
            {"sessions", strategy.sessions},
            {"blanks", strategy.blanks},
            {"hours", strategy.hours.in(hour)},
            {"caught_kg", strategy.caught.in(kilogram)},
            {"fish", strategy.fish},
            {"cost_minor", json_minor(strategy.cost)},
            {"priced_sessions", strategy.priced},
            {"kg_an_hour", known ? range_json(strategy.kilos_an_hour) : Json()},
            {"kg_a_unit_of_money", strategy.kilos_a_pound ? range_json(*strategy.kilos_a_pound) : Json()},
            {"most_an_hour_probability", known ? Json(strategy.best) : Json()}};
}

}  // namespace

Told paid_told(const PaidAnswer& answer) {
    Told told;
    const std::string fish = answer.fish.empty() ? "" : " of " + answer.fish;
    told.title(fmt::format("What paid{}: {} session{}", fish, answer.sessions, answer.sessions == 1 ? "" : "s"));
    if (answer.sessions == 0) {
        told.say("There is no session to go by. Write down each one, the blanks too: baitwright help log");
        told.mind(answer.warnings);
        return told;
    }
    for (const PaidGroup& group : answer.groups) tell_group(told, group, answer);
    if (!answer.groups.empty())
        told.line("How sure",
                  "Estimates, an hour for each angler, blanks in them; what few sessions showed is drawn towards all "
                  "of them. It was no fair trial: you chose where and when.");
    told.mind(answer.warnings);
    return told;
}

Json paid_json(const PaidAnswer& answer) {
    Json json = json_record("paid", answer.warnings);
    json["by"] = paid_by_names[static_cast<std::size_t>(answer.by)];
    json["fish"] = text_or_null(answer.fish);
    json["sessions"] = answer.sessions;
    json["currency"] = answer.currency ? Json(answer.currency->code) : Json();
    json["groups"] = Json::array();
    for (const PaidGroup& group : answer.groups) {
        Json strategies = Json::array();
        for (const PaidStrategy& strategy : group.strategies) strategies.push_back(paid_strategy_json(strategy));
        json["groups"].push_back({{"of", text_or_null(group.of)},
                                  {"strategies", strategies},
                                  {"verdict", verdict_json(group.verdict)},
                                  {"money_verdict", verdict_json(group.money)}});
    }
    return json;
}

Rows paid_rows(const PaidAnswer& answer) {
    Rows rows{{"group", "strategy", "sessions", "blanks", "hours", "caught_kg", "fish", "cost_minor", "currency",
               "kg_an_hour", "kg_an_hour_low", "kg_an_hour_high", "kg_a_unit_of_money", "kg_a_unit_of_money_low",
               "kg_a_unit_of_money_high"}};
    for (const PaidGroup& group : answer.groups)
        for (const PaidStrategy& strategy : group.strategies) {
            std::vector<std::string> row{group.of,
                                         strategy.name,
                                         std::to_string(strategy.sessions),
                                         std::to_string(strategy.blanks),
                                         number_text(strategy.hours.in(hour)),
                                         number_text(strategy.caught.in(kilogram)),
                                         std::to_string(strategy.fish),
                                         strategy.cost ? std::to_string(strategy.cost->minor()) : "",
                                         strategy.cost ? std::string(strategy.cost->currency().code) : ""};
            const auto add = [&](bool known, const Range<double>& range) {
                for (const double value : {range.middle, range.low, range.high})
                    row.push_back(known ? number_text(value) : "");
            };
            add(strategy.kilos_an_hour.high > 0, strategy.kilos_an_hour);
            add(strategy.kilos_a_pound.has_value(), strategy.kilos_a_pound.value_or(Range<double>{}));
            rows.push_back(std::move(row));
        }
    return rows;
}

Reply paid_reply(PaidAnswer answer) {
    return warned(std::move(answer), paid_told, paid_json, paid_rows);
}

}  // namespace baitwright
