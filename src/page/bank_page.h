#pragma once

#include <string>
#include <string_view>

#include "report/json.h"

namespace baitwright {

/// The page with its engine (`cli/page_engine.h`) that carries these plain words (`plain_words`) and this data
/// (`bank_data`). Throws std::logic_error where the page has no place for them.
std::string bank_page(std::string_view page, std::string_view plain, Json data);

}  // namespace baitwright
