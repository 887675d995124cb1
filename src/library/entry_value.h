#pragma once

#include <string>
#include <variant>

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "store/store.h"

namespace baitwright {

/// An entry of the library as it stands in a store, whatever its kind; venues and blends as their text.
using EntryValue = std::variant<Ingredient, Recipe, Strategy, WrittenEntry>;

/// Of a name that is listed in the store; throws StorageError where it is not found by it, as in a file that was
/// damaged.
EntryValue value_in(const Store& store, EntryKind kind, const std::string& name);
/// As TOML; without the packs of an ingredient, which have a stamp of their own.
std::string text_of(const EntryValue& value);
std::string text_without_packs(const EntryValue& value);
void call(EntryValue& value, EntryKind kind, const std::string& name);
/// Inside `Store::change` only.
void put_value(Store& store, EntryKind kind, const EntryValue& value, EntryOwner owner);

/// The name of an ingredient in the texts of venues and blends is changed by `change(std::string&)`, where it says that
/// it changed one. Inside `Store::change` only.
void rewrite_written(Store& store, const std::function<bool(std::string&)>& change);

}  // namespace baitwright
