#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/entry_register.h"
#include "store/query.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* upsert_recipe =
    "INSERT INTO recipe (name, folded, feel, purpose, avoid, why, note, owner)"
    " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)"
    " ON CONFLICT (folded) DO UPDATE SET name = excluded.name, feel = excluded.feel, purpose = excluded.purpose,"
    " avoid = excluded.avoid, why = excluded.why, note = excluded.note, owner = excluded.owner RETURNING id";
constexpr const char* delete_parts = "DELETE FROM recipe_part WHERE recipe_id = ?1";
constexpr const char* delete_doses = "DELETE FROM recipe_dose WHERE recipe_id = ?1";
constexpr const char* insert_recipe_part = "INSERT INTO recipe_part VALUES (?1, ?2, ?3, ?4, ?5, ?6)";
constexpr const char* insert_dose = "INSERT INTO recipe_dose VALUES (?1, ?2, ?3, ?4, ?5, ?6)";

std::int64_t write_row(StoreConnection& connection, const Recipe& r, EntryOwner owner) {
    Query row(connection, upsert_recipe, r.name, folded_name(r.name), r.feel, r.purpose, r.avoid, r.why, r.note,
              word_of(owner_words, owner));
    row.next();
    return row.whole(0);
}

}  // namespace

void write_recipe(StoreConnection& connection, const Recipe& recipe, EntryOwner owner) {
    if (owner == EntryOwner::person) stamp_put(connection, EntryKind::mix, folded_name(recipe.name));
    const std::int64_t id = write_row(connection, recipe, owner);
    forget_gone(connection, EntryKind::mix, folded_name(recipe.name));
    for (const char* clear : {delete_parts, delete_doses}) Query(connection, clear, id).run();
    std::int64_t position = 0;
    for (const Part& part : recipe.parts) {
        const StoredAmount amount = stored(part.amount);
        Query(connection, insert_recipe_part, id, ++position, part.of, amount.measure, amount.number,
              word_of(preparation_words, part.prepare))
            .run();
    }
    position = 0;
    for (const Dose& dose : recipe.doses) {
        const StoredAmount each = stored(dose.rate.each);
        Query(connection, insert_dose, id, ++position, dose.of, word_of(dose_basis_words, dose.rate.basis),
              each.measure, each.number)
            .run();
    }
}

}  // namespace baitwright
