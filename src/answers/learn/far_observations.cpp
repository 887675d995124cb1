#include "answers/learn/far_observations.h"

#include <algorithm>
#include <cmath>

#include "quantities/progress.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

constexpr double too_far = 3;           // sigmas
constexpr double hardly_touched = 0.1;  // sigmas, by what another set aside moves it
constexpr double close_step = 0.05;     // the last of a fit that is made again
constexpr std::size_t long_log = 1000, few = 50;
constexpr int most_rounds = 100, most_taken_back = 3;

/// What the heeded observations of a day share: sum w J over kappa, and the covariance of it.
struct SharedByDay {
    LinearForm slope;
    double variance = 0, of_day = 0;
};

class LeftOut {
public:
    LeftOut(const WaterProblem& problem, const std::vector<char>& heeded, const WaterFit& fit)
        : problem_(problem), heeded_(heeded), covariance_(fit), days_(problem.days) {
        slopes_ = slopes_of(problem, fit.best);
        FormSum sums(problem.unknowns.count);
        std::vector<double> with(problem.unknowns.count);
        // The observations of a day follow each other.
        for (std::size_t from = 0, to = 0; from < slopes_.size(); from = to) {
            const std::optional<std::size_t> of = problem.seen[from].day;
            for (; to < slopes_.size() && problem.seen[to].day == of && (of || to == from); ++to)
                if (of) sums.add(slopes_[to].slope, heeded[to] ? weight_in_day(to, fit) : 0);
            if (of) share_day(*of, sums.take(), with, fit);
            for (std::size_t i = from; i < to; ++i) foretell(i, with, fit);
        }
    }

    [[nodiscard]] const std::vector<Foretold>& all() const { return all_; }

    /// The slope of an observation once the hand of its day is taken out.
    [[nodiscard]] LinearForm with_day(std::size_t i) const {
        const WaterSeen& seen = problem_.seen[i];
        return seen.day ? sum_of(slopes_[i].slope, days_[*seen.day].slope, -1) : slopes_[i].slope;
    }

    /// How many sigmas farther others lie once one is set aside too; with the slopes of these.
    [[nodiscard]] double moved_by(std::size_t aside, const std::vector<double>& with_aside, std::size_t other,
                                  const LinearForm& slope) const {
        const WaterSeen &gone = problem_.seen[aside], &seen = problem_.seen[other];
        const double push = all_[aside].sigmas / (gone.sigma * std::sqrt(1 - leverage_[aside]));
        double shared = seen.day && seen.day == gone.day ? days_[*seen.day].of_day : 0;
        shared += value_of(slope, with_aside);
        return shared * push / (seen.sigma * std::sqrt(1 - leverage_[other]));
    }
    [[nodiscard]] const WaterCovariance& covariance() const { return covariance_; }

private:
    [[nodiscard]] double weight_in_day(std::size_t i, const WaterFit& fit) const {
        const WaterSeen& seen = problem_.seen[i];
        return 1 / (seen.sigma * seen.sigma * fit.day_weight[*seen.day]);
    }

    void share_day(std::size_t of, LinearForm slope, std::vector<double>& with, const WaterFit& fit) {
        SharedByDay& day = days_[of];
        day.slope = std::move(slope);
        covariance_.own_of(day.slope, with);
        day.variance = value_of(day.slope, with);
        day.of_day = 1 / fit.day_weight[of];
    }

    /// `with` holds the covariance of what its day shares with each of the unknowns in it.
    void foretell(std::size_t i, const std::vector<double>& with, const WaterFit& fit) {
        const WaterSeen& seen = problem_.seen[i];
        double variance = covariance_.of(slopes_[i].slope), expected = slopes_[i].log_value;
        if (seen.day) {
            const SharedByDay& day = days_[*seen.day];
            variance += day.variance + day.of_day - 2 * value_of(slopes_[i].slope, with);
            expected += fit.day[*seen.day];
        }
        const double own = seen.sigma * seen.sigma;
        const double leverage = heeded_[i] ? std::min(variance / own, 1 - 1e-9) : 0;
        leverage_.push_back(leverage);
        const double sigma = heeded_[i] ? seen.sigma * std::sqrt(1 - leverage) : std::sqrt(own + variance);
        const double left = seen.log_seen - expected;
        all_.push_back({left / sigma, seen.log_seen - (heeded_[i] ? left / (1 - leverage) : left)});
    }

