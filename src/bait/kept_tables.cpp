#include "bait/kept_tables.h"

#include <algorithm>
#include <stdexcept>

#include "bait/break_up.h"
#include "bait/entry_kind.h"
#include "bait/log_entry.h"
#include "bait/stock.h"
#include "bait/strategy.h"

namespace baitwright {

namespace {

/// The tables are laid out in words of their own.
namespace layout {

using Columns = std::vector<KeptColumn>;
using Words = std::vector<std::string_view>;

constexpr double many = 1e9, largest_log = 20, largest_mark = 100;
constexpr double most_changes = 1e15;
constexpr double longest_log = 31 * 24 * 3600.0, deepest_log = 1000, heaviest = 1e4;
constexpr bool may_be_empty = true, never_empty = false;

template <std::size_t count>
Words words_of(const std::array<std::string_view, count>& words) {
    return {words.begin(), words.end()};
}

KeptColumn name(const char* heading) {
    return {heading, CellForm::name};
}
KeptColumn line(const char* heading, bool optional = never_empty) {
    return {heading, CellForm::line, optional};
}
KeptColumn prose(const char* heading) {
    return {heading, CellForm::prose};
}
KeptColumn date(const char* heading, bool optional = never_empty) {
    return {heading, CellForm::date, optional};
}
KeptColumn word(const char* heading, Words words) {
    return {heading, CellForm::word, never_empty, 0, 0, std::move(words)};
}
KeptColumn word_or_none(const char* heading, Words words) {
    words.insert(words.begin(), "");
    return word(heading, std::move(words));
}
KeptColumn clock(const char* heading) {
    return {heading, CellForm::clock};
}
KeptColumn feel(bool optional = never_empty) {
    return {"feel", CellForm::name, optional};
}
KeptColumn number(const char* heading) {
    return {heading, CellForm::number};
}
KeptColumn number_of(const char* heading, std::string_view table, bool optional = never_empty) {
    return {heading, CellForm::number, optional, 0, 0, {}, {}, table};
}
/// Of a row that a person adds it is left empty.
KeptColumn mark(const char* heading) {
    return {heading, CellForm::mark, may_be_empty};
}
KeptColumn whole(const char* heading, double least, double most) {
    return {heading, CellForm::whole, never_empty, least, most};
}
KeptColumn bare(const char* heading, double least, double most, bool optional = never_empty) {
    return {heading, CellForm::bare, optional, least, most};
}
KeptColumn truth(const char* heading) {
    return {heading, CellForm::truth};
}
KeptColumn money(const char* heading, bool optional = never_empty) {
    return {heading, CellForm::money, optional};
}
KeptColumn amount(const char* heading, Words measures, double least = 0) {
    return {heading, CellForm::amount, never_empty, least, heaviest, std::move(measures)};
}
KeptColumn quantity(const std::string& what, std::string_view unit, double least, double most,
                    bool optional = never_empty) {
    return {what + " (" + std::string(unit) + ")", CellForm::quantity, optional, least, most, {}, unit};
}
KeptColumn mass(const char* what, bool optional = never_empty) {
    return quantity(what, "g", 0, heaviest, optional);
}
KeptColumn length(const char* what, bool optional = never_empty) {
    return quantity(what, "m", 0, deepest_log, optional);
}
KeptColumn warmth(const char* what, bool optional = never_empty) {
    return quantity(what, "degC", 273.15 - 5, 273.15 + 100.5, optional);
}

Words kinds_of_versions() {
    Words kinds = words_of(entry_kind_names);
    kinds.emplace_back("feel");
    return kinds;
}

Words kinds_of_entries() {
    Words kinds = kinds_of_versions();
    kinds.emplace_back("usual");
    return kinds;
}

Words kinds_of_stamps() {
    Words kinds = kinds_of_versions();
    for (const char* kind : {"packs", "usual", "learnt", "believed"}) kinds.emplace_back(kind);
    return kinds;
}

std::vector<KeptTable> tables_of_library() {
    const KeptColumn ingredient{"ingredient", CellForm::name, never_empty, 0, 0, {}, {}, "ingredients"};
    const Columns old_price{ingredient, amount("pack", {"mass", "volume"}), money("price"), date("on", may_be_empty),
                            name("shop")};
    Columns price_of_removed = old_price;
    price_of_removed.front() = name("ingredient");
    return {
        {"shops", {name("shop")}},
        {"usual", {line("what"), whole("place", 0, many), line("value")}},
        {"old-versions", {word("kind", kinds_of_versions()), name("name"), date("until"), prose("as it was")}},
        {"names-given-up", {word("kind", words_of(entry_kind_names)), name("name"), name("now")}},
        {"old-prices", old_price},
        {"prices-of-removed", price_of_removed},
    };
}

std::vector<KeptTable> tables_of_shed() {
    const KeptColumn item{"item", CellForm::name, never_empty, 0, 0, {}, {}, "shed-items"};
    const KeptColumn item_alone{"item", CellForm::name, may_be_empty, 0, 0, {}, {}, "shed-items"};
    return {
        {"shed-items", {name("item"), word("kind", words_of(stock_kind_names)), date("last entry on")}},
        {"shed-lots",
         {number("lot"), item, word("kept", words_of(stock_state_names)), date("got on"),
          date("best before", may_be_empty), date("opened on", may_be_empty), whole("frozen again (times)", 0, many),
          money("paid", may_be_empty), name("shop"), feel(may_be_empty), mark("mark")}},
        {"shed-entries",
         {number("entry"), word("what", words_of(happening_names)), date("on"), item_alone, line("session"),
          number_of("takes back", "shed-entries", may_be_empty), mark("mark")}},
        {"shed-movements",
         {number_of("entry", "shed-entries"), number_of("lot", "shed-lots"), {"change (g)", CellForm::grams}}},
        {"shed-from-notes", {line("phone's mark"), number_of("entry", "shed-entries", may_be_empty)}},
    };
}

std::vector<KeptTable> tables_of_log() {
    const KeptColumn entry = number_of("entry", "log");
    return {
        {"log",
         {number("entry"), word("what", words_of(logged_names)), date("on"),
          number_of("session", "log-sessions", may_be_empty), line("of"),
          quantity("after the start", "min", -longest_log, longest_log, may_be_empty),
          number_of("takes back", "log", may_be_empty), truth("believed"), mark("mark")}},
        {"log-sessions",
         {entry, clock("start"), quantity("length", "min", 0, longest_log), whole("anglers", 1, 10000), line("page"),
          line("venue"), word_or_none("clarity", words_of(clarity_names)), warmth("water", may_be_empty),
          money("cost", may_be_empty), prose("note")}},
        {"log-used", {entry, amount("amount", {"mass", "volume"})}},
        {"log-catches", {entry, whole("fish", 0, 1e6), mass("mass", may_be_empty)}},
        {"log-mixes",
         {entry, feel(), bare("wetness", 0, 20, may_be_empty), bare("within", 0, 20), mass("dry", may_be_empty),
          mass("water", may_be_empty), mass("other wetting")}},
        {"log-parts",
         {number_of("entry", "log-mixes"), whole("place", 0, many), line("of"), mass("mass"),
          quantity("moisture", "%", 0, 1, may_be_empty)}},
        {"log-soaks",
         {entry, mass("dry"), mass("drained"), quantity("under water", "min", 0, longest_log), warmth("water")}},
        {"log-weights", {entry, feel(), quantity("vessel", "ml", 0, 10), mass("mass")}},
        {"log-looks",
         {entry, feel(), amount("cup or ball", {"volume", "length"}), word("squeeze", words_of(squeeze_names)),
          length("depth"), quantity("held", "s", 0, longest_log, may_be_empty), length("broke at", may_be_empty),
          length("carpet", may_be_empty)}},
    };
}

std::vector<KeptTable> tables_of_learnt() {
    const Columns water{number("row"),
                        word("what", {"hand", "memory", "absorption", "gap"}),
                        line("of"),
                        bare("mean (ln)", -largest_log, largest_log),
                        whole("mixes", 0, many),
                        bare("measured (g/g)", 0, largest_mark),
                        {"factor", CellForm::numbers}};
    const Columns mix{line("of"), word("what", {"cup_weight", "hold", "carpet"}),
                      bare("mean (ln)", -largest_log, largest_log), bare("sigma (ln)", 0, largest_log),
                      whole("times", 0, many)};
    return {{"learnt-water", water},
            {"learnt-mixes", mix},
            {"learnt-water-before", water},
            {"learnt-mixes-before", mix},
            {"learnt-written", {truth("laid by"), name("ingredient"), prose("before"), prose("after")}},
            {"stamps",
             {word("kind", kinds_of_stamps()), line("of"), whole("changed", 0, most_changes),
              whole("there since", 0, most_changes)}}};
}

std::vector<KeptTable> all_tables() {
    std::vector<KeptTable> all;
    for (auto* some : {tables_of_library, tables_of_shed, tables_of_log, tables_of_learnt})
        for (KeptTable& table : some()) all.push_back(std::move(table));
    return all;
}

}  // namespace layout

}  // namespace

const KeptTable& entries_table() {
    static const KeptTable table{
        "entries",
        {layout::word("kind", layout::kinds_of_entries()), layout::line("name"),
         layout::word("whose", {"shipped", "person"}), layout::mark("as written"), layout::mark("its packs")}};
    return table;
}

std::size_t KeptTable::column(std::string_view heading) const {
    for (std::size_t i = 0; i < columns.size(); ++i)
        if (columns[i].heading == heading) return i;
    throw std::logic_error("no column " + std::string(heading) + " in " + std::string(name));
}

const std::vector<KeptTable>& kept_tables() {
    static const std::vector<KeptTable> all = layout::all_tables();
    return all;
}

const KeptTable& kept_table(std::string_view name) {
    for (const KeptTable& table : kept_tables())
        if (table.name == name) return table;
    throw std::logic_error("no table " + std::string(name));
}

}  // namespace baitwright
