#include <catch2/catch.hpp>
#include <cmath>

#include "answers/asking.h"
#include "day_of.h"

/// One kilo of the fishmeal mix, firm, worked through as on paper: no function of ours but the one asked. The
/// ingredients are the draft ones; the equations are those of the method, sections 3.1 to 3.4 and 4.
using namespace baitwright;

namespace {

//                             fishmeal  crumb  pellet  maize
constexpr double share[4] = {0.40, 0.30, 0.20, 0.10};
constexpr double A[4] = {0.50, 0.65, 0.55, 0.42};
constexpr double B[4] = {0.85, 1.12, 0.93, 0.72};
constexpr double loose_by_hand[4] = {0.560, 0.420, 0.600, 0.620};  // g/ml
constexpr double skel[4] = {1.45, 1.45, 1.42, 1.45};
constexpr double env[4] = {1.28, 0.95, 1.22, 1.28};
constexpr double size[4] = {0.35, 0.90, 0.60, 0.45};  // mm
constexpr double inside = 0.8;

/// Compressible packing, de Larrard 1999 (from memory), K = 4.1; the packing found by halving.
double packing_of(const double (&volume)[4], const double (&d)[4]) {
    constexpr double K = 4.1;
    double sum = 0, y[4], beta[4], gamma[4];
    for (int i = 0; i < 4; ++i) sum += volume[i];
    for (int i = 0; i < 4; ++i) {
        y[i] = volume[i] / sum;
        beta[i] = loose_by_hand[i] / env[i] * (1 + 1 / K);
    }
    for (int i = 0; i < 4; ++i) {
        double room = 1;
        for (int j = 0; j < 4; ++j) {
            if (j == i) continue;
            if (d[j] < d[i]) {
                const double loosening = std::sqrt(1 - std::pow(1 - d[j] / d[i], 1.02));
                room -= y[j] * (1 - loosening * beta[i] / beta[j]);
            } else {
                const double wall = 1 - std::pow(1 - d[i] / d[j], 1.5);
                room -= y[j] * (1 - beta[i] + wall * beta[i] * (1 - 1 / beta[j]));
            }
        }
        gamma[i] = beta[i] / room;
    }
    double low = 0, high = std::min({gamma[0], gamma[1], gamma[2], gamma[3]});
    for (int step = 0; step < 200; ++step) {
        const double phi = 0.5 * (low + high);
        double reached = 0;
        for (int i = 0; i < 4; ++i) reached += y[i] / beta[i] / (1 / phi - 1 / gamma[i]);
        (reached < K ? low : high) = phi;
    }
    return low;
}

}  // namespace

