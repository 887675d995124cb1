#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "bait/kitchen_rounding.h"
#include "quantities/clock.h"
#include "quantities/units.h"
#include "report/cost_report.h"
#include "report/display.h"
#include "report/plan_report.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

/// "09:30" where there is a clock, else minutes from the start.
std::string moment_text(const SessionPlan& plan, Time at) {
    const double minutes = std::round(at.in(minute) + 0.0);
    return plan.start ? clock_text(*plan.start + minutes) : fmt::format("{:.0f}", minutes == 0 ? 0 : minutes);
}

std::string length_text(Time length) {
    const double minutes = length.in(minute);
    return minutes < 60 ? fmt::format("{:.3g} min", minutes) : fmt::format("{:.4g} h", length.in(hour));
}

std::string plural(int count, std::string_view word) {
    return fmt::format("{} {}{}", count, word, count == 1 ? "" : "s");
}

std::string shown_small(Volume volume) { return fmt::format("{:.2g} ml", volume.in(millilitre)); }

struct SizeText {
    std::string operator()(Mass mass) const { return shown_mass(mass); }
    std::string operator()(Volume volume) const { return volume < 20.0 * millilitre ? shown_small(volume) : shown_volume(volume); }
    std::string operator()(Length diameter) const { return fmt::format("{:.3g} mm", diameter.in(millimetre)); }
};

std::string portion_text(const PlannedFeed& put_in) {
    const std::string size = std::visit(SizeText{}, put_in.size);
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
    const auto at = [&](std::size_t i) { return moment_text(plan, put_ins[i]->at); };
    const std::size_t count = put_ins.size();
    if (count <= all_told) {
        std::string text = plan.start ? "At " : "At minute ";
        for (std::size_t i = 0; i < count; ++i) text += (i == 0 ? "" : ", ") + at(i);
        return text + ".";
    }
    const double gap = (put_ins[1]->at - put_ins[0]->at).in(minute);
    return fmt::format("Every {} from {}{} to {}, {} times.", gap_text(gap), plan.start ? "" : "minute ", at(0), at(count - 1),
                       count);
}

std::string put_ins_text(const SessionPlan& plan) {
    std::string text;
    for (std::size_t feed = 0; feed < plan.feeds.size(); ++feed) {
        std::vector<const PlannedFeed*> put_ins;
        for (const PlannedFeed& put_in : plan.put_ins)
            if (put_in.feed == feed) put_ins.push_back(&put_in);
        if (put_ins.empty()) continue;
        const PlannedFeed& first = *put_ins.front();
        const std::string with = with_text(first);
        text += paragraph("  ", fmt::format("{}: {}{}, about {}. {}", first.name, portion_text(first),
                                             with.empty() ? "" : ", " + with, shown_mass(kitchen_mass(first.mass)),
                                             moments_text(plan, put_ins)));
    }
    return text;
}

std::string swim_text(const SessionPlan& plan) {
    std::string text;
    const std::size_t count = plan.in_the_swim.size(), step = std::max<std::size_t>(1, (count + 4) / 5);
    for (std::size_t i = 0; i < count; ++i) {
        if (i % step != 0 && i + 1 != count) continue;
        const InTheSwim& at = plan.in_the_swim[i];
        text += fmt::format("{}{} at {}{}", text.empty() ? "" : ", ", at.grains < 1 ? "none" : shown_count(at.grains),
                            plan.start ? "" : "minute ", moment_text(plan, at.at));
    }
    return "Single grains in each swim, were none eaten: " + text + ".";
}

std::string job_text(const PrepJob& job) {
    const std::string water = shown_water(kitchen_water(job.amount));
    switch (job.task) {
        case PrepTask::weigh:
            if (job.count == 1) return fmt::format("weigh {} of {}", shown_weighed(job.amount), job.subject);
            return fmt::format("weigh the {} parts of {}, {} dry in all, and stir them together", job.count, job.subject,
                               shown_mass(kitchen_mass(job.amount)));
        case PrepTask::pump: return "pump " + job.subject + " in at least " + water + " of water, dyed if you dye them";
        case PrepTask::pour_on: return "pour " + water + " on " + job.subject;
        case PrepTask::drain: return "drain " + job.subject + "; let them stand, covered";
        case PrepTask::first_wetting: return fmt::format("{}: stir in the first {} of water", job.subject, water);
        case PrepTask::riddle: return "riddle " + job.subject;
        case PrepTask::second_wetting:
            return fmt::format("{}: add the rest by feel, about {}", job.subject, water);
        case PrepTask::shape: return "shape the first " + plural(job.count, "ball") + " of " + job.subject;
        case PrepTask::load: break;
    }
    return "bring it all to hand; drop nothing in yet";
}

/// The jobs of the evening or of the day: when, how long for the hands, what.
std::string prep_lines(const SessionPlan& plan, PrepJob::When when) {
    std::string text;
    for (const PrepJob& job : plan.prep) {
        if (job.when != when) continue;
        const double hands = std::max(1.0, std::ceil(job.hands_on.in(minute) - 1e-9));
        text += paragraph(fmt::format("  {:>6}  {:>3.0f} min  ", moment_text(plan, job.at), hands), job_text(job));
    }
    if (text.empty()) return text;
    return fmt::format("  {:>6}  {:>7}  do this\n", plan.start ? "clock" : "minute", "hands") + text;
}

