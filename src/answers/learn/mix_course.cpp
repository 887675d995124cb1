#include "answers/learn/mix_course.h"

#include <algorithm>
#include <cmath>

#include "bait/hand.h"
#include "physics/normal_quantile.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

double with_day(double variance) {
    return std::hypot(std::sqrt(std::max(0.0, variance)), log_normal_sigma(day_spread));
}

double sum_of_squares(const std::vector<double>& row) {
    double sum = 0;
    for (const double x : row) sum += x * x;
    return sum;
}

bool is_of(const LogEntry& entry, const MixOfLog& mix) {
    return folded_name(std::get<LoggedMix>(entry.what).of) == folded_name(mix.last->of);
}

}  // namespace

LearntCourse mix_course(const WaterTaught& taught, const LearnRequest& request, const MixOfLog& mix,
                        const std::vector<EndOfDay>& days, const std::vector<WaterFit>& fits) {
    const WaterProblem& problem = taught.log.problem;
    const std::vector<double> middle(problem.unknowns.count);
    const SumSlope library = slope_of(problem.unknowns, mix.terms, middle);
    LearntCourse course;
    course.last = {
        mix.last->of, Learnt::Property::water, 0, with_day(variance_before(library.slope)), 0, 0, mix.times, {}, {}};
    std::size_t i = 0;
    for (std::size_t k = 0; k < days.size(); ++k) {
        bool is_new = false;
        for (; i < days[k].end; ++i) {
            const WaterSeen& seen = problem.seen[i];
            if (!seen.entry || !is_of(request.log[*seen.entry], mix)) continue;
            const double by_library = slope_of(problem.unknowns, seen.terms, middle).log_value;
            course.seen.push_back({request.log[*seen.entry].on, seen.log_seen - by_library,
                                   std::hypot(seen.sigma, log_normal_sigma(day_spread)), !taught.out.heeded[i]});
            is_new = is_new || taught.out.heeded[i];
        }
        if (!is_new) continue;
        const SumSlope now = slope_of(problem.unknowns, mix.terms, fits[k].best);
        course.steps.push_back({days[k].on, now.log_value - library.log_value,
                                with_day(sum_of_squares(factor_rows(fits[k], {&now.slope})))});
    }
    if (!course.steps.empty()) {
        course.last.mean = course.steps.back().mean;
        course.last.sd = course.steps.back().sd;
    }
    return course;
}

}  // namespace baitwright
