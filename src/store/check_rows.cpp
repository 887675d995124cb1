#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "bait/entry_kind.h"
#include "bait/stock.h"
#include "quantities/amount_range.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "store/query.h"
#include "store/store_check.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

/// What must hold of each row, in SQL, and what is said where it does not.
struct RowRule {
    std::string holds;
    const char* says;
};

/// `where` is said before what a row is called by, `of` in SQL: a number, or a name in quotes.
struct TableRules {
    const char* table;
    const char* where;
    const char* of;
    const char* todo;
    std::vector<RowRule> rules;
};

constexpr const char* restore_todo = "put an older backup back: baitwright restore FILE";
constexpr const char* price_todo = "tell the right price: baitwright price NAME --pack 1kg --is £4.20";
constexpr const char* learn_todo = "learn it from the log again: baitwright learn --apply";
constexpr std::int64_t most_milligrams = 10'000'000'000'000;  // 10,000 t

template <std::size_t count>
std::string is_one_of(const char* column, const std::array<std::string_view, count>& words) {
    std::string list;
    for (const std::string_view word : words) list += (list.empty() ? "'" : ", '") + std::string(word) + "'";
    return std::string(column) + " IN (" + list + ")";
}

/// A day of the calendar, as `parse_stored_date` reads it.
std::string is_day(const std::string& column) {
    return "(date(" + column + ", '0 days') = " + column + " OR " + column +
           " GLOB '[1-9][0-9][0-9][0-9][0-9]-[01][0-9]-[0-3][0-9]')";
}

std::string is_null_or(const std::string& column, const std::string& holds) {
    return "(" + column + " IS NULL OR " + holds + ")";
}

std::string lies_between(const std::string& column, double least, double most) {
    constexpr double hair = 1e-9;
    return column + " BETWEEN " + number_text(least * (least < 0 ? 1 + hair : 1 - hair)) + " AND " +
           number_text(most * (1 + hair));
}

std::string is_pack_size() {
    const auto& mass = range_of<Mass>();
    const auto& volume = range_of<Volume>();
    return "(measure = 'mass' AND " + lies_between("size", mass.least.si(), mass.most.si()) +
           " OR measure = 'volume' AND " + lies_between("size", volume.least.si(), volume.most.si()) + ")";
}

std::vector<RowRule> price_rules() {
    const std::string dearest = std::to_string(dearest_price(currency_named("GBP")).minor());
    return {{is_pack_size(), "the size of a pack"},
            {"price_minor BETWEEN 0 AND " + dearest, "a price"},
            {"currency GLOB '[A-Z][A-Z][A-Z]'", "the currency of a price"},
            {"(priced_on = '' OR " + is_day("priced_on") + ")", "the day of a price"}};
}

std::vector<RowRule> learnt_water_rules() {
    return {{is_one_of("part", learnt_water_words), "what is learnt"},
            {"mean BETWEEN -20 AND 20", "what was learnt"},
            {"mixes BETWEEN 0 AND 1000000000", "how often it was seen"},
            {"measured BETWEEN 0 AND 100", "what was measured"},
            {"length(factor) > 0 AND length(factor) % 8 = 0", "its spread"}};
}

std::vector<RowRule> learnt_mix_rules() {
    return {{is_one_of("part", learnt_mix_words), "what is learnt"},
            {"mean BETWEEN -20 AND 20", "what was learnt"},
            {"sigma BETWEEN 0 AND 20", "its spread"},
            {"times BETWEEN 0 AND 1000000000", "how often it was seen"}};
}

std::vector<RowRule> lot_rules() {
    return {{is_one_of("state", stock_state_names), "how it is kept"},
            {is_day("got_on"), "the day it came"},
            {is_null_or("best_before", is_day("best_before")), "the day it is best before"},
            {is_null_or("opened_on", is_day("opened_on")), "the day it was opened"},
            {"refrozen BETWEEN 0 AND 1000000", "how often it was frozen"},
            {"(paid_minor IS NULL OR paid_minor BETWEEN 0 AND 1000000000000)", "what was paid"},
            {is_null_or("currency", "currency GLOB '[A-Z][A-Z][A-Z]'"), "the currency it was paid in"}};
}

std::vector<TableRules> shed_rules() {
    constexpr const char* in_shed = "in the shed, ";
    constexpr const char* of_lot = "(SELECT name FROM stock_item WHERE id = item_id)";
    constexpr const char* shed_entry = "in the shed, entry ";
    const std::string most = std::to_string(most_milligrams);
    return {{"stock_item",
             "in the shed, ",
             "name",
             restore_todo,
             {{is_one_of("kind", stock_kind_names), "what it is"}, {is_day("last_on"), "the day of its last entry"}}},
            {"stock_lot", in_shed, of_lot, restore_todo, lot_rules()},
            {"stock_entry",
             shed_entry,
             "id",
             restore_todo,
             {{is_one_of("what", happening_names), "what happened"},
              {is_day("happened_on"), "its day"},
              {"(undoes IS NULL) = (what <> 'undone')", "what it takes back"}}},
            {"stock_movement",
             shed_entry,
             "entry_id",
             restore_todo,
             {{"milligrams BETWEEN -" + most + " AND " + most, "what came in or went out"}}}};
}

