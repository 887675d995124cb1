#pragma once

#include <optional>
#include <string>

#include "answers/drop/drop_answer.h"

/// What a drop is told in, in brief and in full alike: one line each, rounded and worded.
namespace baitwright {

/// "silt bed, soft: a level cup of 250 ml, about 270 g wet (150 g dry), in 2.5 m of water"
std::string drop_title(const DropAnswer& answer);
/// What to expect, in a sentence: where it breaks, when half of it is down, how wide it lies.
std::string expect_line(const DropAnswer& answer);
/// Whether hardly any of what reaches the bottom has worn off on its way.
bool lands_whole(const DropAnswer& answer);
/// A ball of which more has worn off on the way than lands.
bool mostly_wears_off(const DropAnswer& answer);
/// "17 % of it wears off on the way; the rest", of a ball that neither lands whole nor is gone before.
std::string worn_words(const DropAnswer& answer);
/// When all of it is down that lands in one piece; nothing where the rest takes longer than that.
std::optional<std::string> down_at_once(const DropAnswer& answer);
/// Where to put it in, by how far its middle drifts.
std::string drift_line(const DropAnswer& answer);
/// What of it stays up at first; empty where nothing does, and where all of it does, as its first line has said so.
std::string afloat_line(const DropAnswer& answer);
/// Whether the hook pellet falls with the feed.
std::string hook_line(const HookAnswer& hook, const DropAnswer& answer);
/// Whether it goes in by the level cup or pot.
bool in_a_cup(const DropAnswer& answer);
/// "3 %", "nothing": of what hangs in the water.
std::string hanging_percent(double share);
/// "Your own numbers in it: hold time, carpet."; empty where there are none.
std::string own_numbers_line(const DropAnswer& answer);

}  // namespace baitwright
