#include "report/mix_text.h"

#include <fmt/format.h>

#include "bait/kitchen_rounding.h"
#include "quantities/units.h"
#include "quantities/worded.h"
#include "report/display.h"
#include "report/hand_measure.h"
#include "report/mix_lead.h"
#include "report/mix_steps.h"
#include "report/mix_targets_text.h"
#include "report/shape_text.h"
#include "report/shown_units.h"
#include "report/stock_text.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string cost_cell(const std::optional<Money>& cost) {
    return cost ? money_text(*cost) : "no price";
}

std::string title(const MixAnswer& answer) {
    std::string text = answer.recipe + (lets_down(answer) ? "" : ", " + answer.feel) + ": ";
    if (answer.dry_to_add > Mass{}) {
        text += "too wet";
    } else if (!answer.targets.empty()) {
        text += targets_title(answer);
    } else if (answer.portions) {
        text += portions_text(*answer.portions);
    } else {
        text += shown_volume(answer.wet_volume) + " " + std::string(name_of(answer.state));
    }
    if (answer.people > 1) text += fmt::format(", for {} anglers", answer.people);
    return text;
}

/// The cells of a mass: what comes first, then the other where both are told.
struct MassCells {
    std::string grams, ounces;
};

/// A line of the table, with a mass in one column or in two.
std::vector<std::string> part_line(std::string name, MassCells mass, std::vector<std::string> rest) {
    std::vector<std::string> cells{std::move(name)};
    if (units_shown().ounces) std::swap(mass.grams, mass.ounces);
    cells.push_back(std::move(mass.grams));
    if (tells_both_masses()) cells.push_back(std::move(mass.ounces));
    for (std::string& cell : rest) cells.push_back(std::move(cell));
    return cells;
}

/// A pinch in ounces alone has its grams beside it.
MassCells cells_of(Mass mass, Mass kitchen) {
    if (!tells_both_masses()) return {shown_grams(kitchen), shown_weighed(units_shown().ounces ? mass : kitchen)};
    return {shown_grams(kitchen), shown_ounces(mass)};
}

MassCells cells_of(const AdditiveAnswer& additive) {
    const std::string dose = additive.liquid ? shown_dose(additive.volume) : shown_dose(additive.mass);
    if (!tells_both_masses()) return {dose, dose};
    return {additive.liquid ? dose : fmt::format("{:g} g", kitchen_additive(additive.mass).in(gram)),
            shown_ounces(additive.mass)};
}

TextTable parts_table(const MixAnswer& answer) {
    std::vector<Align> columns(tells_both_masses() ? 6 : 5, Align::right);
    columns[0] = Align::left;
    TextTable table(columns);
    table.row(part_line("weigh", {"grams", "ounces"}, {"loose", "share", "cost"}));
    Mass kitchen_dry;
    for (const PartAnswer& part : answer.parts) {
        table.row(part_line(
            part.name +
                (part.prepare == Preparation::soaked && !answer.soaked_alone ? " (weighed dry, then soaked)" : ""),
            cells_of(part.mass, part.kitchen_mass),
            {shown_loose(part.volume), shown_percent(part.share), cost_cell(part.cost)}));
        kitchen_dry += part.kitchen_mass;
    }
    for (const AdditiveAnswer& additive : answer.additives) {
        table.row(part_line(additive.name + (additive.rate.empty() ? "" : ", " + additive.rate), cells_of(additive),
                            {"", "", cost_cell(additive.cost)}));
    }
    table.rule();
    table.row(part_line("in all, before water", cells_of(answer.dry_mass, kitchen_dry),
                        {shown_loose(answer.dry_volume), "", answer.cost ? money_text(*answer.cost) : ""}));
    return table;
}

/// What covers the pellets, and how much of it they keep.
void tell_soak_water(Told& told, const MixAnswer& answer) {
    Mass pour;
    for (const PartAnswer& part : answer.parts)
        if (part.soak) pour += part.soak->pour;
    Mass kept = answer.wet_mass - answer.dry_mass;
    for (const AdditiveAnswer& additive : answer.additives) kept -= additive.mass;
    std::vector<std::string> water{shown_water(jug_water(pour))};
    if (std::string other = other_water(pour); !other.empty()) water.push_back(std::move(other));
    water.push_back("covers them; they keep about " + shown_water(jug_water(kept)));
    told.amounts("water", std::move(water));
}

/// Of several tubs, for the lead has it for one of them.
std::string in_all_text(const MixAnswer& answer) {
    if (!answer.doubt || !(answer.doubt->water.high > 1.02 * answer.doubt->water.low)) return "in all";
    return "in all; 9 times in 10 it is " +
           shown_water(jug_water(answer.doubt->water.low), jug_water(answer.doubt->water.high));
}

