#pragma once

#include <cstddef>
#include <optional>

#include "answers/mix/doubtful_mix.h"

namespace baitwright {

struct FirstToMeasure {
    std::size_t solid;  ///< its place among the solids
    const char* what;   ///< "absorption", "slump" or "moisture"
    Ratio share;        ///< of the variance of the water
};

/// The bag whose inputs make most of the variance of the water, to first order. Where something was learnt, marks hang
/// together: then it is the bag that would take most of that variance away if what it wants were known, cov(all,
/// bag)^2 / var(bag). Nothing where nothing is in doubt.
std::optional<FirstToMeasure> first_to_measure(const DoubtfulMix& mix, Ratio wetness);

}  // namespace baitwright
