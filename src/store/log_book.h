#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/learnt.h"
#include "bait/log_entry.h"

namespace baitwright {

class StoreConnection;

/// An ingredient that what was learnt was written into, as it was and as it became, in TOML.
struct LearntWrite {
    std::string name, before, after;
};

/// The log in the store, and what was learnt from it. No entry is ever changed or erased: the database refuses it. An
/// undoing is an entry; `believed` alone may change. Names follow a rename. Reading sees one state of the store.
/// Writing belongs inside `Store::change`.
class LogBook {
public:
    explicit LogBook(StoreConnection& connection) : connection_(&connection) {}

    /// Those that stand, by day and then by number.
    [[nodiscard]] std::vector<LogEntry> entries() const;
    /// With those that were taken back, and what took them back, by number.
    [[nodiscard]] std::vector<LogEntry> all_entries() const;
    [[nodiscard]] std::optional<LogEntry> find(std::int64_t id) const;
    /// The session that was taken from that page on that day and stands; of notes without a page, that of the same
    /// strategy, day and start.
    [[nodiscard]] std::optional<std::int64_t> session_from(const LoggedSession& session, Date on) const;
    /// The mark of every entry, by number.
    [[nodiscard]] std::map<std::int64_t, std::string> marks() const;
    /// Whether a session, or an entry alone, has the mark that notes give.
    [[nodiscard]] bool is_from_notes(std::int64_t id) const;
    [[nodiscard]] std::size_t size() const;  ///< of those that stand

    // Inside `Store::change` only.
    /// Writes it down and gives its number; `id`, `undone_by` are not read.
    std::int64_t add(const LogEntry& entry);
    /// These came with notes, a session first, or one alone: they get the marks that the same notes give wherever they
    /// are taken in.
    void mark_from_notes(std::int64_t first, const std::vector<std::int64_t>& belonging);
    /// Those of these entries get these marks, and with them what took them back.
    void put_marks(const std::map<std::int64_t, std::string>& marks);
    /// Takes an entry back; the last that stands where none is named. With a session goes all that belongs to it. Gives
    /// every entry that it took back. Throws NotFound "unknown-entry" or "nothing-to-undo", or Error (answer_is_no)
    /// "cannot-undo".
    std::vector<LogEntry> undo(std::optional<std::int64_t> id, Date on);
    void believe(std::int64_t id, bool believed);

    /// What was learnt, of these ingredients alone; `known()` is false where nothing was.
    [[nodiscard]] LearntWater learnt_water(const std::vector<std::string>& bags) const;
    [[nodiscard]] LearntWater learnt_water() const;  ///< of all
    [[nodiscard]] std::optional<LearntMix> learnt_mix(std::string_view mix) const;
    [[nodiscard]] std::vector<LearntMix> learnt_mixes() const;
    // Inside `Store::change` only.
    void put_learnt(const LearntWater& water,
                    const std::vector<LearntMix>& mixes);  ///< in place of all that was learnt

    /// Inside `Store::change` only, before `put_learnt`: lays what was learnt by, in place of what lay there, with the
    /// ingredients that are changed by what is learnt now.
    void keep_learnt_before(const std::vector<LearntWrite>& written);
    [[nodiscard]] bool can_restore_learnt() const;  ///< something was laid by, be it that nothing was learnt before
    [[nodiscard]] std::vector<LearntWrite> learnt_written() const;  ///< by name
    /// Inside `Store::change` only: what was laid by is learnt again, and nothing lies there any more.
    void restore_learnt();

private:
    StoreConnection* connection_;
};

}  // namespace baitwright
