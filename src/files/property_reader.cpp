#include "files/property_reader.h"

#include <cmath>

#include "quantities/units.h"

namespace baitwright {

std::string example_of(const toml::node& node, double highest) {
    const auto written = node.is_number() ? node.value<double>() : std::nullopt;
    if (written && std::isfinite(*written)) return number_text(*written);
    return number_text_within(highest / 2, 0.1 * highest);
}

std::optional<Ratio> read_spread(TableReader& table) {
    const toml::node* node = table.find("spread");
    if (!node) return std::nullopt;
    const PropertyFacts<NoDimension> facts{"spread", "%", percent, 0, 300, false, 0};
    return read_value(*node, facts, table.faults());
}

std::optional<Source> read_source(TableReader& table) {
    const toml::node* node = table.find("source");
    if (!node) return std::nullopt;
    if (!text_of(*node, "source", "measured: level vessel, 2026-03-01", table.faults())) return std::nullopt;
    auto source = parsed(*node, "source", "", table.faults(), parse_source);
    if (!source || source->origin != Origin::derived) return source;
    table.faults().add(place_of(*node), "derived-source", "'source' cannot be 'derived' in a file",
                       "leave the property out and it is derived again, or say where the number comes from");
    return std::nullopt;
}

}  // namespace baitwright
