#include "page/bank.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "answers/mix/answer_mix.h"
#include "library/open_library.h"
#include "opened_page.h"
#include "page/learnt_data.h"
#include "quantities/units.h"
#include "questions/shown_units_of.h"
#include "report/shown_units.h"

using namespace baitwright;
using opened_page::data_of;
using opened_page::opening;

namespace {

Json asked(const char* what, const char* word, Json flags, Json give = {"told", "json"}) {
    return {{"ask", what}, {"words", {word}}, {"flags", std::move(flags)}, {"give", std::move(give)}};
}

}  // namespace

TEST_CASE("a bank opens on the whole library, whatever strategies it is made for") {
    const auto shelf = shipped_shelf();
    Bank bank;
    const Json opened = bank.ask(opening(data_of(*shelf, {"open carpet"})));
    REQUIRE(opened.contains("strategies"));
    REQUIRE(opened["strategies"].size() == shelf->strategy_names().size());
    const auto found = std::find_if(opened["strategies"].begin(), opened["strategies"].end(),
                                    [](const Json& one) { return one["name"] == "open carpet"; });
    REQUIRE(found != opened["strategies"].end());
    const Json& strategy = *found;
    CHECK(strategy["length_minutes"] == 300);
    CHECK(strategy["depth_m"] == 2.5);
    CHECK_FALSE(strategy["mixes"].empty());
    CHECK(strategy["feels"]["silt bed"] == "soft");  // in the opening cups
    CHECK(opened["feels"] == Json({"dusty", "crumbly", "firm", "tacky", "soft", "slop"}));
    CHECK(opened["mixes"].size() == shelf->recipe_names().size());
    CHECK(opened["ingredients"].size() == shelf->ingredient_names().size());
    CHECK(opened["pellets"].size() < opened["ingredients"].size());
}

TEST_CASE("every shipped strategy is planned and costed out of the page's own library") {
    const auto shelf = shipped_shelf();
    for (const std::string& name : shelf->strategy_names()) {
        INFO(name);
        Bank bank;
        REQUIRE_FALSE(bank.ask(opening(data_of(*shelf, {name}))).contains("errors"));
        const Json plan = bank.ask(asked("plan", name.c_str(), Json::object()));
        REQUIRE(plan.contains("json"));
        CHECK_FALSE(plan["json"]["feeds"].empty());
        CHECK(plan["told"][0]["kind"] == "title");
        const Json cost = bank.ask(asked("cost", name.c_str(), Json::object()));
        REQUIRE(cost.contains("json"));
        CHECK(cost["json"]["strategies"][0]["used_minor"].number() > 0);
    }
}

TEST_CASE("what is in the shed when the page is made is not bought again") {
    const auto shelf = shipped_shelf();
    BankContents contents;
    contents.library = shelf.get();
    contents.made_on = parse_date("2026-05-16");
    contents.strategies.push_back({shelf.get(), shelf->strategy("open carpet")});
    const auto outlay = [&] {
        Bank bank;
        bank.ask(opening(bank_data(contents)));
        return bank.ask(asked("cost", "open carpet", Json::object()))["json"]["strategies"][0]["outlay_minor"].number();
    };
    const double empty = outlay();
    contents.stock.put("brown crumb", {5.0 * kilogram});
    CHECK(outlay() < empty);
}

TEST_CASE("a page answers in the currency that its maker always uses, where anything is priced in it") {
    const auto shelf = shipped_shelf();
    MemoryShelf own(shelf.get());
    Ingredient corn = shelf->ingredient("sweetcorn");
    corn.packs = {{0.34 * kilogram, parse_money("€1.30"), std::nullopt, {}}};
    own.put(corn);
    BankContents contents;
    contents.library = &own;
    contents.made_on = parse_date("2026-05-16");
    contents.version = "0.1.0";
    contents.strategies.push_back({&own, own.strategy("margin")});
    for (const char* code : {"GBP", "EUR"}) {
        contents.usual_currency = &currency_named(code);
        const Json data = bank_data(contents);
        CHECK(data["currency"] == code);
        Json open = opening(data);
        open["currency"] = data["currency"];
        Bank bank;
        REQUIRE_FALSE(bank.ask(open).contains("errors"));
        const Json cost = bank.ask(asked("cost", "margin", Json::object()));
        REQUIRE(cost.contains("json"));
        CHECK(cost["json"]["strategies"][0]["currency"] == code);
        CHECK(cost["status"] == 1);
    }
}

TEST_CASE("only the forms that are wanted are given") {
    const auto shelf = shipped_shelf();
    Bank bank;
    bank.ask(opening(data_of(*shelf, {"open carpet"})));
    const Json flags{{"--depth", {"2.5m"}}};
    const std::string mix = shelf->recipe_names().front();
    const Json told = bank.ask({{"ask", "drop"}, {"words", {mix}}, {"flags", flags}});
    CHECK(told.contains("told"));
    CHECK_FALSE(told.contains("json"));
    CHECK_FALSE(told.contains("picture"));
    Json wide = asked("drop", mix.c_str(), flags, {"picture"}), narrow = wide;
    narrow["narrow"] = true;
    const auto width = [&](const Json& request) {
        const std::string svg = bank.ask(request)["picture"].text();
        return std::stod(svg.substr(svg.find("width=\"") + 7));
    };
    CHECK(width(wide) == 760);
    CHECK(width(narrow) <= 360);
}