std::vector<TableRules> library_rules() {
    const std::string owner = is_one_of("owner", owner_words);
    constexpr const char* of_name = "name";
    return {
        {"ingredient", "the ingredient ", of_name, restore_todo, {{owner, "whose it is"}}},
        {"recipe", "the mix ", of_name, restore_todo, {{owner, "whose it is"}}},
        {"strategy", "the strategy ", of_name, restore_todo, {{owner, "whose it is"}}},
        {"written",
         "the venue or blend ",
         of_name,
         restore_todo,
         {{owner, "whose it is"}, {"kind IN ('venue', 'blend')", "what it is"}}},
        {"feel",
         "the feel ",
         "name",
         restore_todo,
         {{owner, "whose it is"},
          {"below > 0 AND below <= 1000", "where it ends"},
          {"aim > 0 AND aim < below", "what it aims at"}}},
        {"gone", "the former name ", "name", restore_todo, {{is_one_of("kind", entry_kind_names), "what it was of"}}},
        {"retired",
         "an old version of ",
         "name",
         restore_todo,
         {{"(kind = 'feel' OR " + is_one_of("kind", entry_kind_names) + ")", "what it is"},
          {is_day("retired_on"), "its day"}}},
        {"old_price", "an old price of ", "(SELECT name FROM ingredient WHERE id = ingredient_id)", price_todo,
         price_rules()},
        {"price_of_removed", "an old price of ", "folded", restore_todo, price_rules()}};
}

std::vector<TableRules> log_rules() {
    return {{"log_entry", "in the log, entry ", "id", restore_todo, {{"believed IN (0, 1)", "whether it is believed"}}},
            {"learnt_water", "what was learnt of ", "name", learn_todo, learnt_water_rules()},
            {"learnt_mix", "what was learnt of ", "name", learn_todo, learnt_mix_rules()},
            {"learnt_water_before", "what was learnt before of ", "name", learn_todo, learnt_water_rules()},
            {"learnt_mix_before", "what was learnt before of ", "name", learn_todo, learnt_mix_rules()}};
}

std::string finding_sql(const TableRules& rules) {
    std::string wrong = "CASE";
    for (std::size_t i = 0; i < rules.rules.size(); ++i)
        wrong += " WHEN NOT ifnull((" + rules.rules[i].holds + "), 0) THEN " + std::to_string(i);
    return "SELECT " + std::string(rules.of) + ", " + wrong + " END AS wrong FROM " + rules.table +
           " WHERE wrong IS NOT NULL";
}

struct ReadyRules {
    TableRules rules;
    std::string sql;  ///< stays in its place, for it is the key of its statement
};

const std::vector<ReadyRules>& all_rules() {
    static const std::vector<ReadyRules> ready = [] {
        std::vector<ReadyRules> made;
        for (const auto& part : {shed_rules(), library_rules(), log_rules()})
            for (const TableRules& rules : part) made.push_back({rules, finding_sql(rules)});
        return made;
    }();
    return ready;
}

std::string row_name(const TableRules& rules, const Query& row) {
    const bool numbered = std::string_view(rules.of).ends_with("id");
    return numbered ? row.text(0) : in_quotes(row.text(0));
}

void check_table(StoreConnection& connection, const ReadyRules& ready, StoreFindings& findings) {
    Query rows(connection, ready.sql.c_str());
    std::size_t untold = 0;
    for (std::size_t count = 0; rows.next(); ++count) {
        if (count >= StoreFindings::most_alike) {
            ++untold;
            continue;
        }
        const RowRule& broken = ready.rules.rules.at(static_cast<std::size_t>(rows.whole(1)));
        findings.add(
            {"stored-out-of-range",
             ready.rules.where + row_name(ready.rules, rows) + ": " + broken.says + " cannot be what stands there",
             ready.rules.todo, false});
    }
    findings.add_untold(untold);
}

void check_foreign_keys(StoreConnection& connection, StoreFindings& findings) {
    Query rows(connection, "SELECT \"table\", parent, count(*) FROM pragma_foreign_key_check GROUP BY 1, 2");
    while (rows.next())
        findings.add(
            {"missing-row",
             std::to_string(rows.whole(2)) + " of the rows of " + rows.text(0) + " belong to none of " + rows.text(1),
             restore_todo, false});
}

}  // namespace

void check_rows(StoreConnection& connection, StoreFindings& findings) {
    check_foreign_keys(connection, findings);
    for (const ReadyRules& ready : all_rules()) check_table(connection, ready, findings);
}

}  // namespace baitwright
