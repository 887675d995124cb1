#include "answers/plan/rest_of_session.h"

#include <algorithm>
#include <cmath>

#include "answers/shared/mix_amount.h"
#include "quantities/fault.h"
#include "quantities/hair.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double most_of_left = 0.25, hair_of_times = 1e-6;
constexpr Time half_an_hour = 30.0 * minute;
constexpr Length smallest_ball = 25.0 * millimetre, largest_ball = 43.0 * millimetre;
constexpr std::array<std::string_view, 3> feels_that_hold{"crumbly", "firm", "tacky"};

const PlannedFeedTotal& feed_called(const std::string& name, const SessionPlan& plan) {
    std::vector<std::string> names;
    for (const PlannedFeedTotal& feed : plan.feeds) names.push_back(feed.name);
    const SaidName said = said_name(name, names);
    for (const PlannedFeedTotal& feed : plan.feeds)
        if (said.name && feed.name == *said.name) return feed;
    throw UsageError(fault_of_name(
        name, names,
        {"not-fed", "'" + plan.strategy + "' does not feed '" + name + "'", "it feeds " + joined(names, ", ")}));
}

/// The feel that it is wetted to; empty where it goes in as it is.
std::string feel_of(const PlannedFeedTotal& feed, const SessionPlan& plan) {
    for (const PlannedBatch& batch : plan.batches)
        for (const LetDown& wetter : batch.let_downs)
            for (const std::size_t place : wetter.feeds)
                if (&plan.feeds[place] == &feed) return wetter.feel;
    for (const PlannedBatch& batch : plan.batches)
        for (const std::size_t place : batch.feeds)
            if (plan.feeds[place].name == feed.name && !batch.feel.empty()) return batch.feel;
    return {};
}

bool holds_as_ball(const std::string& feel) {
    return std::find(feels_that_hold.begin(), feels_that_hold.end(), feel) != feels_that_hold.end();
}

struct AsVolume {
    const PlannedFeedTotal& feed;
    Volume operator()(Volume volume) const { return volume; }
    Volume operator()(Mass mass) const { return mass / feed.wet_mass * feed.tub_volume; }
};

/// The least that goes in at once of it, so that what is left lasts.
Volume portion_of(const PlannedFeedTotal& feed, const SessionPlan& plan) {
    Volume portion;
    for (const PlannedFeed& put_in : plan.put_ins)
        if (put_in.name == feed.name && (portion == Volume{} || put_in.each_volume < portion))
            portion = put_in.each_volume;
    return portion;
}

Length ball_of(Volume volume) {
    const Length ball = std::cbrt(volume.si() * 6 / 3.14159265358979323846) * metre;
    return std::clamp(ball, smallest_ball, largest_ball);
}

void top_up(RestOfFeed& feed, Volume portion, bool holds) {
    feed.top_up = std::min(portion, most_of_left * feed.goes_in);
    if (!holds || feed.top_up < ball_volume(smallest_ball)) return;
    feed.top_up_as = FeedForm::ball;
    feed.ball = ball_of(feed.top_up);
    feed.top_up = std::min(feed.top_up, ball_volume(feed.ball));
}

/// The feed of that name that is kept for slow bites, where there is one that may still go in.
const PlannedSlowFeed* slow_feed(const std::string& name, const SessionPlan& plan, Time now) {
    for (const PlannedSlowFeed& slow : plan.slow)
        if (slow.each.name == name && !(slow.until && now >= *slow.until - hair)) return &slow;
    return nullptr;
}

/// Whole times that what is left makes, at most as often as is reckoned; a part of a time counts as one.
double times_kept(const PlannedSlowFeed& slow, Volume goes_in) {
    return std::min(std::ceil(slow.times - hair_of_times), std::floor(goes_in / slow.each.volume + hair_of_times));
}

/// What is kept back for slow bites goes in now, once, where they are slow; the rest of it is not spread.
void keep_back(RestOfFeed& feed, const PlannedSlowFeed& slow, const RestRequest& request) {
    feed.for_slow = true;
    feed.kept = times_kept(slow, feed.goes_in);
    if (request.bites != Bites::slow || feed.kept < 1 || request.now < slow.each.at - hair) return;
    feed.kept -= 1;
    feed.top_up = slow.each.volume;
    feed.top_up_as = slow.each.form;
    if (const Length* width = std::get_if<Length>(&slow.each.size)) feed.ball = *width;
}

/// Not where some of it is due now anyway, nor where there is no time for the next.
bool may_top_up(const std::string& name, const SessionPlan& plan, Time now) {
    for (const PlannedFeed& put_in : plan.put_ins)
        if (put_in.name == name && put_in.at >= now - hair && put_in.at <= now + hair) return false;
    return plan.length - now > rhythm_of(name, plan);
}

/// The plan's put-ins that are still to come.
void count_still_planned(RestOfFeed& feed, const SessionPlan& plan, Time now) {
    for (const PlannedFeed& put_in : plan.put_ins) {
        if (put_in.name != feed.name || put_in.at < now - hair) continue;
        feed.still_planned += put_in.volume;
        feed.still_planned_mass += put_in.mass;
        ++feed.planned_put_ins;
    }
}

