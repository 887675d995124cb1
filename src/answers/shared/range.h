#pragma once

namespace baitwright {

/// The 5, 50 and 95 % points of an answer.
template <class Q>
struct Range {
    Q low{}, middle{}, high{};
};

}  // namespace baitwright
