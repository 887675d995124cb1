#pragma once

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "answers/paid/catch_model.h"
#include "answers/paid/paid_verdict.h"
#include "physics/normal_quantile.h"

/// Seasons that are invented: what each way brings is known, and whether a claim about it is true.
namespace baitwright::invented {

struct Season {
    std::vector<double> brings;  ///< of each way, in kg an hour, where a session is no blank: the median
    int sessions = 8;            ///< of each
    double blank = 0.2, sigma = 0.8;
};

inline std::vector<Takings> fished(const Season& season, std::mt19937_64& random) {
    const auto share = [&] { return (static_cast<double>(random() >> 11U) + 0.5) * 0x1p-53; };
    std::vector<Takings> ways(season.brings.size());
    for (std::size_t way = 0; way < ways.size(); ++way)
        for (int session = 0; session < season.sessions; ++session) {
            const bool blank = share() < season.blank;
            const double amount = season.brings[way] * std::exp(season.sigma * normal_quantile(share()));
            ways[way].add(blank ? 0 : amount);
        }
    return ways;
}

/// What is said of the two that seem best, as `what_paid` does it.
struct Claim {
    std::size_t better = 0;
    bool is_sure = false;
};

inline Claim claimed(const std::vector<Takings>& ways) {
    const DrawnTakings drawn = draw_takings(ways, 1);
    if (drawn.worlds == 0) return {};
    const std::vector<std::size_t> order = best_first(drawn, ways.size());
    return {order[0], verdict_of(drawn, ways, order[0], order[1]).is_sure};
}

/// Two to five ways that are all alike, in many shapes.
inline std::vector<Season> without_difference() {
    std::vector<Season> seasons;
    for (const std::size_t ways : {2U, 3U, 5U})
        for (const int sessions : {4, 8, 20})
            for (const double blank : {0.05, 0.2, 0.4})
                for (const double sigma : {0.5, 0.8, 1.2})
                    seasons.push_back({std::vector<double>(ways, 0.5), sessions, blank, sigma});
    return seasons;
}

}  // namespace baitwright::invented
