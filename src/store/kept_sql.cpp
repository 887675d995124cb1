#include "store/kept_sql.h"

#include <stdexcept>
#include <string>

namespace baitwright {

namespace {

std::vector<KeptSql> sql_of_library() {
    return {
        {"ingredients", nullptr, nullptr, nullptr, {}, "SELECT 1 FROM ingredient WHERE folded = ?1"},
        {"shops",
         "SELECT count(*) FROM shop",
         "SELECT name FROM shop ORDER BY folded",
         "INSERT INTO shop (name, folded) VALUES (?1, ?2)",
         {0}},
        {"usual", "SELECT count(*) FROM usual", "SELECT key, position, value FROM usual ORDER BY key, position",
         "INSERT INTO usual (key, position, value) VALUES (?1, ?2, ?3)"},
        {"old-versions",
         "SELECT count(*) FROM retired",
         "SELECT kind, name, retired_on, text FROM retired ORDER BY id",
         "INSERT INTO retired (kind, name, retired_on, text, folded) VALUES (?1, ?2, ?3, ?4, ?5)",
         {1}},
        {"names-given-up",
         "SELECT count(*) FROM gone",
         "SELECT kind, name, became FROM gone ORDER BY kind, folded",
         "INSERT INTO gone (kind, name, became, folded, became_folded) VALUES (?1, ?2, ?3, ?4, ?5)",
         {1, 2}},
        {"old-prices",
         "SELECT count(*) FROM old_price",
         "SELECT i.name, p.measure, p.size, p.price_minor, p.currency, nullif(p.priced_on, ''), p.shop FROM old_price p"
         " JOIN ingredient i ON i.id = p.ingredient_id ORDER BY i.folded, p.id",
         "INSERT INTO old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
         " SELECT (SELECT id FROM ingredient WHERE folded = ?8), ?2, ?3, ?4, ?5, ifnull(?6, ''), ?7",
         {0}},
        {"prices-of-removed",
         "SELECT count(*) FROM price_of_removed",
         "SELECT folded, measure, size, price_minor, currency, nullif(priced_on, ''), shop FROM price_of_removed"
         " ORDER BY folded, id",
         "INSERT INTO price_of_removed (folded, measure, size, price_minor, currency, priced_on, shop)"
         " SELECT ?8, ?2, ?3, ?4, ?5, ifnull(?6, ''), ?7",
         {0}},
    };
}

std::vector<KeptSql> sql_of_shed() {
    return {
        {"shed-items",
         "SELECT count(*) FROM stock_item",
         "SELECT name, kind, last_on FROM stock_item ORDER BY id",
         "INSERT INTO stock_item (name, kind, last_on, folded) VALUES (?1, ?2, ?3, ?4)",
         {0},
         "SELECT 1 FROM stock_item WHERE folded = ?1"},
        {"shed-lots",
         "SELECT count(*) FROM stock_lot",
         "SELECT l.id, i.name, l.state, l.got_on, l.best_before, l.opened_on, l.refrozen, l.paid_minor, l.currency,"
         " l.shop, l.feel, l.mark FROM stock_lot l JOIN stock_item i ON i.id = l.item_id ORDER BY l.id",
         "INSERT INTO stock_lot (id, item_id, state, got_on, best_before, opened_on, refrozen, paid_minor, currency, shop,"
         " feel, mark) SELECT ?1, (SELECT id FROM stock_item WHERE folded = ?13), ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12"
         "",
         {1},
         "SELECT 1 FROM stock_lot WHERE id = ?1"},
        {"shed-entries",
         "SELECT count(*) FROM stock_entry",
         "SELECT e.id, e.what, e.happened_on, i.name, e.session, e.undoes, e.mark FROM stock_entry e"
         " LEFT JOIN stock_item i ON i.id = e.item_id ORDER BY e.id",
         "INSERT INTO stock_entry (id, what, happened_on, item_id, session, undoes, mark)"
         " SELECT ?1, ?2, ?3, (SELECT id FROM stock_item WHERE folded = ?8), ?5, ?6, ifnull(?7,"
         " (SELECT substr(u.mark, 17) || substr(u.mark, 1, 16) FROM stock_entry u WHERE u.id = ?6))",
         {3},
         "SELECT 1 FROM stock_entry WHERE id = ?1"},
        {"shed-movements", "SELECT count(*) FROM stock_movement",
         "SELECT entry_id, lot_id, milligrams FROM stock_movement ORDER BY entry_id, lot_id",
         "INSERT INTO stock_movement (entry_id, lot_id, milligrams) VALUES (?1, ?2, ?3)"},
        {"shed-from-notes", "SELECT count(*) FROM stock_from_notes",
         "SELECT mark, entry_id FROM stock_from_notes ORDER BY mark",
         "INSERT INTO stock_from_notes (mark, entry_id) VALUES (?1, ?2)"},
    };
}

std::vector<KeptSql> sql_of_log() {
    return {
        {"log",
         "SELECT count(*) FROM log_entry",
         "SELECT id, what, happened_on, session_id, name, at, undoes, believed, mark FROM log_entry ORDER BY id",
         "INSERT INTO log_entry (id, what, happened_on, session_id, name, at, undoes, believed, mark, folded)"
         " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ifnull(?9,"
         " (SELECT substr(u.mark, 17) || substr(u.mark, 1, 16) FROM log_entry u WHERE u.id = ?7)), ?10)",
         {4},
         "SELECT 1 FROM log_entry WHERE id = ?1"},
        {"log-sessions",
         "SELECT count(*) FROM log_session",
         "SELECT entry_id, start, length, anglers, page, venue, clarity, temperature, cost_minor, currency, note"
         " FROM log_session ORDER BY entry_id",
         "INSERT INTO log_session (entry_id, start, length, anglers, page, venue, clarity, temperature, cost_minor,"
         " currency, note, venue_folded) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)",
         {5},
         "SELECT 1 FROM log_session WHERE entry_id = ?1"},
        {"log-used", "SELECT count(*) FROM log_use", "SELECT entry_id, measure, amount FROM log_use ORDER BY entry_id",
         "INSERT INTO log_use (entry_id, measure, amount) VALUES (?1, ?2, ?3)"},
        {"log-catches", "SELECT count(*) FROM log_catch",
         "SELECT entry_id, count, mass FROM log_catch ORDER BY entry_id",
         "INSERT INTO log_catch (entry_id, count, mass) VALUES (?1, ?2, ?3)"},
        {"log-mixes",
         "SELECT count(*) FROM log_mix",
         "SELECT entry_id, feel, wetness, within, dry, water, wetting FROM log_mix ORDER BY entry_id",
         "INSERT INTO log_mix (entry_id, feel, wetness, within, dry, water, wetting)"
         " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
         {},
         "SELECT 1 FROM log_mix WHERE entry_id = ?1"},
        {"log-parts",
         "SELECT count(*) FROM log_part",
         "SELECT entry_id, position, name, mass, moisture FROM log_part ORDER BY entry_id, position",
         "INSERT INTO log_part (entry_id, position, name, mass, moisture, folded) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
         {2}},
        {"log-soaks", "SELECT count(*) FROM log_soak",
         "SELECT entry_id, dry, drained, under_water, temperature FROM log_soak ORDER BY entry_id",
         "INSERT INTO log_soak (entry_id, dry, drained, under_water, temperature) VALUES (?1, ?2, ?3, ?4, ?5)"},
        {"log-weights", "SELECT count(*) FROM log_weight",
         "SELECT entry_id, feel, vessel, mass FROM log_weight ORDER BY entry_id",
         "INSERT INTO log_weight (entry_id, feel, vessel, mass) VALUES (?1, ?2, ?3, ?4)"},
        {"log-looks", "SELECT count(*) FROM log_look",
         "SELECT entry_id, feel, measure, size, squeeze, depth, holds, breaks_at, carpet FROM log_look ORDER BY entry_id",
         "INSERT INTO log_look (entry_id, feel, measure, size, squeeze, depth, holds, breaks_at, carpet)"
         " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)"},
    };
}

std::vector<KeptSql> sql_of_learnt() {
    return {
        {"learnt-water",
         "SELECT count(*) FROM learnt_water",
         "SELECT id, part, name, mean, mixes, measured, factor FROM learnt_water ORDER BY id",
         "INSERT INTO learnt_water (id, part, name, mean, mixes, measured, factor, folded)"
         " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
         {2}},
        {"learnt-mixes",
         "SELECT count(*) FROM learnt_mix",
         "SELECT name, part, mean, sigma, times FROM learnt_mix ORDER BY folded, part",
         "INSERT INTO learnt_mix (name, part, mean, sigma, times, folded) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
         {0}},
        {"learnt-water-before",
         "SELECT count(*) FROM learnt_water_before",
         "SELECT id, part, name, mean, mixes, measured, factor FROM learnt_water_before ORDER BY id",
         "INSERT INTO learnt_water_before (id, part, name, mean, mixes, measured, factor, folded)"
         " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)",
         {2}},
        {"learnt-mixes-before",
         "SELECT count(*) FROM learnt_mix_before",
         "SELECT name, part, mean, sigma, times FROM learnt_mix_before ORDER BY folded, part",
         "INSERT INTO learnt_mix_before (name, part, mean, sigma, times, folded) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
         {0}},
        {"learnt-written",
         "SELECT count(*) FROM learnt_written",
         "SELECT 1, name, text_before, text_after FROM learnt_written ORDER BY folded",
         "INSERT INTO learnt_written (name, text_before, text_after, folded) VALUES (?2, ?3, ?4, ?5)",
         {1}},
        {"stamps", "SELECT count(*) FROM stamp", "SELECT kind, folded, clock, since FROM stamp ORDER BY kind, folded",
         "INSERT INTO stamp (kind, folded, clock, since) VALUES (?1, ?2, ?3, ?4)"},
    };
}

}  // namespace

const KeptSql& kept_sql(std::string_view name) {
    static const std::vector<KeptSql> all = [] {
        std::vector<KeptSql> every;
        for (auto* some : {sql_of_library, sql_of_shed, sql_of_log, sql_of_learnt})
            for (KeptSql& sql : some()) every.push_back(std::move(sql));
        return every;
    }();
    for (const KeptSql& sql : all)
        if (sql.name == name) return sql;
    throw std::logic_error("nothing is kept as " + std::string(name));
}

}  // namespace baitwright
