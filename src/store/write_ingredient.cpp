#include <algorithm>

#include "bait/ingredient_facts.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/entry_register.h"
#include "store/query.h"
#include "store/stamp.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

// Keeps the row's number where the name is there already, so that what refers to it still does.
constexpr const char* upsert_ingredient =
    "INSERT INTO ingredient (name, folded, kind, colour, solute, dose_basis, dose_measure, dose_each, keeps_dry,"
    " keeps_cold, keeps_frozen, note, owner) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13)"
    " ON CONFLICT (folded) DO UPDATE SET name = excluded.name, kind = excluded.kind, colour = excluded.colour,"
    " solute = excluded.solute, dose_basis = excluded.dose_basis, dose_measure = excluded.dose_measure,"
    " dose_each = excluded.dose_each, keeps_dry = excluded.keeps_dry, keeps_cold = excluded.keeps_cold,"
    " keeps_frozen = excluded.keeps_frozen, note = excluded.note, owner = excluded.owner RETURNING id";
constexpr const char* delete_properties = "DELETE FROM ingredient_property WHERE ingredient_id = ?1";
constexpr const char* delete_cautions = "DELETE FROM caution WHERE ingredient_id = ?1";
constexpr const char* insert_property = "INSERT INTO ingredient_property VALUES (?1, ?2, ?3, ?4, ?5)";
constexpr const char* insert_caution = "INSERT INTO caution VALUES (?1, ?2, ?3)";

std::int64_t write_row(StoreConnection& connection, const Ingredient& i, EntryOwner owner) {
    std::optional<std::string_view> basis, measure;
    std::optional<double> each;
    if (i.label_dose) {
        const StoredAmount amount = stored(i.label_dose->each);
        basis = word_of(dose_basis_words, i.label_dose->basis);
        measure = amount.measure;
        each = amount.number;
    }
    Query row(connection, upsert_ingredient, i.name, folded_name(i.name), name_of(i.kind), i.colour, i.solute, basis,
              measure, each, i.keeps.dry, i.keeps.cold, i.keeps.frozen, i.note, word_of(owner_words, owner));
    row.next();
    return row.whole(0);
}

template <class Q>
void write_property(StoreConnection& connection, std::int64_t id, std::string_view key, const Property<Q>& property) {
    if (!property.stated()) return;
    Query(connection, insert_property, id, key, property.value, property.spread, source_text(property.source)).run();
}

void write_properties(StoreConnection& connection, std::int64_t id, const Ingredient& ingredient) {
    visit_properties(ingredient, [&](const auto& facts, const auto& property) {
        write_property(connection, id, facts.key, property);
    });
    visit_composition(ingredient.composition, [&](std::string_view key, const auto& share) {
        write_property(connection, id, composition_prefix + std::string(key), share);
    });
}

bool same_packs(const std::vector<Pack>& are, const std::vector<Pack>& become) {
    return std::equal(are.begin(), are.end(), become.begin(), become.end(), [](const Pack& a, const Pack& b) {
        return a.size == b.size && a.price == b.price && a.on == b.on && a.shop == b.shop;
    });
}

}  // namespace

void write_ingredient(StoreConnection& connection, const Ingredient& ingredient, EntryOwner owner) {
    if (owner == EntryOwner::person) stamp_put(connection, EntryKind::ingredient, folded_name(ingredient.name));
    const std::int64_t id = write_row(connection, ingredient, owner);
    forget_gone(connection, EntryKind::ingredient, folded_name(ingredient.name));
    for (const char* clear : {delete_properties, delete_cautions}) Query(connection, clear, id).run();
    write_properties(connection, id, ingredient);
    if (owner == EntryOwner::person && !same_packs(read_packs(connection, id), ingredient.packs))
        stamp(connection, stamp_of_packs, folded_name(ingredient.name));
    replace_packs(connection, id, ingredient.packs);
    std::int64_t position = 0;
    for (const std::string& word : ingredient.cautions) Query(connection, insert_caution, id, ++position, word).run();
}

}  // namespace baitwright
