#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/cost_report.h"
#include "report/display.h"
#include "report/keeping_report.h"
#include "report/kept_text.h"
#include "report/shown_units.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string money_cell(const std::optional<Money>& money) {
    return money ? money_text(*money) : "no price";
}

std::string minor_text(std::int64_t minor, const StrategyCost& cost) {
    return cost.currency ? money_text(Money(minor, *cost.currency)) : "no price";
}

std::string packs_of(const StrategyCost& cost, const std::string& name) {
    std::string text;
    for (const PackBought& bought : cost.packs)
        if (bought.name == name)
            text += fmt::format("{}{} x {}", text.empty() ? "" : " + ", bought.count, shown_pack(bought.pack));
    return text;
}

bool has_stock(const StrategyCost& cost) {
    return std::any_of(cost.lines.begin(), cost.lines.end(),
                       [](const CostLine& line) { return line.from_stock > Mass{}; });
}

/// What is taken, to a tenth of a gram below ten; and what is left, to the same step, so that they come to what is
/// bought. Nobody weighs the rest of a bag to a tenth: from 100 g it is whole.
struct TakenAndLeft {
    std::string taken, left;
};

std::string in_steps(Mass mass, Mass step) {
    const Mass whole = std::max(1.0, std::round(mass / step)) * step;
    return whole < 9999.5 * gram ? fmt::format("{:.6g} g", whole.in(gram)) : shown_mass(whole);
}

TakenAndLeft taken_and_left(const CostLine& line) {
    const bool leaves = line.left_over > Mass{};
    const Mass taken = scale_mass(line.need);
    if (units_shown().ounces) return {shown_weighed(line.need), leaves ? shown_weighed(line.left_over) : ""};
    const Mass step = (taken < 10.0 * gram ? 0.1 : taken < 50.0 * gram ? 1 : taken < 2000.0 * gram ? 5 : 10) * gram;
    Mass left_step = line.left_over < step ? std::min(step, 1.0 * gram) : step;
    if (line.left_over >= 100.0 * gram) left_step = std::max(left_step, 1.0 * gram);
    return {taken < 10.0 * gram ? in_steps(line.need, step) : shown_mass(taken),
            leaves ? in_steps(line.left_over, left_step) : ""};
}

TextTable lines_table(const StrategyCost& cost) {
    const bool stock = has_stock(cost);
    std::vector<Align> columns(stock ? 7 : 6, Align::right);
    columns[0] = Align::left;
    TextTable table(columns);
    const auto row = [&](std::vector<std::string> cells) {
        if (!stock) cells.erase(cells.begin() + 3);
        table.row(std::move(cells));
    };
    row({"take", mass_head(), "used", "in shed", "buy", "to pay", "left"});
    for (const CostLine& line : cost.lines) {
        if (!(line.need > Mass{})) continue;
        const TakenAndLeft mass = taken_and_left(line);
        row({line.name, mass.taken, money_cell(line.used),
             line.from_stock > Mass{} ? shown_mass(scale_mass(line.from_stock)) : "", packs_of(cost, line.name),
             money_cell(line.outlay), mass.left});
    }
    table.rule();
    row({cost.complete() ? "in all" : "in all that has a price", "", minor_text(cost.used_minor, cost), "", "",
         minor_text(cost.outlay_minor, cost), minor_text(cost.left_over_minor, cost)});
    return table;
}

std::string used_text(const StrategyCost& cost) {
    const Currency& currency = *cost.currency;
    std::string text = (cost.complete() ? "" : "at least ") + minor_text(cost.used_minor, cost);
    if (cost.used_range && cost.used_range->high > 1.005 * cost.used_range->low)
        if (const std::string range = used_range_text(cost); !range.empty()) text += ", 9 times in 10 from " + range;
    text += (cost.complete() ? "; " : ", ") + shown_money(cost.per_hour(), currency) + " an hour";
    if (const auto each = cost.per_kilogram_wet()) text += ", " + shown_money(*each, currency) + " a kg wet";
    if (const auto each = cost.per_litre()) text += ", " + shown_money(*each, currency) + " a litre";
    if (cost.unrolled.times > 1) text += ", " + shown_money(cost.per_session(), currency) + " a session";
    if (cost.unrolled.people > 1) text += ", " + shown_money(cost.per_angler(), currency) + " for each angler";
    return sentence(text + (cost.complete() ? "" : "; " + not_in_sum_text(cost)));
}

