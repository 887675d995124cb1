#include "report/shop_report.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "answers/shared/stock_answer.h"
#include "bait/one_currency.h"
#include "quantities/listed.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "quantities/worded.h"
#include "report/display.h"
#include "report/kept_text.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

std::string day_of(const ShopAnswer& answer, int session) {
    return date_text(answer.sessions[static_cast<std::size_t>(session)].on);
}

/// In whole grams, which add up: what is needed is rounded up, what is left over down.
Json grams_up(Mass mass) {
    return std::max(0.0, std::ceil(mass.in(gram)-1e-6));
}
Json grams_down(Mass mass) {
    return std::floor(mass.in(gram) + 1e-6);
}

std::string minor_text(std::int64_t minor, const ShopAnswer& answer) {
    return money_text(Money(minor, *answer.currency));
}

std::string sessions_text(const ShopAnswer& answer) {
    const auto& sessions = answer.sessions;
    if (sessions.size() == 1) return sessions.front().strategy + " on " + date_text(sessions.front().on);
    return fmt::format("{} sessions, {} to {}", sessions.size(), date_text(sessions.front().on),
                       date_text(sessions.back().on));
}

std::string head_of(const ShopSum& shop) {
    std::string text = shop.shop.empty() ? "Wherever it is sold" : "From " + shop.shop;
    text += ", " + money_text(shop.packs);
    if (shop.delivery && shop.delivery->minor() > 0) text += " and " + money_text(*shop.delivery) + " for delivery";
    return text;
}

std::string why_text(NotOnSale::Why why) {
    if (why == NotOnSale::Why::other_currency) return "other currency";
    return why == NotOnSale::Why::no_price ? "no price" : "not sold there";
}

/// "at least £6.00 in the cheapest whole packs; 4 things have no price"
std::string shop_headline(const ShopAnswer& answer) {
    if (answer.complete())
        return answer.packs.empty() ? "nothing to buy, the shed has it all"
                                    : minor_text(answer.total_minor, answer) + " in the cheapest whole packs";
    const auto count = [&answer](NotOnSale::Why why) {
        return static_cast<std::size_t>(std::count_if(answer.missing.begin(), answer.missing.end(),
                                                      [why](const NotOnSale& missing) { return missing.why == why; }));
    };
    std::string text = answer.packs.empty()
                           ? "no sum"
                           : "at least " + minor_text(answer.total_minor, answer) + " in the cheapest whole packs";
    const std::string unpriced = no_price_text(count(NotOnSale::Why::no_price), count(NotOnSale::Why::other_currency));
    if (!unpriced.empty()) text += "; " + unpriced;
    if (const std::size_t unsold = count(NotOnSale::Why::not_sold_there); unsold > 0)
        text += fmt::format("; {} sold where you go",
                            unsold == 1 ? std::string("1 thing is not") : std::to_string(unsold) + " things are not");
    return text;
}

/// What is to be got all the same: how much, and why it has no sum.
void tell_missing(Told& told, const ShopAnswer& answer) {
    if (answer.complete()) return;
    const bool days = answer.sessions.size() > 1;
    std::vector<Align> columns{Align::left, Align::right, Align::left};
    if (days) columns.push_back(Align::right);
    TextTable table(columns);
    for (const NotOnSale& missing : answer.missing) {
        std::vector<std::string> cells{"[ ] " + missing.name, shown_mass(scale_mass(missing.lacking)),
                                       why_text(missing.why)};
        if (days) cells.push_back("by " + day_of(answer, missing.session));
        table.row(std::move(cells));
    }
    told.heading("Also needed, not in the sum");
    told.table(std::move(table));
    told.gap();
}

void tell_shop(Told& told, const ShopAnswer& answer, const ShopSum& shop) {
    const bool days = answer.sessions.size() > 1;
    TextTable table(days ? std::vector<Align>{Align::left, Align::right, Align::right, Align::right}
                         : std::vector<Align>{Align::left, Align::right, Align::right});
    for (const PackBought& pack : answer.packs) {
        if (pack.pack.shop != shop.shop) continue;
        std::vector<std::string> cells{"[ ] " + pack.name, fmt::format("{} x {}", pack.count, shown_pack(pack.pack)),
                                       money_text(pack.total())};
        if (days) cells.push_back("by " + day_of(answer, pack.session));
        table.row(std::move(cells));
    }
    told.heading(head_of(shop));
    told.table(std::move(table));
    told.gap();
}

