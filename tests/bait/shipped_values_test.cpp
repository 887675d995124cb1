#include <toml++/toml.h>
#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>
#include <functional>
#include <map>
#include <optional>

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

/// The shipped ingredients against the tables they name as their source: every value that says "USDA SR24 <number>",
/// "FAO feed manual", "FAO/INFOODS" or "Chang 1988" is looked up.
using namespace baitwright;

namespace {

struct SourcedValue {
    std::string where;  ///< "brown crumb, moisture"
    std::string key, text, source;
};

void collect(const std::string& name, const std::string& key, const toml::table& entry,
             std::vector<SourcedValue>& into) {
    const auto source = entry["source"].value<std::string>();
    if (!source) return;
    if (const auto value = entry["value"].value<std::string>())
        into.push_back({name + ", " + key, key, *value, *source});
    if (key != "composition") return;
    for (const auto& [part, text] : entry)
        if (part != "source" && text.is_string())
            into.push_back(
                {name + ", " + std::string(part.str()), std::string(part.str()), *text.value<std::string>(), *source});
}

std::vector<SourcedValue> shipped_values() {
    std::vector<SourcedValue> values;
    for (const auto& file :
         std::filesystem::directory_iterator(std::string(BAITWRIGHT_SOURCE_DIR) + "/recipes/ingredients")) {
        const toml::table table = toml::parse_file(file.path().string());
        const toml::array* ingredients = table["ingredient"].as_array();
        if (!ingredients) continue;
        for (const toml::node& ingredient : *ingredients) {
            const toml::table& entry = *ingredient.as_table();
            const std::string name = entry["name"].value_or(std::string("nameless"));
            for (const auto& [key, value] : entry)
                if (const toml::table* inner = value.as_table()) collect(name, std::string(key.str()), *inner, values);
        }
    }
    return values;
}

std::optional<double> number(const reference::Row& row, const std::string& column) {
    if (row.at(column).empty()) return std::nullopt;
    return std::stod(row.at(column));
}

/// What the table says for a key, in the unit of the table's column, and how far rounding may move it.
struct Looked {
    double expected, tolerance;
};

constexpr double salt_per_sodium = 58.443 / 22.990;  // molar masses, IUPAC 2021 (from memory)
constexpr double us_cup_ml = 236.5882365;            // NIST SP 811, appendix B (from memory)

std::optional<Looked> looked_up(const reference::Row& row, const std::string& key) {
    const auto column = [&](const char* name) -> std::optional<Looked> {
        const auto value = number(row, name);
        if (!value) return std::nullopt;
        return Looked{*value, 1e-9};
    };
    if (key == "moisture" || key == "water") return column("water_pct");
    if (key == "protein" || key == "fat" || key == "carbohydrate" || key == "ash" || key == "fibre")
        return column((key + "_pct").c_str());
    if (key == "salt") {
        const auto sodium = number(row, "sodium_mg_per_100g");
        if (!sodium) return std::nullopt;
        // The factor is shipped rounded to 2.54, the salt to 0.001 %, table salt cut at 0.01 %.
        const double salt = *sodium / 1000 * salt_per_sodium;
        return Looked{salt, (salt < 10 ? 0.0005 : 0.01) + (salt_per_sodium / 2.54 - 1) * salt};
    }
    return std::nullopt;
}

double percent_of(const SourcedValue& value) {
    return parse<Ratio>(value.text).in(percent);
}

std::map<std::string, reference::Row> sr24() {
    std::map<std::string, reference::Row> rows;
    for (const auto& row : reference::rows_in("sr24.csv")) rows[row.at("ndb_no")] = row;
    return rows;
}

std::string sr24_number(const SourcedValue& value) {
    const auto at = value.source.find("SR24 ");
    return at == std::string::npos ? std::string() : value.source.substr(at + 5, 5);
}

bool starts_with(const std::string& text, std::string_view start) {
    return text.rfind(start, 0) == 0;
}

/// The lines of bulk_density.csv by the material they name: "fish meal" of "fish meal (FAO feed manual)".
std::map<std::string, std::vector<double>> fao_densities(const std::string& table) {
    std::map<std::string, std::vector<double>> bounds;
    for (const auto& row : reference::rows_in("bulk_density.csv")) {
        const auto at = row.at("inputs").find(" (" + table);
        if (at != std::string::npos) bounds[row.at("inputs").substr(0, at)] = reference::numbers_in(row.at("expected"));
    }
    return bounds;
}

}  // namespace

