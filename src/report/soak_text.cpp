#include "report/soak_text.h"

#include <fmt/format.h>

#include <cmath>

#include "quantities/clock.h"
#include "quantities/units.h"
#include "quantities/worded.h"
#include "report/display.h"
#include "report/hand_measure.h"
#include "report/over_soaked_text.h"
#include "report/pump_words.h"
#include "report/shown_units.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string amount_text(const BatchAnswer& batch) {
    return fmt::format("{}: {}{} dry, about {} pellets", batch.name, shown_mass(scale_mass(batch.dry)),
                       in_brackets({other_mass(batch.dry), shown_loose(batch.dry_volume)}),
                       shown_count(batch.grains.all));
}

std::string wet_line(const BatchAnswer& batch) {
    if (!tells_both_volumes()) return "about " + shown_volume(batch.wet_volume);
    if (units_shown().pints)
        return "about " + shown_volume(batch.wet_volume) + in_brackets({other_volume(batch.wet_volume)});
    return "about " + other_volume(batch.wet_volume) + in_brackets({shown_volume(batch.wet_volume)});
}

std::string grains_line(const GrainsAnswer& grains, const PortionsWanted& portions) {
    return fmt::format(
        "A level cup of {} holds about {}, a squeezed ball of {:.0f} mm about {}. Where a cupful covers a patch {} "
        "across, about {} lie under a hand ({}).",
        shown_vessel(portions.cup), shown_count(grains.in_cup), portions.ball.in(millimetre),
        shown_count(grains.in_ball), shown_as_told(portions.carpet),
        grains.in_hand < 9.5 ? significant(grains.in_hand, 1) : shown_count(grains.in_hand), shown_hand());
}

/// What each stage feels like.
TextTable stages_table(const SoakedAnswer& soaked, SoakMethod method) {
    TextTable table({Align::left, Align::right, Align::left, Align::left});
    table.row({"", "after", "core", "outside"});
    const auto row = [&](const char* stage, const SoakPoint& point, const char* outside) {
        table.row({stage, shown_soak_time(point.at), feel_of_uptake(point.core), outside});
    };
    row(method == SoakMethod::covered ? "drained" : "water gone", soaked.drained, "slippery");
    row("ready", soaked.ready, feel_of_uptake(soaked.ready.surface));
    row("even", soaked.even, feel_of_uptake(soaked.even.surface));
    return table;
}

std::string soak_line(const SoakedAnswer& soaked, const SoakAnswer& answer) {
    if (answer.by_clock)
        return fmt::format("{}, as you say: they now hold about {} of all they can take ({:.0f} to {}).",
                           shown_soak_time(soaked.soak.middle), shown_percent(soaked.uptake),
                           soaked.uptake_range.low.in(percent), shown_percent(soaked.uptake_range.high));
    const std::string range = shown_soak_time(soaked.soak.low, soaked.soak.high);
    if (answer.method == SoakMethod::measured)
        return fmt::format("Bag them, shake, and leave them until the water is gone, about {} (likely {}).",
                           shown_soak_time(soaked.soak.middle), range);
    return fmt::format("{} under water (likely {}), to {} of all they can take.", shown_soak_time(soaked.soak.middle),
                       range, shown_percent(soaked.uptake));
}

std::string stand_line(const SoakedAnswer& soaked) {
    if (!(soaked.stand_ready.middle > Time{})) return "They are soft through at once; no need to stand.";
    return fmt::format("{}, covered, until ready (likely {}); {} until even right through.",
                       shown_soak_time(soaked.stand_ready.middle),
                       shown_soak_time(soaked.stand_ready.low, soaked.stand_ready.high),
                       shown_soak_time(soaked.stand_even.middle));
}

std::string weight_line(const SoakedAnswer& soaked, SoakMethod method) {
    std::string text = fmt::format("about {} ", shown_mass(scale_mass(soaked.wet())));
    if (method == SoakMethod::covered)
        text += fmt::format("(likely {}) ",
                            shown_mass(scale_mass(soaked.wet_range.low), scale_mass(soaked.wet_range.high)));
    return text + "and fill " + wet_line(soaked) + ".";
}

std::string activity_says(Ratio activity) {
    if (activity > 0.95) return "too little to keep them longer: cold and soon, as without it";
    if (activity > 0.91) return "it slows most bacteria a little; still keep them cold";
    if (activity > 0.85) return "it holds back most bacteria; keep them cold all the same";
    return "below the 0.85 that food safety asks of what may stand warm; mould can still grow";
}

std::string amount_of(const SteepedAdditive& additive) {
    const std::string dose = additive.liquid ? shown_dose(additive.volume) : shown_dose(additive.mass),
                      by_hand = hand_measure_behind(hand_amount(additive));
    return by_hand.empty() ? dose : dose + by_hand + ",";
}

