#include "physics/packing.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <optional>

#include "quantities/fault.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

/// Classes of packings from 0.2 to 0.7 and sizes from 0.02 to 12 mm, as crumbs, meals, powders and pellets have.
rc::Gen<std::vector<PackedClass>> random_classes() {
    const auto any_class = rc::gen::map(
        rc::gen::tuple(rc::gen::inRange(1, 1000), rc::gen::inRange(200, 700), rc::gen::inRange(20, 12000)),
        [](const std::tuple<int, int, int>& t) {
            return PackedClass{std::get<0>(t) / 1000.0, std::get<1>(t) / 1000.0, std::get<2>(t) * 1e-3 * millimetre};
        });
    return rc::gen::mapcat(rc::gen::inRange<std::size_t>(1, 9), [any_class](std::size_t count) {
        return rc::gen::container<std::vector<PackedClass>>(count, any_class);
    });
}

/// Without an index: as the program packs.
double best_of_two_sizes(double ratio, double own, std::optional<double> index = std::nullopt) {
    double best = 0;
    for (int percent_small = 1; percent_small < 100; ++percent_small) {
        const PackedClass classes[] = {{1 - percent_small / 100.0, own, ratio * millimetre},
                                       {percent_small / 100.0, own, 1.0 * millimetre}};
        best = std::max<double>(best, index ? packing_density(classes, *index) : packing_density(classes));
    }
    return best;
}

/// Each class by each, solved by halving: the equation of the header as it stands there.
double each_by_each(const std::vector<PackedClass>& classes, double index) {
    double sum = 0;
    for (const PackedClass& one : classes) sum += one.volume_share;
    struct Term {
        double weight, pole;
    };
    std::vector<Term> terms;
    for (const PackedClass& i : classes) {
        const double beta = i.own_packing * (1 + 1 / index);
        double room = 1;
        for (const PackedClass& j : classes) {
            if (&i == &j) continue;
            const double other = j.own_packing * (1 + 1 / index), ratio = j.size / i.size, y = j.volume_share / sum;
            const double a = std::sqrt(1 - std::pow(std::max(0.0, 1 - ratio), 1.02));
            const double b = 1 - std::pow(std::max(0.0, 1 - 1 / ratio), 1.5);
            room -= y * (ratio <= 1 ? 1 - a * beta / other : 1 - beta + b * beta * (1 - 1 / other));
        }
        terms.push_back({i.volume_share / sum / beta, room / beta});
    }
    double low = 0, high = 1e3;
    for (const Term& term : terms) low = std::max(low, term.pole);
    for (int step = 0; step < 200; ++step) {
        const double middle = (low + high) / 2;
        double reached = 0;
        for (const Term& term : terms) reached += term.weight / (middle - term.pole);
        (reached > index ? low : high) = middle;
    }
    return 1 / high;
}

}  // namespace

TEST_CASE("many classes pack as each by each would tell") {
    CHECK(rc::check([] {
        // 128 are worked out each by each, 129 are taken together.
        const auto count = *rc::gen::inRange<std::size_t>(2, 260);
        std::vector<PackedClass> classes;
        while (classes.size() < count)
            for (const PackedClass& one : *random_classes()) classes.push_back(one);
        classes.resize(count, classes.front());
        const double expected = each_by_each(classes, 4.1);
        RC_ASSERT(std::abs(packing_density(classes) / expected - 1) < (count > 128 ? 3e-3 : 1e-9));
    }));
}

TEST_CASE("a thousand classes of one size pack as one of them") {
    const std::vector<PackedClass> alike(1000, {0.01, 0.55, 2.0 * millimetre});
    CHECK(packing_density(alike) == Approx(0.55).epsilon(1e-9));
}

// Source: tests/reference/mcgeary.csv (from memory). McGeary shook his spheres, for which de Larrard's K is 9 (from
// memory): this holds the equation; what is only poured has the program's own K below.
TEST_CASE("two sizes of shaken spheres pack as densely at their best as was measured") {
    for (const auto& row : reference::rows_in("mcgeary.csv")) {
        CAPTURE(row.at("large_to_small"), row.at("source"));
        CHECK(best_of_two_sizes(std::stod(row.at("large_to_small")), std::stod(row.at("own_packing")),
                                std::stod(row.at("compaction_index"))) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(std::stod(row.at("tolerance"))));
    }
}

// With the K of the program, 4.1: what is only poured packs looser than what was shaken, but gains most of what that
// gained. No measurement of poured spheres was at hand; the bounds are those of McGeary's shaken ones.
TEST_CASE("two sizes of poured grains gain over half of what shaken spheres gained, and not more") {
    for (const auto& row : reference::rows_in("mcgeary.csv")) {
        CAPTURE(row.at("large_to_small"));
        const double own = std::stod(row.at("own_packing")), shaken = std::stod(row.at("expected"));
        const double poured = best_of_two_sizes(std::stod(row.at("large_to_small")), own);
        CHECK(poured < shaken);
        CHECK(poured - own > 0.5 * (shaken - own));
    }
}

