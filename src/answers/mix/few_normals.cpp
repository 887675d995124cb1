#include "answers/mix/few_normals.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace baitwright {

namespace {

/// The rows in the order in which they are taken: bags, then hand and memory.
std::vector<std::size_t> bags_first(std::size_t rows) {
    std::vector<std::size_t> order;
    for (std::size_t row = 2; row < rows; ++row) order.push_back(row);
    order.push_back(LearntWater::hand);
    order.push_back(LearntWater::memory);
    return order;
}

/// The covariance of two rows, in four sums, so that none waits for the last: a row may have hundreds of numbers.
double covariance_of(const LearntWater& water, std::size_t a, std::size_t b) {
    const double *first = &water.factor[a * water.rank], *second = &water.factor[b * water.rank];
    std::array<double, 4> sums{};
    std::size_t k = 0;
    for (; k + sums.size() <= water.rank; k += sums.size())
        for (std::size_t i = 0; i < sums.size(); ++i) sums[i] += first[k + i] * second[k + i];
    for (; k < water.rank; ++k) sums[0] += first[k] * second[k];
    return (sums[0] + sums[1]) + (sums[2] + sums[3]);
}

}  // namespace

std::vector<double> row_of(const LearntWater& learnt, std::size_t row) {
    const auto first = learnt.factor.begin() + static_cast<std::ptrdiff_t>(row * learnt.rank);
    return {first, first + static_cast<std::ptrdiff_t>(learnt.rank)};
}

LearntWater few_normals(const LearntWater& learnt) {
    constexpr double nothing = 1e-12;  // of the variance: rounding
    const std::size_t rows = 2 + 2 * learnt.bags.size();
    LearntWater few{learnt.log_hand, learnt.log_memory, learnt.bags, rows, std::vector<double>(rows * rows)};
    const std::vector<std::size_t> order = bags_first(rows);
    std::size_t normals = 0;
    for (std::size_t i = 0; i < rows; ++i) {
        const std::size_t pivot = order[i];
        const auto left = [&](std::size_t row) {
            return covariance_of(learnt, row, pivot) - few.covariance(row, pivot);
        };
        const double variance = left(pivot);
        if (!(variance > nothing * covariance_of(learnt, pivot, pivot))) continue;
        std::vector<double> column(rows);
        for (std::size_t k = i; k < rows; ++k) column[order[k]] = left(order[k]) / std::sqrt(variance);
        for (std::size_t row = 0; row < rows; ++row) few.factor[row * rows + normals] = column[row];
        ++normals;
    }
    return few;
}

LearntWater learnt_of_all(const std::vector<const LearntWater*>& learnt) {
    LearntWater all;
    for (const LearntWater* one : learnt) {
        if (!all.known()) {
            all = *one;
            continue;
        }
        for (std::size_t i = 0; i < one->bags.size(); ++i) {
            if (std::any_of(all.bags.begin(), all.bags.end(),
                            [&](const LearntWater::Bag& bag) { return bag.name == one->bags[i].name; }))
                continue;
            all.bags.push_back(one->bags[i]);
            for (const std::size_t row : {LearntWater::absorption(i), LearntWater::gap(i)})
                for (const double number : row_of(*one, row)) all.factor.push_back(number);
        }
    }
    return all;
}

}  // namespace baitwright
