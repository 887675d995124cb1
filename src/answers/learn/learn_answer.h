#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "answers/shared/range.h"
#include "answers/shared/warning.h"
#include "bait/learnt.h"
#include "bait/log_entry.h"

namespace baitwright {

/// One thing that the log teaches, before and after: a factor on what the library or our model says, as the normal
/// distribution of its logarithm. Of A and G that is the bag in this person's hand against the library's; of the hand
/// against most hands.
struct Learnt {
    enum class Property {
        hand,
        memory,
        absorption,
        gap,
        diffusivity,
        capacity,
        loose_weight,
        cup_weight,
        hold,
        carpet,
        water  ///< that a mix takes, in a course
    };
    std::string name;  ///< the ingredient or mix; empty for hand and memory
    Property property;
    double prior_mean = 0, prior_sd = 0, mean = 0, sd = 0;
    int times = 0;  ///< observations that bear on it
    std::optional<double> library = {},
                          value = {};  ///< in SI, where the property has a value: before, and the median now
};

/// An observation beyond three sigma of what all the others say: set aside, and named.
struct SetAside {
    LogEntry entry;
    double sigmas = 0;                  ///< signed: above zero, more than expected
    double observed = 0, expected = 0;  ///< in the entry's own measure: g of water, g gained, s, m, g
};

/// How far the water of a mix may be off, as half of what 9 in 10 span against its middle: 0.2 is a fifth either way.
struct MixDoubtNow {
    std::string mix;
    std::string feel;
    double before = 0, now = 0;  ///< with the library alone; with what was learnt
    int mixes = 0;               ///< logged
    double shift = 0;            ///< the logarithm of the water it takes by what was learnt, against the library's
};

/// A test that was not made yet, and what it would bring: the exact preview of the posterior.
struct NextTest {
    enum class Kind { squeeze, up_ended_pot, log_mix };
    Kind kind = Kind::log_mix;
    std::string of;                    ///< the bag; of `log_mix` the mix
    std::string most_for;              ///< the mix whose water it narrows most
    double now = 0, then = 0;          ///< of that mix, as in `MixDoubtNow`
    double all_now = 0, all_then = 0;  ///< the mean over the person's mixes
};

/// How the range of one bag or mix shrank over the season, for a picture.
struct LearntStep {
    Date on;
    double mean = 0, sd = 0;
};
struct LearntCourse {
    Learnt last;
    std::vector<LearntStep> steps;  ///< after each day on which something was observed of it
    struct Seen {
        Date on;
        double log_factor = 0, sd = 0;  ///< what this observation alone would say, all else as in the posterior
        bool set_aside = false;
    };
    std::vector<Seen> seen;
};

struct LearnAnswer {
    int observations = 0;  ///< that were heeded
    std::vector<SetAside> set_aside;
    std::vector<Learnt> posterior;
    std::vector<MixDoubtNow> mixes;
    std::optional<NextTest> next;
    std::vector<LearntCourse> courses;  ///< of the bags and the hand, the most often seen first; at most eight
    LearntWater water;                  ///< for the store
    std::vector<LearntMix> learnt_mixes;
    std::vector<Warning> warnings;
};

}  // namespace baitwright
