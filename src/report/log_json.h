#pragma once

#include <string>

#include "answers/shared/log_answer.h"
#include "report/json.h"
#include "report/rows.h"

/// The log as JSON and as rows for a spreadsheet, unrounded.
namespace baitwright {

Json log_json(const std::string& command, const LogAnswer& answer);
Json log_list_json(const LogListAnswer& answer);
Json log_shown_json(const LoggedGroup& group);
/// A row for each entry; those of a session below it.
Rows log_rows(const LogListAnswer& answer);

}  // namespace baitwright
