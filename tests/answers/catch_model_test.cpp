#include "answers/paid/catch_model.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <map>
#include <sstream>

#include "answers/invented_seasons.h"
#include "answers/paid/beta_table.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

Takings takings_of(const reference::Row& row) {
    Takings takings;
    for (int blank = 0; blank < std::stoi(row.at("blanks")); ++blank) takings.add(0);
    std::istringstream rates(row.at("rates"));
    for (double rate = 0; rates >> rate;) takings.add(rate);
    return takings;
}

std::map<std::string, std::vector<reference::Row>> model_cases() {
    std::map<std::string, std::vector<reference::Row>> cases;
    for (const reference::Row& row : reference::rows_in("paid_model.csv")) cases[row.at("case")].push_back(row);
    return cases;
}

}  // namespace

// NumPy and SciPy on a finer grid, tests/reference/make_paid_tables.py: 400,000 worlds there and 2,048 drawn here, so
// that a quantile is known to a few hundredths and a chance to 0.02.
TEST_CASE("what a session is to bring, and the chance to bring most, are those that NumPy and SciPy find") {
    REQUIRE(model_cases().size() == 8);
    for (const auto& [name, rows] : model_cases()) {
        INFO(name);
        std::vector<Takings> ways;
        for (const reference::Row& row : rows) ways.push_back(takings_of(row));
        const DrawnTakings drawn = draw_takings(ways, 1);
        const std::vector<double> most = drawn.chances_of_most();
        for (std::size_t way = 0; way < rows.size(); ++way) {
            INFO("way " << way);
            const Range<double> expected = drawn.expected(way);
            CHECK(expected.low == Approx(std::stod(rows[way].at("low"))).epsilon(0.05));
            CHECK(expected.middle == Approx(std::stod(rows[way].at("middle"))).epsilon(0.03));
            CHECK(expected.high == Approx(std::stod(rows[way].at("high"))).epsilon(0.06));
            CHECK(most[way] == Approx(std::stod(rows[way].at("most"))).margin(0.02));
        }
    }
}

TEST_CASE("quantiles of the Beta distribution are SciPy's to 0.004") {
    for (const reference::Row& row : reference::rows_in("beta_quantile.csv")) {
        const double a = std::stod(row.at("a")), b = std::stod(row.at("b")), share = std::stod(row.at("share"));
        INFO(a << ", " << b << " at " << share);
        CHECK(-std::expm1(BetaTable(a, b).log_rest(share)) == Approx(std::stod(row.at("quantile"))).margin(0.004));
    }
}

TEST_CASE("nothing is drawn where nothing was ever caught") {
    Takings blanks;
    for (int i = 0; i < 6; ++i) blanks.add(0);
    const DrawnTakings drawn = draw_takings({blanks, blanks}, 1);
    CHECK(drawn.worlds == 0);
    CHECK(drawn.chances_of_most() == std::vector<double>{0.5, 0.5});
}

TEST_CASE("a way fished once is drawn further towards the others than one fished often") {
    Takings usual, once, often;
    for (const double rate : {0.5, 0.4, 0.6, 0.55, 0.45, 0.5, 0.7, 0.35}) {
        usual.add(rate);
        often.add(4 * rate);
    }
    once.add(2.0);
    const double of_once = draw_takings({usual, once}, 1).expected(1).middle;
    const double of_often = draw_takings({usual, often}, 1).expected(1).middle;
    CHECK(of_once < 0.7 * of_often);
    CHECK(of_once > draw_takings({usual, once}, 1).expected(0).middle);
}

TEST_CASE("all takings twice as large are told twice as large, and no other way is better for it") {
    std::mt19937_64 random(4);
    for (int season = 0; season < 20; ++season) {
        std::vector<Takings> ways = invented::fished({{0.5, 0.7, 0.4}, 6, 0.2, 0.8}, random), doubled = ways;
        for (Takings& way : doubled) way.log_mean += std::log(2.0);
        const DrawnTakings one = draw_takings(ways, 1), two = draw_takings(doubled, 1);
        for (std::size_t way = 0; way < ways.size(); ++way)
            CHECK(two.expected(way).middle == Approx(2 * one.expected(way).middle).epsilon(1e-9));
        CHECK(one.chances_of_most() == two.chances_of_most());
    }
}

// All of 2,000 seasons, and how often a true difference is found, by tests/benchmark/paid_power.
TEST_CASE("where ways of feeding are all alike, one is called better in at most 1 season of 20") {
    std::mt19937_64 random(22);
    int seasons = 0, claims = 0;
    for (const invented::Season& season : invented::without_difference())
        for (int i = 0; i < 4; ++i) {
            ++seasons;
            claims += invented::claimed(invented::fished(season, random)).is_sure ? 1 : 0;
        }
    CHECK(seasons == 324);
    CHECK(claims * 20 <= seasons);
}

TEST_CASE("three times as much is found within 20 sessions of each, more often than not, and never the other way") {
    std::mt19937_64 random(3);
    int found = 0;
    for (int i = 0; i < 40; ++i) {
        const invented::Claim claim = invented::claimed(invented::fished({{1.5, 0.5}, 20, 0.2, 0.8}, random));
        CHECK_FALSE((claim.is_sure && claim.better == 1));
        found += claim.is_sure ? 1 : 0;
    }
    CHECK(found > 20);
}