std::string prep_text(const SessionPlan& plan) {
    std::string text;
    const std::string evening = prep_lines(plan, PrepJob::When::evening_before);
    if (!evening.empty()) text += "The evening before\n\n" + evening + "\n";
    const std::string today = prep_lines(plan, PrepJob::When::on_the_day);
    text += std::string("On the day") + "\n\n" + today + "\n";
    return text;
}

std::string begin_text(const SessionPlan& plan) {
    const double minutes = -plan.begin.in(minute);
    const std::string before = fmt::format("{:.0f} min before the start", minutes);
    return fmt::format("Begin {} at the latest. The hands are busy for {:.0f} min in all, the evening before included.",
                       plan.start ? "by " + clock_text(*plan.start - minutes) + ", " + before + "," : before,
                       plan.hands_on.in(minute));
}

std::string weigh_table(const SessionPlan& plan) {
    TextTable table({Align::left, Align::right, Align::right, Align::left});
    table.row({"weigh", "grams", "loose", ""});
    for (const PlannedTotal& total : plan.totals) {
        const bool all_soaked = total.soaked >= 0.999 * total.mass;
        table.row({total.name, shown_weighed(total.mass),
                   total.volume < 20.0 * millilitre ? shown_small(total.volume) : shown_pints(total.volume),
                   total.soaked > Mass{} ? (all_soaked ? "soaked" : "soaked " + shown_mass(kitchen_mass(total.soaked))) : ""});
    }
    return table.text();
}

std::string batch_text(const PlannedBatch& batch) {
    if (batch.feel.empty() && batch.wet_mass <= 1.001 * batch.dry)
        return fmt::format("{}: {} as it is, about {}.", batch.name, shown_weighed(batch.dry), shown_volume(batch.wet_volume));
    std::string text = batch.name + ": " + shown_mass(kitchen_mass(batch.dry)) + " dry";
    if (batch.water > 0.5 * gram)
        text += fmt::format(" and about {} of water (9 times in 10: {}), {} first and the rest by feel after {}", shown_water(kitchen_water(batch.water)),
                            shown_water(kitchen_water(batch.water_range.low), kitchen_water(batch.water_range.high)),
                            shown_water(kitchen_water(batch.water_first)), shown_time(batch.rest));
    return text + fmt::format("; makes {}, about {}.", shown_mass(kitchen_mass(batch.wet_mass)), shown_volume(batch.wet_volume));
}

std::string soak_text_of(const PlannedSoak& soak) {
    if (soak.strokes > 0)
        return fmt::format("{}: {} ({:.0f} strokes of the pump; drop three in a glass).", soak.name,
                           shown_weighed(soak.dry), double(soak.strokes));
    return fmt::format("{}: {} dry, {} under water, {} drained until ready; {} then.", soak.name,
                       shown_mass(kitchen_mass(soak.dry)), shown_soak_time(soak.soak), shown_time(soak.stand),
                       shown_mass(kitchen_mass(soak.wet)));
}

std::string shopping_text(const StrategyCost& cost) {
    std::string text;
    for (const PackBought& bought : cost.packs) {
        text += fmt::format("{}{} x {} {}", text.empty() ? "" : "; ", bought.count, shown_pack(bought.pack), bought.name);
    }
    if (text.empty()) text = cost.complete() ? "nothing, all is in the shed" : "";
    for (const std::string& name : cost.unpriced) text += (text.empty() ? "" : "; ") + name + " (no price)";
    return sentence(text);
}

std::string cost_line(const SessionPlan& plan) {
    const StrategyCost& cost = plan.cost;
    if (!cost.currency) return "no price is known.";
    const auto money = [&](std::int64_t minor) { return shown_money(static_cast<double>(minor), *cost.currency); };
    std::string text = fmt::format("{} used, {} to pay", money(cost.used_minor), money(cost.outlay_minor));
    if (plan.times > 1) text += fmt::format(", for {} sessions", plan.times);
    if (plan.people > 1) text += fmt::format("; {} used for each angler", shown_money(cost.per_angler(), *cost.currency));
    return text + (cost.complete() ? "." : "; what has no price is not in it.");
}

std::string planned_text(const std::variant<Mass, Volume>& amount) {
    if (const Mass* mass = std::get_if<Mass>(&amount)) return shown_mass(kitchen_mass(*mass));
    return shown_volume(std::get<Volume>(amount));
}

std::string breach_text(const PlanBreach& breach) {
    return fmt::format("{}; planned are {}.", breach.rule, planned_text(breach.planned));
}

