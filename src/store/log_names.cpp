#include "quantities/suggestion.h"
#include "store/log_rows.h"

namespace baitwright {

namespace {

constexpr const char* rename_of_ingredient =
    "UPDATE log_entry SET name = ?2, folded = ?3 WHERE folded = ?1"
    " AND what IN ('put-in', 'used', 'soak', 'weighed', 'bag')";
constexpr const char* rename_mix_of_ingredient =
    "UPDATE log_entry SET name = ?2, folded = ?3 WHERE folded = ?1 AND what IN ('mix', 'look')"
    " AND NOT EXISTS (SELECT 1 FROM recipe r WHERE r.folded = ?1)";
constexpr const char* rename_part_of_mix = "UPDATE log_part SET name = ?2, folded = ?3 WHERE folded = ?1";
constexpr const char* rename_of_mix =
    "UPDATE log_entry SET name = ?2, folded = ?3 WHERE folded = ?1 AND what IN ('mix', 'look')";
constexpr const char* rename_of_either =
    "UPDATE log_entry SET name = ?2, folded = ?3 WHERE folded = ?1 AND what IN ('put-in', 'used', 'weighed')"
    " AND NOT EXISTS (SELECT 1 FROM ingredient i WHERE i.folded = ?1)";
constexpr const char* rename_of_strategy =
    "UPDATE log_entry SET name = ?2, folded = ?3 WHERE folded = ?1 AND what = 'session'";
constexpr const char* rename_venue_of_session =
    "UPDATE log_session SET venue = ?2, venue_folded = ?3 WHERE venue_folded = ?1";

// What was learnt of a former entry of the new name is no more.
constexpr const char* forget_bag = "DELETE FROM learnt_water WHERE folded = ?1";
constexpr const char* rename_bag = "UPDATE learnt_water SET name = ?2, folded = ?3 WHERE folded = ?1";
constexpr const char* forget_mix = "DELETE FROM learnt_mix WHERE folded = ?1";
constexpr const char* rename_mix = "UPDATE learnt_mix SET name = ?2, folded = ?3 WHERE folded = ?1";
constexpr const char* forget_bag_before = "DELETE FROM learnt_water_before WHERE folded = ?1";
constexpr const char* rename_bag_before = "UPDATE learnt_water_before SET name = ?2, folded = ?3 WHERE folded = ?1";
constexpr const char* rename_learnt_of_ingredient =
    "UPDATE learnt_mix SET name = ?2, folded = ?3 WHERE folded = ?1"
    " AND NOT EXISTS (SELECT 1 FROM recipe r WHERE r.folded = ?1)"
    " AND NOT EXISTS (SELECT 1 FROM learnt_mix m WHERE m.folded = ?3)";
constexpr const char* forget_mix_before = "DELETE FROM learnt_mix_before WHERE folded = ?1";
constexpr const char* rename_mix_before = "UPDATE learnt_mix_before SET name = ?2, folded = ?3 WHERE folded = ?1";
constexpr const char* forget_learnt_written = "DELETE FROM learnt_written WHERE folded = ?1";
constexpr const char* rename_learnt_written = "UPDATE learnt_written SET name = ?2, folded = ?3 WHERE folded = ?1";

constexpr const char* knows_bag = "SELECT 1 FROM learnt_water WHERE folded = ?1";
constexpr const char* knows_bag_before = "SELECT 1 FROM learnt_water_before WHERE folded = ?1";
constexpr const char* knows_written = "SELECT 1 FROM learnt_written WHERE folded = ?1";
constexpr const char* knows_mix = "SELECT 1 FROM learnt_mix WHERE folded = ?1";
constexpr const char* knows_mix_before = "SELECT 1 FROM learnt_mix_before WHERE folded = ?1";

}  // namespace

void rename_in_log(StoreConnection& connection, EntryKind kind, const std::string& old, const std::string& name) {
    const auto rename = [&](const char* sql) { Query(connection, sql, old, name, folded_name(name)).run(); };
    if (kind == EntryKind::ingredient) {
        rename(rename_of_ingredient);
        rename(rename_mix_of_ingredient);
        rename(rename_part_of_mix);
    } else if (kind == EntryKind::mix) {
        rename(rename_of_mix);
        rename(rename_of_either);
    } else if (kind == EntryKind::strategy) {
        rename(rename_of_strategy);
    } else if (kind == EntryKind::venue) {
        rename(rename_venue_of_session);
    }
}

void rename_logged(StoreConnection& connection, EntryKind kind, const std::string& old, const std::string& name) {
    rename_in_log(connection, kind, old, name);
    const std::string folded = folded_name(name);
    const auto rename = [&](const char* sql) { Query(connection, sql, old, name, folded).run(); };
    const auto rename_learnt = [&](const char* forget, const char* sql) {
        if (old != folded) Query(connection, forget, folded).run();
        rename(sql);
    };
    if (kind == EntryKind::ingredient) {
        rename_learnt(forget_bag, rename_bag);
        rename_learnt(forget_bag_before, rename_bag_before);
        rename_learnt(forget_learnt_written, rename_learnt_written);
        rename(rename_learnt_of_ingredient);
    } else if (kind == EntryKind::mix) {
        rename_learnt(forget_mix, rename_mix);
        rename_learnt(forget_mix_before, rename_mix_before);
    }
}

void follow_in_learnt(StoreConnection& connection, EntryKind kind, const std::string& old, const std::string& name) {
    const std::string folded = folded_name(name);
    const auto follow = [&](const char* is_there, const char* forget, const char* rename) {
        if (!Query(connection, is_there, old).next()) return;
        Query(connection, forget, folded).run();
        Query(connection, rename, old, name, folded).run();
    };
    if (kind == EntryKind::ingredient) {
        follow(knows_bag, forget_bag, rename_bag);
        follow(knows_bag_before, forget_bag_before, rename_bag_before);
        follow(knows_written, forget_learnt_written, rename_learnt_written);
    } else if (kind == EntryKind::mix) {
        follow(knows_mix, forget_mix, rename_mix);
        follow(knows_mix_before, forget_mix_before, rename_mix_before);
    }
}

}  // namespace baitwright
