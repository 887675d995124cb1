#include <algorithm>

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/cost_report.h"
#include "report/keeping_report.h"
#include "report/kept_text.h"

namespace baitwright {

namespace {

Json line_json(const CostLine& line) {
    return {{"name", line.name},
            {"mass_g", line.need.in(gram)},
            {"from_stock_g", line.from_stock.in(gram)},
            {"used_minor", json_minor(line.used)},
            {"outlay_minor", json_minor(line.outlay)},
            {"left_over_g", line.left_over.in(gram)},
            {"left_over_minor", json_minor(line.left_value)},
            {"keeps", keeping_json(line.keeps)}};
}

Json feed_json(const FeedNeed& feed) {
    return {{"of", feed.name},
            {"as", name_of(feed.form)},
            {"feel", feed.fed.feel.empty() ? Json() : Json(feed.fed.feel)},
            {"put_ins", feed.put_ins},
            {"when", feed.slow_times > 0 ? Json("slow") : Json()},
            {"expected", feed.slow_times > 0 ? Json(feed.slow_times) : Json()},
            {"count", feed.count},
            {"dry_mass_g", feed.dry.in(gram)},
            {"wet_mass_g", feed.wet_mass.in(gram)},
            {"wet_volume_ml", feed.wet_volume.in(millilitre)},
            {"water_g", (feed.water + feed.soak_water).in(gram)},
            {"free_offerings", feed.free_offerings}};
}

/// The money of a strategy; null where nothing has a price.
void add_money(const StrategyCost& cost, Json& json) {
    const auto minor = [&](std::int64_t amount) { return cost.currency ? Json(amount) : Json(); };
    const auto rate = [&](std::optional<double> amount) { return cost.currency && amount ? Json(*amount) : Json(); };
    json["currency"] = cost.currency ? Json(cost.currency->code) : Json();
    json["complete"] = cost.complete();
    json["unpriced"] = cost.unpriced;
    json["used_minor"] = minor(cost.used_minor);
    json["outlay_minor"] = minor(cost.outlay_minor);
    json["left_over_minor"] = minor(cost.left_over_minor);
    json["from_stock_minor"] = minor(cost.from_stock_minor);
    json["per_hour_minor"] = rate(cost.per_hour());
    json["per_session_minor"] = rate(cost.per_session());
    json["per_angler_minor"] = rate(cost.per_angler());
    json["per_kg_wet_minor"] = rate(cost.per_kilogram_wet());
    json["per_litre_minor"] = rate(cost.per_litre());
    json["used_p05_minor"] = cost.used_range ? Json(round_half_even(cost.used_range->low)) : Json();
    json["used_p50_minor"] = cost.used_range ? Json(round_half_even(cost.used_range->middle)) : Json();
    json["used_p95_minor"] = cost.used_range ? Json(round_half_even(cost.used_range->high)) : Json();
    json["proven"] = cost.proven;
}

Json strategy_of(const StrategyCost& cost) {
    const UnrolledStrategy& unrolled = cost.unrolled;
    Json json{{"name", unrolled.name},
              {"length_minutes", unrolled.length.in(minute)},
              {"people", unrolled.people},
              {"times", unrolled.times}};
    add_money(cost, json);
    json["dry_mass_g"] = unrolled.dry.in(gram);
    json["wet_mass_g"] = unrolled.wet_mass.in(gram);
    json["wet_volume_ml"] = unrolled.wet_volume.in(millilitre);
    json["water_g"] = (unrolled.water + unrolled.soak_water).in(gram);
    json["free_offerings"] = unrolled.free_offerings;
    const CostLine* dearest = dearest_line(cost);
    json["dearest"] = dearest ? Json{{"name", dearest->name}, {"used_minor", dearest->used->minor()}} : Json();
    json["packs"] = Json::array();
    for (const PackBought& bought : cost.packs) json["packs"].push_back(bought_json(bought));
    json["ingredients"] = Json::array();
    for (const CostLine& line : cost.lines) json["ingredients"].push_back(line_json(line));
    json["feeds"] = Json::array();
    for (const FeedNeed& feed : unrolled.feeds) json["feeds"].push_back(feed_json(feed));
    json["kept"] = kept_json(unrolled.kept);
    json["hookbaits"] = Json::array();
    for (const HookbaitNeed& hook : unrolled.hookbaits)
        json["hookbaits"].push_back({{"name", hook.name},
                                     {"count", hook.count},
                                     {"mass_g", hook.mass.in(gram)},
                                     {"volume_ml", hook.volume.in(millilitre)}});
    return json;
}

void add_rows(const StrategyCost& cost, Rows& rows) {
    const auto minor = [](const std::optional<Money>& money) {
        return money ? std::to_string(money->minor()) : std::string();
    };
    const std::string currency = cost.currency ? std::string(cost.currency->code) : std::string();
    for (const CostLine& line : cost.lines)
        rows.push_back({cost.unrolled.name, std::to_string(cost.unrolled.times), "ingredient", line.name,
                        number_text(line.need.in(gram)), number_text(line.from_stock.in(gram)), "", minor(line.used),
                        minor(line.outlay), number_text(line.left_over.in(gram)), minor(line.left_value), currency});
    for (const PackBought& bought : cost.packs)
        rows.push_back({cost.unrolled.name, std::to_string(cost.unrolled.times), "pack", bought.name,
                        number_text(bought.mass.in(gram)), "", std::to_string(bought.count), "",
                        std::to_string(bought.total().minor()), "", "", currency});
}

}  // namespace

std::vector<Warning> all_warnings(const std::vector<StrategyCost>& costs) {
    std::vector<Warning> all;
    for (const StrategyCost& cost : costs)
        for (const Warning& warning : cost.warnings)
            if (std::none_of(all.begin(), all.end(),
                             [&](const Warning& said) { return said.message == warning.message; }))
                all.push_back(warning);
    return all;
}

Json bought_json(const PackBought& bought) {
    const Mass* mass = std::get_if<Mass>(&bought.pack.size);
    const Volume* volume = std::get_if<Volume>(&bought.pack.size);
    return {{"name", bought.name},
            {"size_g", mass ? Json(mass->in(gram)) : Json()},
            {"size_ml", volume ? Json(volume->in(millilitre)) : Json()},
            {"count", bought.count},
            {"price_minor", bought.price_minor},
            {"total_minor", bought.total().minor()},
            {"shop", bought.pack.shop.empty() ? Json() : Json(bought.pack.shop)},
            {"on", bought.pack.on ? Json(date_text(*bought.pack.on)) : Json()}};
}

Json cost_json(const StrategyCost& cost) {
    Json json = json_record("cost", cost.warnings);
    json["strategies"] = Json::array({strategy_of(cost)});
    const Json cheapest = cost.complete() && cost.currency ? Json(cost.unrolled.name) : Json();
    json["cheapest_used"] = cheapest;
    json["cheapest_outlay"] = cheapest;
    json["differences"] = Json::array();
    return json;
}

Json compare_json(const StrategyComparison& comparison) {
    Json json = json_record("compare", all_warnings(comparison.costs));
    json["strategies"] = Json::array();
    for (const StrategyCost& cost : comparison.costs) json["strategies"].push_back(strategy_of(cost));
    const auto name = [&](const std::optional<std::size_t>& place) {
        return place ? Json(comparison.costs[*place].unrolled.name) : Json();
    };
    json["cheapest_used"] = name(comparison.cheapest_used);
    json["cheapest_outlay"] = name(comparison.cheapest_outlay);
    json["differences"] = Json::array();
    const std::vector<std::string> sentences = difference_sentences(comparison);
    for (std::size_t i = 0; i < sentences.size(); ++i) {
        const CostDifference& found = comparison.differences[i];
        json["differences"].push_back({{"dearer", comparison.costs[found.dearer].unrolled.name},
                                       {"cheaper", comparison.costs[found.cheaper].unrolled.name},
                                       {"more_minor", found.more_minor},
                                       {"ingredient", found.ingredient.empty() ? Json() : Json(found.ingredient)},
                                       {"ingredient_more_minor", found.ingredient_more_minor},
                                       {"sentence", sentences[i]}});
    }
    return json;
}

Rows cost_rows(const std::vector<StrategyCost>& costs) {
    Rows rows{{"strategy", "times", "what", "name", "mass_g", "from_stock_g", "count", "used_minor", "outlay_minor",
               "left_over_g", "left_over_minor", "currency"}};
    for (const StrategyCost& cost : costs) add_rows(cost, rows);
    return rows;
}

}  // namespace baitwright
