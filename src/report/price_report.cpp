#include "report/price_report.h"

#include <fmt/format.h>

#include <algorithm>

#include "quantities/listed.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string price_cell(const PriceLine& line) {
    return line.pack && line.pack->price ? money_text(*line.pack->price) : "no price";
}

std::string per_kilogram_cell(const PriceLine& line) {
    if (!line.per_kg_minor) return "";
    return money_text(Money(round_half_even(*line.per_kg_minor), line.pack->price->currency()));
}

std::string day_cell(const PriceLine& line) {
    if (!line.pack) return "";
    std::vector<std::string> said;  // a price told without its day is used all the same
    if (line.pack->on) said.push_back(date_text(*line.pack->on));
    if (!line.newest) said.emplace_back("before");
    if (line.newest && line.stale) said.emplace_back("old");
    if (line.newest && line.reckoned_by) said.emplace_back("in use");
    return joined(said, ", ");
}

Json named_pack_json(const std::string& name, const std::optional<Pack>& pack) {
    Json json{{"name", name}};
    json.update(pack_json(pack));
    return json;
}

std::vector<std::string> pack_cells(const std::string& name, const std::optional<Pack>& pack) {
    std::vector<std::string> cells{name, "", "", "", "", "", ""};
    if (!pack) return cells;
    if (const Mass* mass = std::get_if<Mass>(&pack->size)) cells[1] = number_text(mass->in(gram));
    if (const Volume* volume = std::get_if<Volume>(&pack->size)) cells[2] = number_text(volume->in(millilitre));
    if (pack->price) {
        cells[3] = std::to_string(pack->price->minor());
        cells[4] = pack->price->currency().code;
    }
    cells[5] = date_or_blank(pack->on);
    cells[6] = pack->shop;
    return cells;
}

std::string yes(bool is) {
    return is ? "yes" : "no";
}

}  // namespace

Json pack_json(const std::optional<Pack>& pack) {
    const Mass* mass = pack ? std::get_if<Mass>(&pack->size) : nullptr;
    const Volume* volume = pack ? std::get_if<Volume>(&pack->size) : nullptr;
    const bool priced = pack && pack->price;
    return {{"size_g", mass ? Json(mass->in(gram)) : Json()},
            {"size_ml", volume ? Json(volume->in(millilitre)) : Json()},
            {"price_minor", priced ? Json(pack->price->minor()) : Json()},
            {"currency", priced ? Json(pack->price->currency().code) : Json()},
            {"on", pack && pack->on ? Json(date_text(*pack->on)) : Json()},
            {"shop", pack ? text_or_null(pack->shop) : Json()}};
}

std::vector<std::string> pack_sizes_typed(const Ingredient& ingredient) {
    std::vector<std::string> sizes;
    for (const Pack& pack : ingredient.packs)
        if (std::string size = typed_pack(pack); std::find(sizes.begin(), sizes.end(), size) == sizes.end())
            sizes.push_back(std::move(size));
    return sizes;
}

Told price_list_told(const PriceList& list) {
    TextTable table({Align::left, Align::right, Align::right, Align::right, Align::left, Align::left});
    table.row({"ingredient", "pack", "price", "a kilo", "shop", "on"});
    for (const PriceLine& line : list.lines)
        table.row({line.name, line.pack ? shown_pack(*line.pack) : "", price_cell(line), per_kilogram_cell(line),
                   line.pack ? line.pack->shop : "", day_cell(line)});
    Told told;
    told.table(std::move(table));
    for (const Warning& warning : list.warnings) {
        told.gap();
        told.mind({warning});
    }
    return told;
}

Json price_list_json(const std::string& command, const PriceList& list) {
    Json json = json_record(command, list.warnings);
    json["prices"] = Json::array();
    for (const PriceLine& line : list.lines) {
        Json record = named_pack_json(line.name, line.pack);
        record["per_kg_minor"] = line.per_kg_minor ? Json(*line.per_kg_minor) : Json();
        record["newest"] = line.newest;
        record["reckoned_by"] = line.reckoned_by;
        record["stale"] = line.stale;
        json["prices"].push_back(std::move(record));
    }
    return json;
}

Rows price_list_rows(const PriceList& list) {
    Rows rows{{"name", "size_g", "size_ml", "price_minor", "currency", "on", "shop", "per_kg_minor", "newest",
               "reckoned_by", "stale"}};
    for (const PriceLine& line : list.lines) {
        rows.push_back(pack_cells(line.name, line.pack));
        for (const std::string& cell : {line.per_kg_minor ? number_text(*line.per_kg_minor) : std::string(),
                                        yes(line.newest), yes(line.reckoned_by), yes(line.stale)})
            rows.back().push_back(cell);
    }
    return rows;
}

Told price_change_told(const PriceChange& change) {
    std::string text = shown_pack(change.told) + " at " + money_text(*change.told.price) +
                       (change.told.shop.empty() ? "" : " from " + change.told.shop) + " on " +
                       date_or_blank(change.told.on);
    const auto dated = [](const Pack& pack) {
        return (pack.price ? money_text(*pack.price) : "no price") + (pack.on ? " on " + date_text(*pack.on) : "");
    };
    if (!change.in_use)
        text += "; kept, but a newer one is known: " + dated(*change.before);
    else if (change.before)
        text += "; before that " + dated(*change.before);
    Told told;
    told.entry(change.name + ": ", text);
    told.mind(change.warnings);
    return told;
}

Json price_change_json(const PriceChange& change) {
    Json json = json_record("price", change.warnings);
    json.update(named_pack_json(change.name, change.told));
    json["in_use"] = change.in_use;
    json["before"] = change.before ? named_pack_json(change.name, change.before) : Json();
    return json;
}

Rows price_change_rows(const PriceChange& change) {
    Rows rows{{"name", "size_g", "size_ml", "price_minor", "currency", "on", "shop", "in_use"}};
    rows.push_back(pack_cells(change.name, change.told));
    rows.back().push_back(yes(change.in_use));
    return rows;
}

}  // namespace baitwright