// Source: tests/reference/sr24.csv, from the public-domain tables.
TEST_CASE("shipped compositions and moistures are the copies of the table they claim to be") {
    const auto rows = sr24();
    int tested = 0;
    for (const SourcedValue& value : shipped_values()) {
        const auto row = rows.find(sr24_number(value));
        if (row == rows.end()) continue;
        const auto looked = looked_up(row->second, value.key);
        if (!looked) continue;
        CAPTURE(value.where, value.source);
        CHECK(percent_of(value) == Approx(looked->expected).epsilon(0).margin(looked->tolerance));
        ++tested;
    }
    CHECK(tested > 250);
}

// Source: tests/reference/sr24.csv: grams of a level US cup; our values are rounded to 1 g/l or 0.01 g/ml.
TEST_CASE("shipped densities by the US cup are the copies of the table they claim to be") {
    const auto rows = sr24();
    int tested = 0;
    for (const SourcedValue& value : shipped_values()) {
        const auto row = rows.find(sr24_number(value));
        if (row == rows.end() || (value.key != "loose_density" && value.key != "density")) continue;
        const auto grams = number(row->second, "us_cup_g");
        CAPTURE(value.where, value.source);
        REQUIRE(grams.has_value());
        const double rounding = value.key == "density" ? 0.005 : 0.0005;
        CHECK(parse<Density>(value.text).in(gram_per_millilitre) ==
              Approx(*grams / us_cup_ml).epsilon(0).margin(rounding * 1.0001));
        ++tested;
    }
    CHECK(tested > 20);
}

// Source: tests/reference/composition.csv, row by row; the sodium there is checked as salt above.
TEST_CASE("the compositions read at the source are those shipped") {
    const auto values = shipped_values();
    for (const auto& row : reference::rows_in("composition.csv")) {
        const auto at = row.at("inputs").find("SR24 ");
        const std::string sr24_name = row.at("inputs").substr(at, 10);
        const auto expected = reference::numbers_in(row.at("expected"));
        const std::map<std::string, double> by_key{{"moisture", expected.at(0)},     {"water", expected.at(0)},
                                                   {"protein", expected.at(1)},      {"fat", expected.at(2)},
                                                   {"carbohydrate", expected.at(3)}, {"ash", expected.at(4)}};
        int tested = 0;
        for (const SourcedValue& value : values) {
            const auto key = by_key.find(value.key);
            if (value.source.find(sr24_name) == std::string::npos || key == by_key.end()) continue;
            CAPTURE(row.at("id"), value.where);
            CHECK(percent_of(value) == Approx(key->second).epsilon(0).margin(1e-9));
            ++tested;
        }
        CAPTURE(row.at("id"));
        CHECK(tested >= 5);
    }
}

// Source: tests/reference/bulk_density.csv, FAO feed manual and FAO/INFOODS rows.
TEST_CASE("shipped loose densities lie where the feed manual they name has them") {
    const auto manual = fao_densities("FAO feed manual"), infoods = fao_densities("FAO/INFOODS v2");
    int tested = 0;
    for (const SourcedValue& value : shipped_values()) {
        const bool of_manual = starts_with(value.source, "published: FAO feed manual");
        if (!of_manual && !starts_with(value.source, "published: FAO/INFOODS")) continue;
        std::optional<std::vector<double>> bounds;
        for (const auto& [material, its] : of_manual ? manual : infoods) {
            const std::string plain = material.substr(0, material.find(" 44%"));
            if (value.source.find(", " + plain + " ") != std::string::npos) bounds = its;
        }
        CAPTURE(value.where, value.source);
        REQUIRE(bounds.has_value());
        const double ours = parse<Density>(value.text).in(gram_per_millilitre);
        CHECK(ours >= bounds->front() - 1e-9);
        CHECK(ours <= bounds->back() + 1e-9);
        ++tested;
    }
    CHECK(tested >= 13);
}

