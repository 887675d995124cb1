#include "physics/quasi_random.h"

#include <algorithm>
#include <boost/random/sobol.hpp>
#include <cmath>

#include "physics/normal_quantile.h"

namespace baitwright {

using Engine = boost::random::sobol_engine<std::uint32_t, 32>;

struct QuasiRandomNormals::Sequence {
    Engine engine;
    std::vector<std::uint32_t> shift;
};

QuasiRandomNormals::QuasiRandomNormals(std::size_t coordinates, std::uint64_t seed)
    : sequence_(std::make_unique<Sequence>(Sequence{Engine(coordinates), {}})) {
    std::uint64_t state = seed;
    for (std::size_t i = 0; i < coordinates; ++i) {
        // splitmix64 (Steele, Lea & Flood 2014): one well-mixed word a coordinate, the same on every machine.
        std::uint64_t word = (state += 0x9e3779b97f4a7c15ULL);
        word = (word ^ (word >> 30U)) * 0xbf58476d1ce4e5b9ULL;
        word = (word ^ (word >> 27U)) * 0x94d049bb133111ebULL;
        sequence_->shift.push_back(static_cast<std::uint32_t>((word ^ (word >> 31U)) >> 32U));
    }
}

QuasiRandomNormals::~QuasiRandomNormals() = default;

std::size_t QuasiRandomNormals::coordinates() const {
    return sequence_->shift.size();
}

void QuasiRandomNormals::next(std::span<double> point) {
    for (std::size_t i = 0; i < point.size(); ++i) {
        const std::uint32_t bits = sequence_->engine() ^ sequence_->shift[i];
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
