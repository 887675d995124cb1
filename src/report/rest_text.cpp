#include <fmt/format.h>

#include <algorithm>

#include "quantities/clock.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/measured_words.h"
#include "report/plan_report.h"
#include "report/session_moment.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

constexpr double plainly_squeezed = 0.98;

/// None of it goes in any more, and the plan has none of it to come.
bool takes_all_home(const RestOfFeed& feed) {
    return feed.home > Mass{} && feed.then.empty() && feed.top_up == Volume{} && feed.kept == 0;
}

std::string rest_line(const RestOfFeed& feed) {
    std::string text = fmt::format("{}: about {} left ({})", feed.name, shown_volume(feed.left),
                                   shown_mass(scale_mass(feed.left_mass)));
    text += feed.goes_in < plainly_squeezed * feed.left ? ", " + shown_volume(feed.goes_in) + " squeezed." : ".";
    if (feed.planned_put_ins > 0)
        text += fmt::format(" The plan still has {} {}, {} ({}).", feed.planned_put_ins,
                            feed.planned_put_ins == 1 ? "put-in" : "put-ins", shown_volume(feed.still_planned),
                            shown_mass(scale_mass(feed.still_planned_mass)));
    else if (feed.for_slow)
        text += " It is kept for when bites slow.";
    else if (takes_all_home(feed))
        text += " No more of it goes in before the end: take it home.";
    else
        text += " The plan has no more of it: it is spare.";
    return sentence(text);
}

/// "Put in one ball of 45 mm of silt bed now; 2 more are reckoned for."
std::string slow_line(const SlowTopUp& call) {
    const std::string size = shown_size(call.each.size);
    const bool loose = call.each.form == FeedForm::loose;
    std::string text =
        loose ? fmt::format("{} of {}, loose, now", size, call.each.name)
              : fmt::format("{} {}{} of {} of {} now", call.each.count == 1 ? "one" : std::to_string(call.each.count),
                            name_of(call.each.form), call.each.count == 1 ? "" : "s", size, call.each.name);
    if (call.more < 1) return text + "; that is the last of it.";
    return text + (call.more == 1 ? std::string("; one more is reckoned for.")
                                  : fmt::format("; {:.0f} more are reckoned for.", call.more));
}

std::string top_up_line(const RestOfFeed& feed) {
    if (feed.top_up_as == FeedForm::ball)
        return fmt::format("{}: one tight ball of {:.0f} mm, and a pinch loose over it.", feed.name,
                           feed.ball.in(millimetre));
    return fmt::format("{}: about {} loose, over a wider area.", feed.name, shown_volume(feed.top_up));
}

struct RestSize {
    std::string operator()(Mass mass) const { return shown_mass(mass); }
    std::string operator()(Volume volume) const { return shown_helping(volume); }
    std::string operator()(Length width) const { return fmt::format("{:.3g} mm", width.in(millimetre)); }
};

/// "one ball of 43 mm", "2 cups of 250 ml", "180 ml in each of 2 cups", "5 ml loose".
std::string put_in_words(const SessionPlan& plan, const RestPutIns& put_ins) {
    const std::string size = std::visit(RestSize{}, put_ins.size);
    const auto form = name_of(put_ins.form);
    if (put_ins.form == FeedForm::loose) return size + " loose";
    if (!together_with(plan, put_ins.feed).empty())
        return shown_helping(put_ins.each_volume) + (put_ins.count == 1
                                                         ? fmt::format(" in a {}", form)
                                                         : fmt::format(" in each of {} {}s", put_ins.count, form));
    return put_ins.count == 1 ? fmt::format("one {} of {}", form, size)
                              : fmt::format("{} {}s of {}", put_ins.count, form, size);
}

/// "3 more cups of 200 ml", "one more of 5 ml loose".
std::string more_words(const SessionPlan& plan, const RestPutIns& put_ins) {
    const std::string more = put_ins.put_ins == 1 ? "one more" : fmt::format("{} more", put_ins.put_ins);
    if (put_ins.form == FeedForm::loose || !together_with(plan, put_ins.feed).empty())
        return more + " of " + put_in_words(plan, put_ins);
    return fmt::format("{} {}{} of {}", more, name_of(put_ins.form), put_ins.put_ins == 1 ? "" : "s",
                       std::visit(RestSize{}, put_ins.size));
}