// Source: tests/reference/particle_density.csv, row by row.
TEST_CASE("shipped grains have the kernel density that was measured") {
    int tested = 0;
    for (const auto& row : reference::rows_in("particle_density.csv")) {
        const std::string grain = row.at("inputs").substr(0, row.at("inputs").find(" kernel"));
        for (const SourcedValue& value : shipped_values()) {
            if (value.key != "skeleton_density" || value.source.find(grain + " kernel true") == std::string::npos)
                continue;
            CAPTURE(row.at("id"), value.where);
            CHECK(parse<Density>(value.text).in(gram_per_millilitre) ==
                  Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-9));
            ++tested;
        }
    }
    CHECK(tested == 3);
}

// Source: tests/reference/bulk_density.csv, rows 56 to 76 and 78: the arithmetic of cups, pounds and blends; the same
// division on both sides, so a check of coding.
TEST_CASE("cups, pounds per cubic foot and blends come to the published densities") {
    const Volume us_cup = 0.5 * us_pint;
    const Density pound_per_cubic_foot = 1.0 * pound / (1.0 * foot * (1.0 * foot) * (1.0 * foot));
    int tested = 0;
    for (const auto& row : reference::rows_in("bulk_density.csv")) {
        const auto in = reference::numbers_in(row.at("inputs"));
        const double expected = std::stod(row.at("expected"));
        CAPTURE(row.at("id"), row.at("source"));
        if (row.at("id") == "BULK_DENSITY-76") {
            CHECK((in.at(0) * pound_per_cubic_foot).in(gram_per_litre) == Approx(expected).epsilon(0).margin(0.01));
        } else if (row.at("id") == "BULK_DENSITY-78") {
            const Volume side_by_side = 0.7 * kilogram / (40 * pound_per_cubic_foot) +
                                        0.2 * kilogram / (35 * pound_per_cubic_foot) +
                                        0.1 * kilogram / (45 * pound_per_cubic_foot);
            CHECK(1.0 * kilogram / side_by_side / pound_per_cubic_foot == Approx(expected).epsilon(0).margin(1e-3));
        } else if (row.at("inputs").find("per US cup") != std::string::npos) {
            CHECK((in.back() * gram / us_cup).in(gram_per_millilitre) == Approx(expected).epsilon(0).margin(1e-4));
        } else {
            continue;
        }
        ++tested;
    }
    CHECK(tested == 18);
}

// Source: tests/reference/packing.csv: spheres alike pack no closer than 0.649 at random; poured pellets stay below.
TEST_CASE("no shipped pellet is poured closer than spheres pack at random") {
    double closest = 0;
    for (const auto& row : reference::rows_in("packing.csv"))
        for (const double bound : reference::numbers_in(row.at("expected"))) closest = std::max(closest, bound);
    CHECK(closest == Approx(0.649));
    const toml::table table =
        toml::parse_file(std::string(BAITWRIGHT_SOURCE_DIR) + "/recipes/ingredients/pellets.toml");
    int tested = 0;
    for (const toml::node& node : *table["ingredient"].as_array()) {
        const toml::table& entry = *node.as_table();
        const auto text = [&](const char* key) {
            if (const toml::table* property = entry[key].as_table())
                return property->get("value")->value_or(std::string());
            return entry[key].value_or(std::string());
        };
        if (text("envelope_density").empty()) continue;
        CAPTURE(text("name"));
        CHECK(parse<Density>(text("loose_density")) / parse<Density>(text("envelope_density")) < closest);
        ++tested;
    }
    CHECK(tested > 0);
}
