#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "answers/learn/linear_form.h"
#include "bait/ingredient.h"
#include "quantities/date.h"

/// What the log is to teach of water, before any of it is read: the hand, the error of defaults, and of every bag ln A
/// and ln G, each a linear form of unknowns that are standard normal and independent.
namespace baitwright {

/// One bag of an ingredient: from one day on, until the next. The marks are those the library gives for it; the forms
/// are what ln A and ln G lie off them in this hand, with the moisture of the bag and, for mixes in which that was
/// told, without. A mark of 0 has none.
struct BagOfWater {
    std::string name;
    bool since_ever = true;
    Date since{};
    double absorption = 0, gap = 0;                                              ///< g/g
    Ratio moisture = 0.0;                                                        ///< that they are given for
    std::size_t on_absorption = 0, on_gap = 0, dry_absorption = 0, dry_gap = 0;  ///< places among the forms

    [[nodiscard]] bool takes_water() const { return absorption > 0 && gap > 0; }
};

/// An ingredient with the days on which another bag of it was opened, rising; and whether its latest bag was mixed.
struct OpenedBags {
    Ingredient now;            ///< as it stands on the shelf
    Ingredient before;         ///< as the library had it before this person measured it, or learnt of it; else the same
    bool usual_known = false;  ///< whether `before` is of the library
    std::vector<Date> opened;
    bool moisture_told = false;  ///< in one mix at the least
};

struct WaterUnknowns {
    static constexpr std::size_t hand = 0, memory = 1, hand_and_memory = 2, nothing = 3;  ///< places of these forms
    std::size_t count = 0;
    std::vector<LinearForm> forms;
    std::vector<BagOfWater> bags;                              ///< by ingredient, and in it by day
    std::vector<std::pair<std::size_t, std::size_t>> bags_of;  ///< of each ingredient: from, and to before
};

/// The prior: ln P and ln C as in `hand.h`; the marks' own spreads and the moisture of each bag as for a mix that
/// nothing was learnt of, the latter to first order. Of two bags of one ingredient all but `bag_spread` and the
/// moisture is the same. What was measured, or learnt, and is not in the library holds the hand already.
/// **Source**: ours. **Valid for**: log-normal marks; a bag's moisture that moves ln A by less than 1.
WaterUnknowns water_unknowns(const std::vector<OpenedBags>& ingredients);

}  // namespace baitwright