TextTable lines_table(const ShopAnswer& answer) {
    const auto from_shed = [](const auto& line) { return line.from_stock > Mass{}; };
    const bool stock = std::any_of(answer.lines.begin(), answer.lines.end(), from_shed) ||
                       std::any_of(answer.missing.begin(), answer.missing.end(), from_shed);
    std::vector<Align> columns(stock ? 5 : 4, Align::right);
    columns[0] = Align::left;
    TextTable table(columns);
    const auto row = [&](std::vector<std::string> cells) {
        if (!stock) cells.erase(cells.begin() + 2);
        table.row(std::move(cells));
    };
    const auto cell = [](Mass mass) { return mass > Mass{} ? shown_mass(scale_mass(mass)) : std::string(); };
    row({"what becomes of it", "needed", "from shed", "bought", "left over"});
    for (const ShopLine& line : answer.lines)
        row({line.name, cell(line.need), cell(line.from_stock), cell(line.bought), cell(line.left_over)});
    for (const NotOnSale& missing : answer.missing)
        row({missing.name, cell(missing.need), cell(missing.from_stock), why_text(missing.why), ""});
    return table;
}

std::string sure_text(const ShopAnswer& answer) {
    const std::string usual = answer.rather_at ? "What " + *answer.rather_at + " sells is bought there. " : "";
    if (answer.gap_minor() > 0)
        return usual + "There are too many ways to buy so much to try them all: other whole packs may cost up to " +
               minor_text(answer.gap_minor(), answer) + " less, and no more than that.";
    if (!answer.least_left) return usual + "No other whole packs cost less.";
    return usual + "No other whole packs cost less; of those that cost the same, these leave least over.";
}

std::string past_best_text(const ShopAnswer& answer) {
    std::vector<std::string> lost;
    for (const ShopLine& line : answer.lines)
        if (line.past_best > Mass{}) lost.push_back(shown_mass(scale_mass(line.past_best)) + " of " + line.name);
    return lost.empty() ? std::string()
                        : "Past its best before the last session, so it counts as left over: " + listed(lost) + ".";
}

/// What the sessions feed of mix that is there.
std::string kept_of_sessions(const ShopAnswer& answer) {
    std::vector<std::string> amounts;
    for (const SessionNeed& session : answer.sessions)
        for (const KeptUse& use : session.kept) {
            std::string amount = shown_mass(scale_mass(use.of.mass)) + " of " + use.of.of;
            if (answer.sessions.size() > 1) amount += " on " + date_text(session.on);
            amounts.push_back(std::move(amount));
        }
    return amounts.empty() ? std::string()
                           : "Mix that is there is used first, and nothing of it is bought: " + listed(amounts) + ".";
}

Json to_buy_json(const ShopAnswer& answer, const PackBought& pack) {
    const Mass* mass = std::get_if<Mass>(&pack.pack.size);
    return {{"name", pack.name},
            {"size_g", pack.mass.in(gram)},
            {"size_ml", mass ? Json() : Json(std::get<Volume>(pack.pack.size).in(millilitre))},
            {"count", pack.count},
            {"price_minor", pack.price_minor},
            {"shop", pack.pack.shop.empty() ? Json() : Json(pack.pack.shop)},
            {"by", day_of(answer, pack.session)},
            {"session", pack.session + 1}};
}

}  // namespace

Told shop_told(const ShopAnswer& answer) {
    Told told;
    told.title("For " + sessions_text(answer) + ": " + shop_headline(answer));
    for (const ShopSum& shop : answer.shops) tell_shop(told, answer, shop);
    tell_missing(told, answer);
    if (!answer.lines.empty() || !answer.complete()) {
        told.table(lines_table(answer));
        told.gap();
    }
    if (!answer.packs.empty()) told.line("Sure", sure_text(answer));
    if (answer.sessions.size() > 1 && !answer.packs.empty())
        told.line("By then", "Have each by its day. What keeps can be bought sooner, at the same price.");
    if (const std::string kept = kept_of_sessions(answer); !kept.empty()) told.line("Kept", kept);
    if (const std::string lost = past_best_text(answer); !lost.empty()) told.line("Lost", lost);
    for (const Warning& warning : answer.warnings)
        if (!warning.answer_is_no) told.mind({warning});  // what is missing stands on the list, with why
    const auto first = [&](NotOnSale::Why why) {
        const auto found = std::find_if(answer.missing.begin(), answer.missing.end(),
                                        [&](const NotOnSale& missing) { return missing.why == why; });
        return found == answer.missing.end() ? nullptr : &*found;
    };
    if (const NotOnSale* unpriced = first(NotOnSale::Why::no_price))
        told.line("Prices", worded("Say what a pack costs with: baitwright price \"" + unpriced->name + "\"",
                                   "Say what a pack of " + unpriced->name + " costs."));
    if (first(NotOnSale::Why::other_currency))
        told.line("Currency",
                  worded("Put all prices into one: " + convert_command(*answer.currency),
                         "Say the others in " + std::string(answer.currency->code) + ", or leave them out."));
    return told;
}