TEST_CASE("a tub is put right, pellets are soaked and the rest of a session is reckoned as the program does") {
    const auto shelf = shipped_shelf();
    Bank bank;
    bank.ask(opening(data_of(*shelf, {"open carpet"})));
    const Json tub = bank.ask(asked("water", "silt bed", {{"--dry-mass", {"1kg"}}, {"--weighs", {"1.4kg"}}}));
    CHECK(tub["status"] == 0);
    CHECK(tub["json"]["water_in_g"].number() == Approx(400));  // what it weighs less what was dry
    CHECK(tub["told"][0]["kind"] == "title");
    const Json soak = bank.ask(asked("soak", "fishmeal pellet 4 mm", {{"--amount", {"500g"}}}));
    CHECK(soak["status"] == 0);
    CHECK(soak["json"]["command"] == "soak");
    const Json pumped = bank.ask(asked("soak", "fishmeal pellet 4 mm", {{"--amount", {"500g"}}, {"--pump", {"80ml"}}}));
    CHECK(pumped["errors"][0]["code"] == "unfit-flag");  // only expanders are pumped
    const Json rest = bank.ask(asked("plan", "open carpet", {{"--now", {"2h"}}, {"--left", {"1 l silt bed"}}}));
    CHECK(rest["json"]["now"]["minute"].number() == Approx(120));
    CHECK(rest["told"][0]["kind"] == "title");
}

TEST_CASE("what is wrong with a request is told, and never thrown") {
    const auto shelf = shipped_shelf();
    Bank bank;
    bank.ask(opening(data_of(*shelf, {"open carpet"})));
    const auto code = [&](const Json& request) { return bank.ask(request).at("errors")[0].at("code").text(); };
    CHECK(code(asked("mix", "no such mix", Json::object())) == "unknown-recipe");
    CHECK(code(asked("mix", "silt bed", {{"--cups", {"4"}}})) != "bug");
    CHECK(code(asked("sing", "silt bed", Json::object())) == "unknown-question");
    CHECK(code({{"ask", "mix"}}) == "missing-word");
    CHECK(code({{"ask", "mix"}, {"words", "silt bed"}}) == "bug");
    CHECK(code(Json::array()) == "bug");
    CHECK(code({{"ask", "open"}, {"library", "name = "}}) == "bug");
}

TEST_CASE("what measured bags tell of the hand is reckoned in on the page as in the program") {
    const auto shipped = shipped_shelf();
    MemoryShelf shelf(shipped.get());
    Ingredient mine = shipped->ingredient("brown crumb");
    for (Property<Ratio>* mark : {&mine.absorption, &mine.slump})
        *mark = {1.2 * mark->value, 0.05, {Origin::measured, "a test"}};
    shelf.put(mine);
    MixRequest request;
    request.target = DryMass{1.0 * kilogram};
    const MixAnswer own = answer_mix(shelf, shelf.recipe("silt bed"), request);
    Bank bank;
    const Json data = data_of(shelf, {"open carpet"});
    CHECK(json_line(data["usual"], JsonLetters::utf8).find("\"brown crumb\"") != std::string::npos);
    REQUIRE_FALSE(bank.ask(opening(data)).contains("errors"));
    const Json told = bank.ask(asked("mix", "silt bed", {{"--dry-mass", {"1kg"}}}))["json"];
    CHECK(told["water_to_add_g"].number() == Approx(own.water_to_add.in(gram)).epsilon(1e-9));
    CHECK(told["water_p05_g"].number() == Approx(own.doubt->water.low.in(gram)).epsilon(1e-9));
    CHECK(told["warnings"][0]["code"] == "hand-learned");
    CHECK(json_line(data_of(*shipped, {"open carpet"})["usual"], JsonLetters::utf8).find("\"brown crumb\"") ==
          std::string::npos);
}

