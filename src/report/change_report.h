#pragma once

#include <string>
#include <vector>

#include "report/json.h"

namespace baitwright {

/// An entry of the library that was "added", "replaced" or left "unchanged".
struct NamedChange {
    std::string name, what;
};

std::string change_text(const std::vector<NamedChange>& changes);
Json change_json(const std::string& command, const std::vector<NamedChange>& changes);

/// An older version: when it was replaced, and its text.
struct OldVersion {
    std::string replaced_on, text;
};

std::string old_versions_text(const std::string& name, const std::vector<OldVersion>& versions);
Json old_versions_json(const std::string& command, const std::string& name, const std::vector<OldVersion>& versions);

}  // namespace baitwright
