#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "answers/mix/dry_request.h"
#include "answers/shared/range.h"

/// What sun and dry air ask of a session, as values. Moments count from the start.
namespace baitwright {

/// The part of a mix that is kept dry at first, and wetted on the bank.
struct LaterWetting {
    Time at;      ///< when its first water is stirred in; above 0
    Time needed;  ///< when the first of it goes in
    Mass dry;
    Mass water_first, water_rest;
    Time rest;      ///< between the two
    Time hands_on;  ///< of the wettings and the riddling
};

/// One tub of wetted mix in the open.
struct DampTub {
    std::size_t batch = 0;              ///< its place in `SessionPlan::batches`
    Time until;                         ///< the last of it goes in
    std::optional<Time> leaves_feel;    ///< left alone; nothing where it does not before its end
    Time spray_first, spray_every;      ///< 0 where there is nothing to spray
    int sprays = 0;                     ///< how often
    bool keeps_feel = true;             ///< with these sprays it stays in its feel
    Mass spray;                         ///< each time, as it can be measured; all of them lie within the loss
    Range<Mass> loss;                   ///< of all that the sprays make up for: still air, between, moving air
    std::optional<LaterWetting> later;  ///< where it is wetted by halves
    [[nodiscard]] Mass sprayed() const { return sprays * spray; }
};

/// What suffers in the warm, and so stays in the cool.
enum class KeptCool { live, cooked, fresh_bread, soaked, pellets };
inline constexpr std::array<std::string_view, 5> kept_cool_names{"live feed", "cooked feed", "fresh bread",
                                                                 "soaked pellets", "pellets"};
constexpr std::string_view name_of(KeptCool kind) {
    return kept_cool_names[static_cast<std::size_t>(kind)];
}

struct CoolThing {
    std::string name;
    KeptCool kind = KeptCool::live;
};

struct HotDay {
    DryRequest air;             ///< what was reckoned with; its hours and dry mass say nothing
    bool tub_assumed = false;   ///< nobody said how large the tub is
    std::vector<DampTub> tubs;  ///< those whose feed is not all in at the start
    std::vector<CoolThing> cool;
    Mass sprayed;  ///< of all tubs: water to carry
};

}  // namespace baitwright
