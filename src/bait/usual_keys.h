#pragma once

#include <array>
#include <string_view>

namespace baitwright {

/// What can be usual: the key, what is said of it where it is used, with "{}" for the value, and what it is.
struct UsualKey {
    std::string_view key;
    std::string_view used;
    std::string_view what;
    bool several = false;
};

inline constexpr std::array<UsualKey, 13> usual_keys{{
    {"pump", "{} pump", "what a stroke of your pump draws"},
    {"vessel", "{} vessel", "the pump's whole vessel"},
    {"tub", "{} tub", "the open face of your tub"},
    {"kit", "{}", "your cups, pots, feeders and tubs", true},
    {"venue", "{}", "the water whose rules count"},
    {"water-temp", "water of {}", "the water you pour on and fish in"},
    {"shop", "shop {}", "where you buy"},
    {"people", "{} anglers", "how many of you feed"},
    {"travel", "{} to the water", "the way to the water"},
    {"hands", "{} pairs of hands", "how many pairs of hands prepare the bait"},
    {"currency", "{}", "the currency of a price without one"},
    {"units", "{}", "metric, imperial or both"},
    {"price-pack", "pack of {}", "the pack that a price is of"},
}};

}  // namespace baitwright
