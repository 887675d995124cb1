#include <fmt/format.h>

#include "report/blend_report.h"
#include "report/display.h"

namespace baitwright {

namespace {

std::string json_key(const MixPropertyFacts& facts) {
    if (facts.symbol == "g/g") return std::string(facts.key) + "_g_g";
    if (facts.symbol == "g/l") return std::string(facts.key) + "_g_l";
    return std::string(facts.key);
}

}  // namespace

Json properties_json(const std::vector<BlendPropertyValue>& properties) {
    Json json = Json::object();
    for (const MixPropertyFacts& facts : mix_properties()) {
        if (facts.property == MixProperty::price) continue;
        json[json_key(facts)] = nullptr;
        for (const BlendPropertyValue& value : properties)
            if (value.property == facts.property)
                json[json_key(facts)] = facts.symbol == "%" ? value.value / 100 : value.value;
    }
    return json;
}

std::string property_text(const BlendPropertyValue& property) {
    const MixPropertyFacts& facts = facts_of(property.property);
    if (facts.symbol == "g/g") return fmt::format("{} {:.2f} g/g", facts.name, property.value);
    if (facts.symbol == "g/l") return fmt::format("{} {} g/l", facts.name, significant(property.value, 2));
    if (facts.symbol == "%") return fmt::format("{} {}", facts.name, shown_percent(property.value / 100));
    return fmt::format("{} {:+.1f}", facts.name, property.value == 0 ? 0.0 : property.value);
}

}  // namespace baitwright
