#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "answers/learn/water_unknowns.h"

namespace baitwright {

/// The logarithm of sum weight x exp(form) was seen, off by an error of its own and, where it has one, by the hand of
/// its day.
struct WaterSeen {
    struct Term {
        double weight;  ///< g
        std::size_t form;
        std::size_t bag;  ///< whose mark it is
        enum class Mark { absorption, gap } mark;
    };
    std::vector<Term> terms;
    double log_seen = 0, sigma = 1;
    std::optional<std::size_t> day;         ///< counted from 0
    std::optional<std::size_t> entry = {};  ///< its place in the log; nothing: a mark that was measured
    bool is_sure = false;                   ///< never set aside
};

struct WaterProblem {
    WaterUnknowns unknowns;
    std::vector<WaterSeen> seen;  ///< in an order that does not depend on how they were written down
    std::size_t days = 0;
};

/// The value of an observation's sum by what was learnt, and its slope.
struct SumSlope {
    double log_value;
    LinearForm slope;
};
SumSlope slope_of(const WaterUnknowns& unknowns, const std::vector<WaterSeen::Term>& terms,
                  const std::vector<double>& at);

/// Of all observations, in their order.
std::vector<SumSlope> slopes_of(const WaterProblem& problem, const std::vector<double>& at);

/// The same with the share of each term, for many of them.
double shares_of(const WaterUnknowns& unknowns, const std::vector<WaterSeen::Term>& terms,
                 const std::vector<double>& at, std::vector<double>& shares);

}  // namespace baitwright
