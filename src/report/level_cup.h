#pragma once

#include "answers/plan/plan_answer.h"

/// What a level cup or pot is, in the one wording of every answer; `docs/method.md` says why.
namespace baitwright {

inline constexpr const char* level_cup_words = "scooped full, tapped down once, struck level, never pressed";

/// Whether anything of the plan goes in by the cup or the pot.
bool feeds_level_cups(const SessionPlan& plan);

}  // namespace baitwright
