#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "bait/recipe.h"
#include "quantities/mass_or_volume.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// The rhythm of a feed: at one moment; every so often; at each put-in of the session's pace; after so many fish; on no
/// clock, but as bites slow.
struct AtOnce {
    Time at;
};
struct EveryTime {
    Time gap;
};
struct EveryPutIn {};
struct EveryFish {
    int fish;
};
struct WhenSlow {
    double times =
        2;  ///< how often in a session it is reckoned with, above 0 and at most 100; common practice, no source
};
using FeedRhythm = std::variant<AtOnce, EveryTime, EveryPutIn, EveryFish, WhenSlow>;

/// When a feed goes in, from the start of the session. A rhythm that repeats runs from `from` up to, and not at,
/// `until`, or the end of the session where that is not stated. One that names a feed in `after` begins when that is
/// used up (`feed_order.h`).
struct FeedTiming {
    FeedRhythm rhythm;
    Time from;
    std::optional<Time> until;
    std::string after = {};  ///< another feed of the strategy, by what it holds or as "feed 1"; empty: waits for none
};

/// How a feed goes in.
enum class FeedForm { cup, pot, ball, feeder, loose };

inline constexpr std::array<std::string_view, 5> feed_form_names{"cup", "pot", "ball", "feeder", "loose"};
constexpr std::string_view name_of(FeedForm form) {
    return feed_form_names[static_cast<std::size_t>(form)];
}

/// A mix or an ingredient in a feed; `share` is by mass as bought (of a mix: of its dry mass).
struct FeedPart {
    std::string of;
    double share = 1;
    Preparation prepare = Preparation::as_bought;
    std::string feel = {};  ///< empty: that of the feed
};

/// What one cup, pot or feeder holds, how wide one ball is, or how much goes in loose.
using FeedSize = std::variant<Mass, Volume, Length>;

/// One line of a strategy: so many of such a size of this, then and then.
struct Feed {
    FeedTiming when;
    std::vector<FeedPart> parts;
    FeedForm form = FeedForm::cup;
    FeedSize size;
    int count = 1;     ///< at each put-in
    std::string feel;  ///< empty: a mix's own; what is no mix goes in as it is, but balls, which are firm
};

struct BitesPerHour {
    double bites;
};

/// What goes on the hook: reckoned from the bites, or an amount to take along.
struct Hookbait {
    std::string of;
    std::variant<BitesPerHour, Mass, Volume> amount;
};

/// The water that a strategy is meant for, as far as it is known.
struct WaterSetting {
    std::optional<Length> depth;
    std::optional<Temperature> temperature;
    std::string clarity;  ///< clear, tinged, coloured, or empty
    std::optional<Speed> tow;
    std::optional<Speed> tow_bottom;  ///< below zero where the bottom runs back
};

/// The air that a strategy is meant for, as far as it is known: it dries what stands in a tub.
struct AirSetting {
    std::optional<Temperature> temperature;
    std::optional<Ratio> humidity;  ///< relative, 0 to 1
    std::optional<Speed> wind;
    bool sun = false;  ///< the tubs stand in it
};

inline constexpr std::array<std::string_view, 3> clarity_names{"clear", "tinged", "coloured"};

/// How busy the session is.
struct Pace {
    std::optional<double> put_ins_per_hour;
    std::optional<double> fish_per_hour;
};

/// All that is fed in one session, with the hookbaits.
struct Strategy {
    std::string name;
    std::string purpose;  ///< when it suits
    std::string avoid;    ///< when not
    std::string why;
    std::string note;
    Time length;
    Ratio spare = 0.10;
    WaterSetting water;
    AirSetting air;
    Pace pace;
    std::vector<Feed> feeds;
    std::vector<Hookbait> hookbaits;
};

/// "silt bed", or "silt bed and casters".
std::string name_of(const Feed& feed);

}  // namespace baitwright