/// The rest of it goes in by the plan, and what is more than that comes home.
void spread(RestOfFeed& feed, Volume kept, const SessionPlan& plan, Time now) {
    const Mass rest = (feed.goes_in - feed.top_up - kept) / feed.goes_in * feed.left_mass;
    feed.then = rest_put_ins(feed.name, rest, plan, now);
    Mass home = rest, least;
    for (const RestPutIns& put_ins : feed.then) home = home - put_ins.mass();
    for (const PlannedFeed& put_in : plan.put_ins)
        if (put_in.name == feed.name && (least == Mass{} || put_in.each_mass < least)) least = put_in.each_mass;
    if (!feed.then.empty() && home < 0.5 * least) return;
    feed.home = std::max(Mass{}, home);
    feed.home_left = feed.home / feed.left_mass * feed.left;
}

RestOfFeed rest_of(const LeftOver& left, const SessionPlan& plan, const RestRequest& request) {
    const PlannedFeedTotal& planned = feed_called(left.of, plan);
    RestOfFeed feed;
    feed.name = planned.name;
    feed.left = std::visit(AsVolume{planned}, left.amount);
    feed.left_mass = feed.left / planned.tub_volume * planned.wet_mass;
    feed.goes_in = feed.left / planned.tub_volume * planned.wet_volume;
    count_still_planned(feed, plan, request.now);
    const PlannedSlowFeed* slow = slow_feed(planned.name, plan, request.now);
    if (slow)
        keep_back(feed, *slow, request);
    else if (request.bites == Bites::slow && may_top_up(feed.name, plan, request.now))
        top_up(feed, portion_of(planned, plan),
               planned.form == FeedForm::ball || holds_as_ball(feel_of(planned, plan)));
    if ((slow && feed.planned_put_ins == 0) || !(feed.left > Volume{})) return feed;  // what is not called for waits
    spread(feed, slow ? feed.kept * slow->each.volume : Volume{}, plan, request.now);
    return feed;
}

/// What is called for now: of each that is kept for slow bites, as far as any is left, by what the person says or,
/// where nothing is said, as reckoned.
std::vector<SlowTopUp> called_for(const SessionPlan& plan, const RestOfSession& rest) {
    std::vector<SlowTopUp> calls;
    if (rest.bites != Bites::slow) return calls;
    calls.reserve(plan.slow.size());
    for (const PlannedSlowFeed& slow : plan.slow) {
        if (rest.now < slow.each.at - hair || (slow.until && rest.now >= *slow.until - hair)) continue;
        const auto told = std::find_if(rest.feeds.begin(), rest.feeds.end(),
                                       [&](const RestOfFeed& feed) { return feed.name == slow.each.name; });
        const double times =
            told == rest.feeds.end() ? std::ceil(slow.times - hair_of_times) : times_kept(slow, told->goes_in);
        if (times >= 1) calls.push_back({slow.each, times - 1});
    }
    return calls;
}

/// Whether the plan still has anything to put in.
bool feeds_on(const SessionPlan& plan, Time now) {
    return std::any_of(plan.put_ins.begin(), plan.put_ins.end(),
                       [&](const PlannedFeed& put_in) { return put_in.at >= now - hair; });
}

/// Whether there is anything to top up with: what is called for or left, or, where nobody said what is left, perhaps.
bool may_be_topped_up(const RestOfSession& rest) {
    return rest.feeds.empty() || !rest.put_in_now.empty() ||
           std::any_of(rest.feeds.begin(), rest.feeds.end(),
                       [](const RestOfFeed& feed) { return feed.top_up > Volume{}; });
}

/// What it says fits what goes in: no rhythm is kept where nothing more does, and no top-up asked for where none is.
std::vector<PlanAdvice> advice_on(const RestOfSession& rest, const SessionPlan& plan) {
    constexpr std::string_view fills = "feed that fish are not looking for only fills them";
    switch (rest.bites) {
        case Bites::steady:
            if (feeds_on(plan, rest.now)) return {{"Keep the rhythm; no top-up.", std::string(fills)}};
            return {{"Fish on without feeding; no top-up.", std::string(fills)}};
        case Bites::slow:
            if (!may_be_topped_up(rest))
                return {{"Fish past the feed and work back over it.", "the fish may only have moved to the edge"}};
            return {{"Fish past the feed first and work back over it; then top up.",
                     "the fish may only have moved to the edge"},
                    {"Loose spreads wider for fish that roam; a small tight ball holds them in one place.",
                     "the one calls fish in from around, the other keeps those that are there"}};
        case Bites::none:
            break;
    }
    std::vector<PlanAdvice> advice{
        {"Put nothing more in until the next bite; try half a metre past the feed, then closer.",
         "feed over feed that lies uneaten keeps fish from the hook"}};
    if (rest.left > half_an_hour)
        advice.push_back({"If half an hour brings nothing, start a second place with one portion.",
                          "fish that left seldom come back to the same bed soon"});
    return advice;
}

}  // namespace

RestOfSession rest_of_session(const SessionPlan& plan, const RestRequest& request) {
    if (!(request.now >= Time{} && request.now < plan.length - hair))
        throw UsageError("not-in-session", "that moment is not within the session",
                         "--now is a clock with --start, or minutes after the start, as in --now 110");
    RestOfSession rest;
    rest.now = request.now;
    rest.left = plan.length - request.now;
    rest.bites = request.bites;
    for (const LeftOver& left : request.left) rest.feeds.push_back(rest_of(left, plan, request));
    rest.put_in_now = called_for(plan, rest);
    rest.advice = advice_on(rest, plan);
    return rest;
}

}  // namespace baitwright
