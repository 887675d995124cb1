#pragma once

#include <string>
#include <vector>

#include "report/json.h"
#include "report/told.h"

namespace baitwright {

/// An entry of the library that was "added", "replaced" or left "unchanged".
struct NamedChange {
    std::string name, what;
};

Told change_told(const std::vector<NamedChange>& changes);
Json change_json(const std::string& command, const std::vector<NamedChange>& changes);

/// An older version: when it was replaced, and its text.
struct OldVersion {
    std::string replaced_on, text;
};

Told old_versions_told(const std::string& name, const std::vector<OldVersion>& versions);
Json old_versions_json(const std::string& command, const std::string& name, const std::vector<OldVersion>& versions);

}  // namespace baitwright
