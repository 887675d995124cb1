#pragma once

#include <string>
#include <vector>

/// The manual, made from the table of commands: a page for the program, and one for each first word of a command.
namespace baitwright {

struct ManualPage {
    std::string name;  ///< "baitwright-stock"
    std::string text;  ///< in roff
};

/// All pages, the program's first. `dated` is the day they bear: in ISO 8601, or empty.
std::vector<ManualPage> manual_pages(const std::string& dated);

/// What `manual` with these words prints: a page; or, with `--to FOLDER`, nothing, for all of them are written there.
/// `--date DATE` says which day they bear, unless SOURCE_DATE_EPOCH is set (reproducible-builds.org). Throws
/// UsageError.
std::string manual_answer(const std::vector<std::string>& words);

}  // namespace baitwright