std::string goes_in_text(const UnrolledStrategy& unrolled) {
    std::string text = shown_mass(scale_mass(unrolled.wet_mass)) + " as it goes in, about " +
                       shown_volume(unrolled.wet_volume) + ": " + shown_mass(scale_mass(unrolled.dry)) + " dry";
    const Mass water = unrolled.water + unrolled.soak_water;
    if (water > 0.5 * gram) text += " and " + shown_water(jug_water(water)) + " of water";
    if (const Mass kept = kept_mass(unrolled.kept); kept > Mass{})
        text += ", and " + shown_mass(scale_mass(kept)) + " of kept mix";
    text += ".";
    if (unrolled.free_offerings >= 1) text += " About " + shown_count(unrolled.free_offerings) + " single grains.";
    for (const HookbaitNeed& hook : unrolled.hookbaits)
        text += " For the hook " + shown_count(hook.count) + " " + hook.name + ".";
    return text;
}

std::string most_text(const StrategyCost& cost) {
    const CostLine* line = dearest_line(cost);
    if (!line || cost.used_minor <= 0) return {};
    const double share = static_cast<double>(line->used->minor()) / static_cast<double>(cost.used_minor);
    return shown_percent(share) + (cost.complete() ? " of what is used is " : " of what has a price is ") + line->name +
           ".";
}

/// What is left over, gathered by how long it keeps.
std::string left_text(const StrategyCost& cost) {
    std::vector<std::pair<std::string, std::string>> by_keeping;
    for (const CostLine& line : cost.lines) {
        if (!(line.left_over > 0.5 * gram)) continue;
        const std::string known = keeping_text(line.keeps), keeps = known.empty() ? "not known" : known;
        const auto same = std::find_if(by_keeping.begin(), by_keeping.end(),
                                       [&](const auto& one_of) { return one_of.first == keeps; });
        if (same == by_keeping.end())
            by_keeping.emplace_back(keeps, line.name);
        else
            same->second += "; " + line.name;
    }
    std::string text;
    for (const auto& [keeps, names] : by_keeping) text += fmt::format("{}: {}. ", names, keeps);
    if (!text.empty()) text.pop_back();
    return text;
}

std::string title(const StrategyCost& cost) {
    const UnrolledStrategy& unrolled = cost.unrolled;
    std::string text = cost_name(cost) + (unrolled.times > 1 ? " of " : ", ") + shown_moment(unrolled.length);
    if (unrolled.people > 1) text += fmt::format(", {} anglers", unrolled.people);
    if (cost.complete()) return text;
    text += cost.currency ? ": at least " + minor_text(cost.outlay_minor, cost) + " to pay; " : ": no sum; ";
    return text + not_in_sum_text(cost);
}

bool is_mixed(const StrategyCost& cost) {
    return std::any_of(cost.unrolled.feeds.begin(), cost.unrolled.feeds.end(),
                       [](const FeedNeed& feed) { return !feed.fed.feel.empty(); });
}

}  // namespace

std::string not_in_sum_text(const StrategyCost& cost) {
    return no_price_text(cost.unpriced.size() - cost.elsewhere.size(), cost.elsewhere.size());
}

std::string shown_money(double minor, const Currency& currency) {
    return money_text(Money(round_half_even(minor), currency));
}

std::string used_range_text(const StrategyCost& cost) {
    if (!cost.currency || !cost.used_range || !cost.complete()) return {};  // that of a part is not that of the whole
    const std::string low = shown_money(cost.used_range->low, *cost.currency),
                      high = shown_money(cost.used_range->high, *cost.currency);
    return low == high ? std::string() : low + " to " + high;
}

std::string cost_name(const StrategyCost& cost) {
    const int times = cost.unrolled.times;
    return cost.unrolled.name + (times > 1 ? fmt::format(", {} sessions", times) : "");
}

namespace {

/// "pellet led for 40 sessions".
std::string name_in_sentence(const StrategyCost& cost) {
    const int times = cost.unrolled.times;
    return cost.unrolled.name + (times > 1 ? fmt::format(" for {} sessions", times) : "");
}

}  // namespace

