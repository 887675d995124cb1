#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "store/stored_entry.h"

namespace baitwright {

class StoreConnection;

/// The register of the library's names: what is called so, what was, and what refers to it; and the venues and blends,
/// which are kept as TOML text. A name that no mix or ingredient has may still have been one's: then `became` tells.
class EntryRegister {
public:
    explicit EntryRegister(StoreConnection& connection) : connection_(&connection) {}

    /// Venues or blends, by name; and one of them.
    [[nodiscard]] std::vector<WrittenEntry> written(EntryKind kind) const;
    [[nodiscard]] std::optional<WrittenEntry> find_written(EntryKind kind, std::string_view name) const;

    /// The name as the library writes it, where there is such an entry.
    [[nodiscard]] std::optional<std::string> find_name(EntryKind kind, std::string_view name) const;
    /// What the entry that was once called so is called now; empty where it was removed; nothing where the name was
    /// never given up.
    [[nodiscard]] std::optional<std::string> became(EntryKind kind, std::string_view name) const;
    /// The same, told: "it is called 'pit bed' now"; empty where the name was never given up.
    [[nodiscard]] std::string told_of_gone(EntryKind kind, std::string_view name) const;
    /// The names that the entry which is now called so has had.
    [[nodiscard]] std::vector<std::string> former_names(EntryKind kind, std::string_view name) const;
    /// The mixes and strategies that refer to it. What an ingredient and a mix are both called is the ingredient.
    [[nodiscard]] std::vector<NamedEntry> users_of(EntryKind kind, std::string_view name) const;

    // Inside `Store::change` only.
    void put_written(EntryKind kind, const WrittenEntry& entry, EntryOwner owner);
    /// The same text, but for what it refers to, which has another name now: no change of a person's.
    void follow_in_text(EntryKind kind, const WrittenEntry& entry);
    /// Takes the entry out; its text must have been retired before. Its former prices wait for its return.
    void remove(EntryKind kind, std::string_view name);
    /// Gives it another name, in every mix and strategy, the shed, the log, its prices and its old versions too; a
    /// shipped one becomes the person's. The new name must be free, or the same but for its letters' case.
    void rename(EntryKind kind, std::string_view from, const std::string& to);
    /// The prices that an ingredient had before it was removed are its old prices again.
    void take_prices_back(std::string_view ingredient);

private:
    StoreConnection* connection_;
};

/// Forgets that the name was given up: there is an entry of that name again. Inside a change only.
void forget_gone(StoreConnection& connection, EntryKind kind, const std::string& folded);

/// Mixes and strategies refer to what was called so (folded) by that name from now on. Inside a change only.
void rename_references(StoreConnection& connection, EntryKind kind, const std::string& folded, const std::string& to);

/// Stamps what is about to be put by a person: as a change of the entry of that name, or as a new one. Inside a change
/// only.
void stamp_put(StoreConnection& connection, EntryKind kind, const std::string& folded);

}  // namespace baitwright
