#include "answers/blend/closest_match.h"

#include <algorithm>

namespace baitwright {

namespace {

constexpr std::size_t short_list = 12;
constexpr double worth_another = 0.5;  // steps

/// Tries sets of the parts that may be chosen.
class FewSearch {
public:
    FewSearch(const std::vector<MatchPart>& parts, std::size_t first, LinearSolver& solver)
        : parts_(parts), first_(first), solver_(solver) {}

    Match run(int at_most) {
        Match freely = closest_match(parts_, solver_);
        if (!freely.found) return freely;
        make_short_list(freely);
        Match best;
        for (int few = 1; few <= at_most; ++few) {
            size_ = static_cast<std::size_t>(few);
            best_of_size_ = {};
            std::vector<std::size_t> chosen;
            try_from(0, chosen);
            if (best_of_size_.found && (!best.found || best_of_size_.distance < best.distance - worth_another))
                best = best_of_size_;
        }
        return best;
    }

private:
    [[nodiscard]] Match with(const std::vector<std::size_t>& chosen) {
        std::vector<MatchPart> few(parts_.begin(), parts_.begin() + static_cast<std::ptrdiff_t>(first_));
        for (const std::size_t part : chosen) few.push_back(parts_[part]);
        const Match match = closest_match(few, solver_);
        Match whole{match.distance, std::vector<double>(parts_.size(), 0), match.found};
        for (std::size_t i = 0; i < match.shares.size(); ++i)
            whole.shares[i < first_ ? i : chosen[i - first_]] = match.shares[i];
        return whole;
    }

    void make_short_list(const Match& freely) {
        std::vector<std::pair<double, std::size_t>> alone;
        for (std::size_t part = first_; part < parts_.size(); ++part) {
            const Match match = with({part});
            if (match.found) alone.emplace_back(match.distance, part);
        }
        std::sort(alone.begin(), alone.end());
        for (std::size_t i = 0; i < std::min(short_list, alone.size()); ++i) list_.push_back(alone[i].second);
        for (std::size_t part = first_; part < parts_.size(); ++part)
            if (freely.shares[part] > least_share && std::find(list_.begin(), list_.end(), part) == list_.end())
                list_.push_back(part);
    }

    void try_from(std::size_t next, std::vector<std::size_t>& chosen) {
        if (chosen.size() == size_) {
            Match match = with(chosen);
            if (match.found && (!best_of_size_.found || match.distance < best_of_size_.distance - 1e-9))
                best_of_size_ = std::move(match);
            return;
        }
        for (std::size_t i = next; i < list_.size(); ++i) {
            chosen.push_back(list_[i]);
            try_from(i + 1, chosen);
            chosen.pop_back();
        }
    }

    const std::vector<MatchPart>& parts_;
    std::size_t first_;
    LinearSolver& solver_;
    std::vector<std::size_t> list_;
    std::size_t size_ = 1;
    Match best_of_size_;
};

}  // namespace

Match closest_match(const std::vector<MatchPart>& parts, LinearSolver& solver) {
    LinearProgramme programme;
    programme.rows.push_back({1, 1});
    const std::size_t aspects = parts.empty() ? 0 : parts.front().differences.size();
    programme.rows.resize(1 + aspects, Bounds{0, 0});
    for (const MatchPart& part : parts) {
        LinearColumn column{0, part.share, {{0, 1}}};
        for (std::size_t k = 0; k < aspects; ++k)
            if (part.differences[k] != 0) column.entries.push_back({k + 1, part.differences[k]});
        programme.columns.push_back(std::move(column));
    }
    for (std::size_t k = 0; k < aspects; ++k) {
        programme.columns.push_back({1, {}, {{k + 1, 1}}});
        programme.columns.push_back({1, {}, {{k + 1, -1}}});
    }
    LinearSolution solution = solver.solve(programme);
    solution.values.resize(parts.size());
    return {solution.cost, std::move(solution.values), solution.status == LinearStatus::optimal};
}

Match closest_with_few(const std::vector<MatchPart>& parts, std::size_t first, int at_most, LinearSolver& solver) {
    return FewSearch(parts, first, solver).run(at_most);
}

}  // namespace baitwright
