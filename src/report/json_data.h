#pragma once

#include <variant>

#include "report/json_value.h"

namespace baitwright {

/// What a `Json` that is not null holds.
struct JsonData {
    struct List {
        std::vector<Json> items;
    };
    struct Record {
        std::vector<std::string> keys;
        std::vector<Json> values;
    };
    std::variant<bool, std::int64_t, double, std::string, List, Record> value;
};

}  // namespace baitwright
