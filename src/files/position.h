#pragma once

namespace baitwright {

/// A place in a file, both from 1.
struct Position {
    int line = 0;
    int column = 0;
};

}  // namespace baitwright
