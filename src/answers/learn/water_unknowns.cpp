#include "answers/learn/water_unknowns.h"

#include <algorithm>
#include <cmath>

#include "bait/hand.h"
#include "bait/wetness.h"
#include "physics/normal_quantile.h"

namespace baitwright {

namespace {

constexpr double most_by_moisture = 1.0;  // of ln A, by one sigma of a bag's moisture: beyond, the line means nothing
constexpr double learnt_again = 0.15;     // of a learnt mark that the library lacks: the log is not to count twice

double variance_of_spread(double spread) {
    const double sigma = log_normal_sigma(spread);
    return sigma * sigma;
}

/// What is known of a mark before the log is read.
struct MarkBefore {
    double variance = 0;  ///< of the kind and the bag
    double by_moisture = 0;
    bool of_hand = true, of_memory = false;

    [[nodiscard]] double of_bag() const { return std::min(variance_of_spread(bag_spread), variance / 2); }
    [[nodiscard]] std::size_t shared() const {
        if (!of_hand) return WaterUnknowns::nothing;
        return of_memory ? WaterUnknowns::hand_and_memory : WaterUnknowns::hand;
    }
};

bool is_own(const Source& source) {
    return source.origin == Origin::measured || source.origin == Origin::learned;
}

MarkBefore mark_before(const Property<Ratio>& mark, const Source& source, bool usual_known) {
    MarkBefore before;
    before.variance = variance_of_spread(mark.spread);
    before.of_memory = from_memory(source);
    if (usual_known || !is_own(source)) return before;
    before.of_hand = before.of_memory = false;
    if (source.origin == Origin::learned) before.variance = std::max(before.variance, variance_of_spread(learnt_again));
    return before;
}

/// The library's marks and doubts of one bag, at the moisture it is thought to have.
struct BagBefore {
    double absorption = 0, gap = 0;
    Ratio moisture;
    MarkBefore on_absorption, on_gap;
};

BagBefore bag_before(const OpenedBags& in, const Property<Ratio>& moisture) {
    const Ingredient& library = in.before;
    const WaterMarks stated{library.absorption.value, library.slump.value};
    WaterMarks marks = marks_at_moisture(stated, library.moisture.value, moisture.value);
    const bool as_stated = moisture.value == library.moisture.value || !(marks.absorption > 0);
    if (as_stated) marks = stated;
    BagBefore bag;
    bag.absorption = std::max(0.0, double(marks.absorption));
    bag.gap = std::max(0.0, double(marks.slump) - double(marks.absorption));
    bag.moisture = as_stated ? library.moisture.value : moisture.value;
    const Source& slump = library.slump.source;
    bag.on_absorption = mark_before(library.absorption, library.absorption.source, in.usual_known);
    bag.on_gap =
        mark_before(library.slump, slump.origin == Origin::derived ? library.absorption.source : slump, in.usual_known);
    const double sigma = bag.moisture * log_normal_sigma(moisture.spread), dry = 1 - bag.moisture;
    if (bag.on_absorption.of_hand && bag.absorption > 0)
        bag.on_absorption.by_moisture =
            -std::min(most_by_moisture, (1 + bag.absorption) / dry * sigma / bag.absorption);
    if (bag.on_gap.of_hand) bag.on_gap.by_moisture = -sigma / dry;
    return bag;
}

class UnknownsMaker {
public:
    UnknownsMaker() {
        const Hand hand;
        const std::size_t p = fresh(), c = fresh();
        const double hand_sigma = std::sqrt(hand.hand_variance), memory_sigma = std::sqrt(hand.memory_variance);
        made_.forms = {{{p, hand_sigma}}, {{c, memory_sigma}}, {{p, hand_sigma}, {c, memory_sigma}}, {}};
    }

    void add(const OpenedBags& in) {
        const std::size_t from = made_.bags.size(), bags = in.opened.size() + 1;
        Kind kind;
        for (std::size_t i = 0; i < bags; ++i) {
            const bool latest = i + 1 == bags;
            const BagBefore before = bag_before(in, latest ? in.now.moisture : in.before.moisture);
            BagOfWater bag{in.now.name,       i == 0,     i == 0 ? Date{} : in.opened[i - 1],
                           before.absorption, before.gap, before.moisture};
            add_forms(before, bags > 1 ? &kind : nullptr, in.moisture_told, bag);
            made_.bags.push_back(std::move(bag));
        }
        made_.bags_of.emplace_back(from, made_.bags.size());
    }

    WaterUnknowns take() { return std::move(made_); }

private:
    /// The unknowns that all bags of an ingredient share.
    struct Kind {
        bool made = false;
        std::size_t absorption = 0, gap = 0;
    };

    std::size_t fresh() { return made_.count++; }

    std::size_t form(const MarkBefore& mark, std::initializer_list<std::pair<std::size_t, double>> own) {
        LinearForm all = made_.forms[mark.shared()];
        for (const auto& term : own)
            if (term.second != 0) all.push_back(term);
        made_.forms.push_back(std::move(all));
        return made_.forms.size() - 1;
    }

    void add_forms(const BagBefore& before, Kind* kind, bool moisture_told, BagOfWater& bag) {
        const MarkBefore &a = before.on_absorption, &g = before.on_gap;
        bag.on_absorption = bag.dry_absorption = a.shared();
        bag.on_gap = bag.dry_gap = g.shared();
        if (!bag.takes_water()) return;
        const double own_a = kind ? a.of_bag() : a.variance, own_g = kind ? g.of_bag() : g.variance;
        std::pair<std::size_t, double> kind_a{0, 0}, kind_g{0, 0};
        if (kind) {
            if (!kind->made) *kind = {true, fresh(), fresh()};
            kind_a = {kind->absorption, std::sqrt(a.variance - own_a)};
            kind_g = {kind->gap, std::sqrt(g.variance - own_g)};
        }
        if (moisture_told) {
            const std::size_t of_a = fresh(), of_g = fresh(), of_moisture = fresh();
            const std::pair<std::size_t, double> bag_a{of_a, std::sqrt(own_a)}, bag_g{of_g, std::sqrt(own_g)};
            bag.dry_absorption = form(a, {kind_a, bag_a});
            bag.dry_gap = form(g, {kind_g, bag_g});
            bag.on_absorption = form(a, {kind_a, bag_a, {of_moisture, a.by_moisture}});
            bag.on_gap = form(g, {kind_g, bag_g, {of_moisture, g.by_moisture}});
            return;
        }
        // Cholesky's factor of what the two marks of the bag have of their own.
        const double first = std::sqrt(own_a + a.by_moisture * a.by_moisture);
        const double both = first > 0 ? a.by_moisture * g.by_moisture / first : 0;
        const double second = std::sqrt(std::max(0.0, own_g + g.by_moisture * g.by_moisture - both * both));
        const std::size_t z1 = fresh(), z2 = fresh();
        bag.on_absorption = bag.dry_absorption = form(a, {kind_a, {z1, first}});
        bag.on_gap = bag.dry_gap = form(g, {kind_g, {z1, both}, {z2, second}});
    }

    WaterUnknowns made_;
};

}  // namespace

WaterUnknowns water_unknowns(const std::vector<OpenedBags>& ingredients) {
    UnknownsMaker maker;
    for (const OpenedBags& in : ingredients) maker.add(in);
    return maker.take();
}

}  // namespace baitwright
