#pragma once

#include <vector>

#include "answers/blend/likeness.h"
#include "answers/blend/linear_programme.h"

namespace baitwright {

/// A share up to this is a solver's rounding: the part is not in the mix.
inline constexpr double least_share = 1e-7;

/// What may be in a mix that is to be like another: between which shares, and what it gives to each aspect compared.
struct MatchPart {
    Bounds share;
    std::vector<double> differences;  ///< in steps: what a share of 1 would move each aspect away from the original
};

struct Match {
    double distance = 0;  ///< steps, over all aspects
    std::vector<double> shares;
    bool found = false;
};

/// The shares that lie closest: least sum over the aspects of |sum(share x difference)|, shares summing to 1. As a
/// linear programme each absolute value is two unknowns. **Source**: Charnes, Cooper & Ferguson 1955 (from memory).
Match closest_match(const std::vector<MatchPart>& parts, LinearSolver& solver);

/// The same with at most so many of the parts from `first` on, beyond those before it. A further one is taken only
/// where it brings the mix closer by half a step. The best of a short list is found: those that are in the match
/// without that limit, and the twelve that come closest alone.
Match closest_with_few(const std::vector<MatchPart>& parts, std::size_t first, int at_most, LinearSolver& solver);

}  // namespace baitwright
