#pragma once

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

#include "bait/hand.h"
#include "bait/resolved_mix.h"
#include "bait/wetness.h"
#include "bait/wetted_mix.h"

/// How far the marks of a mix may lie from their medians, and what they share of it.
namespace baitwright {

/// A factor on the marks of each origin, in one draw.
struct MarkFactors {
    double measured = 1, from_memory = 1, other = 1;
    [[nodiscard]] double of(MarkOrigin origin) const {
        return is_of_the_bag(origin) ? measured : origin == MarkOrigin::from_memory ? from_memory : other;
    }
};

/// A mark's median in g/g, the sigma of its logarithm, and what else it may be off by: `learnt` has a number for each
/// of the normals that what was learnt is made of, and is empty where nothing was or it is of none of them.
struct DoubtfulMark {
    double median, sigma;
    MarkOrigin origin;
    std::vector<double> learnt = {};
    friend bool operator==(const DoubtfulMark&, const DoubtfulMark&) = default;

    /// The logarithm of the factor on the median, but for the day's, from those normals and one of its own.
    [[nodiscard]] double log_factor(const double* normals, double own) const {
        double sum = sigma * own;
        for (std::size_t k = 0; k < learnt.size(); ++k) sum += learnt[k] * normals[k];
        return sum;
    }
};

/// One part that takes water. Its second mark is the gap G = B - A, drawn so that B cannot fall below A; or B itself
/// where that was measured.
struct DoubtfulPart {
    std::size_t solid;  ///< its place among the solids
    Ratio share;
    DoubtfulMark absorption, second;
    double moisture, sigma_moisture;
    friend bool operator==(const DoubtfulPart&, const DoubtfulPart&) = default;

    [[nodiscard]] bool slump_measured() const { return second.origin == MarkOrigin::measured; }
    /// w(h) = reach of A x A + reach of the second mark x that.
    [[nodiscard]] double absorption_reach(double wetness) const {
        return (wetness < 1 ? wetness : 1) - (slump_measured() ? second_reach(wetness) : 0);
    }
    [[nodiscard]] static double second_reach(double wetness) { return wetness > 1 ? wetness - 1 : 0; }
};

/// What the marks share: today's hand on all of them, this person's hand on those not measured, the error of memory on
/// those from memory. Where all marks are of one origin, it is one factor.
class SharedDoubt {
public:
    /// Of the parts alone.
    SharedDoubt(const Hand& hand, const std::vector<DoubtfulPart>& parts);
    /// For parts of every origin.
    explicit SharedDoubt(const Hand& hand);

    /// Of the first normal, whose factor is on every mark.
    [[nodiscard]] double sigma_of_first() const { return sigma_first_; }
    [[nodiscard]] std::size_t normals_beside_first() const { return is_one_ ? 0 : 2; }
    /// What comes to the factor of the first, from the normals beside it.
    [[nodiscard]] MarkFactors beside_first(const double* normals) const;
    /// The factors from all of the normals, the first and those beside it.
    [[nodiscard]] MarkFactors draw(const double* normals) const;
    /// Sums of a quantity over the marks of each origin: the variance of their whole, to first order.
    [[nodiscard]] double variance_of(const MarkFactors& sums) const;

private:
    bool is_one_ = false;
    double sigma_first_;
    double hand_ = 0;                        // sigma of ln P by the second normal
    double memory_ = 0, memory_beside_ = 0;  // of ln P + ln C by the second and the third
};

struct DoubtfulMix {
    std::vector<DoubtfulPart> parts;
    Hand hand;
    std::optional<std::size_t> learnt_normals =
        std::nullopt;  ///< how many make what was learnt, where something was: it stands for `SharedDoubt` but the day
    friend bool operator==(const DoubtfulMix&, const DoubtfulMix&) = default;
};
DoubtfulMix doubtful_mix(const ResolvedMix& mix);
/// The same with what was learnt of the bags of several mixes, by the same normals: `few_normals` of `learnt_of_all`.
DoubtfulMix doubtful_mix(const ResolvedMix& mix, const LearntWater& few_normals);

/// The marks of a part in a draw: three normals of its own, and what it shares. Marks that were not measured are moved
/// to the moisture of the drawn bag.
WaterMarks drawn_marks(const DoubtfulPart& part, const MarkFactors& shared, const double* normals);
/// The same where something was learnt: the day's factor, the normals of what was learnt, and three of its own.
WaterMarks drawn_by_learnt(const DoubtfulPart& part, double day, const double* learnt, const double* normals);

/// Draws the marks of all parts. It must not outlive the mix.
class MarkDraws {
public:
    explicit MarkDraws(const DoubtfulMix& mix);

    /// How many normals a draw takes.
    [[nodiscard]] std::size_t normals() const { return first_ + 3 * mix_.parts.size(); }
    void draw(const double* normals, MixNumbers& numbers) const;

private:
    const DoubtfulMix& mix_;
    SharedDoubt shared_;
    std::size_t first_;  // of the normals of the first part's own
};

/// The moisture of a drawn bag, at most 0.9 unless its median is more.
inline double drawn_bag(double moisture, double factor) {
    constexpr double wettest_bag = 0.9;
    return std::min(std::max(wettest_bag, moisture), moisture * factor);
}

}  // namespace baitwright