/// Of each ingredient what is needed, and what will be left.
void add_lines(const ShopAnswer& answer, Json& json) {
    json["needs"] = Json::array();
    json["left_over"] = Json::array();
    for (const ShopLine& line : answer.lines) {
        json["needs"].push_back({{"name", line.name},
                                 {"mass_g", grams_up(line.need)},
                                 {"from_stock_g", grams_up(line.from_stock)},
                                 {"bought_g", grams_down(line.bought)}});
        if (line.left_over > Mass{})
            json["left_over"].push_back({{"name", line.name},
                                         {"mass_g", grams_down(line.left_over)},
                                         {"past_best_g", grams_down(line.past_best)}});
    }
}

Json shop_json(const ShopAnswer& answer) {
    Json json = json_record("shop", answer.warnings);
    json["currency"] = answer.currency ? Json(answer.currency->code) : Json();
    json["total_minor"] = answer.currency ? Json(answer.total_minor) : Json();
    json["delivery_minor"] = answer.currency ? Json(answer.delivery_minor) : Json();
    json["proven"] = answer.gap_minor() == 0 ? Json(true) : Json("gap");
    json["gap_minor"] = answer.currency ? Json(answer.gap_minor()) : Json();
    json["complete"] = answer.complete();
    json["sessions"] = Json::array();
    for (const SessionNeed& session : answer.sessions)
        json["sessions"].push_back({{"strategy", session.strategy}, {"on", date_text(session.on)}});
    json["kept"] = Json::array();
    for (std::size_t session = 0; session < answer.sessions.size(); ++session)
        for (Json tub : kept_json(answer.sessions[session].kept)) {
            tub["session"] = session + 1;
            json["kept"].push_back(std::move(tub));
        }
    json["packs"] = Json::array();
    for (const PackBought& pack : answer.packs) json["packs"].push_back(to_buy_json(answer, pack));
    json["shops"] = Json::array();
    for (const ShopSum& shop : answer.shops)
        json["shops"].push_back({{"shop", shop.shop.empty() ? Json() : Json(shop.shop)},
                                 {"packs_minor", shop.packs.minor()},
                                 {"delivery_minor", shop.delivery ? shop.delivery->minor() : 0}});
    add_lines(answer, json);
    json["not_on_list"] = Json::array();
    for (const NotOnSale& missing : answer.missing)
        json["not_on_list"].push_back({{"name", missing.name},
                                       {"mass_g", missing.need.in(gram)},
                                       {"why", why_text(missing.why)},
                                       {"from_stock_g", missing.from_stock.in(gram)},
                                       {"lacking_g", missing.lacking.in(gram)},
                                       {"by", day_of(answer, missing.session)},
                                       {"session", missing.session + 1}});
    return json;
}

Rows shop_rows(const ShopAnswer& answer) {
    Rows rows{{"shop", "name", "size_g", "count", "price_minor", "total_minor", "currency", "by", "mass_g", "why"}};
    for (const PackBought& pack : answer.packs)
        rows.push_back({pack.pack.shop, pack.name, number_text(pack.mass.in(gram)), std::to_string(pack.count),
                        std::to_string(pack.price_minor), std::to_string(pack.total().minor()),
                        std::string(answer.currency->code), day_of(answer, pack.session),
                        number_text(pack.mass_of_all().in(gram)), ""});
    for (const NotOnSale& missing : answer.missing)
        rows.push_back({"", missing.name, "", "", "", "", "", day_of(answer, missing.session),
                        number_text(missing.lacking.in(gram)), why_text(missing.why)});
    return rows;
}

}  // namespace baitwright
