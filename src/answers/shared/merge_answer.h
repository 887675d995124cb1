#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bait/stock_mass.h"

namespace baitwright {

/// What two stores had made of one entry apart, and which of the two stands.
struct MergeConflict {
    enum class Stands { ours, theirs };
    std::string kind, name;  ///< one of `entry_kind_names`, or "feel"
    Stands stands = Stands::ours;
    bool is_gone = false;  ///< it stands removed, or under another name; else it is there as one of the two has it
};

/// What came of taking another store in.
struct MergeAnswer {
    std::string other;
    bool only_shown = false;                                    ///< nothing was changed
    std::vector<std::pair<std::string, std::int64_t>> entries;  ///< that came in or became others, by kind
    std::int64_t shed_entries = 0, log_entries = 0, sessions = 0, prices = 0;
    std::vector<std::string> usual;                            ///< keys whose values are as the other has them now
    bool learnt = false;                                       ///< what was learnt is as the other has it now
    std::int64_t beliefs = 0;                                  ///< entries of the log that are believed now, or no more
    std::vector<std::pair<std::string, std::string>> renamed;  ///< from, to: as the other has it
    std::vector<MergeConflict> conflicts;
    /// What both were told prices of apart, and whose stand; the others are among the old ones.
    std::vector<std::pair<std::string, MergeConflict::Stands>> prices_apart;
    std::optional<MergeConflict::Stands> feels_as_one;  ///< together they did not rise, so all are as one has them
    std::vector<std::pair<std::string, Milligrams>> overdrawn;  ///< used beyond what the bags held
    std::vector<std::string> kept_for_use;                      ///< removed in one, used in the other
    std::vector<std::string> broken_mixes;                      ///< that the two together made go round in a circle

    [[nodiscard]] bool anything() const {
        return !entries.empty() || !renamed.empty() || shed_entries + log_entries + prices + beliefs > 0 ||
               !usual.empty() || learnt || !conflicts.empty() || !prices_apart.empty() || feels_as_one ||
               !kept_for_use.empty() || !overdrawn.empty() || !broken_mixes.empty();
    }
};

}  // namespace baitwright
