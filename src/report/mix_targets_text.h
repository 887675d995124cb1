#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "answers/mix/mix_answer.h"
#include "report/told.h"

/// A batch for several targets, as it is told beside what is told of every mix.
namespace baitwright {

/// "2 cups of 250 ml, soft; 6 balls of 55 mm, firm"; the feel only where they differ in it.
std::string targets_title(const MixAnswer& answer);

/// Whether any of them is let down from the rest.
bool lets_down(const MixAnswer& answer);

/// The water that lets shares of it down, a line for each feel.
void tell_let_down_water(Told& told, const MixAnswer& answer);

/// "1160 g wet in all, from one batch".
std::string targets_made_text(const MixAnswer& answer);

/// A line for each target: of what it is, how much of the water, how many it may be enough for.
void tell_targets(Told& told, const MixAnswer& answer);

/// What of an additive is told to go in with the water that lets shares down: all that takes more with it, but for what
/// is too little for a measure, which goes in with the rest.
Mass mass_with_let_down(const MixAnswer& answer, std::size_t additive);

/// What to do once all of it is as wet as the driest: its balls and cups first, then the rest let down, feel by feel.
std::vector<std::string> target_steps(const MixAnswer& answer);

}  // namespace baitwright
