#pragma once

#include <string>

namespace baitwright {

/// A value typed for a key, as in a library file but without quotes: {"absorption", "0.7 g/g"}; for a property also its
/// source ("measured: squeeze test, 2026-03-01") and spread ("5 %"), or the usual ones where empty.
struct KeyValue {
    std::string key, value;
    std::string source = {}, spread = {};
};

}  // namespace baitwright
