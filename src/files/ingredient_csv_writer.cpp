#include <algorithm>
#include <map>

#include "bait/ingredient_facts.h"
#include "files/csv.h"
#include "files/ingredient_columns.h"
#include "files/ingredient_csv.h"
#include "files/value_text.h"
#include "quantities/listed.h"

namespace baitwright {

namespace {

/// What stands under which heading; what is not stated is not in it.
using Cells = std::map<std::string, std::string>;

void put(Cells& cells, const std::string& heading, std::string cell) {
    if (!cell.empty()) cells[heading] = std::move(cell);
}

template <class Q>
void put_property(Cells& cells, const std::string& heading, const Property<Q>& property, std::string value) {
    if (!property.stated()) return;
    cells[heading] = std::move(value);
    cells[heading + " spread"] = percent_text(property.spread);
    cells[heading + " source"] = source_text(property.source);
}

void put_keeping(Cells& cells, const std::string& heading, const std::optional<Time>& time) {
    if (time) cells[heading] = keeping_text(*time);
}

void put_pack(Cells& cells, const std::string& heading, const Pack& pack) {
    cells[heading + "size"] = amount_text(pack.size);
    if (pack.price) cells[heading + "price"] = money_text(*pack.price);
    put(cells, heading + "on", date_or_blank(pack.on));
    put(cells, heading + "shop", pack.shop);
}

Cells cells_of(const Ingredient& ingredient) {
    Cells cells;
    put(cells, "name", ingredient.name);
    put(cells, "kind", std::string(name_of(ingredient.kind)));
    visit_properties(ingredient, [&](const auto& facts, const auto& property) {
        put_property(cells, std::string(facts.key), property, value_text(facts, property.value));
    });
    visit_composition(ingredient.composition, [&](std::string_view part, const Property<Ratio>& share) {
        put_property(cells, "composition " + std::string(part), share, percent_text(share.value));
    });
    put(cells, "colour", ingredient.colour);
    put(cells, "solute", ingredient.solute);
    if (ingredient.label_dose) put(cells, "label_dose", dose_rate_text(*ingredient.label_dose));
    put(cells, "cautions", joined(ingredient.cautions, "; "));
    put_keeping(cells, "keeps dry", ingredient.keeps.dry);
    put_keeping(cells, "keeps cold", ingredient.keeps.cold);
    put_keeping(cells, "keeps frozen", ingredient.keeps.frozen);
    put(cells, "note", ingredient.note);
    int number = 0;
    for (const Pack& pack : ingredient.packs) put_pack(cells, "pack " + std::to_string(++number) + " ", pack);
    return cells;
}

/// The headings of all columns that a person may want to fill, and of the others where something is in them.
std::vector<std::string> headings_of(const std::vector<Cells>& rows, int packs) {
    std::vector<std::string> headings;
    for (const IngredientColumn& column : ingredient_columns(packs)) {
        const bool always = column.companion_of.empty() && column.pack == 0;
        const bool filled =
            std::any_of(rows.begin(), rows.end(), [&](const Cells& cells) { return cells.count(column.heading) > 0; });
        if (always || filled) headings.push_back(column.heading);
    }
    return headings;
}

}  // namespace

std::string csv_text(const std::vector<Ingredient>& ingredients) {
    std::vector<Cells> rows;
    std::size_t packs = 0;
    for (const Ingredient& ingredient : ingredients) {
        rows.push_back(cells_of(ingredient));
        packs = std::max(packs, ingredient.packs.size());
    }
    const std::vector<std::string> headings = headings_of(rows, static_cast<int>(packs));
    std::string text = csv_row(headings);
    for (Cells& row : rows) {
        std::vector<std::string> cells;
        cells.reserve(headings.size());
        for (const std::string& heading : headings) cells.push_back(row[heading]);
        text += csv_row(cells);
    }
    return text;
}

}  // namespace baitwright