TEST_CASE("what the log taught goes with the page, there and back, and its answers are those of the program") {
    const auto shipped = shipped_shelf();
    MemoryShelf shelf(shipped.get());
    for (const char* name : {"brown crumb", "maize meal"}) {
        Ingredient bag = shipped->ingredient(name);
        bag.absorption.source = bag.slump.source = {Origin::learned, "4 mixes"};
        shelf.put(bag);
    }
    shelf.put(LearntWater{0.07,
                          -0.02,
                          {{"brown crumb", std::log(0.7), std::log(0.5), 4, 0.71, 0},
                           {"maize meal", std::log(0.4), std::log(0.35), 2},
                           {"leam", std::log(0.2), std::log(0.2), 0}},
                          3,
                          {0.05, 0, 0,    0.01, 0.04, 0,   0.03, 0.01, 0.05, 0.02, 0.02, 0.1,
                           0.04, 0, 0.06, 0.03, 0.01, 0.1, 0.05, 0,    0.2,  0.05, 0,    0.2}});
    shelf.put(LearntMix{"silt bed", LearntFactor{0.04, 0.02, 3}, LearntFactor{0.5, 0.2, 1}, {}});
    const Json data = data_of(shelf, {"open carpet"});
    CHECK(data["learnt"]["bags"].size() == 2);  // leam was in no logged mix
    MemoryShelf again;
    put_learnt_data(*parsed_json(json_text(data["learnt"])), again);
    const LearntWater there = shelf.learnt_water({"brown crumb", "maize meal"}),
                      back = again.learnt_water({"brown crumb", "maize meal"});
    CHECK(back.factor == there.factor);
    CHECK(back.log_hand == there.log_hand);
    CHECK(back.bags[0].log_gap == there.bags[0].log_gap);
    CHECK(back.bags[0].measured_absorption == 0.71);
    CHECK(again.learnt_mix("silt bed")->hold->sigma == 0.2);
    CHECK_FALSE(again.learnt_mix("silt bed")->carpet);

    Bank bank;
    REQUIRE_FALSE(bank.ask(opening(data)).contains("errors"));
    MixRequest request;
    request.target = Vessels{4, 250.0 * millilitre, "cup"};
    const MixAnswer own = answer_mix(shelf, shelf.recipe("silt bed"), request);
    const Json told = bank.ask(asked("mix", "silt bed", {{"--cups", {"4x250ml"}}}))["json"];
    CHECK(told["dry_mass_g"].number() == Approx(own.dry_mass.in(gram)).epsilon(1e-9));
    CHECK(told["water_to_add_g"].number() == Approx(own.water_to_add.in(gram)).epsilon(1e-9));
    CHECK(told["water_p05_g"].number() == Approx(own.doubt->water.low.in(gram)).epsilon(1e-9));
    CHECK(told["water_p95_g"].number() == Approx(own.doubt->water.high.in(gram)).epsilon(1e-9));
    CHECK(told["learnt"]["bags"][0]["name"] == "brown crumb");
    CHECK(told["learnt"]["cups_weighed"] == 3);
    CHECK_FALSE(data_of(*shipped, {"open carpet"}).contains("learnt"));
}

TEST_CASE("what is typed in feet, pints, ounces or degF is answered in them") {
    const auto units = [](const std::vector<std::string>& typed) { return shown_units_of(typed, std::nullopt); };
    CHECK(units({"8ft"}).feet);
    CHECK(units({"2.5m", "2 in"}).feet);
    CHECK(units({"12x2in"}).feet);
    CHECK(units({"16 × 12 in"}).feet);
    CHECK(units({"46F"}).fahrenheit);
    CHECK(units({"2pt"}).pints);
    CHECK(units({"carp=1 2lb"}).ounces);  // one of two pounds
    CHECK_FALSE(units({"carp=1 2kg"}).ounces);
    CHECK(units({"15ml in 0.5pt of lake water"}).pints);
    CHECK(units({"brown crumb=2lb"}).ounces);
    CHECK(units({"2 oz per lb"}).ounces);
    const ShownUnits none = units({"silt bed", "2.5m", "8degC", "3l", "1kg", "5 USpt", "£4/lb", "2 in the shed",
                                   "out.svg", std::string(300, 'x') + "8ft"});
    CHECK_FALSE(none.feet);
    CHECK_FALSE(none.fahrenheit);
    CHECK_FALSE(none.pints);
    CHECK_FALSE(none.ounces);
    CHECK(none.system == UnitSystem::both);
    CHECK(shown_units_of({"8ft"}, "metric").system == UnitSystem::metric);
    CHECK(shown_units_of({"8ft"}, "metric").feet);
    CHECK_THROWS_AS(shown_units_of({}, "leagues"), InputError);
}

TEST_CASE("a bank tells in the units that it was opened with, unless a question says others") {
    const auto shelf = shipped_shelf();
    Bank bank;
    Json open = opening(data_of(*shelf, {"open carpet"}));
    open["units"] = "metric";
    REQUIRE(bank.ask(open).contains("strategies"));
    const auto told = [&bank](const char* system) {
        Json request = asked("mix", "silt bed", {{"--dry-mass", {"1kg"}}});
        if (system) request["usual"] = {{"units", {system}}};
        const Json reply = bank.ask(request);
        return std::pair(json_text(reply["told"]), json_text(reply["json"]));
    };
    CHECK(told(nullptr).first.find("ounces") == std::string::npos);
    CHECK(told("both").first.find("ounces") != std::string::npos);
    CHECK(told("imperial").first.find("grams") == std::string::npos);
    CHECK(told("imperial").second == told("metric").second);
    CHECK(units_shown().system == UnitSystem::both);
    const Json feet = bank.ask(asked("drop", "silt bed", {{"--depth", {"8ft"}}}, {"told", "picture"}));
    CHECK(json_text(feet["told"]).find("8 ft of water") != std::string::npos);
    CHECK(feet["picture"].text().find(">8 ft<") != std::string::npos);
    open["units"] = "leagues";
    bank.ask(open);
    CHECK(bank.ask(asked("mix", "silt bed", Json::object()))["errors"][0]["code"] == "unknown-units");
}
