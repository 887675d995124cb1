#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/clock.h"
#include "quantities/units.h"
#include "report/breach_text.h"
#include "report/cost_report.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/hand_measure.h"
#include "report/hot_day_report.h"
#include "report/kept_text.h"
#include "report/level_cup.h"
#include "report/measured_words.h"
#include "report/plan_report.h"
#include "report/plan_shopping.h"
#include "report/prep_told.h"
#include "report/pump_words.h"
#include "report/session_moment.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string plural(int count, std::string_view word) {
    return fmt::format("{} {}{}", count, word, count == 1 ? "" : "s");
}

struct PutInSize {
    std::string operator()(Mass mass) const { return shown_mass(mass); }
    std::string operator()(Volume volume) const { return shown_helping(volume); }
    std::string operator()(Length diameter) const { return fmt::format("{:.3g} mm", diameter.in(millimetre)); }
};

std::string portion_text(const PlannedFeed& put_in) {
    const std::string size = std::visit(PutInSize{}, put_in.size);
    if (put_in.form == FeedForm::loose) return size + " loose";
    return plural(put_in.count, name_of(put_in.form)) + " of " + size;
}

std::string with_text(const PlannedFeed& put_in) {
    if (put_in.form == FeedForm::loose || put_in.with == name_of(put_in.form)) return {};
    if (put_in.fills > put_in.count) return fmt::format("with the {}, filled {} times", put_in.with, put_in.fills);
    return put_in.with == "hand" ? "by hand" : "with the " + put_in.with;
}

/// "5 min", "80 s".
std::string gap_text(double minutes) {
    const bool whole = std::abs(minutes - std::round(minutes)) < 1e-6;
    return minutes < 5 && !whole ? fmt::format("{:.0f} s", 60 * minutes) : fmt::format("{:.3g} min", minutes);
}

/// Moments of one feed: "At 09:30, 10:10." or "Every 5 min from 09:30 to 14:25, 60 times."
std::string moments_text(const SessionPlan& plan, const std::vector<const PlannedFeed*>& put_ins) {
    constexpr std::size_t all_told = 6;
    const auto at = [&](std::size_t i) { return session_moment(plan, put_ins[i]->at); };
    const std::size_t count = put_ins.size();
    if (count <= all_told) {
        std::string text = "At ";
        for (std::size_t i = 0; i < count; ++i) text += (i == 0 ? "" : ", ") + at(i);
        return text + ".";
    }
    const double gap = (put_ins[1]->at - put_ins[0]->at).in(minute);
    return fmt::format("Every {} from {} to {}, {} times.", gap_text(gap), at(0), at(count - 1), count);
}

std::string feed_text(const SessionPlan& plan, const PlannedFeed& put_in) {
    const std::string with = with_text(put_in);
    const bool alone = together_with(plan, put_in.feed).empty();
    return fmt::format("{}: {}{}, about {}", put_in.name,
                       alone ? portion_text(put_in) : shared_portion(plan, put_in.feed),
                       with.empty() ? "" : ", " + with, shown_mass(scale_mass(put_in.mass)));
}

/// "Silt bed: 1 ball of 45 mm, about 60 g, kept ready; when bites slow (reckoned 3 times)."
void tell_slow_feeds(Told& told, const SessionPlan& plan) {
    for (const PlannedSlowFeed& slow : plan.slow) {
        std::string text = feed_text(plan, slow.each) + ", kept ready; when bites slow";
        if (slow.each.at > Time{}) text += ", from " + session_moment(plan, slow.each.at) + " on";
        if (slow.until) text += ", up to " + session_moment(plan, *slow.until);
        told.row({}, text + " (" + shown_reckoned(slow.times) + ").");
    }
}

void tell_put_ins(Told& told, const SessionPlan& plan) {
    told.heading("Goes in, for each angler");
    told.gap();
    for (std::size_t feed = 0; feed < plan.feeds.size(); ++feed) {
        std::vector<const PlannedFeed*> put_ins;
        for (const PlannedFeed& put_in : plan.put_ins)
            if (put_in.feed == feed) put_ins.push_back(&put_in);
        if (put_ins.empty()) continue;
        told.row({}, feed_text(plan, *put_ins.front()) + ". " + moments_text(plan, put_ins));
    }
    tell_slow_feeds(told, plan);
    told.gap();
}

