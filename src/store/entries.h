#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/usual.h"
#include "store/connection.h"
#include "store/stored_entry.h"

/// Entries between the tables and the records of `bait`. Reading an entry sees one state of the store; writing belongs
/// inside a change.
namespace baitwright {

struct Feel;
struct Ingredient;
struct NamedPacks;
struct Pack;
struct Recipe;
struct Strategy;

/// Whether a number outside its range is refused, or let through to be mended.
enum class Reading { checked, as_stored };

std::optional<Ingredient> read_ingredient(StoreConnection& connection, std::string_view name, Reading reading);
std::optional<Recipe> read_recipe(StoreConnection& connection, std::string_view name, Reading reading);
std::optional<Strategy> read_strategy(StoreConnection& connection, std::string_view name, Reading reading);
std::vector<Feel> read_feels(StoreConnection& connection);
std::vector<std::string> read_ingredient_names(StoreConnection& connection);
std::vector<std::string> read_recipe_names(StoreConnection& connection);
std::vector<std::string> read_strategy_names(StoreConnection& connection);
/// The name as it stands in the store of an entry whose name was mended when it was read.
std::optional<std::string> unmended_name(StoreConnection& connection, std::string_view kind, std::string_view name);
Usual read_usual(StoreConnection& connection);
std::string read_shipped_digest(StoreConnection& connection);
std::vector<Pack> read_packs(StoreConnection& connection, std::int64_t ingredient);
std::vector<Pack> read_old_prices(StoreConnection& connection, std::string_view ingredient);
std::vector<NamedPacks> read_all_packs(StoreConnection& connection);
std::vector<CurrencyCount> count_currencies(StoreConnection& connection);
std::vector<std::string> read_shops(StoreConnection& connection);
std::optional<std::string> read_shop(StoreConnection& connection, std::string_view name);
std::vector<RetiredEntry> read_retired(StoreConnection& connection, std::string_view kind, std::string_view name);

void write_ingredient(StoreConnection& connection, const Ingredient& ingredient, EntryOwner owner);
void replace_packs(StoreConnection& connection, std::int64_t ingredient, const std::vector<Pack>& packs);
void write_packs_of(StoreConnection& connection, std::string_view ingredient, const std::vector<Pack>& packs);
void write_price(StoreConnection& connection, std::string_view ingredient, const Pack& told);
void write_recipe(StoreConnection& connection, const Recipe& recipe, EntryOwner owner);
void write_strategy(StoreConnection& connection, const Strategy& strategy, EntryOwner owner);
void write_feel(StoreConnection& connection, const Feel& feel, EntryOwner owner);
void write_retired(StoreConnection& connection, const RetiredEntry& entry);
/// Replaces all that is usual by that key; nothing is usual any more where there are no values.
void write_usual(StoreConnection& connection, const std::string& key, const std::vector<std::string>& values);
void write_shipped_digest(StoreConnection& connection, std::string_view digest);

}  // namespace baitwright
