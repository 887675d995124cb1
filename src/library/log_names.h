#pragma once

#include <map>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/log_entry.h"
#include "bait/resolved_mix.h"
#include "bait/shelf.h"
#include "bait/weighed_parts.h"
#include "library/open_library.h"

namespace baitwright {

/// What becomes of a name that is in no library: at the keyboard it is a slip; in notes it is kept as it was written.
enum class UnknownName { refused, kept };

/// Gives entries of the log their names as the library writes them, and mixes what was weighed of them. Each name is
/// looked up once.
class LogNames {
public:
    LogNames(const Shelf& shelf, LibraryPlace place, UnknownName unknown)
        : shelf_(shelf), place_(std::move(place)), unknown_(unknown), feels_(shelf.feels()) {}

    /// Where unknown names are refused, throws NotFound, and UsageError for what teaches nothing: a soak of no pellet,
    /// a mix that takes no water, a feel of pellets alone.
    void complete(LogEntry& entry, const BagMoistures& moistures = {});
    /// What was kept as it was written, once each.
    [[nodiscard]] const std::vector<Warning>& warnings() const { return warnings_; }
    [[nodiscard]] const std::vector<Feel>& feels() const { return feels_; }
    /// The feel that was said.
    std::string feel_called(const std::string& word) { return feel(word); }

private:
    /// A feed of a strategy may have a name that nothing else has.
    enum class Kind { bait, ingredient, strategy, venue, feed };
    struct Completing;

    std::string written(Kind kind, const std::string& word);
    [[nodiscard]] std::optional<std::string> found(Kind kind, const std::string& word) const;
    std::string look_up(Kind kind, const std::string& word);
    std::string feel(const std::string& word);
    /// The feel of such a bait; empty of pellets alone, which have none.
    std::string feel_of(const std::string& of, const std::string& word);
    /// Whether pellets alone were said to have a feel, which is refused, or left out with a word.
    bool tells_of_feel(const std::string& of, const std::string& feel);
    /// Pellets alone: what they were soaked in teaches nothing of a hand that wets meal, so no part of theirs is kept.
    void take_as_soaked(LoggedMix& mix);
    const ResolvedMix* mix_called(const std::string& name);
    void refuse(bool unfit, const char* code, const std::string& message, const char* hint) const;
    void warn(const std::string& what, const std::string& word);
    void warn(Warning warning);

    const Shelf& shelf_;
    LibraryPlace place_;
    UnknownName unknown_;
    std::vector<Feel> feels_;
    std::map<std::pair<Kind, std::string>, std::string> names_;
    std::map<std::string, std::optional<ResolvedMix>> mixes_;
    std::vector<Warning> warnings_;
};

}  // namespace baitwright
