// The day of `docs/worked-session.md`, second part, added up by hand: two anglers, two feels of one mix, a pinch of
// pellets at every put-in, balls kept ready for slow bites; half a kilo of mix frozen and fished the week after.
#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>

#include "cli/program_run.h"

namespace {

using Json = nlohmann::json;

const std::string on_the_day = R"("hot shelf" --people 2 --on 2026-08-15)",
                  week_after = R"("hot shelf" --people 2 --on 2026-08-22)";

/// The two anglers' shed and library.
class WorkedDay {
public:
    WorkedDay() {
        for (const char* file : {"hot-shelf.toml", "garden-worms.toml"})
            program_run::write(
                here_.path() / file,
                program_run::whole_file(program_run::fs::path(BAITWRIGHT_SOURCE_DIR) / "tests/cli/documented" / file));
        type("ingredient add garden-worms.toml");
        type("strategy add hot-shelf.toml");
    }

    void type(const std::string& line) const { REQUIRE(program_run::run(here_.path(), line).status == 0); }
    [[nodiscard]] Json ask(const std::string& line) const {
        return Json::parse(program_run::run(here_.path(), line + " --json").output);
    }
    /// One portion alone: what `mix` says of it.
    [[nodiscard]] Json one(const std::string& mix, const std::string& portion) const {
        return ask("mix \"" + mix + "\" " + portion);
    }

private:
    program_run::Folder here_;
};

constexpr double anglers = 2, spare = 1.10, everyone = anglers * spare;
constexpr double cups = 2, slow_balls = 3, pellet_balls = 2;
constexpr double pots = 59;  // every 5 min from 5 to 295 min of 300
const std::map<std::string, double> silt_bed{
    {"fishmeal, brown", 0.4}, {"brown crumb", 0.3}, {"ground fishmeal pellet", 0.2}, {"maize meal", 0.1}};
/// Pence a gram of a pack, as shipped.
const std::map<std::string, double> pence_a_gram{{"fishmeal, brown", 420 / 1000.},
                                                 {"brown crumb", 210 / 1000.},
                                                 {"ground fishmeal pellet", 310 / 1000.},
                                                 {"maize meal", 190 / 1000.},
                                                 {"fishmeal micro pellet 2 mm", 310 / 900.}};

/// What is in the table: grams dry, grams of water to stir in, grams as it goes in.
struct Row {
    double dry, water, wet;
    Row operator+(const Row& other) const { return {dry + other.dry, water + other.water, wet + other.wet}; }
    Row operator*(double times) const { return {times * dry, times * water, times * wet}; }
};

Row row_of(const Json& portion) {
    return {portion["dry_mass_g"], portion["water_to_add_g"], portion["wet_mass_g"]};
}

struct DayByHand {
    Row soft, firm, mix;  ///< the cups, the balls, and both
    double pellets;       ///< dry
};

DayByHand by_hand(const WorkedDay& bench) {
    DayByHand day;
    day.soft = row_of(bench.one("silt bed", "--cups 1x250ml --feel soft")) * (cups * everyone);
    day.firm = row_of(bench.one("silt bed", "--balls 1x45mm --feel firm")) * (slow_balls * everyone);
    day.mix = day.soft + day.firm;
    day.pellets = (pellet_balls * double(bench.one("fishmeal micro pellet 2 mm", "--balls 1x45mm")["dry_mass_g"]) +
                   pots * double(bench.one("fishmeal micro pellet 2 mm", "--cups 1x10ml")["dry_mass_g"])) *
                  everyone;
    return day;
}

double total_of(const Json& plan, const std::string& name) {
    for (const Json& total : plan["totals"])
        if (total["name"] == name) return total["mass_g"];
    return 0;
}

double poured(const Json& plan, const char* key, const char* list) {
    double sum = 0;
    for (const Json& one : plan[list]) sum += double(one[key]);
    return sum;
}

Approx near(double value) {
    return Approx(value).epsilon(1e-9);
}

/// Of what the mix is made, the pellets, and the money for all of them.
void check_needs(const Json& plan, double mix_dry, double pellets) {
    double pence = pellets * pence_a_gram.at("fishmeal micro pellet 2 mm");
    for (const auto& [name, share] : silt_bed) {
        CAPTURE(name);
        CHECK(total_of(plan, name) == near(share * mix_dry));
        pence += share * mix_dry * pence_a_gram.at(name);
    }
    CHECK(total_of(plan, "fishmeal micro pellet 2 mm") == near(pellets));
    CHECK(std::abs(double(plan["cost"]["used_minor"]) - pence) <= 0.5);
    CHECK(plan["cost"]["unpriced"] == Json::array({"garden worms"}));
}

void check_water(const Json& plan, double to_stir_in) {
    CHECK(poured(plan, "water_g", "batches") == near(to_stir_in));
    CHECK(double(plan["water_to_carry_g"]) ==
          near(to_stir_in + poured(plan, "water_to_pour_g", "soaks") + double(plan["hot_day"]["sprayed_g"])));
}

}  // namespace

