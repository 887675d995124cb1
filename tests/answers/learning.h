#pragma once

#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>

#include "answers/learn/learn_from_log.h"
#include "bait/draft_shelf.h"

/// Logs for the tests of what they teach.
namespace baitwright::learning {

inline Ingredient thirsty(const std::string& name, double absorption, double slump) {
    Ingredient in;
    in.name = name;
    in.kind = IngredientKind::base;
    in.loose_density = draft::stated(500.0 * gram_per_litre);
    in.absorption = draft::stated<Ratio>(absorption, 0.2);
    in.slump = draft::stated<Ratio>(slump, 0.2);
    in.moisture = draft::stated<Ratio>(0.1, 0.1);
    in.absorption.source = in.slump.source = {Origin::standing, "from memory"};
    return in;
}

inline LogEntry mixed(std::int64_t id, Date on, LoggedMix mix) {
    LogEntry entry;
    entry.id = id;
    entry.on = on;
    entry.what = std::move(mix);
    return entry;
}

/// A kilo of one ingredient at a wetness.
inline LoggedMix kilo_of(const std::string& of, double wetness, double water, double within = 0.03) {
    LoggedMix mix;
    mix.of = "all " + of;
    mix.wetness = wetness;
    mix.within = within;
    mix.dry = 1.0 * kilogram;
    mix.water = water * gram;
    mix.parts = {{of, 1.0 * kilogram}};
    return mix;
}

/// One of the logs that SciPy was asked about (`tests/reference/learn_cases.json`).
struct Case {
    MemoryShelf shelf;
    LearnRequest request;
};

inline void put_ingredient(const std::string& name, const nlohmann::json& from, MemoryShelf& shelf) {
    Ingredient in = thirsty(name, from["absorption"], from["slump"]);
    in.absorption.spread = from["absorption_spread"].get<double>();
    in.slump.spread = from["slump_spread"].get<double>();
    in.moisture = draft::stated<Ratio>(from["moisture"].get<double>(), from["moisture_spread"].get<double>());
    if (from["published"]) in.absorption.source = in.slump.source = {Origin::published, "a table"};
    shelf.put(in);
    if (!from.contains("measured")) return;
    const auto& found = from["measured"];
    for (const auto& [key, mark] : {std::pair("absorption", &in.absorption), std::pair("slump", &in.slump)})
        if (found.contains(key))
            *mark = {found[key].get<double>(), found["spread"].get<double>(), {Origin::measured, "a test"}};
    if (found.contains("moisture")) in.moisture.value = found["moisture"].get<double>();
    shelf.put(in);
}

inline LogEntry entry_of(const nlohmann::json& from) {
    LoggedMix mix;
    mix.of = from["of"];
    mix.wetness = from["wetness"].get<double>();
    mix.within = from["within"].get<double>();
    mix.water = from["water"].get<double>() * gram;
    mix.wetting = from["wetting"].get<double>() * gram;
    Mass dry;
    for (const auto& part : from["parts"]) {
        mix.parts.push_back({part["of"], part["mass"].get<double>() * gram});
        dry += mix.parts.back().mass;
        if (part.contains("moisture")) mix.parts.back().moisture = part["moisture"].get<double>();
    }
    mix.dry = dry;
    LogEntry entry = mixed(from["id"], parse_date(from["on"].get<std::string>()), std::move(mix));
    entry.believed = from["believed"];
    return entry;
}

inline void fill(const nlohmann::json& from, Case& made) {
    for (const auto& [name, in] : from["ingredients"].items()) put_ingredient(name, in, made.shelf);
    for (const auto& bag : from["bags"])
        made.request.bags.push_back({bag["of"], parse_date(bag["on"].get<std::string>())});
    for (const auto& entry : from["log"]) made.request.log.push_back(entry_of(entry));
}

inline nlohmann::json cases(const char* what = "cases") {
    std::ifstream file(std::string(BAITWRIGHT_SOURCE_DIR) + "/tests/reference/learn_cases.json");
    return nlohmann::json::parse(file)[what];
}

inline LogEntry entry_on(std::int64_t id, Date on, LoggedThing what) {
    LogEntry entry;
    entry.id = id;
    entry.on = on;
    entry.what = std::move(what);
    return entry;
}

inline const Learnt* learnt(const LearnAnswer& answer, const std::string& name, Learnt::Property property) {
    for (const Learnt& one_of : answer.posterior)
        if (one_of.name == name && one_of.property == property) return &one_of;
    return nullptr;
}

}  // namespace baitwright::learning
