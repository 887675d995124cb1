#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/stock_mass.h"
#include "quantities/date.h"
#include "quantities/money.h"

/// The shed: what is in it, in lots, and the ledger of all that came and went. The words of the enums stand in the
/// store's tables too; changing one needs a migration.
namespace baitwright {

/// How a lot is kept. A damp mix is never `dry`.
enum class StockState { dry, cold, frozen };
inline constexpr std::array<std::string_view, 3> stock_state_names{"dry", "cold", "frozen"};

enum class StockKind { ingredient, mix };
inline constexpr std::array<std::string_view, 2> stock_kind_names{"ingredient", "mix"};

/// What an entry of the ledger says that happened.
enum class Happening {
    bought,
    kept,     ///< a made-up mix was put by
    counted,  ///< the difference to what the ledger said
    used,
    wasted,
    booked,  ///< a session's bait, taken out at once
    undone,  ///< another entry, taken back
};
inline constexpr std::array<std::string_view, 7> happening_names{"bought", "kept",   "counted", "used",
                                                                 "wasted", "booked", "undone"};

constexpr std::string_view name_of(StockState state) {
    return stock_state_names[static_cast<std::size_t>(state)];
}
constexpr std::string_view name_of(StockKind kind) {
    return stock_kind_names[static_cast<std::size_t>(kind)];
}
constexpr std::string_view name_of(Happening what) {
    return happening_names[static_cast<std::size_t>(what)];
}

/// One bag, bottle or tub: things of one name that came on one day and are kept in one way.
struct Lot {
    std::int64_t id = 0;  ///< rises with each new lot
    StockState state = StockState::dry;
    Date got_on;                      ///< bought, made up, or first found by a count
    std::optional<Date> best_before;  ///< not known: it is used after all whose date is known
    std::optional<Date> opened_on;    ///< the first day on which something was used of it
    int refrozen = 0;                 ///< how often it was thawed and frozen again
    Milligrams left;
    std::optional<Money> paid;  ///< for all of it
    std::string shop;
    std::string feel = {};  ///< how wet a mix was put by; empty: not known, or no mix
};

/// All of one name: its lots that hold something, the first to be used first.
struct StockItem {
    std::string name;
    StockKind kind = StockKind::ingredient;
    Milligrams left;
    std::vector<Lot> lots;
};

/// What an entry did to one lot; below zero it went out.
struct Movement {
    std::int64_t lot = 0;
    Milligrams by;
    friend bool operator==(const Movement&, const Movement&) = default;
};

/// One entry of the ledger, as far as one name is concerned.
struct StockEntry {
    std::int64_t id = 0;
    Happening what = Happening::bought;
    Date on;
    std::string session;            ///< what a booking was for
    std::int64_t undoes = 0;        ///< the entry that it takes back; 0 for none
    std::int64_t undone_by = 0;     ///< the entry that takes it back; 0 where it stands
    std::vector<Movement> changes;  ///< of nothing where a count found what the ledger said
};

inline Milligrams change_of(const StockEntry& entry) {
    Milligrams sum;
    for (const Movement& movement : entry.changes) sum += movement.by;
    return sum;
}

/// An entry that was made: its number, and every lot that it touched, as it then stood.
struct StockReceipt {
    struct Line {
        std::string name;
        StockKind kind = StockKind::ingredient;
        Lot lot;
        Milligrams by;
        Milligrams left;  ///< of that name in all
    };
    std::int64_t entry = 0;  ///< 0 where a count found nothing of what the shed never held
    Happening what = Happening::bought;
    Date on;
    std::string session;
    std::int64_t undoes = 0;
    std::vector<Line> lines;
};

}  // namespace baitwright