void tell_additives(Told& told, const BatchAnswer& batch) {
    for (const SteepedAdditive& additive : batch.additives) {
        std::string line =
            fmt::format("{} of {} into the water: {} by weight there, {} in the pellets", amount_of(additive),
                        additive.name, shown_percent(additive.strength), shown_percent(additive.in_pellet));
        if (additive.of_label_max)
            line += fmt::format("; {} of the label's most", shown_percent(*additive.of_label_max));
        told.line("Stir", line + ".");
        if (additive.name.find("glycer") != std::string::npos)
            told.line("", "Glycerine makes a hook pellet tougher (common practice).");
    }
    if (batch.water_activity)
        told.line("", fmt::format("Water activity at most about {:.2f}: {}.", double(*batch.water_activity),
                                  activity_says(*batch.water_activity)));
}

void tell_keeping(Told& told, const BatchAnswer& batch) {
    if (!batch.keeps_cold && !batch.keeps_frozen) return;
    std::string text = "Once wet they keep";
    const auto days = [](Time time) {
        return time >= 60.0 * day ? fmt::format("{:.0f} months", time.in(month))
                                  : fmt::format("{:.0f} days", time.in(day));
    };
    if (batch.keeps_cold) text += fmt::format(" about {} cold", days(*batch.keeps_cold));
    if (batch.keeps_frozen)
        text += fmt::format("{} about {} frozen", batch.keeps_cold ? "," : "", days(*batch.keeps_frozen));
    told.line("Keeping", text + "; bin what smells sour or shows mould.");
}

void tell_soaked(Told& told, const SoakedAnswer& soaked, const SoakAnswer& answer) {
    told.title(amount_text(soaked));
    const bool covered = answer.method == SoakMethod::covered;
    told.line("Pour on",
              fmt::format("{} of water at {}{}", shown_water(jug_water(soaked.pour)), shown_temperature(answer.water),
                          covered ? "; it must cover them." : ", all of which they take: they cannot be over-soaked."));
    tell_additives(told, soaked);
    told.line("Soak", soak_line(soaked, answer));
    if (covered) told.line("Drain", "Then they weigh " + weight_line(soaked, answer.method));
    if (!covered) told.line("Result", "They weigh " + weight_line(soaked, answer.method));
    if (!left_too_long(soaked)) {
        told.line("Stand", stand_line(soaked));
        told.gap();
        told.table(stages_table(soaked, answer.method));
        told.gap();
        told.line("Portions", grains_line(soaked.grains, answer.portions));
    }
    tell_keeping(told, soaked);
}

const char* buoyancy_word(Buoyancy buoyancy) {
    switch (buoyancy) {
        case Buoyancy::floats:
            return "floats";
        case Buoyancy::sinks_slowly:
            return "sinks slowly";
        case Buoyancy::sinks:
            break;
    }
    return "sinks";
}

/// The strokes that tell something: the first ones, the one in question, and where it ends.
TextTable strokes_table(const PumpedAnswer& pumped) {
    constexpr std::size_t most_rows = 10;
    TextTable table({Align::right, Align::right, Align::right, Align::right, Align::left});
    table.row({"strokes", "pressure", "pores full", "g/ml", "a pellet"});
    const std::size_t each = (pumped.by_stroke.size() + most_rows - 1) / most_rows;
    for (std::size_t i = 0; i < pumped.by_stroke.size(); ++i) {
        const StrokeAnswer& stroke = pumped.by_stroke[i];
        const bool tells =
            stroke.strokes == pumped.at.strokes || stroke.strokes == pumped.fewest || i + 1 == pumped.by_stroke.size();
        if (!tells && (i + 1) % each != 0) continue;
        table.row({fmt::format("{}", stroke.strokes), fmt::format("{:.0f} kPa", stroke.pressure.in(kilopascal)),
                   shown_percent(stroke.fill), fmt::format("{:.2f}", stroke.density.in(gram_per_millilitre)),
                   buoyancy_word(stroke.buoyancy)});
    }
    return table;
}

std::string strokes_line(const PumpedAnswer& pumped) {
    if (!pumped.fewest) return "No number of strokes sinks them: they stay lighter than water.";
    std::string text = stroke_count(*pumped.fewest) + (*pumped.fewest == 1 ? " sinks" : " sink") + " the usual bag";
    if (!pumped.fewest_sure) return text + "; some bags never sink.";
    text += *pumped.fewest_sure > *pumped.fewest ? fmt::format(", {} nearly every bag.", *pumped.fewest_sure)
                                                 : " and nearly every other.";
    return text;
}

