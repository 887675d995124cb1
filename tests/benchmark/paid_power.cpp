// How often `paid` claims a difference: 2,000 invented seasons without any, and a table of how often a true one is
// found, as docs/method.md prints it. Ends with 1 where more than 5 of 100 seasons without a difference have one
// claimed.
#include <cstdio>
#include <random>

#include "answers/invented_seasons.h"

using namespace baitwright;

namespace {

/// The share of seasons without a difference in which one is claimed; of the worst shape as well.
bool tell_false_claims(std::mt19937_64& random) {
    const std::vector<invented::Season> shapes = invented::without_difference();
    constexpr int each = 75;
    int claims = 0, worst = 0;
    for (const invented::Season& season : shapes) {
        int here = 0;
        for (int i = 0; i < each; ++i) here += invented::claimed(invented::fished(season, random)).is_sure ? 1 : 0;
        claims += here;
        worst = std::max(worst, here);
    }
    const int seasons = each * static_cast<int>(shapes.size());
    std::printf("%d seasons of %zu shapes without a difference: claimed in %.1f %%, of the worst shape in %.1f %%\n\n",
                seasons, shapes.size(), 100.0 * claims / seasons, 100.0 * worst / each);
    return claims * 20 <= seasons;
}

void tell_power(std::mt19937_64& random) {
    constexpr int seasons = 400;
    std::printf(
        "| times as much | sigma | 4 each | 8 each | 12 each | 20 each | 40 each |\n|---|---|---|---|---|---|---|\n");
    for (const double sigma : {0.5, 0.8, 1.2})
        for (const double times : {1.25, 1.5, 2.0, 3.0}) {
            std::printf("| %g | %g |", times, sigma);
            for (const int sessions : {4, 8, 12, 20, 40}) {
                int found = 0;
                for (int i = 0; i < seasons; ++i) {
                    const invented::Claim claim =
                        invented::claimed(invented::fished({{0.5 * times, 0.5}, sessions, 0.2, sigma}, random));
                    found += claim.is_sure && claim.better == 0 ? 1 : 0;
                }
                std::printf(" %.0f |", 100.0 * found / seasons);
            }
            std::printf("\n");
        }
}

}  // namespace

int main() {
    std::mt19937_64 random(20261125);
    const bool good = tell_false_claims(random);
    tell_power(random);
    return good ? 0 : 1;
}