// de Larrard 1999 (from memory): in the limit of very unlike sizes the small ones fill the gaps of the large ones.
// Densest then, with nothing loosened and no wall, is phi = 1 - (1 - beta)^2; here beta 0.74, index endless.
TEST_CASE("grains that differ without end in size fill each other's gaps") {
    const double beta = 0.74;
    CHECK(best_of_two_sizes(1e9, beta, 1e9) == Approx(1 - (1 - beta) * (1 - beta)).epsilon(0).margin(0.01));
}

TEST_CASE("one class alone packs as it does alone") {
    CHECK(rc::check([] {
        const double own = *rc::gen::inRange(1, 999) / 1000.0;
        const PackedClass alone[] = {
            {*rc::gen::inRange(1, 100) / 10.0, own, *rc::gen::inRange(1, 9999) * 1e-6 * metre}};
        RC_ASSERT(std::abs(packing_density(alone) - own) < 1e-14);
    }));
}

TEST_CASE("one class cut in two alike still packs as it does alone") {
    const PackedClass two[] = {{0.3, 0.55, 2.0 * millimetre}, {0.7, 0.55, 2.0 * millimetre}};
    CHECK(packing_density(two) == Approx(0.55).epsilon(1e-12));
}

TEST_CASE("mixing sizes that pack alike never packs looser than one of them") {
    CHECK(rc::check([] {
        auto classes = *random_classes();
        for (PackedClass& each : classes) each.own_packing = 0.55;
        RC_ASSERT(packing_density(classes) > 0.55 - 1e-12);
    }));
}

TEST_CASE("the order of the classes does not matter") {
    CHECK(rc::check([] {
        auto classes = *random_classes();
        const double there = packing_density(classes);
        std::reverse(classes.begin(), classes.end());
        RC_ASSERT(std::abs(packing_density(classes) - there) < 1e-12);
    }));
}

TEST_CASE("only the proportions of shares and of sizes matter") {
    CHECK(rc::check([] {
        auto classes = *random_classes();
        const double there = packing_density(classes);
        for (PackedClass& each : classes) {
            each.volume_share = 3.7 * each.volume_share;
            each.size = 0.4 * each.size;
        }
        RC_ASSERT(std::abs(packing_density(classes) - there) < 1e-12);
    }));
}

TEST_CASE("a class without a share is passed over") {
    CHECK(rc::check([] {
        auto classes = *random_classes();
        const double there = packing_density(classes);
        classes.push_back({0.0, 0.3, 0.05 * millimetre});
        RC_ASSERT(packing_density(classes) == there);
    }));
}

TEST_CASE("a mixture packs no looser than its loosest class and leaves some gaps") {
    CHECK(rc::check([] {
        const auto classes = *random_classes();
        double loosest = 1;
        for (const PackedClass& each : classes) loosest = std::min<double>(loosest, each.own_packing);
        const double packed = packing_density(classes);
        RC_ASSERT(packed > loosest - 1e-12);
        RC_ASSERT(packed < 1.0);
    }));
}

// The equation itself, solved by halving instead of Newton's method: de Larrard 1999 (from memory).
TEST_CASE("the packing solves its equation") {
    CHECK(rc::check([] {
        const auto classes = *random_classes();
        const double packed = packing_density(classes), index = 4.1;
        double sum = 0, reached = 0;
        for (const PackedClass& each : classes) sum += each.volume_share;
        for (const PackedClass& i : classes) {
            const double beta = i.own_packing * (1 + 1 / index);
            double room = 1;
            for (const PackedClass& j : classes) {
                if (&i == &j) continue;
                const double y = j.volume_share / sum, other = j.own_packing * (1 + 1 / index);
                if (j.size <= i.size) {
                    const double a = std::sqrt(1 - std::pow(1 - j.size / i.size, 1.02));
                    room -= y * (1 - a * beta / other);
                } else {
                    const double b = 1 - std::pow(1 - i.size / j.size, 1.5);
                    room -= y * (1 - beta + b * beta * (1 - 1 / other));
                }
            }
            reached += i.volume_share / sum / beta / (1 / packed - room / beta);
        }
        RC_ASSERT(std::abs(reached / index - 1) < 1e-8);
    }));
}

TEST_CASE("nothing cannot be packed") {
    CHECK_THROWS_AS(packing_density({}), InputError);
    const PackedClass none[] = {{0.0, 0.5, 1.0 * millimetre}};
    CHECK_THROWS_AS(packing_density(none), InputError);
}

// Source: tests/reference/porosity.csv, row by row: the two densities are the last but the unit's own digit.
TEST_CASE("porosity agrees with the published densities of grain and pulse") {
    for (const auto& row : reference::rows_in("porosity.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs"));
        const Density bulk = in.at(1) * gram_per_millilitre, particle = in.at(2) * gram_per_millilitre;
        CHECK(100 * porosity(bulk, particle) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(std::stod(row.at("tolerance"))));
    }
}

// Source: tests/reference/saturation.csv, row by row; the same equation on both sides: a check of coding.
TEST_CASE("the share of pores that liquid fills agrees with the granulation identity") {
    for (const auto& row : reference::rows_in("saturation.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs"));
        const Density solid = in.at(1) * gram_per_litre, liquid = in.at(2) * gram_per_litre;
        CHECK(pore_saturation(in.at(0), solid, liquid, in.at(3)) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-4));
    }
}
