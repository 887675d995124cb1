#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "quantities/date.h"
#include "quantities/fault.h"

namespace baitwright {

/// What stands in the `about.toml` of a folder with all of a store.
struct AboutExport {
    std::int64_t format = 1;
    std::string made_by;  ///< "baitwright 0.2.0"
    Date made_on{};
    std::int64_t store_version = 0;
    std::int64_t clock = 1;  ///< by which changes are stamped
    std::string shipped;     ///< the digest of what the store was filled from; empty: nothing
    std::vector<std::pair<std::string, std::int64_t>> rows;  ///< of each file: its entries or rows
};

/// The newest format that this program reads and writes.
inline constexpr std::int64_t newest_export_format = 1;

std::string about_text(const AboutExport& about);

/// Whether an export of this program wrote it, in any format; false of a person's own file of that name.
bool is_about_export(std::string_view text);

/// Nothing, and faults, where it cannot be read; one of a newer format is a fault.
std::optional<AboutExport> read_about(std::string_view text, const std::string& file_name, std::vector<Fault>& faults);

}  // namespace baitwright
