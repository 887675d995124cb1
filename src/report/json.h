#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "quantities/fault.h"
#include "quantities/money.h"
#include "report/json_value.h"

namespace baitwright {

/// The record every command's JSON begins with: schema_version, command, warnings.
Json json_record(const std::string& command, const std::vector<Warning>& warnings);

/// The text, or null where there is none.
Json text_or_null(const std::string& text);

/// {"low": ..., "high": ...} of a range, in the unit.
template <class Range, class Unit>
Json low_high(const Range& range, Unit unit) {
    return {{"low", range.low.in(unit)}, {"high", range.high.in(unit)}};
}

/// Whole minor units, or null.
Json json_minor(const std::optional<Money>& money);

/// {"errors": [{code, message, file, line, column, hint}]}; what is not known is null.
Json json_of_faults(const std::vector<Fault>& faults);

/// Text with a line end. Bad UTF-8 is replaced; a number that is not finite throws std::logic_error.
std::string json_text(const Json& json);

/// The same in one line without an end, for a page to carry. In ASCII alone where that is asked for.
enum class JsonLetters { utf8, ascii };
std::string json_line(const Json& json, JsonLetters letters);

/// Nothing where the text is no JSON.
std::optional<Json> parsed_json(std::string_view text);

}  // namespace baitwright
