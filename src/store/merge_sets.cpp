#include <fmt/format.h>

#include <array>
#include <string>
#include <vector>

#include "store/merge_tables.h"
#include "store/query.h"

namespace baitwright {

namespace {

constexpr std::array merge_sets{
    "INSERT INTO main.retired (kind, folded, name, retired_on, text) SELECT o.kind, o.folded, o.name, o.retired_on, o.text"
    " FROM other.retired o WHERE NOT EXISTS (SELECT 1 FROM main.retired r WHERE r.kind = o.kind AND r.folded = o.folded"
    " AND r.retired_on = o.retired_on AND r.text = o.text) ORDER BY o.id",
    "INSERT INTO main.shop (name, folded) SELECT name, folded FROM other.shop WHERE 1"
    " ON CONFLICT (folded) DO UPDATE SET name = max(name, excluded.name)",
};

/// Values of a key with what parts them, so that two sets of them are compared.
constexpr const char* find_usual_taken =
    "CREATE TEMP TABLE usual_taken AS SELECT s.folded AS key, s.clock, ifnull((SELECT t.clock FROM main.stamp t"
    " WHERE t.kind = 'usual' AND t.folded = s.folded), 0) AS our_clock, ifnull((SELECT group_concat(value, char(31))"
    " FROM (SELECT value FROM other.usual WHERE key = s.folded ORDER BY position)), '') AS said,"
    " ifnull((SELECT group_concat(value, char(31)) FROM (SELECT value FROM main.usual WHERE key = s.folded"
    " ORDER BY position)), '') AS our_said FROM other.stamp s WHERE s.kind = 'usual'";
constexpr const char* select_usual_changed = "SELECT key FROM temp.usual_taken ORDER BY key";
constexpr std::array take_usual{
    "DELETE FROM temp.usual_taken WHERE (clock, said) <= (our_clock, our_said) OR said = our_said",
    "DELETE FROM main.usual WHERE key IN (SELECT key FROM temp.usual_taken)",
    "INSERT INTO main.usual SELECT u.* FROM other.usual u JOIN temp.usual_taken t ON t.key = u.key",
};

constexpr std::array learnt_tables{"learnt_water", "learnt_mix", "learnt_water_before", "learnt_mix_before",
                                   "learnt_written"};

constexpr std::array merge_stamps{
    "INSERT INTO main.stamp SELECT * FROM other.stamp WHERE kind IN ('usual', 'learnt', 'believed')"
    " ON CONFLICT (kind, folded) DO UPDATE SET clock = max(clock, excluded.clock), since = max(since, excluded.since)",
    "UPDATE main.meta SET value = CAST(max(CAST(value AS INTEGER), (SELECT CAST(o.value AS INTEGER) FROM other.meta o"
    " WHERE o.key = 'clock')) AS TEXT) WHERE key = 'clock'",
};

constexpr std::array merge_prices{
    // What both had in use, and what one has no more: prices of the past of what is there.
    "INSERT OR IGNORE INTO main.old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
    " SELECT i.id, p.measure, p.size, p.price_minor, p.currency, p.priced_on, p.shop FROM (SELECT n.folded, o.*"
    " FROM (SELECT ingredient_id, measure, size, price_minor, currency, priced_on, shop FROM other.old_price UNION ALL"
    " SELECT ingredient_id, measure, size, price_minor, currency, priced_on, shop FROM other.pack"
    " WHERE price_minor IS NOT NULL) o JOIN other.ingredient n ON n.id = o.ingredient_id) p"
    " JOIN main.ingredient i ON i.folded = ifnull((SELECT w.now FROM temp.name_now w WHERE w.kind = 'ingredient'"
    " AND w.folded = p.folded), p.folded)",
    "INSERT INTO main.price_of_removed (folded, measure, size, price_minor, currency, priced_on, shop)"
    " SELECT DISTINCT p.* FROM (SELECT n.folded, o.measure, o.size, o.price_minor, o.currency, o.priced_on, o.shop"
    " FROM other.old_price o JOIN other.ingredient n ON n.id = o.ingredient_id UNION ALL SELECT folded, measure, size,"
    " price_minor, currency, priced_on, shop FROM other.price_of_removed) p WHERE (p.folded NOT IN (SELECT folded"
    " FROM main.ingredient) AND p.folded NOT IN (SELECT folded FROM temp.name_now WHERE kind = 'ingredient')"
    " OR p.folded IN (SELECT folded FROM other.price_of_removed)) AND NOT EXISTS (SELECT 1 FROM main.price_of_removed r"
    " WHERE r.folded = p.folded AND r.measure = p.measure AND r.size = p.size AND r.price_minor = p.price_minor"
    " AND r.currency = p.currency AND r.priced_on = p.priced_on AND r.shop = p.shop)",
    "INSERT OR IGNORE INTO main.old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
    " SELECT i.id, r.measure, r.size, r.price_minor, r.currency, r.priced_on, r.shop FROM main.price_of_removed r"
    " JOIN main.ingredient i ON i.folded = ifnull((SELECT w.now FROM temp.name_now w WHERE w.kind = 'ingredient'"
    " AND w.folded = r.folded), r.folded)",
    "DELETE FROM main.price_of_removed WHERE folded IN (SELECT folded FROM main.ingredient)"
    " OR folded IN (SELECT folded FROM temp.name_now WHERE kind = 'ingredient')",
    "DELETE FROM main.price_of_removed WHERE id NOT IN (SELECT min(id) FROM main.price_of_removed"
    " GROUP BY folded, measure, size, price_minor, currency, priced_on, shop)",
    "DELETE FROM main.old_price WHERE EXISTS (SELECT 1 FROM main.pack p WHERE p.ingredient_id = old_price.ingredient_id"
    " AND p.measure = old_price.measure AND p.size = old_price.size AND p.price_minor = old_price.price_minor"
    " AND p.currency = old_price.currency AND p.priced_on = old_price.priced_on AND p.shop = old_price.shop)",
};

/// Of all that was learnt and of what lies by from before, so that two which learnt as often are never taken for one.
std::string digest_of_learnt(const std::string& schema) {
    const auto rows = [&](const char* columns, const char* table) {
        return std::string("(SELECT group_concat(x) FROM (SELECT mark_of(") + columns + ") AS x FROM " + schema + "." +
               table + " ORDER BY x))";
    };
    constexpr const char* water = "folded, part, mean, mixes, measured, hex(factor)";
    constexpr const char* mix = "folded, part, mean, sigma, times";
    return "(SELECT mark_of(" + rows(water, "learnt_water") + ", " + rows(mix, "learnt_mix") + ", " +
           rows(water, "learnt_water_before") + ", " + rows(mix, "learnt_mix_before") + ", " +
           rows("folded, name, text_before, text_after", "learnt_written") + "))";
}

struct LearntTaken {
    bool takes = false, changes = false;
};

/// What was learnt goes together: all of it is as one of the two learnt last.
LearntTaken learnt_taken(StoreConnection& connection) {
    connection.run_once(
        "CREATE TEMP TABLE learnt_taken AS SELECT (clock, theirs) > (our_clock, ours) AS takes, theirs <> ours AS changes"
        " FROM (SELECT ifnull((SELECT clock FROM other.stamp WHERE kind = 'learnt'), 0) AS clock,"
        " ifnull((SELECT clock FROM main.stamp WHERE kind = 'learnt'), 0) AS our_clock, " +
        digest_of_learnt("other") + " AS theirs, " + digest_of_learnt("main") + " AS ours)");
    LearntTaken taken;
    {
        Query row(connection, "SELECT takes, takes AND changes FROM temp.learnt_taken");
        if (row.next()) taken = {row.whole(0) != 0, row.whole(1) != 0};
    }
    connection.run_once("DROP TABLE temp.learnt_taken");
    return taken;
}

std::vector<std::string> bring_usual(StoreConnection& connection) {
    connection.run_once(find_usual_taken);
    for (const char* sql : take_usual) connection.run_once(sql);
    std::vector<std::string> changed;
    {
        Query row(connection, select_usual_changed);
        while (row.next()) changed.push_back(row.text(0));
    }
    connection.run_once("DROP TABLE temp.usual_taken");
    return changed;
}

/// The triggers of the ledger and the log, by name, with what made them.
std::vector<std::pair<std::string, std::string>> resting_triggers(StoreConnection& connection) {
    std::vector<std::pair<std::string, std::string>> triggers;
    Query row(connection, "SELECT name, sql FROM temp.resting ORDER BY number");
    while (row.next()) triggers.emplace_back(row.text(0), row.text(1));
    return triggers;
}

}  // namespace

void rest_triggers(StoreConnection& connection) {
    connection.run_once(
        "CREATE TEMP TABLE resting AS SELECT rowid AS number, name, sql FROM main.sqlite_schema WHERE type = 'trigger'");
    for (const auto& [name, sql] : resting_triggers(connection)) connection.run_once("DROP TRIGGER main." + name);
}

void wake_triggers(StoreConnection& connection) {
    for (const auto& [name, sql] : resting_triggers(connection)) connection.run_once(sql);
    connection.run_once("DROP TABLE temp.resting");
}

void bring_sets(StoreConnection& connection, RowsBrought& brought) {
    for (const char* sql : merge_sets) connection.run_once(sql);
    brought.usual = bring_usual(connection);
    const LearntTaken learnt = learnt_taken(connection);
    brought.learnt = learnt.changes;
    if (learnt.takes)
        for (const char* table : learnt_tables)
            connection.run_once(
                fmt::format("DELETE FROM main.{0}; INSERT INTO main.{0} SELECT * FROM other.{0}", table));
    for (const char* sql : merge_stamps) connection.run_once(sql);
}

void bring_prices(StoreConnection& connection) {
    for (const char* sql : merge_prices) connection.run_once(sql);
}

}  // namespace baitwright