std::string swim_text(const SessionPlan& plan) {
    std::string text;
    const std::size_t count = plan.in_the_swim.size(), step = std::max<std::size_t>(1, (count + 4) / 5);
    for (std::size_t i = 0; i < count; ++i) {
        if (i % step != 0 && i + 1 != count) continue;
        const InTheSwim& at = plan.in_the_swim[i];
        text += fmt::format("{}{} at {}", text.empty() ? "" : ", ", at.grains < 1 ? "none" : shown_count(at.grains),
                            session_moment(plan, at.at));
    }
    return "Single grains in each swim, if none are eaten: " + text + ".";
}

TextTable weigh_table(const SessionPlan& plan) {
    TextTable table({Align::left, Align::right, Align::right, Align::left});
    table.row({"weigh", mass_head(), "loose", ""});
    for (const PlannedTotal& total : plan.totals) {
        const bool all_soaked = total.soaked >= 0.999 * total.mass;
        table.row(
            {total.name, shown_weighed(total.mass),
             total.volume < 20.0 * millilitre ? shown_helping(total.volume) : shown_loose(total.volume),
             total.soaked > Mass{} ? (all_soaked ? "soaked" : "soaked " + shown_mass(scale_mass(total.soaked))) : ""});
    }
    return table;
}

/// "196 g dry", or where all of it was made before nothing.
std::string fresh_text(const PlannedBatch& batch) {
    if (!(batch.dry > Mass{}) && !batch.kept.empty()) return "nothing to weigh";
    return shown_mass(scale_mass(batch.dry)) + " dry";
}

std::string batch_text(const PlannedBatch& batch) {
    if (batch.kept.empty() && batch.feel.empty() && batch.wet_mass <= 1.001 * batch.dry)
        return fmt::format("{}: {} as it is, about {}.", batch.name, shown_weighed(batch.dry),
                           shown_volume(batch.wet_volume));
    std::string text = batch.name + ": " + fresh_text(batch);
    const Mass to_feel = batch.water_first + batch.water_rest;
    if (to_feel > 0.5 * gram)
        text += fmt::format(" and about {} of water{} (9 times in 10: {}), {} first and the rest by feel after {}",
                            shown_water(jug_water(to_feel)), batch.let_downs.empty() ? "" : " to be " + batch.feel,
                            shown_water(jug_water(batch.water_range.low), jug_water(batch.water_range.high)),
                            shown_water(jug_water(batch.water_first)), shown_time(batch.rest));
    for (const LetDown& wetter : batch.let_downs)
        text += fmt::format("; then {} of it let down to {} with about {} more (9 times in 10: {})",
                            shown_mass(scale_mass(wetter.take)), wetter.feel, shown_water(jug_water(wetter.water)),
                            shown_water(jug_water(wetter.water_range.low), jug_water(wetter.water_range.high)));
    if (batch.kept_dry > Mass{}) text += ", in two goes (see Keep it damp)";
    return text +
           fmt::format("; {}{}, about {}.", batch.kept.empty() || batch.dry > Mass{} ? "makes " : "",
                       shown_mass(scale_mass(batch.wet_mass)), shown_volume(batch.wet_volume)) +
           kept_in_batch(batch);
}

std::string soak_text_of(const PlannedSoak& soak) {
    if (soak.strokes > 0)
        return fmt::format("{}: {}{} ({}; drop three in a glass).", soak.name, shown_weighed(soak.dry),
                           hand_measure_behind(hand_amount(soak)), pump_words(soak));
    return fmt::format("{}: {} dry, {} under water, {} drained until ready; {} then.", soak.name,
                       shown_mass(scale_mass(soak.dry)), shown_soak_time(soak.soak), shown_time(soak.stand),
                       shown_mass(scale_mass(soak.wet)));
}

std::string breach_text(const PlanBreach& breach) {
    return fmt::format("{}; the plan has {}.", breach.rule, planned_against(breach));
}

