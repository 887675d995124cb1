#pragma once

#include <string>
#include <vector>

#include "report/reply.h"

namespace baitwright {

/// An entry of the library that was "added", "replaced" or left "unchanged".
struct NamedChange {
    std::string name, what;
    std::string kind = {};  ///< "ingredient", "mix", "strategy", "venue", "blend" or "feel"
};

Told change_told(const std::vector<NamedChange>& changes);
Json change_json(const std::string& command, const std::vector<NamedChange>& changes);

/// An older version: when it was replaced, and its text.
struct OldVersion {
    std::string replaced_on, text;
};

Told old_versions_told(const std::string& name, const std::vector<OldVersion>& versions);
Json old_versions_json(const std::string& command, const std::string& name, const std::vector<OldVersion>& versions);

/// An entry that has another name now, and what follows it there: "the mix 'silt bed'", ...
struct NamedAnew {
    std::string kind, from, to;
    std::vector<std::string> followed;
};
Reply renamed_reply(const std::string& command, const NamedAnew& entry);

/// An entry that was taken out; `restore` is the command that brings it back.
Reply removed_reply(const std::string& command, const std::string& kind, const std::string& name,
                    const std::string& restore);

/// An old version that was put back: version 2 of 3, until that day; `change` is "added", "replaced" or "unchanged".
struct PutBack {
    std::string kind, name, until;
    std::size_t version, of;
    std::string change;
};
Reply restored_reply(const std::string& command, const PutBack& entry);

}  // namespace baitwright
