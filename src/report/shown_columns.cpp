#include "report/shown_columns.h"

#include <algorithm>

namespace baitwright {

namespace {

std::size_t& columns_in_use() {
    static std::size_t columns = text_columns;
    return columns;
}

}  // namespace

void show_columns(std::size_t columns) {
    columns_in_use() = std::clamp(columns, fewest_columns, most_columns);
}

std::size_t columns_shown() {
    return columns_in_use();
}

}  // namespace baitwright