Told cost_told(const StrategyCost& cost) {
    Told told;
    told.title(title(cost));
    told.table(lines_table(cost));
    told.gap();
    if (cost.currency) told.line("Used", used_text(cost));
    told.line("Goes in", goes_in_text(cost.unrolled));
    if (!cost.unrolled.kept.empty()) told.line("Kept", sentence(kept_text(cost.unrolled.kept)));
    if (const std::string most = most_text(cost); !most.empty()) told.line("Most", most);
    if (const std::string left = left_text(cost); !left.empty()) told.line("Keeps", left);
    if (is_mixed(cost))
        told.line("Come home",
                  "Damp mix keeps 1 to 2 days cold or 3 months frozen, once (common practice, no source).");
    told.mind(cost.warnings);
    return told;
}

std::vector<std::string> difference_sentences(const StrategyComparison& comparison) {
    std::vector<std::string> sentences;
    for (const CostDifference& one_of : comparison.differences) {
        const Currency& currency = *comparison.currency;
        std::string text = name_in_sentence(comparison.costs[one_of.dearer]) + " uses " +
                           money_text(Money(one_of.more_minor, currency)) + " more than " +
                           name_in_sentence(comparison.costs[one_of.cheaper]);
        if (!one_of.ingredient.empty())
            text += fmt::format(": {} for {}, {} against {}", money_text(Money(one_of.ingredient_more_minor, currency)),
                                one_of.ingredient, shown_mass(scale_mass(one_of.here)),
                                one_of.there > Mass{} ? shown_mass(scale_mass(one_of.there)) : std::string("none"));
        sentences.push_back(text);
    }
    return sentences;
}

namespace {

bool all_priced(const StrategyComparison& comparison) {
    return std::all_of(comparison.costs.begin(), comparison.costs.end(),
                       [](const StrategyCost& cost) { return cost.complete(); });
}

/// What each sum leaves out, with its amount.
void tell_at_least(Told& told, const StrategyComparison& comparison) {
    for (const StrategyCost& cost : comparison.costs) {
        if (cost.complete()) continue;
        std::vector<std::string> amounts;
        for (const CostLine& line : cost.lines)
            if (std::find(cost.unpriced.begin(), cost.unpriced.end(), line.name) != cost.unpriced.end())
                amounts.push_back(shown_weighed(line.need) + " of " + line.name);
        told.line("At least", sentence(cost_name(cost) + ": " + not_in_sum_text(cost) + ", " + listed(amounts)));
    }
}

std::string cheapest_text(const StrategyComparison& comparison) {
    const std::string among = all_priced(comparison) ? "" : "among those with every price known, ";
    const std::string least = name_in_sentence(comparison.costs[*comparison.cheapest_used]);
    if (comparison.cheapest_used == comparison.cheapest_outlay)
        return sentence(among + least + " uses least and costs least to buy today");
    return sentence(among + least + " uses least; " + name_in_sentence(comparison.costs[*comparison.cheapest_outlay]) +
                    " costs least to buy today");
}

}  // namespace

Told compare_told(const StrategyComparison& comparison) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::right, Align::right, Align::right,
                     Align::right});
    table.row({"", "used", "9 in 10", "to pay", "an hour", "dry", "water", "grains"});
    for (const StrategyCost& cost : comparison.costs) {
        const UnrolledStrategy& unrolled = cost.unrolled;
        table.row({cost_name(cost) + (cost.complete() ? "" : ", at least"), minor_text(cost.used_minor, cost),
                   used_range_text(cost), minor_text(cost.outlay_minor, cost),
                   cost.currency ? shown_money(cost.per_hour(), *cost.currency) : "no price",
                   shown_mass(scale_mass(unrolled.dry)), shown_water(jug_water(unrolled.water + unrolled.soak_water)),
                   shown_count(unrolled.free_offerings)});
    }
    Told told;
    told.table(std::move(table));
    told.gap();
    tell_at_least(told, comparison);
    if (comparison.cheapest_used) told.line("Cheapest", cheapest_text(comparison));
    for (const std::string& one_of : difference_sentences(comparison)) told.line("Because", sentence(one_of));
    told.mind(all_warnings(comparison.costs));
    return told;
}

}  // namespace baitwright
