#include "store/store.h"

#include <algorithm>

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/pack.h"
#include "bait/price_book.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "store/connection.h"
#include "store/entries.h"

namespace baitwright {

namespace {

// All reading and writing passes through one of these two: SQLite's errors leave as ours.
template <class Work>
auto reading(StoreConnection& connection, Work&& work) {
    return connection.guarded([&] { return work(connection); });
}

/// What `read` finds by the name, or by the one that the store has for a name mended when it was listed.
template <class Read>
auto found_by_name(StoreConnection& connection, std::string_view kind, std::string_view name, Read&& read) {
    return reading(connection, [&](StoreConnection& open) {
        auto found = read(open, name);
        if (found) return found;
        const auto stored = unmended_name(open, kind, name);
        return stored ? read(open, *stored) : found;
    });
}

template <class Work>
void writing(StoreConnection& connection, Work&& work) {
    connection.require_change();
    connection.guarded([&] { work(connection); });
}

}  // namespace

Store::Store(std::unique_ptr<StoreConnection> connection) : connection_(std::move(connection)) {}
Store::Store(Store&& other) noexcept : connection_(std::move(other.connection_)), shipped_(std::move(other.shipped_)) {}
Store::~Store() = default;

Store Store::open(const std::filesystem::path& path, std::chrono::milliseconds patience) {
    return Store(std::make_unique<StoreConnection>(path, patience));
}

std::optional<Ingredient> Store::find_ingredient(std::string_view name) const {
    return found_by_name(*connection_, "ingredient", name, [](StoreConnection& connection, std::string_view stored) {
        return read_ingredient(connection, stored, Reading::checked);
    });
}

std::optional<Ingredient> Store::find_usual(std::string_view name) const {
    if (!shipped_) return std::nullopt;
    if (auto shipped = shipped_(name)) return shipped;
    for (const std::string& former : entries().former_names(EntryKind::ingredient, name))
        if (auto shipped = shipped_(former)) return shipped;
    return std::nullopt;
}

std::optional<Ingredient> Store::ingredient_to_mend(std::string_view name) const {
    return found_by_name(*connection_, "ingredient", name, [](StoreConnection& connection, std::string_view stored) {
        return read_ingredient(connection, stored, Reading::as_stored);
    });
}

std::optional<Recipe> Store::find_recipe(std::string_view name) const {
    return found_by_name(*connection_, "recipe", name, [](StoreConnection& connection, std::string_view stored) {
        return read_recipe(connection, stored, Reading::checked);
    });
}

std::optional<Recipe> Store::recipe_to_mend(std::string_view name) const {
    return found_by_name(*connection_, "recipe", name, [](StoreConnection& connection, std::string_view stored) {
        return read_recipe(connection, stored, Reading::as_stored);
    });
}

std::optional<Strategy> Store::find_strategy(std::string_view name) const {
    return found_by_name(*connection_, "strategy", name, [](StoreConnection& connection, std::string_view stored) {
        return read_strategy(connection, stored, Reading::checked);
    });
}

std::optional<Strategy> Store::strategy_to_mend(std::string_view name) const {
    return found_by_name(*connection_, "strategy", name, [](StoreConnection& connection, std::string_view stored) {
        return read_strategy(connection, stored, Reading::as_stored);
    });
}

std::vector<Feel> Store::feels() const {
    return reading(*connection_, read_feels);
}

std::vector<std::string> Store::ingredient_names() const {
    return reading(*connection_, read_ingredient_names);
}

std::vector<std::string> Store::recipe_names() const {
    return reading(*connection_, read_recipe_names);
}

std::vector<std::string> Store::strategy_names() const {
    return reading(*connection_, read_strategy_names);
}

std::string Store::shipped_digest() const {
    return reading(*connection_, read_shipped_digest);
}

std::vector<RetiredEntry> Store::retired(std::string_view kind, std::string_view name) const {
    return reading(*connection_, [&](StoreConnection& connection) { return read_retired(connection, kind, name); });
}

void Store::fill_in_making(const std::function<void()>& work) {
    connection_->guarded([&] { connection_->write_alone(); });
    connection_->change(work);
    connection_->guarded([&] { connection_->write_no_more(); });
}

void Store::look(const std::function<void()>& work) const {
    connection_->guarded([&] {
        const StoreConnection::Snapshot snapshot(*connection_);
        work();
    });
}

void Store::look_from_now() const {
    connection_->look_from_now();
}

void Store::change(const std::function<void()>& work) {
    connection_->change(work);
}

void Store::put(const Ingredient& ingredient, EntryOwner owner) {
    writing(*connection_, [&](StoreConnection& connection) { write_ingredient(connection, ingredient, owner); });
}

void Store::put(const Recipe& recipe, EntryOwner owner) {
    writing(*connection_, [&](StoreConnection& connection) { write_recipe(connection, recipe, owner); });
}

void Store::put(const Strategy& strategy, EntryOwner owner) {
    writing(*connection_, [&](StoreConnection& connection) { write_strategy(connection, strategy, owner); });
}

void Store::put(const Feel& feel, EntryOwner owner) {
    writing(*connection_, [&](StoreConnection& connection) { write_feel(connection, feel, owner); });
}

void Store::retire(const RetiredEntry& entry) {
    writing(*connection_, [&](StoreConnection& connection) { write_retired(connection, entry); });
}

void Store::set_shipped_digest(std::string_view digest) {
    writing(*connection_, [&](StoreConnection& connection) { write_shipped_digest(connection, digest); });
}

void Store::put_price(std::string_view ingredient, const Pack& told) {
    writing(*connection_, [&](StoreConnection& connection) { write_price(connection, ingredient, told); });
}

void Store::put_packs(std::string_view ingredient, const std::vector<Pack>& packs) {
    writing(*connection_, [&](StoreConnection& connection) { write_packs_of(connection, ingredient, packs); });
}

std::vector<NamedPacks> Store::all_packs() const {
    return reading(*connection_, read_all_packs);
}

std::vector<CurrencyCount> Store::currencies_in_use() const {
    return reading(*connection_, count_currencies);
}

std::vector<Pack> Store::old_prices(std::string_view ingredient) const {
    return reading(*connection_, [&](StoreConnection& connection) { return read_old_prices(connection, ingredient); });
}

std::vector<std::string> Store::shops() const {
    return reading(*connection_, read_shops);
}

std::optional<std::string> Store::find_shop(std::string_view name) const {
    return reading(*connection_, [&](StoreConnection& connection) { return read_shop(connection, name); });
}

std::string Store::what_became_of(std::string_view kind, std::string_view name) const {
    const auto known = std::find(entry_kind_names.begin(), entry_kind_names.end(), kind);
    return known == entry_kind_names.end()
               ? std::string()
               : entries().told_of_gone(static_cast<EntryKind>(known - entry_kind_names.begin()), name);
}

Usual Store::usual() const {
    return reading(*connection_, read_usual);
}

void Store::put_usual(const std::string& key, const std::vector<std::string>& values) {
    writing(*connection_, [&](StoreConnection& connection) { write_usual(connection, key, values); });
}

EntryRegister Store::entries() const {
    return EntryRegister(*connection_);
}

Shed Store::shed() {
    return Shed(*connection_);
}

const std::filesystem::path& Store::path() const {
    return connection_->path();
}

MergeBook Store::merging() const {
    return MergeBook(*connection_);
}

void Store::change_beside(const std::filesystem::path& other, const std::function<void()>& work) {
    connection_->attach_other(other);
    struct Detaching {
        StoreConnection& connection;
        ~Detaching() { connection.detach_other(); }
    } detaching{*connection_};
    change(work);
}

StoreCheck Store::check() const {
    return StoreCheck(*connection_);
}

LogBook Store::log() const {
    return LogBook(*connection_);
}

KeptRows Store::kept() const {
    return KeptRows(*connection_);
}

LearntWater Store::learnt_water(const std::vector<std::string>& bags) const {
    return log().learnt_water(bags);
}

std::optional<LearntMix> Store::learnt_mix(std::string_view mix) const {
    return log().learnt_mix(mix);
}

}  // namespace baitwright
