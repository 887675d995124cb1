#pragma once

#include "answers/pellets/soak_answer.h"
#include "report/told.h"

/// Pellets that a person left under water far too long: what they are now, and the way out.
namespace baitwright {

/// Left by the clock until they fall apart in the hand (`over_soaked`).
bool left_too_long(const SoakedAnswer& soaked);
/// Before all else: "Left overnight: mush", how long is right, what to do with it. Nothing where none was left so long.
void tell_left_too_long(Told& told, const SoakAnswer& answer);
/// The warnings without those that `tell_left_too_long` has said already.
std::vector<Warning> warnings_not_yet_told(const SoakAnswer& answer);

}  // namespace baitwright
