#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "bait/break_up.h"
#include "quantities/date.h"
#include "quantities/mass_or_volume.h"
#include "quantities/money.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"

/// What a person wrote down of their bait and their fishing. Entries are never changed: what puts one right takes the
/// old one back and is an entry of its own.
namespace baitwright {

/// A session that was fished. What belongs to it (put-ins, mixes, catches) names it in `LogEntry::session`.
struct LoggedSession {
    std::string strategy;                   ///< empty: none of the library's
    std::string start = {};                 ///< the clock of the first put-in, "09:30"; empty: not said
    Time length{};                          ///< how long it was fished
    int anglers = 1;                        ///< that fed and caught what is told
    std::string page = {};                  ///< of the phone's page that it was kept on; empty: none
    std::string venue = {};                 ///< empty: not said
    std::string clarity = {};               ///< clear, tinged, coloured, or empty
    std::optional<Temperature> water = {};  ///< how warm it was
    std::optional<Money> cost = {};         ///< of all bait used, told or reckoned when it was written down
    std::string note = {};
};

/// One time the feed went in.
struct LoggedPutIn {
    std::optional<Time> at;  ///< since the start
    std::string of;          ///< empty: a bare press of the counter
};

/// What was used in all of a mix or an ingredient.
struct LoggedUse {
    std::string of;
    MassOrVolume amount;
};

struct LoggedCatch {
    std::optional<Time> at;    ///< since the start
    std::string fish;          ///< free text; empty: not said
    int count = 0;             ///< 0: not counted
    std::optional<Mass> mass;  ///< of them together; nothing: not weighed
};

/// A solid that took the water of a logged mix, by the recipe of that day.
struct WeighedPart {
    std::string of;
    Mass mass;
    std::optional<Ratio> moisture = {};  ///< of the bag, where it was told
};

/// A mix that was wetted, and how it came out.
struct LoggedMix {
    std::string of;
    std::string feel;                   ///< as it was felt; empty: not said
    std::optional<Ratio> wetness = {};  ///< what that feel means: its aim, or as told; nothing: not said
    Ratio within = 0.0;                 ///< how closely a hand reads it: standard deviation of the wetness
    std::optional<Mass> dry = {};
    std::optional<Mass> water = {};       ///< poured
    Mass wetting{};                       ///< of its liquids, doses and films beside the water, in grams of wetting
    std::vector<WeighedPart> parts = {};  ///< that take water; empty where dry or water was not said
};

/// A soak that was weighed.
struct LoggedSoak {
    std::string of;  ///< a feed pellet
    Mass dry, drained;
    Time under_water;
    Temperature water = Temperature::from_celsius(15);
};

/// A level vessel of something that was weighed: of an ingredient loose and dry, of a mix wetted and cupped.
struct LoggedWeight {
    std::string of;
    std::string feel = {};  ///< of a mix; empty: its own
    Volume vessel;
    Mass mass;
};

/// What was seen of a cup or a ball in a bucket or in clear water.
struct LoggedLook {
    std::string of;
    std::string feel = {};                         ///< empty: the mix's own
    std::variant<Volume, Length> form = Volume{};  ///< a level cup of that volume, or a ball of that width
    Squeeze squeeze = Squeeze::firm;
    Length depth{};                        ///< of the water it was seen in; 0: a bucket, or not said
    std::optional<Time> holds = {};        ///< until it had fallen apart
    std::optional<Length> breaks_at = {};  ///< how deep
    std::optional<Length> carpet = {};     ///< how wide nine tenths of it lay
};

/// A new bag of an ingredient was opened: what was learnt of the old one holds for it less closely.
struct LoggedBag {
    std::string of;
};

/// Another entry, taken back.
struct LogUndone {
    std::int64_t entry = 0;
};

using LoggedThing = std::variant<LoggedSession, LoggedPutIn, LoggedUse, LoggedCatch, LoggedMix, LoggedSoak,
                                 LoggedWeight, LoggedLook, LoggedBag, LogUndone>;
/// In that order; they stand in the store's tables and in the notes.
inline constexpr std::array<std::string_view, 10> logged_names{"session", "put-in",  "used", "catch", "mix",
                                                               "soak",    "weighed", "look", "bag",   "undone"};

struct LogEntry {
    std::int64_t id = 0;       ///< rises with each entry; 0: not written yet
    Date on{};                 ///< the day it happened
    std::int64_t session = 0;  ///< the entry of its session; 0: none
    LoggedThing what;
    std::int64_t undone_by = 0;  ///< the entry that takes it back; 0 where it stands
    bool believed = false;       ///< the person said that it is true, however far off: never set aside
};

inline std::string_view name_of(const LoggedThing& what) {
    return logged_names[what.index()];
}

/// What it is of: a mix, an ingredient, a fish, a strategy.
std::string subject_of(const LoggedThing& what);

}  // namespace baitwright
