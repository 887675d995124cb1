#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "answers/mix/own_values_told.h"
#include "answers/shared/range.h"
#include "answers/shared/warning.h"
#include "bait/mix_state.h"
#include "physics/tow.h"
#include "quantities/quantity.h"

namespace baitwright {

enum class Breaks { surface, midwater, bottom };

/// The 10, 50 and 90 % points along the shares that sink.
template <class Q>
struct Points {
    Q p10{}, p50{}, p90{};
};

/// Widths that hold half and nine tenths of what lands.
struct Carpet {
    Length half, most;
};

/// What one way of looking at the feed says; everything but the ranges.
struct DropSketch {
    Breaks breaks = Breaks::midwater;
    Length breaks_depth;
    Time breaks_at;
    Time lasts;                       ///< on the bottom, where it lands
    double lands_as_one = 0;          ///< the share of it that reaches the bottom in one piece
    std::optional<Length> half_worn;  ///< how deep half has gone of a ball that wears away before the bottom
    Points<Time> landed;              ///< of what sinks, without the fines
    std::array<double, 4> hanging{};  ///< after 1, 5, 10, 30 min, of all of it
    Carpet length, width;             ///< along the tow, across it
    Points<Length> drift;
    std::array<Length, 2> drift_of_half{}, drift_of_most{};  ///< between which half, nine tenths of it lie
};

struct DropClass {
    std::string name;
    Length size;  ///< swollen
    Speed settling;
    Ratio share;
    Time lands;  ///< on average, as are drift and radius
    Length drift, radius;
    bool sinks = true;
    bool in_lump = false;  ///< of what came down in lumps, part of the way or all of it
};

/// A point of the way down of what has not yet broken.
struct FallMark {
    Length depth, drift;
};

/// One ingredient's own fate.
struct DropPart {
    std::string name;
    Ratio share;
    std::optional<Time> landed;  ///< half of it; nothing where it does not sink
    Length width;                ///< of nine tenths of it
    Length drift;                ///< of its middle
    Ratio fines;                 ///< of it, that cloud the water
    std::optional<Time> floats;  ///< before it sinks, where it does
};

struct HookAnswer {
    std::string name;
    Time lands;
    bool with_the_feed = false;  ///< between the 10 and 90 % points of the feed's landing
};

/// A look of the person's that tells nothing of this feed, and why.
struct IdleLook {
    std::string flag, why;
};

struct DropAnswer : DropSketch {
    std::string recipe, feel, form;
    Ratio wetness;
    MixState state = MixState::cupped;
    Volume volume;  ///< of the portion
    Mass wet_mass, dry_mass;
    double free_offerings = 0;
    double in_hand = 0;  ///< of them, under a hand where nine tenths lie
    Length depth;
    Speed tow, tow_bottom;
    TowProfile water = TowProfile::lake;
    std::optional<Time> raft;    ///< the whole of it floats for about so long, then goes down grain by grain
    std::vector<FallMark> fall;  ///< from the surface to where it breaks
    std::vector<DropClass> classes;
    std::vector<DropPart> parts;
    std::optional<HookAnswer> hook;
    Length feed_up_tow;   ///< how far up-tow of the swim to put it in
    Length start_beyond;  ///< how far past its middle to start fishing
    Range<Length> breaks_depth_range, width_range, length_range, drift_range;
    Range<Time> landed_half_range, landed_most_range;
    Range<Ratio> hanging_10_range;
    std::vector<std::string>
        own;  ///< which numbers are the person's: "hold time", "breaking depth", "carpet", "packing"
    std::vector<IdleLook> idle_looks;
    LearntUsed learnt;
    std::vector<std::string> cautions;
    std::vector<Warning> warnings;
};

}  // namespace baitwright