std::string moment_words(const SessionPlan& plan, const RestOfSession& rest, Time after) {
    return after < 0.5 * minute ? "now" : "at " + session_moment(plan, rest.now + after);
}

/// ", then 5 more, one every 30 min", of several at once ", then 5 more times, every 30 min"; of a last one ", then one
/// more 30 min later"; nothing where there is but one.
std::string further_words(const RestPutIns& put_ins) {
    const std::string gap = shown_gap(put_ins.gap);
    const bool single = put_ins.count == 1;
    const int further = put_ins.put_ins - 1;
    if (further < 1) return {};
    if (further == 1) return fmt::format(", then {} more {} later", single ? "one" : "once", gap);
    return single ? fmt::format(", then {} more, one every {}", further, gap)
                  : fmt::format(", then {} more times, every {}", further, gap);
}

/// "One ball of 43 mm at 11:45, then 5 more, one every 30 min."
std::string spread_line(const SessionPlan& plan, const RestOfSession& rest, const RestPutIns& put_ins) {
    return put_in_words(plan, put_ins) + " " + moment_words(plan, rest, put_ins.first) + further_words(put_ins) +
           (rest.bites == Bites::none ? ", but only once bites come." : ".");
}

/// What the plan has no more of: "3 more cups of 200 ml if bites slow, no sooner than one every 40 min; take home what
/// does not go in."
std::string spare_line(const SessionPlan& plan, const RestOfSession& rest, const RestPutIns& put_ins) {
    const std::string gap = shown_gap(put_ins.gap);
    return more_words(plan, put_ins) + (rest.bites == Bites::slow ? " while bites stay slow" : " if bites slow") +
           ", no sooner than " + (put_ins.put_ins == 1 ? gap + " from now" : "one every " + gap) +
           "; take home what does not go in.";
}

/// To the minute, as the put-ins are told by the clock.
std::string time_left_words(Time left) {
    return left < 1.0 * minute ? shown_time(left) : hours_and_minutes(left);
}

/// What is more than goes in before the end.
std::string home_line(const RestOfFeed& feed) {
    return fmt::format("{}: about {} ({}) is more than goes in; take home what is left.", feed.name,
                       shown_volume(feed.home_left), shown_mass(scale_mass(feed.home)));
}

bool is_called_for(const std::string& name, const RestOfSession& rest) {
    return std::any_of(rest.put_in_now.begin(), rest.put_in_now.end(),
                       [&](const SlowTopUp& call) { return call.each.name == name; });
}

}  // namespace

Told rest_told(const SessionPlan& plan, const RestOfSession& rest) {
    Told told;
    const bool counted = !plan.start && rest.now >= 0.5 * minute;
    told.title(fmt::format("{}, {}{}: {} left", plan.strategy, session_moment(plan, rest.now),
                           counted ? " after the start" : "", time_left_words(rest.left)));
    for (const SlowTopUp& call : rest.put_in_now) told.line("Put in", sentence(slow_line(call)));
    for (const RestOfFeed& feed : rest.feeds) told.line("Left", rest_line(feed));
    for (const RestOfFeed& feed : rest.feeds)
        if (feed.top_up > Volume{} && !is_called_for(feed.name, rest)) told.line("Top up", sentence(top_up_line(feed)));
    for (const RestOfFeed& feed : rest.feeds)
        for (const RestPutIns& put_ins : feed.then)
            told.line(put_ins.planned ? "Then" : "Spare",
                      sentence(feed.name + ": " +
                               (put_ins.planned ? spread_line(plan, rest, put_ins) : spare_line(plan, rest, put_ins))));
    for (const RestOfFeed& feed : rest.feeds)
        if (feed.home > Mass{} && !takes_all_home(feed)) told.line("Come home", sentence(home_line(feed)));
    for (const PlanAdvice& advice : rest.advice)
        told.line("Advice", advice.text + " Because " + shown_words(advice.reason) + ".");
    told.line("How sure", "Rules of thumb (common practice, no source). The fish decide.");
    return told;
}

}  // namespace baitwright
