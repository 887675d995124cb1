#pragma once

#include <string>
#include <string_view>

#include "report/json.h"

namespace baitwright {

/// The page with its engine, but for the data: made by the build where it has Emscripten (`BAITWRIGHT_PAGE`), else
/// empty.
std::string_view bank_template();

/// The page that carries this data (`bank_data`). Throws StorageError "no-page-engine" (cannot_create) where the
/// program was built without the engine.
std::string bank_page(Json data);

}  // namespace baitwright
