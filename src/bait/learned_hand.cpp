#include "bait/learned_hand.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "physics/moisture.h"
#include "physics/normal_quantile.h"

namespace baitwright {

namespace {

constexpr double least_mark = 0.02;  // of less nobody can tell how much it is off
constexpr double tightest = 0.95;    // A of B, where B was measured and A is reckoned
constexpr double same_mark = 1e-3;   // a mark is moved to a bag's moisture in four digits

double square(double x) {
    return x * x;
}

double variance_of(const Property<Ratio>& property) {
    return square(log_normal_sigma(property.spread));
}

bool is_measured(const Property<Ratio>& mark) {
    return mark.source.origin == Origin::measured;
}

MarkOrigin origin_of(const Property<Ratio>& mark) {
    if (is_measured(mark)) return MarkOrigin::measured;
    if (mark.source.origin == Origin::learned) return MarkOrigin::learnt;
    return from_memory(mark.source) ? MarkOrigin::from_memory : MarkOrigin::other;
}

/// One observation of ln P + memory ln C.
struct Observed {
    double log_ratio, memory;
};

/// What one bag says: A, or B, or A and G, whose errors hang together.
struct BagSays {
    std::array<Observed, 2> marks;
    std::size_t count = 0;
    std::array<double, 2> variance{};
    double covariance = 0;

    void add(double log_ratio, const Property<Ratio>& usual, double own_variance) {
        variance[count] = own_variance;
        marks[count++] = {log_ratio, from_memory(usual.source) ? 1.0 : 0.0};
    }
};

/// The marks of a bag, measured and usual, at the moisture of the usual ones; and by how much ln A, ln B and ln G move
/// with the bag's moisture, for one sigma of it.
struct Compared {
    double absorption, slump, usual_absorption, usual_slump;
    double absorption_by_bag, slump_by_bag, gap_by_bag;
};

Compared compared(const Ingredient& in, const UsualMarks& usual) {
    const double bag = in.moisture.value, stated = usual.moisture.value;
    const double sigma = bag * log_normal_sigma(in.moisture.spread);
    Compared c{};
    c.absorption = added_water_at_moisture(in.absorption.value, bag, stated);
    c.slump = added_water_at_moisture(in.slump.value, bag, stated);
    c.usual_absorption = usual.absorption.value;
    c.usual_slump = usual.slump.value;
    const auto by_bag = [&](double mark, double there) {
        return (1 - stated) * (1 + mark) / square(1 - bag) * sigma / there;
    };
    c.absorption_by_bag = by_bag(in.absorption.value, c.absorption);
    c.slump_by_bag = by_bag(in.slump.value, c.slump);
    c.gap_by_bag = sigma / (1 - bag);
    return c;
}

bool can_tell(double measured, double usual) {
    return std::min(measured, usual) > least_mark;
}

void add_absorption(const Ingredient& in, const UsualMarks& usual, const Compared& c, BagSays& says) {
    says.add(std::log(c.absorption / c.usual_absorption), usual.absorption,
             variance_of(usual.absorption) + square(c.absorption_by_bag) + variance_beyond_day(in.absorption));
}

/// The gap, beside the absorption of the same bag.
void add_gap(const Ingredient& in, const UsualMarks& usual, const Compared& c, BagSays& says) {
    const double gap = c.slump - c.absorption, of_absorption = c.absorption / gap, of_slump = c.slump / gap;
    const double by_absorption = variance_beyond_day(in.absorption), by_slump = variance_beyond_day(in.slump);
    if (says.count > 0) says.covariance = c.absorption_by_bag * c.gap_by_bag - of_absorption * by_absorption;
    says.add(std::log(gap / (c.usual_slump - c.usual_absorption)), usual.slump,
             variance_of(usual.slump) + square(c.gap_by_bag) + square(of_absorption) * by_absorption +
                 square(of_slump) * by_slump);
}

/// B alone: its own doubt is that of A and G.
void add_slump(const Ingredient& in, const UsualMarks& usual, const Compared& c, BagSays& says) {
    const double of_absorption = c.usual_absorption / c.usual_slump;
    says.add(std::log(c.slump / c.usual_slump), usual.slump,
             square(of_absorption) * variance_of(usual.absorption) +
                 square(1 - of_absorption) * variance_of(usual.slump) + square(c.slump_by_bag) +
                 variance_beyond_day(in.slump));
}

BagSays said_by(const SolidPart& part) {
    const Ingredient& in = part.ingredient;
    BagSays says;
    if (!part.usual || !takes_water(in.kind) || !has_measured_mark(in)) return says;
    const Compared c = compared(in, *part.usual);
    const bool absorption = is_measured(in.absorption), slump = is_measured(in.slump);
    if (absorption && can_tell(c.absorption, c.usual_absorption)) add_absorption(in, *part.usual, c, says);
    if (absorption && slump && can_tell(c.slump - c.absorption, c.usual_slump - c.usual_absorption))
        add_gap(in, *part.usual, c, says);
    if (!absorption && can_tell(c.slump, c.usual_slump)) add_slump(in, *part.usual, c, says);
    return says;
}

/// The information matrix of ln P and ln C and its product with their means.
struct Information {
    double hand, memory, both = 0, for_hand = 0, for_memory = 0;

