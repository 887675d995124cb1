#pragma once

#include <string>
#include <string_view>

#include "report/json.h"

namespace baitwright {

/// The page with its engine, but for the data: made by the build where it has Emscripten (`BAITWRIGHT_PAGE`), else
/// empty.
std::string_view bank_template();

/// The page (`bank_template`) that carries these plain words (`plain_words`) and this data (`bank_data`). Throws
/// StorageError "no-page-engine" (cannot_create) where the program was built without the engine, std::logic_error where
/// the page has no place for them.
std::string bank_page(std::string_view page, std::string_view plain, Json data);

}  // namespace baitwright
