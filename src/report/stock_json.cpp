#include "report/stock_json.h"

#include "bait/stock_rules.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/price_report.h"

namespace baitwright {

namespace {

Json date_json(const std::optional<Date>& date) {
    return date ? Json(date_text(*date)) : Json();
}
double grams(Milligrams mass) {
    return static_cast<double>(mass.count) / 1000;  // that very decimal, not a neighbour of it
}
Json number_or_null(std::int64_t number) {
    return number == 0 ? Json() : Json(number);
}
Json lot_json(const Lot& lot) {
    return {{"lot", lot.id},
            {"state", name_of(lot.state)},
            {"left_g", grams(lot.left)},
            {"got_on", date_text(lot.got_on)},
            {"best_before", date_json(lot.best_before)},
            {"opened_on", date_json(lot.opened_on)},
            {"refrozen", lot.refrozen},
            {"feel", text_or_null(lot.feel)},
            {"paid_minor", json_minor(lot.paid)},
            {"currency", lot.paid ? Json(lot.paid->currency().code) : Json()},
            {"shop", text_or_null(lot.shop)}};
}

Json coming_home_json(const std::vector<ComingHome>& coming_home) {
    Json json = Json::array();
    for (const ComingHome& home : coming_home)
        json.push_back({{"name", home.mix},
                        {"feel", text_or_null(home.feel)},
                        {"spare_g", home.spare.in(gram)},
                        {"keeps_best", name_of(home.keeps_best)}});
    return json;
}

std::string exact(Milligrams mass) {
    return number_text(grams(mass));
}
std::string number_cell(std::int64_t number) {
    return number == 0 ? "" : std::to_string(number);
}

}  // namespace

Json shed_json(const ShedAnswer& answer) {
    Json json = json_record("stock", answer.warnings);
    json["today"] = date_text(answer.today);
    json["items"] = Json::array();
    for (const StockItem& item : answer.items) {
        Json lots = Json::array();
        for (const Lot& lot : item.lots) {
            Json record = lot_json(lot);
            record["past_best"] = is_past(lot, answer.today);
            lots.push_back(std::move(record));
        }
        json["items"].push_back({{"name", item.name},
                                 {"kind", name_of(item.kind)},
                                 {"left_g", grams(item.left)},
                                 {"lots", std::move(lots)}});
    }
    json["not_shown"] = answer.not_shown;
    return json;
}

Rows shed_rows(const ShedAnswer& answer) {
    Rows rows{{"name", "kind", "lot", "left_g", "state", "got_on", "opened_on", "best_before", "refrozen", "paid_minor",
               "currency", "shop", "feel"}};
    for (const StockItem& item : answer.items)
        for (const Lot& lot : item.lots)
            rows.push_back({item.name, std::string(name_of(item.kind)), std::to_string(lot.id), exact(lot.left),
                            std::string(name_of(lot.state)), date_text(lot.got_on), date_or_blank(lot.opened_on),
                            date_or_blank(lot.best_before), std::to_string(lot.refrozen),
                            lot.paid ? std::to_string(lot.paid->minor()) : "",
                            lot.paid ? std::string(lot.paid->currency().code) : "", lot.shop, lot.feel});
    return rows;
}

Json receipt_json(const StockReceipt& receipt) {
    Json json{{"entry", number_or_null(receipt.entry)},
              {"what", name_of(receipt.what)},
              {"on", date_text(receipt.on)},
              {"session", text_or_null(receipt.session)},
              {"undoes", number_or_null(receipt.undoes)},
              {"lots", Json::array()}};
    for (const StockReceipt::Line& line : receipt.lines) {
        Json record{{"name", line.name}, {"kind", name_of(line.kind)}, {"change_g", grams(line.by)}};
        record.update(lot_json(line.lot));
        record["left_in_all_g"] = grams(line.left);
        json["lots"].push_back(std::move(record));
    }
    return json;
}

Json stock_change_json(const std::string& command, const StockChangeAnswer& answer) {
    Json json = json_record(command, answer.warnings);
    json.update(receipt_json(answer.receipt));
    if (answer.receipt.what == Happening::bought) json["priced"] = answer.priced ? pack_json(answer.priced) : Json();
    if (answer.receipt.what == Happening::booked) json["come_home"] = coming_home_json(answer.coming_home);
    return json;
}

Rows stock_change_rows(const StockChangeAnswer& answer) {
    Rows rows{{"entry", "what", "on", "name", "kind", "lot", "change_g", "lot_left_g", "left_in_all_g"}};
    for (const StockReceipt::Line& line : answer.receipt.lines)
        rows.push_back({std::to_string(answer.receipt.entry), std::string(name_of(answer.receipt.what)),
                        date_text(answer.receipt.on), line.name, std::string(name_of(line.kind)),
                        std::to_string(line.lot.id), exact(line.by), exact(line.lot.left), exact(line.left)});
    return rows;
}

Json stock_history_json(const StockHistory& history) {
    Json json = json_record("stock history", {});
    json["name"] = history.name;
    json["entries"] = Json::array();
    Milligrams left;
    for (const StockEntry& entry : history.entries) {
        left += change_of(entry);
        Json lots = Json::array();
        for (const Movement& movement : entry.changes)
            lots.push_back({{"lot", movement.lot}, {"change_g", grams(movement.by)}});
        json["entries"].push_back({{"entry", entry.id},
                                   {"what", name_of(entry.what)},
                                   {"on", date_text(entry.on)},
                                   {"change_g", grams(change_of(entry))},
                                   {"left_g", grams(left)},
                                   {"session", text_or_null(entry.session)},
                                   {"undoes", number_or_null(entry.undoes)},
                                   {"undone_by", number_or_null(entry.undone_by)},
                                   {"lots", std::move(lots)}});
    }
    return json;
}

Rows stock_history_rows(const StockHistory& history) {
    Rows rows{{"entry", "what", "on", "change_g", "left_g", "session", "undoes", "undone_by"}};
    Milligrams left;
    for (const StockEntry& entry : history.entries) {
        left += change_of(entry);
        rows.push_back({std::to_string(entry.id), std::string(name_of(entry.what)), date_text(entry.on),
                        exact(change_of(entry)), exact(left), entry.session, number_cell(entry.undoes),
                        number_cell(entry.undone_by)});
    }
    return rows;
}

}  // namespace baitwright
