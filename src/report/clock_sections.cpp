#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/clock.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/plan_report.h"
#include "report/session_moment.h"
#include "report/session_sheet.h"
#include "report/sheet_sections.h"
#include "report/stirred_in_last.h"

namespace baitwright {

namespace {

constexpr std::size_t most_boxes = 24;  // more are a tally by the hour

std::string job_words(const PrepJob& job) {
    const std::string& of = job.subject;
    switch (job.task) {
        case PrepTask::weigh:
            return (job.count > 1 && job.portions.size() == 1 ? "weigh out the dry parts of " : "weigh out ") + of;
        case PrepTask::pump:
            return "pump " + of;
        case PrepTask::pour_on:
            return "water on " + of;
        case PrepTask::drain:
            return "drain " + of + ", let it stand";
        case PrepTask::first_wetting:
            return "first water into " + of;
        case PrepTask::riddle:
            return "riddle " + of;
        case PrepTask::second_wetting:
            return "rest of the water into " + of + ", by feel";
        case PrepTask::let_down:
            return "let " + shown_mass(scale_mass(job.take)) + " of " + of + " down to " + job.feel;
        case PrepTask::shape:
            return fmt::format("shape {} {} of {}", job.count, job.count == 1 ? "ball" : "balls", of);
        case PrepTask::travel:
            return "travel to the water, " + hours_and_minutes(job.waiting);
        case PrepTask::bring_to_hand:
            return "bring it all to hand; feel each mix again";
        case PrepTask::thaw:
            return "thaw " + of + ", covered, in the cool";
        case PrepTask::stir_in:
            return stirring_in_text(job);
        case PrepTask::load:
            break;
    }
    return "load up";
}

bool is_water(PrepTask task) {
    return task == PrepTask::pump || task == PrepTask::pour_on || task == PrepTask::first_wetting ||
           task == PrepTask::second_wetting || task == PrepTask::let_down;
}

CardRow job_row(const SessionPlan& plan, const PrepJob& job) {
    CardRow row;
    row.tick = CardRow::Tick::box;
    row.when = job.when == PrepJob::When::evening_before ? "evening" : moment_before(plan, job.at);
    const bool stays = job.task == PrepTask::load && !(plan.travel > Time{});
    row.what = stays ? "bring it all to hand; drop nothing in yet" : job_words(job);
    if (job.amount > 0.5 * gram && job.task != PrepTask::stir_in)
        row.amount = is_water(job.task) ? shown_water(jug_water(job.amount)) : shown_weighed(job.amount);
    return row;
}

/// "3 cups of 250 ml", "1 ball of 45 mm", "60 ml loose".
std::string helping_text(const PlannedFeedTotal& feed) {
    const std::string size = shown_size(feed.size);
    if (feed.form == FeedForm::loose)
        return feed.count > 1 ? fmt::format("{} times {} loose", feed.count, size) : size + " loose";
    return fmt::format("{} {}{} of {}", feed.count, name_of(feed.form), feed.count > 1 ? "s" : "", size);
}

/// Of one that shares its cup: "180 ml in each of 2 cups, with casters".
std::string portion_words(const SessionPlan& plan, std::size_t feed) {
    return together_with(plan, feed).empty() ? helping_text(plan.feeds[feed]) : shared_portion(plan, feed);
}

/// "every 40 min", "6 times", or nothing for one put-in.
std::string rhythm_text(const std::vector<const PlannedFeed*>& put_ins) {
    if (put_ins.size() < 2) return {};
    const double gap = (put_ins[1]->at - put_ins[0]->at).in(minute);
    bool even = true;
    for (std::size_t i = 2; i < put_ins.size(); ++i)
        even = even && std::abs((put_ins[i]->at - put_ins[i - 1]->at).in(minute)-gap) < 0.02;
    std::string times = fmt::format(", {} times", put_ins.size());
    if (!even) return times;
    return gap < 1.95 ? fmt::format(", every {:.0f} s", 60 * gap) + times
                      : fmt::format(", every {:.3g} min", gap) + times;
}

/// So many that a person strikes them off: a row of strokes for each hour of the session.
std::vector<CardTally> tallies_by_hour(const SessionPlan& plan, const std::vector<const PlannedFeed*>& put_ins) {
    constexpr int most_strokes = 150;
    std::vector<CardTally> tallies;
    for (Time from; from < plan.length; from += 1.0 * hour) {
        const auto in_hour =
            static_cast<int>(std::count_if(put_ins.begin(), put_ins.end(), [&](const PlannedFeed* put_in) {
                return put_in->at >= from && put_in->at < from + 1.0 * hour;
            }));
        if (in_hour == 0) continue;
        CardTally tally{fmt::format("from {}: {}", session_moment(plan, from), in_hour), in_hour};
        if (in_hour > most_strokes) {
            tally.strokes = (in_hour + 9) / 10;
            tally.words += ", a stroke for ten";
        }
        tallies.push_back(std::move(tally));
    }
    return tallies;
}

CardRow feed_row(const SessionPlan& plan, std::size_t feed) {
    std::vector<const PlannedFeed*> put_ins;
    for (const PlannedFeed& put_in : plan.put_ins)
        if (put_in.feed == feed) put_ins.push_back(&put_in);
    CardRow row;
    if (put_ins.empty()) return row;
    const PlannedFeed& first = *put_ins.front();
    row.when = session_moment(plan, first.at);
    row.what = portion_words(plan, feed) + ", " + first.name + rhythm_text(put_ins);
    if (first.fills > 1 && first.with.find_first_of("0123456789") != std::string::npos)
        row.what += fmt::format(" ({} x {})", first.fills, first.with);
    row.amount = shown_weighed(first.mass);
    if (put_ins.size() == 1)
        row.tick = CardRow::Tick::box;
    else if (put_ins.size() <= most_boxes)
        for (const PlannedFeed* put_in : put_ins) row.boxes.push_back(session_moment(plan, put_in->at));
    else
        row.tallies = tallies_by_hour(plan, put_ins);
    return row;
}

/// One that is kept ready for slow bites, with a box for each time that it is reckoned with.
CardRow slow_row(const SessionPlan& plan, const PlannedSlowFeed& slow) {
    CardRow row;
    row.when = "slow";
    row.what = portion_words(plan, slow.each.feed) + ", " + slow.each.name + ", kept ready: when bites slow";
    if (slow.each.at > Time{}) row.what += ", from " + session_moment(plan, slow.each.at) + " on";
    row.amount = shown_weighed(slow.each.mass);
    const auto times = static_cast<std::size_t>(std::ceil(slow.times));
    if (times == 1) row.tick = CardRow::Tick::box;
    if (times > 1 && times <= most_boxes)
        for (std::size_t i = 1; i <= times; ++i) row.boxes.push_back(std::to_string(i));
    if (times > most_boxes) row.tallies.push_back({shown_reckoned(slow.times), static_cast<int>(times)});
    return row;
}

}  // namespace

CardSection before_section(const SessionPlan& plan) {
    CardSection section;
    section.heading = "Before the start";
    for (const PrepJob& job : plan.prep) section.rows.push_back(job_row(plan, job));
    if (section.rows.empty()) return section;
    CardRow elsewhere;
    elsewhere.what = "all of these jobs in turn: baitwright plan has them";
    section.in_short = {elsewhere};
    section.gives = CardSection::Gives::jobs;
    section.left_out = section.rows.size();
    return section;
}

CardSection water_section(const SessionPlan& plan) {
    CardSection section;
    section.heading = "At the water";
    section.side = CardSection::Side::water;
    for (std::size_t feed = 0; feed < plan.feeds.size(); ++feed) {
        CardRow row = feed_row(plan, feed);
        if (!row.what.empty()) section.rows.push_back(std::move(row));
    }
    for (const PlannedSlowFeed& slow : plan.slow) section.rows.push_back(slow_row(plan, slow));
    return section;
}

}  // namespace baitwright
