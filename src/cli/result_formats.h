#pragma once

#include <string>
#include <vector>

#include "library/change_library.h"
#include "report/change_report.h"

namespace baitwright {

/// Changes as the report shows them.
std::vector<NamedChange> names_of(const std::vector<EntryChange>& changes);

/// Rows of cells as RFC 4180 text.
std::string csv_of_rows(const std::vector<std::vector<std::string>>& rows);

}  // namespace baitwright
