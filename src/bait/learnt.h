#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantities/date.h"
#include "quantities/quantity.h"

/// What the log taught, as it is kept in the store and heeded by every answer.
namespace baitwright {

/// The joint normal distribution of ln P (this person's hand in the long run), ln C (the error that defaults from
/// memory share) and, of each bag, ln A and ln G (G = B - A) as this hand finds them in the bag as it is: with hand,
/// error and the bag's moisture in them already, without the hand of the day. In square-root form: a row of `factor`
/// for each, in that order; the covariance of two is the product of their rows. A part of it (fewer bags) is the same
/// with fewer rows.
struct LearntWater {
    struct Bag {
        std::string name;                        ///< as the library writes it
        double log_absorption = 0, log_gap = 0;  ///< means
        int mixes = 0;                           ///< logged mixes that it was in
        double measured_absorption = 0,
               measured_slump = 0;  ///< what the person had measured of it, which is in it already; 0: nothing
        friend bool operator==(const Bag&, const Bag&) = default;
    };
    double log_hand = 0, log_memory = 0;  ///< means
    std::vector<Bag> bags;
    std::size_t rank = 0;        ///< numbers in a row
    std::vector<double> factor;  ///< (2 + 2 bags) x rank, row by row

    static constexpr std::size_t hand = 0, memory = 1;  ///< rows
    static constexpr std::size_t absorption(std::size_t bag) { return 2 + 2 * bag; }
    static constexpr std::size_t gap(std::size_t bag) { return 3 + 2 * bag; }

    [[nodiscard]] bool known() const { return rank > 0; }
    [[nodiscard]] double covariance(std::size_t a, std::size_t b) const {
        double sum = 0;
        for (std::size_t i = 0; i < rank; ++i) sum += factor[a * rank + i] * factor[b * rank + i];
        return sum;
    }
    friend bool operator==(const LearntWater&, const LearntWater&) = default;
};

/// The same of these ingredients alone, in the order asked for; those that nothing was learnt of are left out. Names
/// match whatever their case.
LearntWater part_of(const LearntWater& water, const std::vector<std::string>& bags);

/// What was learnt of something that our model gives: it is multiplied by exp(mean), and known to sigma of its
/// logarithm.
struct LearntFactor {
    double mean = 0, sigma = 0;
    int times = 0;  ///< how often it was seen
    friend bool operator==(const LearntFactor&, const LearntFactor&) = default;
};

/// Of a mix: what a level cup of it weighs, how long it holds, and how wide it lies, each against our model.
struct LearntMix {
    std::string name;
    std::optional<LearntFactor> cup_weight, hold, carpet;
    friend bool operator==(const LearntMix&, const LearntMix&) = default;
};

}  // namespace baitwright
