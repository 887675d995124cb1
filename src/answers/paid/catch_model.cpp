#include "answers/paid/catch_model.h"

#include <algorithm>
#include <cmath>

#include "answers/paid/amount_posterior.h"
#include "answers/paid/blank_posterior.h"
#include "answers/paid/grid_weights.h"
#include "physics/quasi_random.h"

namespace baitwright {

namespace {

constexpr std::size_t world_count = 2048;
constexpr double most_of_blanks = 9;       // pi / (1 - pi), of nine blanks in ten
constexpr std::size_t shared_normals = 4;  // the grid and mean of amounts, the grid and chance of blanks

bool nothing_caught(const std::vector<Takings>& ways) {
    return std::all_of(ways.begin(), ways.end(), [](const Takings& way) { return way.caught == 0; });
}

}  // namespace

DrawnTakings draw_takings(const std::vector<Takings>& ways, std::uint64_t seed) {
    DrawnTakings drawn;
    drawn.ways = ways.size();
    if (nothing_caught(ways)) return drawn;
    drawn.worlds = world_count;
    drawn.logs.resize(ways.size() * world_count);
    const AmountPosterior amounts(ways);
    BlankPosterior blanks(ways);
    QuasiRandomNormals normals(shared_normals + 2 * ways.size(), seed);
    std::vector<double> z(normals.coordinates());
    for (std::size_t world = 0; world < world_count; ++world) {
        normals.next(z);
        const AmountPosterior::World amount = amounts.world(normal_share(z[0]), z[1]);
        const std::size_t blank = blanks.world(normal_share(z[2]));
        const double shared = normal_share(z[3]);
        for (std::size_t way = 0; way < ways.size(); ++way) {
            const double chance = blanks.log_chance(blank, way, normal_share(z[shared_normals + 2 * way + 1]), shared);
            drawn.logs[way * world_count + world] =
                chance + amounts.log_amount(amount, way, z[shared_normals + 2 * way]) + amount.sigma_squared / 2;
            drawn.session_variance += (amount.sigma_squared + std::min(std::expm1(-chance), most_of_blanks)) /
                                      static_cast<double>(world_count * ways.size());
        }
    }
    return drawn;
}

Range<double> DrawnTakings::expected(std::size_t way) const {
    const auto from = logs.begin() + static_cast<std::ptrdiff_t>(way * worlds);
    std::vector<double> values(from, from + static_cast<std::ptrdiff_t>(worlds));
    const auto at = [&](double share) { return std::exp(quantile_in_place(values, share)); };
    Range<double> range;
    range.low = at(0.05);
    range.middle = at(0.5);
    range.high = at(0.95);
    return range;
}

std::vector<double> DrawnTakings::chances_of_most() const {
    std::vector<double> chances(ways, worlds == 0 ? 1 / static_cast<double>(ways) : 0.0);
    for (std::size_t world = 0; world < worlds; ++world) {
        double most = log_of(0, world);
        for (std::size_t way = 1; way < ways; ++way) most = std::max(most, log_of(way, world));
        double sharing = 0;
        for (std::size_t way = 0; way < ways; ++way) sharing += log_of(way, world) >= most ? 1 : 0;
        for (std::size_t way = 0; way < ways; ++way)
            if (log_of(way, world) >= most) chances[way] += 1 / sharing / static_cast<double>(worlds);
    }
    return chances;
}

}  // namespace baitwright
