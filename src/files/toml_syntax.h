#pragma once

#include <toml++/toml.h>

#include <optional>
#include <string_view>

#include "files/file_faults.h"

namespace baitwright {

/// The table of a TOML text. Where it is no TOML, nothing, and one fault that says so in plain words: a reader cannot
/// know how a text goes on behind a mistake in its punctuation.
std::optional<toml::table> parse_toml(std::string_view text, FileFaults& faults);

}  // namespace baitwright
