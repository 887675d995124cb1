#include "physics/packing.h"

#include <algorithm>
#include <array>
#include <boost/container/small_vector.hpp>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <utility>

#include "quantities/fault.h"

namespace baitwright {

namespace {

struct PackingClass {
    double share;     // y, summing to 1
    double residual;  // beta, the densest packing alone
    double size;      // d
};
using PackingClasses = boost::container::small_vector<PackingClass, 12>;
constexpr std::size_t most_classes = 128;  // more are sieved: each acts on each

/// What class j takes away from the room of the dominant class i; 0 where they are alike.
double interaction(const PackingClass& dominant, const PackingClass& other) {
    if (other.size <= dominant.size) {
        const double loosening = std::sqrt(1 - std::pow(1 - other.size / dominant.size, 1.02));
        return 1 - loosening * dominant.residual / other.residual;
    }
    const double rest = 1 - dominant.size / other.size;
    const double wall = 1 - rest * std::sqrt(rest);
    return 1 - dominant.residual + wall * dominant.residual * (1 - 1 / other.residual);
}

/// gamma: the packing if class i were the one that touches throughout.
double virtual_packing(const PackingClasses& classes, std::size_t dominant) {
    double room = 1;
    for (std::size_t j = 0; j < classes.size(); ++j)
        if (j != dominant) room -= classes[j].share * interaction(classes[dominant], classes[j]);
    return classes[dominant].residual / room;
}

PackingClasses normalised(std::span<const PackedClass> given, double compaction_index) {
    PackingClasses classes;
    double sum = 0;
    for (const PackedClass& one : given) sum += one.volume_share;
    if (!(sum > 0))
        throw InputError("empty-packing", "nothing to pack: no part has any volume", "give a part more than 0 g");
    for (const PackedClass& one : given)
        if (one.volume_share > 0)
            classes.push_back({one.volume_share / sum, one.own_packing * (1 + 1 / compaction_index), one.size.si()});
    return classes;
}

/// As sieves would part them: `most_classes` steps of the same ratio between the least size and the greatest. All in
/// one step is one class, of the mean of its sizes' logarithms and the harmonic mean of its packings.
PackingClasses sieved(const PackingClasses& classes) {
    const auto by_size = [](const PackingClass& a, const PackingClass& b) { return a.size < b.size; };
    const auto [least, greatest] = std::minmax_element(classes.begin(), classes.end(), by_size);
    const double from = std::log(least->size), steps_a_unit = most_classes / (std::log(greatest->size) - from);
    struct Step {
        double share = 0, share_by_residual = 0, share_by_log_size = 0;
    };
    std::array<Step, most_classes> steps{};
    for (const PackingClass& one : classes) {
        const double log_size = std::log(one.size);
        const double place = steps_a_unit * (log_size - from);  // not a number where all are of one size
        Step& step = steps[place < most_classes ? static_cast<std::size_t>(place) : most_classes - 1];
        step.share += one.share;
        step.share_by_residual += one.share / one.residual;
        step.share_by_log_size += one.share * log_size;
    }
    PackingClasses together;
    for (const Step& step : steps)
        if (step.share > 0)
            together.push_back(
                {step.share, step.share / step.share_by_residual, std::exp(step.share_by_log_size / step.share)});
    return together;
}

}  // namespace

Ratio packing_density(std::span<const PackedClass> given, double compaction_index) {
    PackingClasses classes = normalised(given, compaction_index);
    if (classes.size() > most_classes) classes = sieved(classes);
    struct Term {
        double weight, pole;
    };
    boost::container::small_vector<Term, 12> terms;
    double start = 0;
    for (std::size_t i = 0; i < classes.size(); ++i) {
        const Term term{classes[i].share / classes[i].residual, 1 / virtual_packing(classes, i)};
        terms.push_back(term);
        start = std::max(start, term.pole + term.weight / compaction_index);
    }
    // In x = 1/phi the sum falls and is convex, and at `start` one term alone reaches K: Newton climbs from there.
    const auto excess_and_slope = [&](double x) {
        double excess = -compaction_index, slope = 0;
        for (const Term& term : terms) {
            const double gap = 1 / (x - term.pole);
            excess += term.weight * gap;
            slope -= term.weight * gap * gap;
        }
        return std::make_pair(excess, slope);
    };
    if (terms.size() == 1) return 1 / start;
    std::uintmax_t steps = 60;
    return 1 / boost::math::tools::newton_raphson_iterate(excess_and_slope, start, start, 1e3 * start, 48, steps);
}

}  // namespace baitwright
