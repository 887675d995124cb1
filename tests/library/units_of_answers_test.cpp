// Every shipped mix, strategy and pellet told in each system of units: what the person does not use is not there, and
// what programs read is the same in all.
#include <catch2/catch.hpp>
#include <regex>

#include "answers/drop/drop_feed.h"
#include "answers/mix/answer_mix.h"
#include "answers/money/cost_strategy.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/plan/plan_session.h"
#include "library/open_library.h"
#include "quantities/units.h"
#include "report/drop_plot.h"
#include "report/replies.h"
#include "report/session_sheet.h"
#include "report/shown_units.h"

using namespace baitwright;

namespace {

const MemoryShelf& units_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

std::string told_in(UnitSystem system, const Reply& reply) {
    const UnitsShownHere here(ShownUnits{system});
    return reply.told().text();
}

/// One blank for all that stand together, so that no amount hangs on where a line breaks.
std::string in_one_line(const std::string& text) {
    static const std::regex blanks(R"(\s+)");
    return std::regex_replace(text, blanks, " ");
}

/// The first amount in an imperial unit, or nothing; "from 300 in all" is none.
std::string imperial_in(const std::string& text) {
    static const std::regex amount(R"([0-9] (oz|lb|pt|fl|ft|degF|°F)\b|[0-9] in([.,;:)]|$)|\bounces\b)");
    const std::string line = in_one_line(text);
    std::smatch found;
    return std::regex_search(line, found, amount) ? found.str() : std::string();
}

/// The first amount in a metric unit that is to be measured out, or nothing: not in brackets, nor the size of a grain
/// or ball, nor a pack as its label has it, nor a rate.
std::string metric_in(const std::string& text) {
    static const std::regex apart(
        R"(\([^)]*\)|[0-9]+ x [0-9.]+ (?:k?g|m?l)|[0-9.]+ g of water per g|[0-9.]+ m?[gl] per k?[gl]\b)");
    static const std::regex amount(R"([0-9] (kg|g|ml|l|cm|m|degC|°C)( |$|[.,;:)])|\bgrams\b)");
    const std::string line = std::regex_replace(in_one_line(text), apart, "");
    std::smatch found;
    return std::regex_search(line, found, amount) ? found.str() : std::string();
}

void check_units_of(const std::string& name, const Reply& reply) {
    INFO(name);
    const std::string both = told_in(UnitSystem::both, reply), metric = told_in(UnitSystem::metric, reply),
                      imperial = told_in(UnitSystem::imperial, reply);
    INFO(metric);
    INFO(imperial);
    CHECK(imperial_in(metric).empty());
    CHECK(metric_in(imperial).empty());
    CHECK(imperial.find("12 in ") == std::string::npos);
    static const std::regex nothing(R"((^|[^0-9.])(-0|0(\.0)?) (oz|lb|pt|fl oz|ft|in)\b)");
    CHECK_FALSE(std::regex_search(imperial, nothing));
    CHECK(metric.size() <= both.size());
    const std::string json = json_text(reply.json());
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial}) {
        const UnitsShownHere here(ShownUnits{system});
        CHECK(json_text(reply.json()) == json);
        if (reply.rows) CHECK_FALSE(reply.rows().empty());
    }
}

MixAnswer mixed(const std::string& name) {
    MixRequest request;
    request.target = DryMass{1.0 * kilogram};
    return answer_mix(units_shelf(), units_shelf().recipe(name), request);
}

SessionPlan planned(const std::string& name) {
    return plan_session(units_shelf(), units_shelf().strategy(name), {}, {});
}

}  // namespace

TEST_CASE("every shipped mix is told without an ounce or a pint to who has grams, and the other way round") {
    REQUIRE(units_shelf().recipe_names().size() > 5);
    for (const std::string& name : units_shelf().recipe_names()) check_units_of(name, mix_reply(mixed(name)));
}

TEST_CASE("every shipped mix is told once in the water, its depth in the units of the person") {
    for (const std::string& name : units_shelf().recipe_names()) {
        DropRequest request;
        request.depth = 8.0 * foot;
        const DropAnswer answer = drop_feed(units_shelf(), units_shelf().recipe(name), request);
        for (const DropTelling telling : {DropTelling::brief, DropTelling::full})
            check_units_of(name, drop_reply(answer, telling));
        CHECK(
            in_one_line(told_in(UnitSystem::metric, drop_reply(answer, DropTelling::brief))).find("2.44 m of water") !=
            std::string::npos);
        const UnitsShownHere here(ShownUnits{UnitSystem::imperial});
        CHECK(in_one_line(drop_reply(answer, DropTelling::brief).told().text()).find("8 ft of water") !=
              std::string::npos);
        if (!answer.classes.empty()) CHECK(drop_plot(answer, PictureWidth::page).find(">8 ft<") != std::string::npos);
    }
}

TEST_CASE("every shipped strategy is planned and costed in the units of the person") {
    for (const std::string& name : units_shelf().strategy_names()) {
        const SessionPlan plan = planned(name);
        INFO(name);
        check_units_of(name, cost_reply(plan.cost));
        const Reply reply = plan_reply(plan);
        CHECK(imperial_in(told_in(UnitSystem::metric, reply)).empty());
        CHECK(told_in(UnitSystem::imperial, reply).find("ounces") != std::string::npos);
    }
}

TEST_CASE("the sheet of every shipped strategy weighs in the units of the person") {
    for (const std::string& name : units_shelf().strategy_names()) {
        INFO(name);
        const SessionPlan plan = planned(name);
        for (const UnitSystem system : {UnitSystem::metric, UnitSystem::imperial}) {
            const UnitsShownHere here(ShownUnits{system});
            const CardSheet sheet = session_sheet(plan, parse_date("2026-11-25"));
            std::size_t amounts = 0;
            for (const CardSection& section : sheet.sections)
                for (const CardRow& row : section.rows) {
                    if (!row.amount.empty()) ++amounts;
                    INFO(row.what + ": " + row.amount + " | " + row.also);
                    if (system == UnitSystem::metric) {
                        CHECK(imperial_in(row.amount).empty());
                        CHECK(imperial_in(row.also).empty());
                    } else {
                        CHECK(metric_in(row.amount).empty());
                        CHECK(metric_in(row.also).empty());
                    }
                }
            CHECK(amounts > 3);
        }
    }
}

TEST_CASE("shipped pellets are soaked and pumped in the units of the person") {
    for (const std::string& name : units_shelf().ingredient_names()) {
        const IngredientKind kind = units_shelf().ingredient(name).kind;
        if (kind != IngredientKind::pellet && kind != IngredientKind::expander) continue;
        SoakRequest request;
        request.items = {{name, MassOrVolume{500.0 * gram}}};
        check_units_of(name, soak_reply(soak_pellets(units_shelf(), request)));
    }
}
