#pragma once

#include <cmath>

#include "bait/property.h"

namespace baitwright {

/// The spread of this person's hand: one factor on every A and G that they did not measure themselves.
inline constexpr double hand_spread = 0.12;
/// What of it is from day to day: one factor on every A and G, of measured bags too.
inline constexpr double day_spread = 0.05;
/// The error that all defaults from memory share: one factor on every A and G of theirs.
inline constexpr double memory_spread = 0.09;
/// What of an ingredient's spread is the bag's own: A and G of a new bag differ by so much from those of the last,
/// though never by more than half of the stated variance; beside its moisture. Ours, no source.
inline constexpr double bag_spread = 0.06;

/// How a mark was come by, and so what it may be off by beside its own spread.
enum class MarkOrigin {
    measured,     ///< by this person, on this bag: it holds hand and moisture already
    from_memory,  ///< a default: it shares an error with all of them
    other,        ///< published, or from elsewhere
    learnt,       ///< from this person's log: it holds hand and moisture, as a measured one does
};

/// Whether the mark is that of the bag as it is, whatever its moisture.
inline bool is_of_the_bag(MarkOrigin origin) {
    return origin == MarkOrigin::measured || origin == MarkOrigin::learnt;
}

/// What is known of a person's hand in the long run (P) and of the shared error of defaults (C): the normal
/// distribution of ln P and ln C together. As it stands here nothing is known but how far hands and defaults lie apart.
struct Hand {
    double log_hand = 0, log_memory = 0;  ///< the means
    double hand_variance = std::log1p(hand_spread * hand_spread) - std::log1p(day_spread * day_spread);
    double memory_variance = std::log1p(memory_spread * memory_spread);
    double covariance = 0;
    bool learned = false;  ///< measured marks or the log have taught it
    friend bool operator==(const Hand&, const Hand&) = default;

    /// What a mark of that origin is multiplied by, at the median.
    [[nodiscard]] double shift(MarkOrigin origin) const {
        if (is_of_the_bag(origin)) return 1;
        return std::exp(log_hand + (origin == MarkOrigin::from_memory ? log_memory : 0));
    }
};

/// A, B and the moisture they are stated for, as the library ships them: what a person's measurement took the place of.
struct UsualMarks {
    Property<Ratio> absorption, slump, moisture;
};

}  // namespace baitwright
