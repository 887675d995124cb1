#include "answers/learn/water_courses.h"

#include <algorithm>
#include <cmath>

#include "answers/learn/mix_course.h"
#include "bait/hand.h"
#include "physics/normal_quantile.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

using Mark = WaterSeen::Term::Mark;

constexpr std::size_t most_courses = 8, most_mix_courses = 2, most_days = 40, least_days = 6, most_seen = 200;
constexpr double steps_to_reckon = 6e8;  // of all days, each the cube of the unknowns
constexpr double least_share = 0.1;      // of an observation's sum: of less it says nothing by itself

/// The hand, or a mark of an ingredient.
struct CourseOf {
    Learnt last;
    bool is_hand = false;
    std::size_t ingredient = 0;  ///< its place among all
    Mark mark = Mark::absorption;
};

std::size_t form_on(const WaterUnknowns& unknowns, const CourseOf& of, Date on) {
    if (of.is_hand) return WaterUnknowns::hand;
    const BagOfWater& bag = unknowns.bags[bag_on(unknowns, of.ingredient, on)];
    return of.mark == Mark::gap ? bag.on_gap : bag.on_absorption;
}

std::vector<CourseOf> courses_of(const WaterTaught& taught) {
    std::vector<CourseOf> all{{told_hand(taught), true}};
    for (const Mark mark : {Mark::absorption, Mark::gap})
        for (std::size_t i = 0; i < taught.ingredients.size(); ++i)
            all.push_back({told_mark(taught, i, mark), false, taught.ingredients[i], mark});
    all.erase(std::remove_if(all.begin(), all.end(), [](const CourseOf& of) { return of.last.times == 0; }), all.end());
    sort_stably(all.begin(), all.end(),
                [](const CourseOf& a, const CourseOf& b) { return a.last.times > b.last.times; });
    all.resize(std::min(all.size(), most_courses - most_mix_courses));
    return all;
}

/// So many of a sequence, evenly and with the last.
template <class T>
std::vector<T> thinned(const std::vector<T>& all, std::size_t most) {
    if (all.size() <= most) return all;
    std::vector<T> some;
    for (std::size_t i = 1; i <= most; ++i) some.push_back(all[i * all.size() / most - 1]);
    return some;
}

/// Of what the sum of an observation says, the share of the hand or of a mark of the bag of its day.
double share_in(const WaterUnknowns& unknowns, const WaterSeen& seen, const std::vector<double>& shares,
                const CourseOf& of, std::size_t form) {
    double own = 0;
    for (std::size_t k = 0; k < shares.size(); ++k) {
        const LinearForm& its = unknowns.forms[seen.terms[k].form];
        // The hand is the first of the unknowns, in all forms that hold it.
        if (of.is_hand ? !its.empty() && its.front().first == 0 : seen.terms[k].form == form) own += shares[k];
    }
    return own;
}

/// What each observation says by itself of each of the courses.
void add_seen(const WaterTaught& taught, const LearnRequest& request, const std::vector<CourseOf>& of,
              std::vector<LearntCourse>& courses) {
    const WaterProblem& problem = taught.log.problem;
    const std::vector<double>& best = taught.out.fit.best;
    const double by_day = log_normal_sigma(day_spread);
    std::vector<double> shares;
    for (std::size_t i = 0; i < problem.seen.size(); ++i) {
        const WaterSeen& seen = problem.seen[i];
        if (!seen.entry) continue;
        const Date on = request.log[*seen.entry].on;
        const double left = seen.log_seen - shares_of(problem.unknowns, seen.terms, best, shares);
        for (std::size_t k = 0; k < of.size(); ++k) {
            const std::size_t form = form_on(problem.unknowns, of[k], on);
            const double share = share_in(problem.unknowns, seen, shares, of[k], form);
            if (share < least_share) continue;
            courses[k].seen.push_back({on, value_of(problem.unknowns.forms[form], best) + left / share,
                                       std::hypot(seen.sigma, by_day) / share, !taught.out.heeded[i]});
        }
    }
}

bool is_seen(const WaterTaught& taught, const WaterSeen& seen, const CourseOf& of, Date on) {
    if (of.is_hand) return true;
    const std::size_t bag = bag_on(taught.log.problem.unknowns, of.ingredient, on);
    return std::any_of(seen.terms.begin(), seen.terms.end(),
                       [&](const WaterSeen::Term& term) { return term.bag == bag && term.mark == of.mark; });
}

/// Of the days of mixes, each once.
std::vector<EndOfDay> days_of(const WaterProblem& problem, const LearnRequest& request) {
    std::vector<EndOfDay> days;
    for (std::size_t i = 0; i < problem.seen.size(); ++i) {
        if (!problem.seen[i].entry) continue;
        const Date on = request.log[*problem.seen[i].entry].on;
        if (days.empty() || days.back().on != on) days.push_back({on, 0});
        days.back().end = i + 1;
    }
    return days;
}

/// A step for each of the days up to which it was seen anew.
void add_steps(const WaterTaught& taught, const LearnRequest& request, const CourseOf& of,
               const std::vector<EndOfDay>& days, const std::vector<WaterFit>& fits, LearntCourse& course) {
    const WaterProblem& problem = taught.log.problem;
    std::size_t i = 0;
    for (std::size_t k = 0; k < days.size(); ++k) {
        bool is_new = false;
        for (; i < days[k].end; ++i) {
            const WaterSeen& seen = problem.seen[i];
            if (!seen.entry || !taught.out.heeded[i]) continue;
            is_new = is_new || is_seen(taught, seen, of, request.log[*seen.entry].on);
        }
        if (!is_new) continue;
        const LinearForm& form = problem.unknowns.forms[form_on(problem.unknowns, of, days[k].on)];
        const std::vector<double> row = factor_rows(fits[k], {&form});
        double variance = 0;
        for (const double one_of : row) variance += one_of * one_of;
        course.steps.push_back({days[k].on, value_of(form, fits[k].best), std::sqrt(variance)});
    }
}

}  // namespace

std::vector<LearntCourse> water_courses(const WaterTaught& taught, const LearnRequest& request) {
    const std::vector<CourseOf> of = courses_of(taught);
    std::vector<LearntCourse> courses;
    courses.reserve(of.size());
    for (const CourseOf& each : of) courses.push_back({each.last, {}, {}});
    add_seen(taught, request, of, courses);
    const double cube = std::pow(static_cast<double>(taught.log.problem.unknowns.count), 3);
    const auto days =
        static_cast<std::size_t>(std::clamp(steps_to_reckon / cube, double(least_days), double(most_days)));
    const std::vector<EndOfDay> until = thinned(days_of(taught.log.problem, request), days);
    std::vector<std::size_t> ends;
    ends.reserve(until.size());
    for (const EndOfDay& one_day : until) ends.push_back(one_day.end);
    const std::vector<WaterFit> fits = fits_up_to(taught.log.problem, taught.out.heeded, taught.out.fit, ends);
    for (std::size_t k = 0; k < of.size(); ++k) add_steps(taught, request, of[k], until, fits, courses[k]);
    std::vector<MixOfLog> mixes = mixes_of(taught, request);
    mixes.resize(std::min(mixes.size(), most_mix_courses));
    for (std::size_t k = mixes.size(); k-- > 0;)
        courses.insert(courses.begin(), mix_course(taught, request, mixes[k], until, fits));
    for (LearntCourse& course : courses) course.seen = thinned(course.seen, most_seen);
    return courses;
}

}  // namespace baitwright
