#include "library/as_told.h"

#include <utility>

#include "files/notes_text.h"

namespace baitwright {

std::string as_told(LogEntry entry) {
    entry.id = entry.session = 0;
    if (auto* mix = std::get_if<LoggedMix>(&entry.what)) {
        if (!mix->feel.empty()) mix->wetness.reset();
        mix->within = 0.0;
        mix->wetting = Mass{};
        mix->parts.clear();
    }
    if (auto* session = std::get_if<LoggedSession>(&entry.what)) session->cost.reset();
    return notes_text({entry});
}

std::multiset<std::string> as_told(const LoggedGroup& group) {
    std::multiset<std::string> told{as_told(group.entry)};
    for (const LogEntry& entry : group.belonging) told.insert(as_told(entry));
    return told;
}

std::multiset<std::string> as_told(const GroupToEnter& group) {
    std::multiset<std::string> told;
    for (const LogEntry& entry : group) told.insert(as_told(entry));
    return told;
}

}  // namespace baitwright
