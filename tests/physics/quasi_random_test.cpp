#include "physics/quasi_random.h"

#include <rapidcheck.h>

#include <algorithm>
#include <boost/random/sobol.hpp>
#include <catch2/catch.hpp>
#include <cmath>
#include <sstream>

#include "physics/sobol_rows.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

double uniform(double normal) {
    return 0.5 * std::erfc(-normal / std::sqrt(2.0));
}

/// The points of a sequence, one row a point.
std::vector<std::vector<double>> points(std::size_t coordinates, std::uint64_t seed, std::size_t count) {
    QuasiRandomNormals draws(coordinates, seed);
    std::vector<std::vector<double>> all(count, std::vector<double>(coordinates));
    for (auto& point : all) draws.next(point);
    return all;
}

/// The 32 bits that a normal was made of.
std::uint32_t bits_of(double normal) {
    return static_cast<std::uint32_t>(std::floor(uniform(normal) * 0x1p32));
}

reference::Row monte_carlo(const std::string& id) {
    for (const auto& row : reference::rows_in("monte_carlo.csv"))
        if (row.at("id") == id) return row;
    throw std::runtime_error("no row " + id);
}

double mean(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

double deviation(const std::vector<double>& values) {
    const double middle = mean(values);
    double sum = 0;
    for (const double value : values) sum += (value - middle) * (value - middle);
    return std::sqrt(sum / static_cast<double>(values.size()));
}

constexpr std::size_t many = 1 << 16;

}  // namespace

TEST_CASE("the same seed gives the same points to the last bit") {
    CHECK(points(7, 42, 300) == points(7, 42, 300));
}

TEST_CASE("another seed gives other points") {
    const auto a = points(3, 1, 50), b = points(3, 2, 50);
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t j = 0; j < 3; ++j) CHECK(a[i][j] != b[i][j]);
}

// Source: tests/reference/sobol.csv, row by row. The digital shift of a coordinate is the same at every point, so the
// exclusive-or of two points is that of the unshifted sequence.
TEST_CASE("the points are those of Joe and Kuo's Sobol sequence, counted from point 1") {
    const auto drawn = points(200, 9, 40);
    for (const auto& row : reference::rows_in("sobol.csv")) {
        CAPTURE(row.at("coordinate"), row.at("point"), row.at("source"));
        const auto coordinate = std::stoul(row.at("coordinate")) - 1, point = std::stoul(row.at("point"));
        CHECK((bits_of(drawn[point - 1][coordinate]) ^ bits_of(drawn[0][coordinate])) ==
              std::stoul(row.at("exclusive_or_with_point_1")));
    }
}

// Source: Boost.Random's `sobol` with its own table of 3,667 rows, after its first point, which is our first too.
TEST_CASE("all coordinates that have a row are those of Boost's engine, point by point") {
    const auto drawn = points(200, 4, 300);
    boost::random::sobol engine(200);
    std::vector<std::uint32_t> first(200);
    for (std::size_t point = 0; point < drawn.size(); ++point)
        for (std::size_t j = 0; j < 200; ++j) {
            const auto word = static_cast<std::uint32_t>(engine() >> 32U);
            if (point == 0) first[j] = word;
            CAPTURE(point, j);
            REQUIRE((bits_of(drawn[point][j]) ^ bits_of(drawn[0][j])) == (word ^ first[j]));
        }
}

// Points 0 to 1,023 fill each of 1,024 equal intervals once; point 1,024 falls beside point 0 in the first coordinate.
TEST_CASE("the origin is left out: one interval of 1,024 stays empty after 1,024 points") {
    for (const std::uint64_t seed : std::initializer_list<std::uint64_t>{1, 2, 77}) {
        std::vector<int> held(1024);
        for (const auto& point : points(1, seed, 1024)) ++held[bits_of(point[0]) >> 22U];
        CHECK(std::count(held.begin(), held.end(), 0) == 1);
        CHECK(std::count(held.begin(), held.end(), 2) == 1);
    }
}

TEST_CASE("every coordinate is spread evenly: 1,023 points fill all but one of 1,024 intervals") {
    const auto drawn = points(40, 3, 1023);
    for (std::size_t j = 0; j < 40; ++j) {
        std::vector<int> held(1024);
        for (const auto& point : drawn) ++held[bits_of(point[j]) >> 22U];
        CAPTURE(j);
        CHECK(std::count(held.begin(), held.end(), 1) == 1023);
    }
}

TEST_CASE("each coordinate has the moments of a standard normal, and no two are correlated") {
    const auto drawn = points(6, 5, many);
    for (std::size_t i = 0; i < 6; ++i) {
        double sums[4] = {};
        for (const auto& point : drawn) {
            double power = 1;
            for (double& sum : sums) sum += (power *= point[i]);
        }
        const double count = many;
        CHECK(sums[0] / count == Approx(0).margin(1e-3));
        CHECK(sums[1] / count == Approx(1).margin(1e-3));
        CHECK(sums[2] / count == Approx(0).margin(5e-3));
        CHECK(sums[3] / count == Approx(3).margin(1e-2));
        for (std::size_t j = 0; j < i; ++j) {
            double product = 0;
            for (const auto& point : drawn) product += point[i] * point[j];
            CHECK(product / count == Approx(0).margin(3e-3));
        }
    }
}

