#include "files/recipe_reader.h"

#include <array>
#include <tuple>

#include "files/value_reader.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr std::array<std::string_view, 4> amount_keys{"mass", "volume", "packs", "share"};
constexpr std::string_view one_amount = R"(state one of mass = "400 g", volume = "2 pt", packs = 1, share = 2)";
constexpr double most_counted = 1e6;

bool comes_before(Position a, Position b) {
    return std::tie(a.line, a.column) < std::tie(b.line, b.column);
}

/// Packs or shares: a plain number above 0.
std::optional<double> count_of(TableReader& table, std::string_view key) {
    const auto count = table.number(key, 0, most_counted);
    if (!count || *count > 0) return count;
    table.faults().add(table.place_of_value(key), "out-of-range", "'" + std::string(key) + "' must be above 0",
                       "write " + std::string(key) + " = 2, or take the entry out");
    return std::nullopt;
}

template <class Amount, class Value>
void take_amount(std::optional<PartAmount>& amount, const std::optional<Value>& value) {
    if (value) amount = Amount{*value};
}

std::optional<PartAmount> read_amount(TableReader& table) {
    std::optional<PartAmount> amount;
    take_amount<Mass>(amount, amount_of<Mass>(table, "mass", "400 g"));
    take_amount<Volume>(amount, amount_of<Volume>(table, "volume", "2 pt"));
    take_amount<WholePacks>(amount, count_of(table, "packs"));
    take_amount<Share>(amount, count_of(table, "share"));
    return amount;
}

void check_one_amount(const TableReader& table) {
    int given = 0;
    Position last = table.place();
    for (const std::string_view key : amount_keys) {
        if (!table.has(key)) continue;
        ++given;
        if (comes_before(last, table.place_of_key(key))) last = table.place_of_key(key);
    }
    if (given == 0)
        table.faults().add(table.place(), "no-amount", "the part does not say how much", std::string(one_amount));
    if (given > 1) table.faults().add(last, "two-amounts", "the part says twice how much", std::string(one_amount));
}

Part read_recipe_part(TableReader& table) {
    Part part;
    part.of = table.name("of").value_or("");
    check_one_amount(table);
    part.amount = read_amount(table).value_or(Share{1});
    if (table.word("prepare", {"soaked"})) part.prepare = Preparation::soaked;
    table.refuse_unknown_keys();
    return part;
}

Dose read_dose(TableReader& table) {
    Dose dose;
    dose.of = table.name("of").value_or("");
    table.required("amount", "\"25 ml per kg dry\"");
    if (const auto rate = parsed(table, "amount", "25 ml per kg dry", parse_dose_rate)) {
        dose.rate = *rate;
        std::visit([&](auto each) { check_amount(*table.find("amount"), "amount", each, table.faults()); },
                   dose.rate.each);
    }
    table.refuse_unknown_keys();
    return dose;
}

void read_recipe_parts(TableReader& table, Entry<Recipe>& entry) {
    if (!table.has("part"))
        table.faults().add(table.place(), "missing-value", "a mix has no part",
                           "add a [[part]] with of = \"...\" and how much of it");
    table.each_block("part", "a part", [&](TableReader& part) {
        entry.value.parts.push_back(read_recipe_part(part));
        entry.places["part " + std::to_string(entry.value.parts.size())] = part.place_of_value("of");
    });
    table.each_block("dose", "a dose", [&](TableReader& dose) {
        entry.value.doses.push_back(read_dose(dose));
        entry.places["dose " + std::to_string(entry.value.doses.size())] = dose.place_of_value("of");
    });
}

}  // namespace

bool names_a_feel(const TableReader& table) {
    const toml::node* feel = table.table().get("feel");
    return feel && !feel->is_table() && !feel->is_array_of_tables();
}

Entry<Recipe> read_recipe(TableReader& table, EntryNames& names) {
    const std::size_t faults_before = table.faults().count();
    Entry<Recipe> entry;
    Recipe& recipe = entry.value;
    recipe.name = names.claim(table).value_or("");
    entry.places["name"] = table.place_of_value("name");
    if (names_a_feel(table)) recipe.feel = table.name("feel").value_or("");
    entry.places["feel"] = table.place_of_value("feel");
    recipe.purpose = table.prose("purpose");
    recipe.avoid = table.prose("avoid");
    recipe.why = table.prose("why");
    recipe.note = table.prose("note");
    read_recipe_parts(table, entry);
    table.refuse_unknown_keys();
    entry.faulty = table.faults().count() > faults_before;
    return entry;
}

}  // namespace baitwright
