#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/stock_rules.h"

namespace baitwright {

class StoreConnection;

/// A new lot: bought, or a made-up mix put by.
struct Arrival {
    std::string name;
    StockKind kind = StockKind::ingredient;
    Lot lot;  ///< its number is not read
};

/// A bought lot of an ingredient.
struct NewLot {
    std::string name;
    Date on;
};

/// So much of one name, for a session or a single use.
struct StockNeed {
    std::string name;
    Milligrams mass;
    std::int64_t lot = 0;  ///< out of this one alone; 0: the first to expire first
};

/// What was counted of one name.
struct StockCount {
    std::string name;
    StockKind kind = StockKind::ingredient;  ///< where the shed does not know it yet
    Milligrams counted;
    std::optional<Date> best_before;  ///< a surplus is a bag of its own with that date
};

/// The shed in the store: a ledger of lots by the rules of `bait/stock_rules.h`. Each entry is whole or absent.
/// Balances are kept beside the movements by the database itself, so that what is there is found without adding them
/// up; it also refuses to change or erase a movement. Masses are whole milligrams, dates ISO 8601. Reading sees one
/// state of the store. Writing belongs inside `Store::change`. Names match whatever their case.
class Shed {
public:
    explicit Shed(StoreConnection& connection) : connection_(&connection) {}

    /// Those of which something is left, in the order in which a lot of theirs is first to be used; at most so many.
    [[nodiscard]] std::vector<StockItem> items(std::size_t most) const;
    [[nodiscard]] std::size_t item_count() const;
    /// What is left of one name; nothing where the shed never held it.
    [[nodiscard]] std::optional<StockItem> find(std::string_view name) const;
    [[nodiscard]] Milligrams left_of(std::string_view name) const;
    /// All names that the shed ever held.
    [[nodiscard]] std::vector<std::string> names() const;
    /// The entries of one name, oldest first.
    [[nodiscard]] std::vector<StockEntry> history(std::string_view name) const;
    /// The bought lots of ingredients, by the day they came in; those whose buying was taken back are left out.
    [[nodiscard]] std::vector<NewLot> arrivals() const;

    /// Whether an entry with this mark came with notes before (`note_mark`).
    [[nodiscard]] bool knows_mark(std::string_view mark) const;

    // Inside `Store::change` only. All throw UsageError where the day is before the last count of that name, which has
    // taken it in already.
    StockReceipt add(Happening what, const Arrival& arrival);
    /// Throws Error (answer_is_no) "short-of-stock" where the lots in reach hold less.
    StockReceipt take(Happening what, const StockNeed& need, const Reach& reach);
    /// Throws UsageError where something happened to that name after that day, or where there is no surplus to date.
    StockReceipt count(const StockCount& count, const Reach& reach);
    /// Takes all of it out, or throws with every name that the shed is short of.
    StockReceipt book(const std::vector<StockNeed>& needs, const std::string& session, Date on);
    /// Takes an entry back; the last that stands where none is named. Throws NotFound, or Error (answer_is_no) where it
    /// is taken back already, is itself such an entry, was counted since, or is used up since.
    StockReceipt undo(std::optional<std::int64_t> entry, Date on);
    /// The marks that a phone gave, which sort by when it did; the newest first.
    [[nodiscard]] std::vector<std::string> newest_marks(std::size_t most) const;

    /// Remembers that this entry, 0 for none, came with notes: it is the same in every store that takes them in.
    void note_mark(std::string_view mark, std::int64_t entry);

private:
    StoreConnection* connection_;
};

}  // namespace baitwright
