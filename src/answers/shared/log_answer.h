#pragma once

#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/log_entry.h"
#include "bait/stock.h"

namespace baitwright {

/// An entry and, of a session, all that belongs to it.
struct LoggedGroup {
    LogEntry entry;
    std::vector<LogEntry> belonging;
};

/// Notes of a session that is in the log already: nothing of them was entered.
struct KnownSession {
    LogEntry entry;        ///< as the log has it
    bool differs = false;  ///< the notes say more, or something else
};

/// What a session can be taken out of the shed by, where it was not yet.
struct SessionToBook {
    std::string strategy;
    Date on{};
    std::optional<Time> length;  ///< nothing: the strategy's own
    std::optional<int> people;   ///< nothing: as many as there usually are
};

/// A mix that came with notes.
struct MixFromNotes {
    std::string name;
    enum class Became { added, replaced, known } became = Became::added;
};

/// What was entered in the log, or taken back.
struct LogAnswer {
    std::vector<LoggedGroup> entered;  ///< with their numbers
    std::vector<KnownSession> known;
    std::size_t known_alone = 0;   ///< entries outside any session that the log had already
    std::vector<LogEntry> undone;  ///< what was taken back
    std::vector<SessionToBook> to_book;
    std::vector<MixFromNotes> mixes;
    std::vector<StockReceipt> stock;  ///< what the notes brought into the shed and took out of it
    std::size_t known_stock = 0;      ///< entries of the shed that came with notes before
    std::vector<Warning> warnings;
};

/// The log, or what of it was asked for, by day.
struct LogListAnswer {
    std::vector<LoggedGroup> groups;
    std::size_t not_shown = 0;  ///< earlier ones
};

}  // namespace baitwright