std::string pour_line(const PumpedAnswer& pumped, Temperature water) {
    const std::string lots = pumped.lots > 1 ? fmt::format("in {} equal lots, on each ", pumped.lots) : "";
    return fmt::format(
        "{}at least {} of water at {}, {} over them. They float: hold them under. That leaves {} of air to draw off.",
        lots, shown_water(jug_water(pumped.pour / pumped.lots)), shown_temperature(water),
        units_shown().system == UnitSystem::imperial ? "half an inch" : "1 cm", shown_vessel(pumped.free_volume));
}

void tell_pumped(Told& told, const PumpedAnswer& pumped, const SoakAnswer& answer) {
    told.title(amount_text(pumped));
    told.line("Pour on", pour_line(pumped, answer.water));
    tell_additives(told, pumped);
    told.line("Pump", fmt::format("{} That is with {} a stroke and a vessel of {}; put in your own if they differ.",
                                  strokes_line(pumped), shown_vessel(pumped.stroke), shown_vessel(pumped.vessel)));
    told.line(
        "", fmt::format(
                "After {} a pellet {}: {} of its pores are full once the air is let back in. Hold each pull until the "
                "bubbles stop, let the air in, and leave them 5 to 10 min.",
                stroke_count(pumped.at.strokes), buoyancy_word(pumped.at.buoyancy), shown_percent(pumped.at.fill)));
    told.gap();
    told.table(strokes_table(pumped));
    told.gap();
    told.line(
        "Why",
        fmt::format(
            "Each stroke takes the same share of the air that is left, so the last ones take little. Below {:.1f} kPa it "
            "never gets: that is the water's own vapour.",
            pumped.vapour.in(kilopascal)));
    told.line("Result",
              fmt::format("about {} and {} once drained.", shown_mass(scale_mass(pumped.wet())), wet_line(pumped)));
    tell_keeping(told, pumped);
    told.line(
        "Freezing",
        "Freeze what is left over in its bag. Freezing softens them, so use them the day they thaw (common practice).");
}

std::string task_text(const SoakTask& task) {
    switch (task.kind) {
        case SoakTask::Kind::pour_on:
            return fmt::format("pour {} on {}", shown_water(jug_water(task.pour)), task.name);
        case SoakTask::Kind::pump:
            return "pump " + task.name;
        case SoakTask::Kind::drain:
            break;
    }
    return "drain " + task.name;
}

void tell_timetable(Told& told, const SoakAnswer& answer) {
    const double start = answer.timetable.front().before_ready.in(minute);
    TextTable table({Align::right, Align::left});
    const auto moment = [&](double before_ready) {
        return answer.ready_at ? clock_text(*answer.ready_at - before_ready)
                               : fmt::format("{:.0f}", start - before_ready);
    };
    table.row({answer.ready_at ? "clock" : "minute", "do this"});
    for (const SoakTask& task : answer.timetable) table.row({moment(task.before_ready.in(minute)), task_text(task)});
    table.row({moment(0), "all ready"});
    told.gap();
    told.heading("Ready together");
    told.gap();
    told.table(std::move(table));
    told.gap();
}

std::string bites_text(const SoakAnswer& answer) {
    double all = 0;
    for (const SoakedAnswer& soaked : answer.soaked) all += soaked.grains.all;
    for (const PumpedAnswer& pumped : answer.pumped) all += pumped.grains.all;
    return fmt::format(
        "{:g} bites an hour for {}, half as many again for those missed or too soft{}: {:.0f} hook pellets.",
        answer.bites->per_hour, shown_time(answer.bites->length),
        answer.spare > 0 ? ", " + shown_percent(answer.spare) + " to spare" : "", std::ceil(all - 1e-6));
}

std::string doubt_text(const SoakAnswer& answer) {
    std::string text;
    if (!answer.soaked.empty())
        text += "Estimates; likely means 9 times in 10. For better ones soak " +
                std::string(units_shown().ounces ? "4 oz" : "100 g") + " by the clock, drain, weigh, and " +
                worded("give the weights to baitwright ingredient measure.", "write the weights down for home.");
    if (!answer.pumped.empty())
        text +=
            std::string(text.empty() ? "" : " ") +
            "Drop three in a glass: that decides. The fill is the most there can be; a leaking pump or blind pores bring it down.";
    return text;
}

}  // namespace

Told soak_told(const SoakAnswer& answer) {
    Told told;
    tell_left_too_long(told, answer);
    if (answer.bites) told.title(bites_text(answer));
    for (const SoakedAnswer& soaked : answer.soaked) tell_soaked(told, soaked, answer);
    for (const PumpedAnswer& pumped : answer.pumped) tell_pumped(told, pumped, answer);
    if (answer.soaked.size() + answer.pumped.size() > 1 || answer.ready_at) tell_timetable(told, answer);
    told.line("How sure", doubt_text(answer));
    told.mind(warnings_not_yet_told(answer));
    told.take_care(answer.cautions);
    return told;
}

}  // namespace baitwright
