#pragma once

#include <string>
#include <vector>

#include "cli/command.h"
#include "library/change_library.h"
#include "report/change_report.h"
#include "report/reply.h"

namespace baitwright {

/// Changes as the report shows them.
std::vector<NamedChange> names_of(const std::vector<EntryChange>& changes);

/// A reply in the form that was asked for: as JSON, as CSV, or told, which `note` may follow.
CommandResult given(const Arguments& arguments, const Reply& reply, const std::string& note = {});

/// Rows of cells as RFC 4180 text.
std::string csv_of_rows(const std::vector<std::vector<std::string>>& rows);

}  // namespace baitwright
