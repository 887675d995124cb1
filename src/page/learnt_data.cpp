#include "page/learnt_data.h"

#include <stdexcept>

namespace baitwright {

namespace {

/// The bags that answers take marks from.
LearntWater of_told_bags(const Shelf& shelf) {
    const LearntWater all = shelf.learnt_water(shelf.ingredient_names());
    std::vector<std::string> told;
    for (const LearntWater::Bag& bag : all.bags)
        if (bag.mixes > 0 || bag.measured_absorption > 0 || bag.measured_slump > 0) told.push_back(bag.name);
    return part_of(all, told);
}

void put_water_data(const LearntWater& water, Json& data) {
    data["hand"] = water.log_hand;
    data["memory"] = water.log_memory;
    data["bags"] = Json::array();
    for (const LearntWater::Bag& bag : water.bags)
        data["bags"].push_back({{"name", bag.name},
                                {"absorption", bag.log_absorption},
                                {"gap", bag.log_gap},
                                {"mixes", bag.mixes},
                                {"measured", Json::array({bag.measured_absorption, bag.measured_slump})}});
    data["rank"] = water.rank;
    data["factor"] = Json::array();
    for (const double number : water.factor) data["factor"].push_back(number);
}

Json factor_data(const std::optional<LearntFactor>& factor) {
    if (!factor) return {};
    return {{"mean", factor->mean}, {"sigma", factor->sigma}, {"times", factor->times}};
}

Json mixes_data(const Shelf& shelf) {
    Json mixes = Json::array();
    for (const std::string& name : shelf.recipe_names())
        if (const auto learnt = shelf.learnt_mix(name))
            mixes.push_back({{"name", name},
                             {"cup_weight", factor_data(learnt->cup_weight)},
                             {"hold", factor_data(learnt->hold)},
                             {"carpet", factor_data(learnt->carpet)}});
    return mixes;
}

int count_in(const Json& number) {
    return static_cast<int>(number.number());
}

std::optional<LearntFactor> factor_in(const Json& data) {
    if (data.is_null()) return std::nullopt;
    return LearntFactor{data["mean"].number(), data["sigma"].number(), count_in(data["times"])};
}

LearntWater water_in(const Json& data) {
    LearntWater water;
    water.log_hand = data["hand"].number();
    water.log_memory = data["memory"].number();
    for (const Json& bag : data["bags"])
        water.bags.push_back({bag["name"].text(), bag["absorption"].number(), bag["gap"].number(),
                              count_in(bag["mixes"]), bag["measured"][0].number(), bag["measured"][1].number()});
    water.rank = static_cast<std::size_t>(data["rank"].number());
    for (const Json& number : data["factor"]) water.factor.push_back(number.number());
    if (water.factor.size() != (2 + 2 * water.bags.size()) * water.rank)
        throw std::runtime_error("what was learnt is not whole");
    return water;
}

}  // namespace

Json learnt_data(const Shelf& shelf) {
    const LearntWater water = of_told_bags(shelf);
    Json mixes = mixes_data(shelf);
    if (!water.known() && mixes.empty()) return {};
    Json data = Json::object();
    if (water.known()) put_water_data(water, data);
    data["mixes"] = std::move(mixes);
    return data;
}

void put_learnt_data(const Json& data, MemoryShelf& shelf) {
    if (data.contains("rank")) shelf.put(water_in(data));
    for (const Json& mix : data["mixes"])
        shelf.put(LearntMix{mix["name"].text(), factor_in(mix["cup_weight"]), factor_in(mix["hold"]),
                            factor_in(mix["carpet"])});
}

}  // namespace baitwright
