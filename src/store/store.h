#pragma once

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "bait/shelf.h"
#include "bait/usual.h"
#include "store/entry_register.h"
#include "store/kept_rows.h"
#include "store/log_book.h"
#include "store/merge_book.h"
#include "store/shed.h"
#include "store/store_check.h"
#include "store/stored_entry.h"

namespace baitwright {

struct NamedPacks;
struct Pack;

class StoreConnection;

/// The person's library, shed and log, in one SQLite file. Reading is lazy; all writing happens inside
/// `change`, as one transaction that is whole or absent.
class Store : public Shelf {
public:
    /// Opens the store, making it and its folders where it is not there yet. Brings an older schema up to date inside
    /// one transaction, after a copy beside it (`NAME.before-vN`). Throws StorageError: cannot_create, input_output
    /// (not a store, damaged, disk full), try_again (locked by another process for longer than `patience`), or bad_data
    /// where a newer program made it. A file that is refused is left as it is.
    static Store open(const std::filesystem::path& path, std::chrono::milliseconds patience = std::chrono::seconds(5));
    ~Store() override;
    Store(Store&&) noexcept;

    [[nodiscard]] std::optional<Ingredient> find_ingredient(std::string_view name) const override;
    [[nodiscard]] std::optional<Ingredient> find_usual(std::string_view name) const override;
    [[nodiscard]] std::optional<Recipe> find_recipe(std::string_view name) const override;
    [[nodiscard]] std::optional<Strategy> find_strategy(std::string_view name) const override;
    [[nodiscard]] std::vector<Feel> feels() const override;
    [[nodiscard]] std::vector<std::string> ingredient_names() const override;
    [[nodiscard]] std::vector<std::string> recipe_names() const override;
    [[nodiscard]] std::vector<std::string> strategy_names() const override;
    [[nodiscard]] std::string what_became_of(std::string_view kind, std::string_view name) const override;
    [[nodiscard]] LearntWater learnt_water(const std::vector<std::string>& bags) const override;
    [[nodiscard]] std::optional<LearntMix> learnt_mix(std::string_view mix) const override;

    /// The same, but for what is to replace them: a stored number outside its range is let through, where `find_...`
    /// throws StorageError of class bad_data, "stored-out-of-range".
    [[nodiscard]] std::optional<Ingredient> ingredient_to_mend(std::string_view name) const;
    [[nodiscard]] std::optional<Recipe> recipe_to_mend(std::string_view name) const;
    [[nodiscard]] std::optional<Strategy> strategy_to_mend(std::string_view name) const;

    /// Where `find_usual` looks: what is shipped by a name, which the store does not keep once it is replaced.
    using Shipped = std::function<std::optional<Ingredient>(std::string_view)>;
    void know_shipped(Shipped shipped) { shipped_ = std::move(shipped); }

    /// The digest of the shipped files that the store was last filled from; empty in a new store.
    [[nodiscard]] std::string shipped_digest() const;

    /// Runs work that reads alone: all of it sees one state of the store, whatever other processes write meanwhile.
    void look(const std::function<void()>& work) const;

    /// The same for all reading from now on, until something is changed.
    void look_from_now() const;

    /// Runs the work inside one IMMEDIATE transaction; an exception out of it undoes all of it.
    void change(const std::function<void()>& work);

    /// Fills a store that is still in the making (`file_in_making.h`), much faster than one that others know. Throws
    /// what the work throws; the file is of no use then.
    void fill_in_making(const std::function<void()>& work);

    // Inside `change` only.
    void put(const Ingredient& ingredient, EntryOwner owner);  ///< replaces by name; stores stated properties only
    void put(const Recipe& recipe, EntryOwner owner);
    void put(const Strategy& strategy, EntryOwner owner);
    void put(const Feel& feel, EntryOwner owner);
    void retire(const RetiredEntry& entry);
    void set_shipped_digest(std::string_view digest);

    /// Enters the price of a pack of an ingredient that is there, by the rules of `enter_price`.
    void put_price(std::string_view ingredient, const Pack& told);

    /// Replaces the packs of an ingredient that is there; prices that they lose are kept as old ones.
    void put_packs(std::string_view ingredient, const std::vector<Pack>& packs);

    /// The packs of every ingredient that has any, by name. Throws StorageError of class bad_data,
    /// "stored-out-of-range".
    [[nodiscard]] std::vector<NamedPacks> all_packs() const;
    /// How many prices in use are in each currency, by its code.
    [[nodiscard]] std::vector<CurrencyCount> currencies_in_use() const;

    [[nodiscard]] std::vector<RetiredEntry> retired(std::string_view kind, std::string_view name) const;

    /// The prices that an ingredient had before those of its packs, in the order in which they were replaced or told.
    [[nodiscard]] std::vector<Pack> old_prices(std::string_view ingredient) const;
    /// Every shop that a price was ever told of; and the one of that name, as it is written.
    [[nodiscard]] std::vector<std::string> shops() const;
    [[nodiscard]] std::optional<std::string> find_shop(std::string_view name) const;

    /// What the person always uses.
    [[nodiscard]] Usual usual() const;
    /// Inside `change` only: replaces all that is usual by that key; with no values nothing is.
    void put_usual(const std::string& key, const std::vector<std::string>& values);

    /// The names of this store's entries; it must not outlive it.
    [[nodiscard]] EntryRegister entries() const;

    /// The shed of this store; it must not outlive it.
    [[nodiscard]] Shed shed();

    /// What can be wrong with this store; it must not outlive it.
    [[nodiscard]] StoreCheck check() const;

    /// The log of this store, and what was learnt from it; it must not outlive it.
    [[nodiscard]] LogBook log() const;

    /// The file that it is.
    [[nodiscard]] const std::filesystem::path& path() const;

    /// What it is merged by; it must not outlive this store.
    [[nodiscard]] MergeBook merging() const;
    /// `change` with another store's file attached, to be read.
    void change_beside(const std::filesystem::path& other, const std::function<void()>& work);

    /// All that is kept beside the library's entries, as tables; it must not outlive this store.
    [[nodiscard]] KeptRows kept() const;

private:
    explicit Store(std::unique_ptr<StoreConnection> connection);
    std::unique_ptr<StoreConnection> connection_;
    Shipped shipped_;
};

}  // namespace baitwright
