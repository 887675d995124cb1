#include "quantities/sort_stably.h"

#include <algorithm>
#include <numeric>

namespace baitwright {

std::vector<std::size_t> stable_order(std::size_t count, const void* context, StandsBefore before) {
    std::vector<std::size_t> order(count), merged(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    for (std::size_t width = 1; width < count; width *= 2) {
        for (std::size_t from = 0; from < count; from += 2 * width) {
            const std::size_t middle = std::min(from + width, count), to = std::min(from + 2 * width, count);
            std::size_t left = from, right = middle;
            for (std::size_t place = from; place < to; ++place) {
                const bool take_right = left == middle || (right < to && before(context, order[right], order[left]));
                merged[place] = take_right ? order[right++] : order[left++];
            }
        }
        order.swap(merged);
    }
    return order;
}

}  // namespace baitwright