// Source: tests/reference/monte_carlo.csv, rows 01, 02, 03 and 05; tolerance: 3 sigma of plain sampling of 65,536.
TEST_CASE("sums and products of draws have their published mean, deviation and limit") {
    const auto drawn = points(4, 8, many);
    const double plain = 3 / std::sqrt(double(many));
    std::vector<double> rectangular, normal, product, triangular;
    for (const auto& point : drawn) {
        double flat = 0, bell = 0;
        for (const double z : point) {
            flat += std::sqrt(12.0) * (uniform(z) - 0.5);
            bell += z;
        }
        rectangular.push_back(flat);
        normal.push_back(bell);
        product.push_back((10 + point[0]) * (5 + 0.5 * point[1]));
        triangular.push_back(uniform(point[2]) + uniform(point[3]));
    }
    const auto sum = numbers_in(monte_carlo("MONTE_CARLO-01").at("expected"));
    CHECK(deviation(rectangular) == Approx(sum.at(0)).epsilon(0).margin(sum.at(0) * plain));
    // The error of a limit is sqrt(p (1 - p)) / density there; the density there is at least 0.029 / 1 for both sums.
    const double limit_error = plain * std::sqrt(0.975 * 0.025) / 0.029;
    CHECK(quantile_in_place(rectangular, 0.975) == Approx(sum.at(1)).epsilon(0).margin(limit_error));
    CHECK(quantile_in_place(normal, 0.975) ==
          Approx(std::stod(monte_carlo("MONTE_CARLO-02").at("expected"))).epsilon(0).margin(limit_error));
    const auto of_product = numbers_in(monte_carlo("MONTE_CARLO-03").at("expected"));
    CHECK(mean(product) == Approx(of_product.at(0)).epsilon(0).margin(of_product.at(1) * plain));
    CHECK(deviation(product) == Approx(of_product.at(1)).epsilon(0).margin(of_product.at(1) * plain));
    const auto of_triangle = numbers_in(monte_carlo("MONTE_CARLO-05").at("expected"));
    CHECK(mean(triangular) == Approx(of_triangle.at(0)).epsilon(0).margin(plain));
    CHECK(std::pow(deviation(triangular), 2) == Approx(of_triangle.at(1)).epsilon(0).margin(of_triangle.at(1) * plain));
}

// Source: tests/reference/hazen.csv (NumPy), row by row.
TEST_CASE("quantiles of a list agree with NumPy's, counted from the middle of each step") {
    for (const auto& row : reference::rows_in("hazen.csv")) {
        CAPTURE(row.at("values"), row.at("p"), row.at("source"));
        std::vector<double> values;
        std::istringstream text(row.at("values"));
        for (double value; text >> value;) values.push_back(value);
        CHECK(quantile_in_place(values, std::stod(row.at("p"))) ==
              Approx(std::stod(row.at("quantile"))).epsilon(1e-13).margin(1e-12));
    }
}

TEST_CASE("taking a quantile keeps the values and lies between the least and the greatest") {
    CHECK(rc::check([](std::vector<int> whole) {
        RC_PRE(!whole.empty());
        const double p = *rc::gen::inRange(0, 1001) / 1000.0;
        std::vector<double> values(whole.begin(), whole.end());
        const double taken = quantile_in_place(values, p);
        std::sort(whole.begin(), whole.end());
        RC_ASSERT(taken >= whole.front());
        RC_ASSERT(taken <= whole.back());
        std::sort(values.begin(), values.end());
        RC_ASSERT(values == std::vector<double>(whole.begin(), whole.end()));
    }));
}

// Source: boost/random/detail/sobol_table.hpp, the same rows of new-joe-kuo-6.21201.
TEST_CASE("the rows of direction numbers that are carried are Boost's, and no number of theirs is cut off") {
    using Whole = boost::random::default_sobol_table;
    for (unsigned row = 0; row < SobolRows::num_polynomials; ++row) {
        CAPTURE(row);
        CHECK(SobolRows::polynomial(row) == Whole::polynomial(row));
        for (unsigned degree = 0; degree < SobolRows::max_degree; ++degree)
            CHECK(SobolRows::minit(row, degree) == Whole::minit(row, degree));
        CHECK(Whole::minit(row, SobolRows::max_degree) == 0);
    }
}

TEST_CASE("coordinates past the rows are standard normals too, and the same for the same seed") {
    constexpr std::size_t coordinates = 450, points = 1024;
    QuasiRandomNormals one(coordinates, 7), other(coordinates, 7);
    std::vector<double> point(coordinates), same(coordinates);
    double sum = 0, squares = 0;
    for (std::size_t i = 0; i < points; ++i) {
        one.next(point);
        other.next(same);
        CHECK(point == same);
        sum += point.back();
        squares += point.back() * point.back();
    }
    // Four standard errors of a mean and of a variance of 1,024 independent normals.
    CHECK(std::abs(sum / points) < 4 / std::sqrt(points));
    CHECK(std::abs(squares / points - 1) < 4 * std::sqrt(2.0 / points));
}
