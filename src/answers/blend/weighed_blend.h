#pragma once

#include <optional>
#include <vector>

#include "answers/blend/blend_programme.h"

/// A blend on a kitchen scale, which shows whole grams: what it keeps of the optimum, and what it cannot weigh.
namespace baitwright {

/// Shares are saved in hundredths of a percent.
inline constexpr double saved_parts = 10000;

/// A step that a person would take, in the unit of the limit's bound.
double step_of(const BlendLimitEnd& limit);

/// The shares of the candidates in a batch, without what no scale shows of it, and no saved percent; their sum is 1, or
/// nothing is left of them.
std::vector<double> shares_kept(const LinearSolution& solution, Mass batch);

/// The masses of the candidates: in the steps that a scale shows, or to the gram where those would break a limit.
/// Nothing where whole grams would too, by more than a step: the batch is too small.
std::optional<std::vector<Mass>> weighed_blend(const BlendProgramme& blend, const LinearSolution& solution, Mass batch);

/// The least batch in whole grams above this one that can be weighed so; nothing up to `most_grams_tried`.
std::optional<Mass> batch_to_weigh(const BlendProgramme& blend, const LinearSolution& solution, Mass above);

}  // namespace baitwright