void tell_water(Told& told, const MixAnswer& answer) {
    std::vector<std::string> water{"none; it is too wet already"};
    if (answer.right_as_it_stands)
        water = {"none; it is right as it stands"};
    else if (!(answer.dry_to_add > Mass{})) {
        water = {shown_water(jug_water(answer.water_to_add))};
        if (std::string other = other_water(answer.water_to_add); !other.empty()) water.push_back(std::move(other));
    }
    if (answer.water_to_add > Mass{} && lets_down(answer)) water.push_back("to " + answer.feel);
    if (answer.water_to_add > Mass{} && answer.tubs.count > 1) water.push_back(in_all_text(answer));
    told.amounts("water", std::move(water));
    if (!(answer.dry_to_add > Mass{})) tell_let_down_water(told, answer);
    if (answer.water_already_in > Mass{}) told.amounts("already in", {shown_water(jug_water(answer.water_already_in))});
}

/// "1930 g wet, about 1.7 l squeezed, 9 times in 10 from 1.6 to 2.0 l, enough for 18 to 23 balls".
std::string made_text(const MixAnswer& answer) {
    std::string text =
        fmt::format("{} wet, about {} {}{}", shown_mass(scale_mass(answer.wet_mass)), shown_volume(answer.wet_volume),
                    name_of(answer.state), in_brackets({other_volume(answer.wet_volume)}));
    if (answer.doubt && answer.doubt->wet_volume.high > 1.02 * answer.doubt->wet_volume.low)
        text += ", 9 times in 10 from " + shown_volume(answer.doubt->wet_volume.low, answer.doubt->wet_volume.high);
    if (answer.doubt && answer.doubt->portions)
        text += ", enough for " + counted_range(*answer.doubt->portions, answer.portions->called);
    return text;
}

std::string outcome(const MixAnswer& answer) {
    if (answer.dry_to_add > Mass{})
        return fmt::format(
            "{} as it stands, about {}. It is wetter than {}; another {} of the dry mix{} puts it right.",
            shown_mass(scale_mass(answer.wet_mass)), shown_volume(answer.wet_volume), answer.feel,
            shown_mass(scale_mass(answer.dry_to_add)),
            answer.all_parts_take_water ? "" : " (leaving out what takes no water)");
    std::string text = (answer.targets.empty() ? made_text(answer) : targets_made_text(answer)) + ".";
    if (answer.free_offerings >= 1)
        text += " It holds about " + shown_count(answer.free_offerings) +
                " single grains (pellets, seeds, live or cooked feed).";
    if (answer.cost && answer.people > 1)
        text += fmt::format(" {} for each of {} anglers.",
                            money_text(Money(round_half_even(static_cast<double>(answer.cost->minor()) / answer.people),
                                             answer.cost->currency())),
                            answer.people);
    if (!answer.limited_by.empty()) text += " The " + answer.limited_by + " runs out first.";
    return text;
}

std::string doubt_text(const MixAnswer& answer) {
    const MixDoubt& doubt = *answer.doubt;
    std::string text = fmt::format("It just holds at {} g of water per g of dry mix and slumps at {}.",
                                   shown_ratio(answer.marks.absorption), shown_ratio(answer.marks.slump));
    if (!doubt.measure_first.empty())
        text += fmt::format(" To be surer, measure the {} of your {} first: it makes up {} of the doubt{}.",
                            doubt.measure_first_what, doubt.measure_first, shown_percent(doubt.measure_first_share),
                            worded(" (baitwright ingredient measure)", ""));
    return text;
}

/// What of it no scale can tell; of several tubs, for each of them.
std::string by_hand_text(const MixAnswer& answer) {
    std::vector<HandAmount> amounts;
    amounts.reserve(answer.parts.size() + answer.additives.size());
    const auto add = [&](HandAmount amount) {
        const double tubs = answer.tubs.count;
        amount.mass = amount.mass / tubs;
        amount.volume = amount.volume / tubs;
        amount.grains /= tubs;
        amounts.push_back(std::move(amount));
    };
    for (const PartAnswer& part : answer.parts) add(hand_amount(part));
    for (const AdditiveAnswer& additive : answer.additives) add(hand_amount(additive));
    std::string text = hand_measures(amounts);
    return text.empty() || answer.tubs.count == 1 ? text : "To each tub: " + text;
}

}  // namespace

Told mix_told(const MixAnswer& answer) {
    Told told;
    told.title(title(answer));
    tell_lead(told, answer);
    told.gap();
    told.table(parts_table(answer));
    if (const std::string text = by_hand_text(answer); !text.empty()) told.line("By hand", text);
    answer.soaked_alone ? tell_soak_water(told, answer) : tell_water(told, answer);
    told.gap();
    told.line("Makes", outcome(answer));
    if (!(answer.dry_to_add > Mass{})) tell_targets(told, answer);
    told.gap();
    told.heading("Do this");
    for (const std::string& step : mix_steps(answer)) told.step(step);
    told.gap();
    if (answer.doubt && answer.marks.slump > 0) told.line("How sure", doubt_text(answer));
    if (answer.soaked_alone)
        told.line("How sure",
                  "Soak times hold within a factor of two for a bag nobody has timed. Squeeze one: no hard "
                  "heart, and it sticks to its neighbour.");
    if (answer.booked) told.line("Booked", booked_text(*answer.booked));
    told.mind(answer.warnings);
    told.take_care(answer.cautions);
    return told;
}

}  // namespace baitwright
