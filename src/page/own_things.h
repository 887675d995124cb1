#pragma once

#include <optional>
#include <string>

#include "page/opened_bank.h"
#include "questions/arguments.h"
#include "report/json.h"

namespace baitwright {

/// Takes in what a person tells of their own (`put`, `measured`, `price`, `shed`, `anew` of `Bank`), or gives it as
/// text
/// (`text`). Nothing where it is another question. Throws the project's errors; then nothing is taken in.
std::optional<Json> own_thing(OpenedBank& bank, const std::string& what, const Json& request,
                              const Arguments& arguments);

}  // namespace baitwright