TEST_CASE("the worked day adds up by hand: dry, water and money, and the pellets of balls and pots in one soak") {
    const WorkedDay bench;
    const DayByHand day = by_hand(bench);
    const Json plan = bench.ask("plan " + on_the_day + " --start 10:00 --travel 40min --hands 2 --venue \"long pit\"");
    check_needs(plan, day.mix.dry, day.pellets);
    check_water(plan, day.mix.water);
    REQUIRE(plan["soaks"].size() == 1);
    CHECK(double(plan["soaks"][0]["dry_mass_g"]) == near(day.pellets));
    CHECK(plan["breaches"].empty());
    const Json& tub = plan["batches"][0];
    CHECK(double(tub["let_downs"][0]["dry_mass_g"]) == near(day.soft.dry));
    CHECK(double(tub["let_downs"][0]["water_g"]) + double(tub["water_first_g"]) + double(tub["water_rest_g"]) ==
          near(day.mix.water));
    const Json mix = bench.one("silt bed", "--cups 2x250ml --balls 3x45mm --feel soft,firm --people 2 --spare 10%");
    CHECK(double(mix["dry_mass_g"]) == near(day.mix.dry));
    CHECK(poured(mix, "wet_mass_g", "targets") == near(day.mix.wet));
    CHECK(poured(mix, "water_g", "targets") == near(day.mix.water));
}

TEST_CASE("frozen on the day, fished the week after: what is in it is neither weighed, wetted, bought nor paid again") {
    const WorkedDay bench;
    const DayByHand day = by_hand(bench);
    bench.type(R"(stock keep "silt bed" 500g --feel soft --frozen --on 2026-08-15)");
    const double dry_kept = 500 * day.soft.dry / day.soft.wet, water_kept = 500 * day.soft.water / day.soft.wet;
    const Json plan = bench.ask("plan " + week_after + " --start 10:00");
    check_needs(plan, day.mix.dry - dry_kept, day.pellets);
    check_water(plan, day.mix.water - water_kept);
    const Json shop = bench.ask("shop " + week_after);
    int found = 0;
    for (const Json& need : shop["needs"]) {
        const auto part = silt_bed.find(need["name"]);
        if (part == silt_bed.end()) continue;
        ++found;
        const double needed = part->second * (day.mix.dry - dry_kept);  // told in whole grams, none too few
        CHECK(double(need["mass_g"]) >= needed - 1e-3);
        CHECK(double(need["mass_g"]) < needed + 1);
    }
    CHECK(found == 4);
}

TEST_CASE("the shed after both weeks holds what was bought less what was used, and no mix is left of what was frozen") {
    const WorkedDay bench;
    const DayByHand day = by_hand(bench);
    for (const auto& [name, share] : silt_bed) bench.type("stock buy \"" + name + "\" 2x1kg --on 2026-08-13");
    bench.type("stock buy \"fishmeal micro pellet 2 mm\" 4x900g --on 2026-08-13");
    bench.type("stock count \"garden worms\" 1kg --on 2026-08-14");
    bench.type("stock session " + on_the_day);
    bench.type(R"(stock keep "silt bed" 500g --feel soft --frozen --on 2026-08-15)");
    bench.type("stock session " + week_after);
    const double dry_kept = 500 * day.soft.dry / day.soft.wet;
    std::map<std::string, double> left;
    const Json shed = bench.ask("stock");
    for (const Json& item : shed["items"]) left[item["name"]] = item["left_g"];
    for (const auto& [name, share] : silt_bed) {
        CAPTURE(name);
        CHECK(left[name] == Approx(2000 - share * (2 * day.mix.dry - dry_kept)).margin(0.01));
    }
    CHECK(left["fishmeal micro pellet 2 mm"] == Approx(3600 - 2 * day.pellets).margin(0.01));
    CHECK(left["silt bed"] == 0);
}
