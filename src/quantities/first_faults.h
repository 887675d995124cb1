#pragma once

#include <cstddef>
#include <vector>

namespace baitwright {

struct Fault;

/// So many faults are worked out and told at once: who has mended these looks again.
constexpr std::size_t most_faults_told = 20;

/// The first of them and, where there are more, a last one that says how many. One among them that says so already is
/// taken into the count, and so are `untold`, which were found and not worked out.
std::vector<Fault> first_faults(std::vector<Fault> faults, std::size_t untold = 0);

}  // namespace baitwright
