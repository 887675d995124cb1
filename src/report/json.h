#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "answers/warning.h"
#include "quantities/fault.h"
#include "quantities/money.h"

namespace baitwright {

using Json = nlohmann::ordered_json;

/// The record every command's JSON begins with: schema_version, command, warnings.
Json json_record(const std::string& command, const std::vector<Warning>& warnings);

/// Whole minor units, or null.
Json json_minor(const std::optional<Money>& money);

/// {"errors": [{code, message, file, line, column, hint}]}; what is not known is null.
Json json_of_faults(const std::vector<Fault>& faults);

/// Text with a line end. Bad UTF-8 is replaced; a number that is not finite throws std::logic_error.
std::string json_text(const Json& json);

}  // namespace baitwright