TEST_CASE("a kilo of the fishmeal mix, firm, comes out as it does on paper") {
    const MixAnswer answer = draft::kilo(draft::fishmeal_mix(), "firm");

    // Marks: 0.4 x 0.50 + 0.3 x 0.65 + 0.2 x 0.55 + 0.1 x 0.42 = 0.547; likewise 0.934.
    double mix_a = 0, mix_b = 0;
    for (int i = 0; i < 4; ++i) {
        mix_a += share[i] * A[i];
        mix_b += share[i] * B[i];
    }
    CHECK(mix_a == Approx(0.547).epsilon(1e-12));
    CHECK(mix_b == Approx(0.934).epsilon(1e-12));
    CHECK(answer.marks.absorption == Approx(mix_a).epsilon(1e-12));
    CHECK(answer.marks.slump == Approx(mix_b).epsilon(1e-12));

    // Water at wetness 1.2: 1000 x (0.547 + 0.2 x 0.387) = 624.4 g. Wet mass 1624.4 g.
    CHECK(answer.wetness == 1.2);
    CHECK(answer.water_to_add.in(gram) == Approx(624.4).epsilon(1e-12));
    CHECK(answer.wet_mass.in(gram) == Approx(1624.4).epsilon(1e-12));
    CHECK(answer.kitchen_water.in(gram) == Approx(625));

    // Dry volume: grains over how they pack.
    double dry_grains[4], dry_sum = 0;
    for (int i = 0; i < 4; ++i) dry_sum += dry_grains[i] = 1000 * share[i] / env[i];
    CHECK(answer.dry_volume.in(millilitre) == Approx(dry_sum / packing_of(dry_grains, size)).epsilon(1e-9));

    // Swelling: each gram takes 0.8 A inside, its own pores first.
    double swollen[4], grown[4], grains = 0, drunk = 0;
    for (int i = 0; i < 4; ++i) {
        const double q = inside * A[i], pores = 1 / env[i] - 1 / skel[i];
        swollen[i] = 1000 * share[i] * (1 / env[i] + std::max(0.0, q - pores));
        grown[i] = size[i] * std::cbrt(swollen[i] / dry_grains[i]);
        grains += swollen[i];
        drunk += 1000 * share[i] * q;
    }
    const double between = 624.4 - drunk, condensed = (grains + between) / 0.97, poured = packing_of(swollen, grown);
    CHECK(drunk == Approx(437.6).epsilon(1e-12));    // 0.8 x 547
    CHECK(between == Approx(186.8).epsilon(1e-12));  // water between the grains

    // Riddled at 1.2: loosened by 0.18 x (1.6 - 1.2)/0.6 = 0.12.
    const double riddled = std::max(grains / (poured * 0.88), condensed);
    CHECK(answer.state == MixState::riddled);
    CHECK(answer.wet_volume.in(millilitre) == Approx(riddled).epsilon(1e-9));
    CHECK(answer.saturation == Approx(between / (riddled - grains)).epsilon(1e-9));

    // Cupped at 1.2: packed by 0.60 + 0.2 x 0.14 = 0.628. Squeezed: by 0.80.
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram}, "firm");
    request.state = MixState::cupped;
    const double cupped = std::max(grains / std::max(poured, 0.628), condensed);
    CHECK(draft::scaled(draft::fishmeal_mix(), request).wet_volume.in(millilitre) == Approx(cupped).epsilon(1e-9));
    request.state = MixState::squeezed;
    const double squeezed = std::max(grains / std::max(poured, 0.80), condensed);
    CHECK(draft::scaled(draft::fishmeal_mix(), request).wet_volume.in(millilitre) == Approx(squeezed).epsilon(1e-9));

    // Balls of 55 mm hold pi/6 x 5.5^3 = 87.1137 ml: how many, and how heavy.
    const double ball = 3.14159265358979 / 6 * 5.5 * 5.5 * 5.5;
    const MixAnswer balls =
        draft::scaled(draft::fishmeal_mix(), draft::request_for(Balls{16, 55.0 * millimetre}, "firm"));
    CHECK(balls.dry_mass.in(gram) == Approx(16 * ball / squeezed * 1000).epsilon(1e-9));
    REQUIRE(balls.portions.has_value());
    CHECK(balls.portions->mass_each.in(gram) == Approx(1624.4 * ball / squeezed).epsilon(1e-9));

    // What to weigh, and how loose_by_hand it lies.
    REQUIRE(answer.parts.size() == 4);
    for (std::size_t i = 0; i < 4; ++i) {
        CHECK(answer.parts[i].mass.in(gram) == Approx(1000 * share[i]).epsilon(1e-12));
        CHECK(answer.parts[i].volume.in(millilitre) == Approx(1000 * share[i] / loose_by_hand[i]).epsilon(1e-12));
        CHECK(answer.parts[i].share == Approx(share[i]).epsilon(1e-12));
    }
}

// Shares of packs: fishmeal 400/1000 x 419 = 167.6 p, crumb 300/1500 x 295 = 59 p, pellet 200/2000 x 499 = 49.9 p,
// maize 100/1000 x 165 = 16.5 p; 293 p in all. Cut down they make 291; the two pence go to the pellet and the fishmeal.
TEST_CASE("the cost of the fishmeal mix is its shares of packs, in pence that sum") {
    MemoryShelf shelf(&draft::shelf());
    const auto priced = [&](const char* name, double kilograms, std::int64_t pence) {
        Ingredient ingredient = draft::shelf().ingredient(name);
        ingredient.packs = {{kilograms * kilogram, Money(pence, currency_named("GBP")), day_of("2026-03-01"), {}}};
        shelf.put(ingredient);
    };
    priced("fishmeal, brown", 1, 419);
    priced("brown crumb", 1.5, 295);
    priced("ground fishmeal pellet", 2, 499);
    priced("maize meal", 1, 165);
    const MixAnswer answer =
        draft::scaled(draft::fishmeal_mix(), draft::request_for(DryMass{1.0 * kilogram}, "firm"), shelf);
    REQUIRE(answer.cost.has_value());
    CHECK(answer.cost->minor() == 293);
    CHECK(answer.parts[0].cost->minor() == 168);
    CHECK(answer.parts[1].cost->minor() == 59);
    CHECK(answer.parts[2].cost->minor() == 50);
    CHECK(answer.parts[3].cost->minor() == 16);
    CHECK(answer.warnings.empty());
}

// By hand: at 15 degC the share taken after t is sum A_i share_i F(0.183 t/t90_i) / 0.547, with t90 of 25, 8, 20 and
// 30 min; 90 % lies between the quickest and the slowest, and F by Crank's series there.
TEST_CASE("the fishmeal mix rests until nine tenths are drunk") {
    const MixAnswer answer = draft::kilo(draft::fishmeal_mix(), "firm");
    const double t = answer.rest.in(minute);
    const double t90[4] = {25, 8, 20, 30};
    double taken = 0;
    for (int i = 0; i < 4; ++i) {
        double sum = 0;
        for (int n = 1; n < 60; ++n) sum += std::exp(-n * n * 9.8696044 * 0.183 * t / t90[i]) / (n * n);
        taken += share[i] * A[i] * (1 - 0.6079271 * sum);
    }
    CHECK(taken / 0.547 == Approx(0.9).epsilon(1e-6));
    CHECK(t > 8);
    CHECK(t < 30);
}
