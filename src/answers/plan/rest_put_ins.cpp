#include "answers/plan/rest_put_ins.h"

#include <algorithm>
#include <cmath>

#include "bait/kitchen_rounding.h"
#include "quantities/hair.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Length smallest_rest_ball = 25.0 * millimetre;
constexpr double hair_of_portions = 1e-6;

/// What the plan still has of one of its feeds.
struct StillPlanned {
    const PlannedFeed* each = nullptr;  ///< the first
    Time last;
    int put_ins = 0;
    Mass mass;
};

std::vector<StillPlanned> still_planned(const std::string& name, const SessionPlan& plan, Time now) {
    std::vector<StillPlanned> kinds;
    for (const PlannedFeed& put_in : plan.put_ins) {
        if (put_in.name != name || put_in.at < now - hair) continue;
        auto kind = std::find_if(kinds.begin(), kinds.end(),
                                 [&](const StillPlanned& one) { return one.each->feed == put_in.feed; });
        if (kind == kinds.end()) kind = kinds.insert(kind, StillPlanned{&put_in, {}, 0, {}});
        kind->last = put_in.at;
        kind->put_ins += 1;
        kind->mass += put_in.mass;
    }
    return kinds;
}

struct SizeTimes {
    double factor;
    FeedSize operator()(Mass mass) const { return factor * mass; }
    FeedSize operator()(Volume volume) const { return factor * volume; }
    FeedSize operator()(Length width) const { return std::cbrt(factor) * width; }
};

/// Each of them so much smaller; a ball to the whole millimetre, and what makes none that holds goes in loose.
void make_smaller(RestPutIns& rest, double factor) {
    if (factor >= 1 - hair_of_portions) return;
    if (const Length* width = std::get_if<Length>(&rest.size)) {
        const double whole = std::floor(std::cbrt(factor) * width->in(millimetre) + hair_of_portions);
        if (whole * millimetre >= smallest_rest_ball) {
            factor = std::pow(whole / width->in(millimetre), 3);
        } else {
            rest.form = FeedForm::loose;
            rest.size = rest.each_volume;
        }
    }
    rest.size = std::visit(SizeTimes{factor}, rest.size);
    rest.each_volume = factor * rest.each_volume;
    rest.each_mass = factor * rest.each_mass;
}

RestPutIns as_planned(const PlannedFeed& put_in) {
    RestPutIns rest;
    rest.form = put_in.form;
    rest.feed = put_in.feed;
    rest.count = put_in.count;
    rest.size = put_in.size;
    rest.each_volume = put_in.each_volume;
    rest.each_mass = put_in.each_mass;
    return rest;
}

bool goes_in_whole(const RestPutIns& rest) {
    return rest.form == FeedForm::ball || rest.form == FeedForm::feeder || rest.count > 1;
}

/// How many put-ins, at most so many, and of how much.
void share_out(RestPutIns& rest, Mass mass, int most) {
    const double pieces = mass / rest.each_mass;
    if (!goes_in_whole(rest)) {
        rest.put_ins = static_cast<int>(std::clamp(std::floor(2 * pieces + hair_of_portions), 1.0, double(most)));
        make_smaller(rest, pieces / rest.put_ins);
        return;
    }
    const double whole = std::floor(pieces + hair_of_portions);
    if (whole < rest.count) {
        rest.put_ins = 1;
        rest.count = static_cast<int>(std::max(1.0, whole));
        make_smaller(rest, pieces / rest.count);
        return;
    }
    rest.put_ins = static_cast<int>(std::min(std::floor(whole / rest.count), double(most)));
}

RestPutIns of_planned(const StillPlanned& planned, Mass mass, Time now) {
    RestPutIns rest = as_planned(*planned.each);
    share_out(rest, mass, planned.put_ins);
    rest.planned = true;
    rest.first = rest.gap = std::max(Time{}, planned.each->at - now);
    if (rest.put_ins < 2) return rest;
    const Time span = planned.last - planned.each->at;
    rest.gap = told_gap(span / (planned.put_ins - 1.0));
    if (rest.put_ins < planned.put_ins) rest.gap = std::max(rest.gap, kitchen_gap(span / (rest.put_ins - 1.0)));
    return rest;
}

/// The smallest that the strategy puts in of it.
const PlannedFeed* smallest_put_in(const std::string& name, const SessionPlan& plan) {
    const PlannedFeed* smallest = nullptr;
    for (const PlannedFeed& put_in : plan.put_ins)
        if (put_in.name == name && (!smallest || put_in.each_volume < smallest->each_volume)) smallest = &put_in;
    return smallest;
}

std::vector<RestPutIns> beyond_the_plan(const std::string& name, Mass mass, const SessionPlan& plan, Time now) {
    const PlannedFeed* each = smallest_put_in(name, plan);
    const Time left = plan.length - now, rhythm = rhythm_of(name, plan);
    const double most = std::ceil(left / rhythm - hair_of_portions) - 1;
    if (!each || most < 1) return {};
    RestPutIns rest = as_planned(*each);
    rest.count = 1;
    const double portions = std::max(1.0, std::ceil(mass / rest.each_mass - hair_of_portions));
    share_out(rest, mass, static_cast<int>(std::min(most, portions)));
    rest.first = rest.gap = std::max(rhythm, kitchen_gap(left / (rest.put_ins + 1.0)));
    return {rest};
}

}  // namespace

Time rhythm_of(const std::string& name, const SessionPlan& plan) {
    constexpr Time of_what_goes_in_once = 30.0 * minute;
    Time rhythm;
    std::vector<const PlannedFeed*> before(plan.feeds.size(), nullptr);
    for (const PlannedFeed& put_in : plan.put_ins) {
        if (put_in.name != name) continue;
        if (const PlannedFeed* last = before[put_in.feed])
            if (rhythm == Time{} || put_in.at - last->at < rhythm) rhythm = put_in.at - last->at;
        before[put_in.feed] = &put_in;
    }
    return rhythm > Time{} ? told_gap(rhythm) : of_what_goes_in_once;
}

std::vector<RestPutIns> rest_put_ins(const std::string& name, Mass mass, const SessionPlan& plan, Time now) {
    if (!(mass > Mass{})) return {};
    const std::vector<StillPlanned> kinds = still_planned(name, plan, now);
    if (kinds.empty()) return beyond_the_plan(name, mass, plan, now);
    Mass to_share;
    for (const StillPlanned& kind : kinds) to_share += kind.mass;
    std::vector<RestPutIns> all;
    for (const StillPlanned& kind : kinds) {
        const Mass share = mass / to_share * kind.mass;
        const bool more_to_come = &kind != &kinds.back();
        to_share = to_share - kind.mass;
        if (more_to_come && share < (1 - hair_of_portions) * kind.each->each_mass) continue;
        all.push_back(of_planned(kind, share, now));
        mass = mass - all.back().mass();
        if (!(mass > Mass{})) break;
    }
    return all;
}

}  // namespace baitwright
