#include "files/feel_reader.h"

#include "quantities/quantity_text.h"

namespace baitwright {

namespace {

/// Wetter than ten times what just holds is no bait.
constexpr double wettest = 3;

std::optional<double> required_wetness(TableReader& table, std::string_view key) {
    if (!table.required(key, "1.2")) return std::nullopt;
    return table.number(key, 0, wettest);
}

}  // namespace

std::optional<Feel> FeelReader::read(TableReader& table) {
    FileFaults& faults = table.faults();
    const std::size_t faults_before = faults.count();
    Feel feel;
    feel.name = names_.claim(table).value_or("");
    feel.purpose = table.prose("purpose");
    const auto aim = required_wetness(table, "aim");
    const auto below = required_wetness(table, "below");
    table.refuse_unknown_keys();
    if (aim && below && *aim >= *below)
        faults.add(table.place_of_value("aim"), "inconsistent-values", "'aim' must be less than 'below'",
                   "the feel is aimed at inside its band, and the band ends at 'below'");
    else if (aim && *aim < edge_)
        faults.add(table.place_of_value("aim"), "inconsistent-values",
                   "'aim' must not be less than " + number_text(edge_) + ", where the feel before ends",
                   "write the feels from the driest to the wettest");
    if (below && *below <= edge_)
        faults.add(table.place_of_value("below"), "not-rising",
                   "'below' must be more than " + number_text(edge_) + ", where the feel before ends",
                   "write the feels from the driest to the wettest");
    if (below && *below > edge_) edge_ = *below;
    if (faults.count() > faults_before) return std::nullopt;
    feel.aim = *aim;
    feel.below = *below;
    return feel;
}

}  // namespace baitwright
