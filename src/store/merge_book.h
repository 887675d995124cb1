#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "bait/stock_mass.h"
#include "store/merge_tables.h"
#include "store/stored_entry.h"

namespace baitwright {

class StoreConnection;

/// What a store knows of a name: that an entry is called so, or that one was and what became of it.
struct NameState {
    std::string name;
    bool is_there = false;
    EntryOwner owner = EntryOwner::shipped;
    std::string became;                 ///< of what is not there: its name now; empty where it was removed
    std::int64_t clock = 0, since = 0;  ///< `stamp.h`
};

/// A name of the shed, and how much was used beyond what its bags held.
struct Overdrawn {
    std::string name;
    Milligrams by;
};

/// What two stores become one by, beside what every change does (`library/merge_store.h`).
class MergeBook {
public:
    explicit MergeBook(StoreConnection& connection) : connection_(&connection) {}

    /// Every name of a kind that there is or was, folded.
    [[nodiscard]] std::map<std::string, NameState> names(EntryKind kind) const;
    /// When what is of that kind (`stamp.h`) last changed, by folded name.
    [[nodiscard]] std::map<std::string, std::int64_t> clocks(std::string_view kind) const;
    /// What mixes and strategies refer to: a mix or an ingredient, or an ingredient alone.
    struct Reference {
        std::string name;
        bool may_be_mix;
    };
    [[nodiscard]] std::vector<Reference> references() const;
    [[nodiscard]] std::int64_t clock() const;
    /// Of what the shed holds something.
    [[nodiscard]] std::vector<NamedEntry> held() const;
    [[nodiscard]] std::vector<Overdrawn> overdrawn() const;

    // Inside `Store::change` only.
    void set_stamp(std::string_view kind, const std::string& folded, std::int64_t clock, std::int64_t since);
    void set_clock(std::int64_t clock);
    void set_gone(EntryKind kind, const std::string& name, const std::string& became);
    /// The packs' prices are prices of the past.
    void lay_prices_by(const std::string& ingredient);
    /// What the shed holds under the first (folded) name is of the second.
    void join_items(EntryKind kind, const std::string& from, const std::string& to);
    /// What was called so (folded) is called so now wherever the store speaks of it.
    void follow(EntryKind kind, const std::string& from, const std::string& to);

    /// Takes an entry out, with all that belongs to it; no key that refers to it does so by itself.
    void remove(EntryKind kind, const std::string& name);

    /// Takes a feel out, with its stamp.
    void remove_feel(const std::string& folded);

    // Between them the other store is attached, and triggers rest.
    void begin();
    RowsBrought bring_rows();
    /// The prices, under the names that `now` (both folded) has for ingredients whose names were given up.
    void bring_prices(const std::map<std::string, std::string>& now);
    void end();

private:
    StoreConnection* connection_;
};

}  // namespace baitwright