    void add(const Observed& a, const Observed& b, double weight) {
        hand += weight;
        both += weight * b.memory;
        memory += weight * a.memory * b.memory;
        for_hand += weight * b.log_ratio;
        for_memory += weight * a.memory * b.log_ratio;
    }

    void add(const BagSays& bag) {
        if (bag.count == 1) return add(bag.marks[0], bag.marks[0], 1 / bag.variance[0]);
        const double det = bag.variance[0] * bag.variance[1] - square(bag.covariance);
        add(bag.marks[0], bag.marks[0], bag.variance[1] / det);
        add(bag.marks[1], bag.marks[1], bag.variance[0] / det);
        add(bag.marks[0], bag.marks[1], -bag.covariance / det);
        add(bag.marks[1], bag.marks[0], -bag.covariance / det);
    }
};

/// The gap that belongs to a part: the usual one where A alone was measured, moved to the bag's moisture.
double gap_of(const SolidPart& part) {
    const Ingredient& in = part.ingredient;
    const double own = in.slump.value - in.absorption.value;
    if (!part.usual || !is_measured(in.absorption) || is_measured(in.slump)) return own;
    const UsualMarks& usual = *part.usual;
    const WaterMarks moved =
        marks_at_moisture({usual.absorption.value, usual.slump.value}, usual.moisture.value, in.moisture.value);
    const bool untouched = std::abs(in.slump.value - moved.slump) < same_mark;
    return untouched ? double(moved.slump) - double(moved.absorption) : own;
}

}  // namespace

double variance_beyond_day(const Property<Ratio>& mark) {
    return std::max(0.0, variance_of(mark) - square(log_normal_sigma(day_spread)));
}

MarkOrigin absorption_origin(const SolidPart& part) {
    const Property<Ratio>& mark = part.ingredient.absorption;
    return origin_of(mark);
}

MarkOrigin slump_origin(const SolidPart& part) {
    const Property<Ratio>& mark = part.ingredient.slump;
    // What is derived from the absorption is off by what that is off by.
    if (mark.source.origin == Origin::derived) return absorption_origin(part);
    return origin_of(mark);
}

Hand learned_hand(const std::vector<SolidPart>& solids) {
    Hand hand;
    Information known{1 / hand.hand_variance, 1 / hand.memory_variance};
    for (const SolidPart& part : solids) {
        const BagSays says = said_by(part);
        if (says.count == 0) continue;
        known.add(says);
        hand.learned = true;
    }
    if (!hand.learned) return hand;
    const double det = known.hand * known.memory - square(known.both);
    hand.hand_variance = known.memory / det;
    hand.memory_variance = known.hand / det;
    hand.covariance = -known.both / det;
    hand.log_hand = hand.hand_variance * known.for_hand + hand.covariance * known.for_memory;
    hand.log_memory = hand.covariance * known.for_hand + hand.memory_variance * known.for_memory;
    return hand;
}

WaterMarks known_marks(const SolidPart& part, const Hand& hand) {
    const Ingredient& in = part.ingredient;
    if (!hand.learned) return {in.absorption.value, in.slump.value};
    const double absorption = hand.shift(absorption_origin(part)) * in.absorption.value;
    if (is_measured(in.slump)) {
        const double slump = in.slump.value;
        return {is_measured(in.absorption) ? absorption : std::min(absorption, tightest * slump), slump};
    }
    return {absorption, absorption + hand.shift(slump_origin(part)) * gap_of(part)};
}

}  // namespace baitwright
