#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

namespace baitwright {

/// Points of a Sobol sequence, turned into independent standard normals: point 1, 2, ... (never the origin), each
/// coordinate shifted by its own random bits drawn from the seed. The same seed gives the same points.
/// **Source**: Sobol 1967 with the direction numbers of Joe & Kuo 2008, the points of Boost.Random's `sobol`; digital
/// shift: L'Ecuyer & Lemieux 2002 (from memory). Coordinates past the 200th are random, by splitmix64. **Valid for**:
/// 1 coordinate or more, 2^31 points.
/// **Test**: `tests/physics/quasi_random_test.cpp`, rows MONTE_CARLO.
class QuasiRandomNormals {
public:
    QuasiRandomNormals(std::size_t coordinates, std::uint64_t seed);
    ~QuasiRandomNormals();

    /// Fills one value a coordinate; `point` must have as many as the constructor was told.
    void next(std::span<double> point);
    [[nodiscard]] std::size_t coordinates() const;

private:
    struct Sequence;
    std::unique_ptr<Sequence> sequence_;
};

/// The p-th quantile of values, linear between order statistics at (k + 1/2)/n. Reorders `values`; p in 0..1.
double quantile_in_place(std::span<double> values, double p);

}  // namespace baitwright
