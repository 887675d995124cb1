#include "physics/quasi_random.h"

#include <algorithm>
#include <boost/random/sobol.hpp>
#include <cmath>

#include "physics/normal_quantile.h"
#include "physics/sobol_rows.h"

namespace baitwright {

using Engine = boost::random::sobol_engine<std::uint32_t, 32, SobolRows>;

namespace {

/// splitmix64 (Steele, Lea & Flood 2014): well-mixed words, the same on every machine.
std::uint32_t mixed_bits(std::uint64_t& state) {
    std::uint64_t word = (state += 0x9e3779b97f4a7c15ULL);
    word = (word ^ (word >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    word = (word ^ (word >> 27U)) * 0x94d049bb133111ebULL;
    return static_cast<std::uint32_t>((word ^ (word >> 31U)) >> 32U);
}

}  // namespace

struct QuasiRandomNormals::Sequence {
    Engine engine;
    std::size_t in_rows;  ///< coordinates that have a row of direction numbers
    std::vector<std::uint32_t> shift;
    std::uint64_t state;  ///< of the words for the others
};

QuasiRandomNormals::QuasiRandomNormals(std::size_t coordinates, std::uint64_t seed)
    : sequence_(
          std::make_unique<Sequence>(Sequence{Engine(std::min<std::size_t>(coordinates, SobolRows::max_dimension)),
                                              std::min<std::size_t>(coordinates, SobolRows::max_dimension),
                                              {},
                                              seed})) {
    sequence_->shift.reserve(coordinates);
    for (std::size_t i = 0; i < coordinates; ++i) sequence_->shift.push_back(mixed_bits(sequence_->state));
}

QuasiRandomNormals::~QuasiRandomNormals() = default;

std::size_t QuasiRandomNormals::coordinates() const {
    return sequence_->shift.size();
}

void QuasiRandomNormals::next(std::span<double> point) {
    for (std::size_t i = 0; i < point.size(); ++i) {
        const std::uint32_t word = i < sequence_->in_rows ? sequence_->engine() : mixed_bits(sequence_->state);
        const std::uint32_t bits = word ^ sequence_->shift[i];
        point[i] = normal_quantile((bits + 0.5) * 0x1p-32);
    }
}

double quantile_in_place(std::span<double> values, double p) {
    const double last = static_cast<double>(values.size()) - 1;
    const double place = std::clamp(p * static_cast<double>(values.size()) - 0.5, 0.0, last);
    const auto below = static_cast<std::ptrdiff_t>(place);
    std::nth_element(values.begin(), values.begin() + below, values.end());
    const double low = values[static_cast<std::size_t>(below)];
    if (static_cast<double>(below) >= last) return low;
    const double high = *std::min_element(values.begin() + below + 1, values.end());
    return low + (place - static_cast<double>(below)) * (high - low);
}

}  // namespace baitwright
