#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "report/json.h"

namespace baitwright {

/// What a request says under a key: a text without the blanks around it, or a number as text. Empty where nothing
/// stands there.
std::string word_of(const Json& told, std::string_view key);

/// The list under a key; empty where nothing stands there.
std::vector<Json> items_of(const Json& told, std::string_view key);

}  // namespace baitwright
