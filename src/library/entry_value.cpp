#include "library/entry_value.h"

#include "files/library_text.h"
#include "library/entry_references.h"
#include "library/the_one_entry.h"
#include "quantities/in_quotes.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

struct ValueText {
    std::string operator()(const Ingredient& ingredient) const { return toml_text({ingredient}); }
    std::string operator()(const Recipe& recipe) const { return toml_text(recipe); }
    std::string operator()(const Strategy& strategy) const { return toml_text(strategy); }
    std::string operator()(const WrittenEntry& written) const { return written.text; }
};

/// Of a venue or a blend; nothing where the text holds none.
template <class Change>
std::string changed_text(const WrittenEntry& entry, EntryKind kind, Change&& change) {
    LibraryFile file = read_library_file(entry.text, entry.name);
    std::string text;
    with_the_one(file, kind, [&](auto& value) {
        if constexpr (!std::is_same_v<std::decay_t<decltype(value)>, Ingredient>)
            if (change(value)) text = toml_text(value);
    });
    return text;
}

template <class Value>
Value found(const Store& store, const std::string& name, std::optional<Value> value) {
    if (!value)
        throw damaged_store(store.path(), in_quotes(name) + " is listed in it, and cannot be found by its name");
    return *std::move(value);
}

}  // namespace

EntryValue value_in(const Store& store, EntryKind kind, const std::string& name) {
    if (kind == EntryKind::ingredient) return found(store, name, store.ingredient_to_mend(name));
    if (kind == EntryKind::mix) return found(store, name, store.recipe_to_mend(name));
    if (kind == EntryKind::strategy) return found(store, name, store.strategy_to_mend(name));
    return found(store, name, store.entries().find_written(kind, name));
}

std::string text_of(const EntryValue& value) {
    return std::visit(ValueText{}, value);
}

std::string text_without_packs(const EntryValue& value) {
    const auto* ingredient = std::get_if<Ingredient>(&value);
    if (!ingredient || ingredient->packs.empty()) return text_of(value);
    Ingredient bare = *ingredient;
    bare.packs.clear();
    return toml_text({bare});
}

void call(EntryValue& value, EntryKind kind, const std::string& name) {
    std::visit([&](auto& entry) { entry.name = name; }, value);
    auto* written = std::get_if<WrittenEntry>(&value);
    if (!written) return;
    const std::string text = changed_text(*written, kind, [&](auto& entry) {
        entry.name = name;
        return true;
    });
    if (!text.empty()) written->text = text;
}

void put_value(Store& store, EntryKind kind, const EntryValue& value, EntryOwner owner) {
    std::visit(
        [&](const auto& entry) {
            if constexpr (std::is_same_v<std::decay_t<decltype(entry)>, WrittenEntry>)
                store.entries().put_written(kind, entry, owner);
            else
                store.put(entry, owner);
        },
        value);
}

void rewrite_written(Store& store, const std::function<bool(std::string&)>& change) {
    for (const EntryKind kind : {EntryKind::venue, EntryKind::blend})
        for (const WrittenEntry& entry : store.entries().written(kind)) {
            const std::string text = changed_text(entry, kind, [&](auto& value) {
                using Value = std::decay_t<decltype(value)>;
                if constexpr (std::is_same_v<Value, Venue> || std::is_same_v<Value, BlendSpec>)
                    return each_name(value, change);
                else
                    return false;
            });
            if (!text.empty()) store.entries().follow_in_text(kind, {entry.name, text});
        }
}

}  // namespace baitwright