    const WaterProblem& problem_;
    const std::vector<char>& heeded_;
    WaterCovariance covariance_;
    std::vector<SumSlope> slopes_;
    std::vector<SharedByDay> days_;
    std::vector<double> leverage_;
    std::vector<Foretold> all_;
};

/// One that may be set aside.
struct FarOne {
    std::size_t place;
    double sigmas;  // by now
    LinearForm slope;
};

/// Those to set aside in one round, the worst first; others with it that lie as far though it is gone, and that its
/// going hardly moves.
std::vector<std::size_t> worst_of(const WaterProblem& problem, const std::vector<char>& heeded,
                                  const LeftOut& left_out) {
    std::vector<FarOne> far;
    for (std::size_t i = 0; i < problem.seen.size(); ++i) {
        const double sigmas = left_out.all()[i].sigmas;
        if (heeded[i] && !problem.seen[i].is_sure && std::abs(sigmas) > too_far)
            far.push_back({i, sigmas, left_out.with_day(i)});
    }
    sort_stably(far.begin(), far.end(),
                [](const FarOne& a, const FarOne& b) { return std::abs(a.sigmas) > std::abs(b.sigmas); });
    std::vector<char> waits(far.size(), 0);
    std::vector<std::size_t> worst;
    for (std::size_t k = 0; k < far.size(); ++k) {
        if (waits[k]) continue;
        worst.push_back(far[k].place);
        const std::vector<double> with = left_out.covariance().with(far[k].slope);
        for (std::size_t j = k + 1; j < far.size(); ++j) {
            if (waits[j]) continue;
            const double moved = left_out.moved_by(far[k].place, with, far[j].place, far[j].slope);
            const double beyond = std::abs(far[j].sigmas) - too_far;
            far[j].sigmas += moved;
            const bool touched = std::abs(moved) > hardly_touched * std::max(1.0, beyond);
            waits[j] = touched || std::abs(far[j].sigmas) <= too_far ? 1 : 0;
        }
    }
    return worst;
}

/// Takes back what has come near enough, each once; gives how many.
std::size_t taken_back(const LeftOut& left_out, std::vector<char>& heeded, std::vector<char>& was_back) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < heeded.size(); ++i) {
        if (heeded[i] || was_back[i] || std::abs(left_out.all()[i].sigmas) > too_far) continue;
        heeded[i] = was_back[i] = 1;
        ++count;
    }
    return count;
}

}  // namespace

std::vector<Foretold> foretold(const WaterProblem& problem, const std::vector<char>& heeded, const WaterFit& fit) {
    return LeftOut(problem, heeded, fit).all();
}

BorneOut borne_out(const WaterProblem& problem) {
    std::vector<char> heeded(problem.seen.size(), 1), was_back(problem.seen.size(), 0);
    // Of a long log, what lies farthest off shows after a step; none is done with before a close fit.
    bool is_close = problem.seen.size() <= long_log;
    const auto fitted = [&](std::vector<double> start) {
        return is_close ? best_fit(problem, {std::move(start), heeded, close_step})
                        : fit_by_a_step(problem, {std::move(start), heeded});
    };
    WaterFit fit = fitted({});
    int times_back = 0;
    Progress progress("learning", 0);
    for (int round = 0; round < most_rounds; ++round) {
        progress.step();
        const LeftOut left_out(problem, heeded, fit);
        const std::vector<std::size_t> worst = worst_of(problem, heeded, left_out);
        for (const std::size_t i : worst) heeded[i] = 0;
        if (worst.empty() && is_close)
            if (times_back++ == most_taken_back || taken_back(left_out, heeded, was_back) == 0) break;
        is_close = is_close || worst.size() < few;
        fit = fitted(std::move(fit.best));
    }
    fit = best_fit(problem, {fit.best, heeded});
    std::vector<Foretold> all = foretold(problem, heeded, fit);
    return {std::move(heeded), std::move(fit), std::move(all)};
}

}  // namespace baitwright
