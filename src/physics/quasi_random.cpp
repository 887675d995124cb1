#include "physics/quasi_random.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>

#include "physics/normal_quantile.h"
#include "physics/sobol_rows.h"

namespace baitwright {

namespace {

/// splitmix64 (Steele, Lea & Flood 2014): well-mixed words, the same on every machine.
std::uint32_t mixed_bits(std::uint64_t& state) {
    std::uint64_t word = (state += 0x9e3779b97f4a7c15ULL);
    word = (word ^ (word >> 30U)) * 0xbf58476d1ce4e5b9ULL;
    word = (word ^ (word >> 27U)) * 0x94d049bb133111ebULL;
    return static_cast<std::uint32_t>((word ^ (word >> 31U)) >> 32U);
}

constexpr std::size_t word_bits = 32;
using Directions = std::array<std::uint32_t, word_bits>;

/// Of the first coordinate, whose points halve and halve again (van der Corput).
Directions halving_directions() {
    Directions halves{};
    for (std::size_t k = 0; k < word_bits; ++k) halves[k] = 1U << (word_bits - 1 - k);
    return halves;
}

/// Of a row's primitive polynomial, by its recurrence (Bratley & Fox 1988, ACM Trans. Math. Softw. 14, 88-100; from
/// memory).
Directions directions_of_row(std::size_t row) {
    const std::uint32_t polynomial = SobolRows::polynomial(row);
    const auto degree = static_cast<std::size_t>(std::bit_width(polynomial)) - 1;
    Directions directions{};
    for (std::size_t k = 0; k < word_bits; ++k) {
        if (k < degree) {
            directions[k] = std::uint32_t{SobolRows::minit(row, k)} << (word_bits - 1 - k);
            continue;
        }
        directions[k] = directions[k - degree] ^ (directions[k - degree] >> degree);
        for (std::size_t i = 1; i < degree; ++i)
            if ((polynomial >> (degree - i)) & 1U) directions[k] ^= directions[k - i];
    }
    return directions;
}

}  // namespace

struct QuasiRandomNormals::Sequence {
    std::vector<Directions> directions;  ///< of the coordinates that have a row
    std::vector<std::uint32_t> point;    ///< the last one there
    std::uint32_t count = 0;
    std::vector<std::uint32_t> shift;
    std::uint64_t state;  ///< of the words for the others

    /// To the next point in the order of Gray's code: one direction changes all coordinates.
    void step() {
        const auto lowest_zero = static_cast<std::size_t>(std::countr_one(count++));
        for (std::size_t i = 0; i < point.size(); ++i) point[i] ^= directions[i][lowest_zero];
    }
};

QuasiRandomNormals::QuasiRandomNormals(std::size_t coordinates, std::uint64_t seed)
    : sequence_(std::make_unique<Sequence>()) {
    const std::size_t in_rows = std::min<std::size_t>(coordinates, SobolRows::max_dimension);
    sequence_->directions.reserve(in_rows);
    for (std::size_t i = 0; i < in_rows; ++i)
        sequence_->directions.push_back(i == 0 ? halving_directions() : directions_of_row(i - 1));
    sequence_->point.resize(in_rows);
    sequence_->state = seed;
    sequence_->shift.reserve(coordinates);
    for (std::size_t i = 0; i < coordinates; ++i) sequence_->shift.push_back(mixed_bits(sequence_->state));
}

QuasiRandomNormals::~QuasiRandomNormals() = default;

std::size_t QuasiRandomNormals::coordinates() const {
    return sequence_->shift.size();
}

void QuasiRandomNormals::next(std::span<double> point) {
    sequence_->step();
    const std::vector<std::uint32_t>& reached = sequence_->point;
    for (std::size_t i = 0; i < point.size(); ++i) {
        const std::uint32_t word = i < reached.size() ? reached[i] : mixed_bits(sequence_->state);
        const std::uint32_t bits = word ^ sequence_->shift[i];
        point[i] = (bits + 0.5) * 0x1p-32;
    }
    normal_quantiles(point);
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