std::string rules_text(const SessionPlan& plan) {
    std::string text;
    for (const PlanBreach& breach : plan.breaches) text += paragraph("Breach    ", sentence(breach_text(breach)));
    if (!plan.venue.empty() && plan.breaches.empty())
        text += paragraph("Venue     ", "No limit or ban of " + plan.venue + " is broken.");
    for (const std::string& rule : plan.venue_notes) text += paragraph("Venue     ", sentence(rule));
    text += paragraph("First     ", "The venue's rules, the byelaws and your licence come before all of this. Check, clean and dry "
                                    "your tackle between waters.");
    return text;
}

std::string head_text(const SessionPlan& plan) {
    std::string text = plan.strategy + ", " + length_text(plan.length);
    if (plan.start) text += fmt::format(", from {} to {}", clock_text(*plan.start), clock_text(*plan.start + plan.length.in(minute)));
    if (plan.people > 1) text += fmt::format(", {} anglers", plan.people);
    if (plan.times > 1) text += fmt::format(", the first of {} sessions", plan.times);
    return text + "\n\n";
}

std::string make_text(const SessionPlan& plan) {
    std::string text;
    for (const PlannedBatch& batch : plan.batches) text += paragraph("Make      ", sentence(batch_text(batch)));
    for (const PlannedSoak& soak : plan.soaks)
        text += paragraph(soak.strokes > 0 ? "Pump      " : "Soak      ", sentence(soak_text_of(soak)));
    for (const HookbaitNeed& hook : plan.hookbaits)
        text += paragraph("Hook      ", sentence(fmt::format("{} {}", shown_count(hook.count), hook.name)));
    text += paragraph("Carry     ", fmt::format("{} of water for all of this, and {} for the mixes and feeds.",
                                                shown_water(kitchen_water(plan.water_to_carry)), plural(plan.containers, "tub")));
    return text;
}

}  // namespace

std::string plan_text(const SessionPlan& plan) {
    std::string text = head_text(plan);
    if (!plan.breaches.empty() || !plan.venue.empty()) text += rules_text(plan) + "\n";
    text += prep_text(plan);
    text += paragraph("Begin     ", begin_text(plan));
    text += "\n" + weigh_table(plan) + "\n";
    text += make_text(plan);
    text += "\nGoes in, for each angler\n\n" + put_ins_text(plan) + "\n";
    text += paragraph("In swim   ", swim_text(plan));
    text += paragraph("Buy       ", shopping_text(plan.cost));
    text += paragraph("Cost      ", cost_line(plan));
    for (const PlanAdvice& advice : plan.advice)
        text += paragraph("Advice    ", advice.text + " Because " + advice.reason + " (common practice).");
    for (const Warning& warning : plan.warnings) text += paragraph("Mind      ", sentence(warning.message));
    for (const std::string& caution : plan.cautions) text += paragraph("Take care ", caution);
    if (plan.breaches.empty() && plan.venue.empty()) text += rules_text(plan);
    return text;
}

namespace {

std::string rest_line(const RestOfFeed& feed) {
    std::string text = fmt::format("{}: about {} left ({}).", feed.name, shown_volume(feed.left), shown_mass(kitchen_mass(feed.left_mass)));
    if (feed.planned_put_ins > 0)
        text += fmt::format(" The plan still has {} put-ins, {}.", feed.planned_put_ins, shown_volume(feed.still_planned));
    else
        text += " The plan has no more of it.";
    return sentence(text);
}

std::string top_up_line(const RestOfFeed& feed) {
    if (feed.top_up_as == FeedForm::ball)
        return fmt::format("{}: one tight ball of {:.0f} mm, and a pinch loose over it.", feed.name, feed.ball.in(millimetre));
    return fmt::format("{}: about {} loose, over a wider area.", feed.name, shown_volume(feed.top_up));
}

std::string spread_line(const RestOfFeed& feed, Bites bites) {
    if (feed.put_ins == 0) return {};
    const std::string each = shown_volume(feed.each);
    if (feed.put_ins == 1) return fmt::format("{}: one more of {}, about {} from now.", feed.name, each, shown_time(feed.gap));
    return fmt::format("{}: {} more of {}, one every {}{}.", feed.name, feed.put_ins, each, shown_time(feed.gap),
                       bites == Bites::none ? ", but only once bites come" : "");
}

}  // namespace

std::string rest_text(const SessionPlan& plan, const RestOfSession& rest) {
    std::string text = fmt::format("{}, {}: {} left\n\n", plan.strategy,
                                   plan.start ? moment_text(plan, rest.now) : "minute " + moment_text(plan, rest.now),
                                   shown_time(rest.left));
    for (const RestOfFeed& feed : rest.feeds) text += paragraph("Left      ", rest_line(feed));
    for (const RestOfFeed& feed : rest.feeds)
        if (feed.top_up > Volume{}) text += paragraph("Top up    ", sentence(top_up_line(feed)));
    for (const RestOfFeed& feed : rest.feeds)
        if (const std::string spread = spread_line(feed, rest.bites); !spread.empty())
            text += paragraph("Then      ", sentence(spread));
    for (const PlanAdvice& advice : rest.advice)
        text += paragraph("Advice    ", advice.text + " Because " + advice.reason + ".");
    return text + paragraph("How sure  ", "Rules of thumb (common practice, no source). The fish decide.");
}

}  // namespace baitwright