void tell_rules(Told& told, const SessionPlan& plan) {
    for (const PlanBreach& breach : plan.breaches) told.line("Breach", sentence(breach_text(breach)));
    if (!plan.venue.empty() && plan.breaches.empty())
        told.line("Venue", "This breaks no limit or ban of " + plan.venue + ".");
    for (const std::string& rule : plan.venue_notes) told.line("Venue", sentence(rule));
    told.line("First",
              "The venue's rules, the byelaws and your licence come before all of this. Check, clean and dry "
              "your tackle between waters.");
}

std::string title(const SessionPlan& plan) {
    std::string text = plan.strategy + ", " + shown_moment(plan.length);
    if (plan.start)
        text +=
            fmt::format(", from {} to {}", clock_text(*plan.start), clock_text(*plan.start + plan.length.in(minute)));
    if (plan.people > 1) text += fmt::format(", {} anglers", plan.people);
    if (plan.times > 1) text += fmt::format(", the first of {} sessions", plan.times);
    return text;
}

void tell_making(Told& told, const SessionPlan& plan) {
    for (const PlannedBatch& batch : plan.batches) told.line("Make", sentence(batch_text(batch)));
    for (const PlannedSoak& soak : plan.soaks)
        told.line(soak.strokes > 0 ? "Pump" : "Soak", sentence(soak_text_of(soak)));
    for (const HookbaitNeed& hook : plan.hookbaits)
        told.line("Hook", sentence(fmt::format("{} {}", shown_count(hook.count), hook.name)));
    const std::string tubs = plural(plan.containers, "tub");
    if (plan.water_to_carry < 0.5 * gram)
        return told.line("Carry", tubs + " for the mixes and feeds; they take no water.");
    const bool sprays = plan.hot_day && plan.hot_day->sprayed > Mass{};
    told.line("Carry", fmt::format("{} of water for all of this{}, and {} for the mixes and feeds.",
                                   shown_water(jug_water(plan.water_to_carry)),
                                   sprays ? ", " + shown_water(plan.hot_day->sprayed) + " of it to spray" : "", tubs));
}

}  // namespace

std::string together_with(const SessionPlan& plan, std::size_t feed) {
    std::string others;
    for (std::size_t i = 0; i < plan.feeds.size(); ++i)
        if (i != feed && plan.feeds[i].written == plan.feeds[feed].written)
            others += (others.empty() ? "" : " and ") + plan.feeds[i].name;
    return others;
}

std::string shared_portion(const SessionPlan& plan, std::size_t feed) {
    const PlannedFeedTotal& of = plan.feeds[feed];
    const Volume* volume = std::get_if<Volume>(&of.size);
    std::string portion = volume ? shown_helping(*volume) : shown_size(of.size);
    if (of.form == FeedForm::loose)
        portion += " loose";
    else if (of.count == 1)
        portion += fmt::format(" in a {}", name_of(of.form));
    else
        portion += fmt::format(" in each of {} {}s", of.count, name_of(of.form));
    return portion + ", with " + together_with(plan, feed);
}

Told plan_told(const SessionPlan& plan) {
    const bool rules_first = !plan.breaches.empty() || !plan.venue.empty();
    Told told;
    told.title(title(plan));
    if (rules_first) {
        tell_rules(told, plan);
        told.gap();
    }
    told.add(prep_told(plan));
    told.gap();
    told.table(weigh_table(plan));
    if (const std::string by_hand = hand_measures(plan.totals); !by_hand.empty()) told.line("By hand", by_hand);
    told.gap();
    tell_making(told, plan);
    told.gap();
    told.add(hot_day_told(plan));
    tell_put_ins(told, plan);
    if (feeds_level_cups(plan)) told.line("Cup", sentence(std::string("level: ") + level_cup_words));
    told.line("In swim", swim_text(plan));
    told.line("Buy", shopping_text(plan.cost));
    told.line("Cost", plan_cost_text(plan));
    if (!plan.kept.empty()) told.line("Kept", sentence(kept_text(plan.kept)));
    for (const PlanAdvice& advice : plan.advice)
        told.line("Advice", advice.text + " Because " + shown_words(advice.reason) + " (common practice).");
    told.mind(plan.warnings);
    told.take_care(plan.cautions);
    if (!rules_first) tell_rules(told, plan);
    return told;
}

}  // namespace baitwright
