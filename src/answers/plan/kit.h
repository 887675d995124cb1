#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// Something a person feeds or mixes with: a cup, a pot or a feeder of that size; a tub to mix in.
struct KitItem {
    enum class Kind { cup, pot, feeder, tub } kind = Kind::cup;
    Volume size;
    std::string name;  ///< "cup 250", as it was written
};

/// "cup 250", "toss pot 25", "pot 0.5 pt", "tub 12 l"; a bare number is in ml. Throws InputError "unknown-kit" with
/// "did you mean", or what is wrong with the size.
KitItem parse_kit(std::string_view text);

/// What of the kit carries these put-ins: the smallest that holds one, else the largest, filled several times; balls
/// that fit into a cup, and what is fed loose, too. An empty kit is not known: nothing is held against it. Returns what
/// the kit cannot do; for want of any cup, pot or feeder the answer is no.
std::vector<Warning> check_kit(const std::vector<KitItem>& kit, std::vector<PlannedFeed>& put_ins,
                               std::vector<PlannedSlowFeed>& slow);

/// A tub is filled to two thirds, so that it can be stirred: a warning where the tubs of the kit hold less than the wet
/// mix. **Source**: common practice, no source.
std::optional<Warning> check_tubs(const std::vector<KitItem>& kit, Volume riddled);

}  // namespace baitwright
