#pragma once

#include <cstddef>
#include <iterator>
#include <utility>
#include <vector>

namespace baitwright {

/// Whether the entry at the left place is to stand before that at the right, in what the context points to.
using StandsBefore = bool (*)(const void* context, std::size_t left, std::size_t right);

/// The places of so many entries in their order: equal ones as they stood.
std::vector<std::size_t> stable_order(std::size_t count, const void* context, StandsBefore before);

/// As std::stable_sort, in at most n log n comparisons and n moves. Of that each kind of entry takes 10 kB of a page,
/// of this a tenth.
template <class Iterator, class Before>
void sort_stably(Iterator first, Iterator last, const Before& before) {
    struct Entries {
        Iterator first;
        const Before& before;
    };
    using Step = typename std::iterator_traits<Iterator>::difference_type;
    const Entries entries{first, before};
    std::vector<std::size_t> order =
        stable_order(static_cast<std::size_t>(last - first), &entries,
                     [](const void* context, std::size_t left, std::size_t right) -> bool {
                         const auto& all = *static_cast<const Entries*>(context);
                         return all.before(all.first[static_cast<Step>(left)], all.first[static_cast<Step>(right)]);
                     });
    const auto at = [&](std::size_t place) -> decltype(auto) { return first[static_cast<Step>(place)]; };
    for (std::size_t start = 0; start < order.size(); ++start) {  // ring by ring
        if (order[start] == start) continue;
        auto lifted = std::move(at(start));
        std::size_t gap = start;
        for (std::size_t next = order[gap]; next != start; next = order[gap]) {
            at(gap) = std::move(at(next));
            order[gap] = gap;
            gap = next;
        }
        at(gap) = std::move(lifted);
        order[gap] = gap;
    }
}

}  // namespace baitwright
