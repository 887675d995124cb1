#include "answers/strategy/advise.h"

#include <catch2/catch.hpp>

#include "answers/sessions.h"
#include "answers/strategy/advise_points.h"
#include "answers/strategy/unroll_strategy.h"
#include "bait/seeds.h"
#include "quantities/fault.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

/// Two strategies alike but for the water and the fish they are meant for.
class Water : public draft_sessions::Bank {
public:
    Water() {
        put(meant_for("cold", 5, "clear", "Roach in the cold."));
        put(meant_for("warm", 20, "coloured", "Carp in the warm."));
        put(draft::crumb_mix());
    }

private:
    static Strategy meant_for(const std::string& name, double celsius, const std::string& clarity,
                              const std::string& purpose) {
        Strategy strategy = draft_sessions::session({draft_sessions::cups("fishmeal mix", 250, 4)}, 0.10);
        strategy.name = name;
        strategy.purpose = purpose;
        strategy.water.temperature = Temperature::from_celsius(celsius);
        strategy.water.clarity = clarity;
        return strategy;
    }
};

AdviceRule rule(const std::string& about) {
    AdviceRule rule;
    rule.about = about;
    rule.say = "Do it.";
    rule.why = "it is so";
    rule.source = "common practice, no source";
    return rule;
}

}  // namespace

TEST_CASE("a rule holds where all its conditions do, and never by what was not said") {
    AdviceRule cold = rule("amount");
    cold.when.temperature.below = Temperature::from_celsius(8);
    cold.when.clarity = {"clear", "tinged"};
    Circumstances now;
    CHECK_FALSE(holds(cold, now));
    now.temperature = Temperature::from_celsius(5);
    CHECK_FALSE(holds(cold, now));
    now.clarity = "tinged";
    CHECK(holds(cold, now));
    now.clarity = "coloured";
    CHECK_FALSE(holds(cold, now));
    now.clarity = "clear";
    now.temperature = Temperature::from_celsius(8);
    CHECK_FALSE(holds(cold, now));  // "below 8" is not 8
    CHECK(holds(rule("size"), {}));
}

TEST_CASE("fish are found as words, in the singular and the plural") {
    CHECK(names_fish("Roach, skimmers and a bream or two", "skimmer"));
    CHECK(names_fish("Roach, skimmers and a bream or two", "roach"));
    CHECK_FALSE(names_fish("a scarped bank", "carp"));
    CHECK_FALSE(names_fish("", "carp"));
}

TEST_CASE("the strategy that is meant for such water comes first") {
    const Water shelf;
    Circumstances now;
    now.temperature = Temperature::from_celsius(6);
    now.clarity = "clear";
    CHECK(advise(shelf, {}, now).strategies.front().name == "cold");
    now.temperature = Temperature::from_celsius(19);
    now.clarity = "coloured";
    CHECK(advise(shelf, {}, now).strategies.front().name == "warm");
    now = {};
    now.fish = {"carp"};
    CHECK(advise(shelf, {}, now).strategies.front().name == "warm");
}

TEST_CASE("a rule that holds lifts what it favours and sinks what it is against, with its reason") {
    const Water shelf;
    AdviceRule tinged = rule("feeding");
    tinged.when.clarity = {"tinged"};
    tinged.favour = {"Warm"};  // names match whatever their case
    tinged.against = {"crumb mix"};
    Circumstances now;
    const AdviseAnswer before = advise(shelf, {tinged}, now);
    CHECK(before.advice.empty());
    CHECK(before.strategies.front().name == "cold");  // none has points: by name
    now.clarity = "tinged";
    const AdviseAnswer after = advise(shelf, {tinged}, now);
    REQUIRE(after.advice.size() == 1);
    CHECK(after.strategies.front().name == "warm");
    CHECK(after.strategies.front().score == before.strategies.back().score + 2);
    CHECK(after.strategies.front().points.back().reason == MeasuredText("it is so"));
    CHECK(after.mixes.back().name == "crumb mix");
    CHECK(after.mixes.back().score == -2);
}

TEST_CASE("a share of the feed is taken of what goes in without spare, and shares multiply") {
    const Water shelf;
    AdviceRule half = rule("amount"), more = rule("amount");
    half.share = FeedShare{0.25, 0.5};
    more.share = FeedShare{1.0, 1.5};
    const AdvisedStrategy plain = advise(shelf, {}, {}).strategies.front();
    CHECK(plain.low.si() == Approx(plain.as_written.si()));
    const AdvisedStrategy advised = advise(shelf, {half, more}, {}).strategies.front();
    CHECK(advised.as_written.si() == Approx(plain.as_written.si()));
    CHECK(advised.low.si() == Approx(0.25 * plain.as_written.si()));
    CHECK(advised.high.si() == Approx(0.75 * plain.as_written.si()));
    Strategy without_spare = shelf.strategy("cold");
    without_spare.spare = 0.0;
    CHECK(plain.as_written.si() == Approx(unroll_strategy(shelf, without_spare).wet_mass.si()));
}

TEST_CASE("colours and feels favour the mixes that have them") {
    const Water shelf;
    AdviceRule firm = rule("feel");
    firm.feels = {"firm"};
    for (const AdvisedMix& mix : advise(shelf, {firm}, {}).mixes) CHECK(mix.score == (mix.feel == "firm" ? 1 : 0));
}

TEST_CASE("what feeds raw seed is not advised, and all else still is") {
    Water shelf;
    shelf.put(draft::seeds().ingredient("vetches, raw"));
    Strategy raw = shelf.strategy("cold");
    raw.name = "raw";
    raw.feeds.push_back(draft_sessions::cups("vetches, raw", 100, 1));
    shelf.put(raw);
    shelf.put(draft::mix_of("vetch mix", {{"brown crumb", 1}, {"vetches, raw", 1}}));
    const AdviseAnswer answer = advise(shelf, {}, {});
    CHECK(answer.strategies.size() == 2);
    CHECK(answer.mixes.size() == 2);
    raw.feeds.back().parts = {{"no such thing"}};
    shelf.put(raw);
    CHECK_THROWS_AS(advise(shelf, {}, {}), InputError);
}

TEST_CASE("a fish is known whatever its capitals, in the singular and the plural") {
    CHECK(is_same_fish("skimmer", "skimmers"));
    CHECK(is_same_fish("tenches", "tench"));
    CHECK_FALSE(is_same_fish("carp", "crucian"));
    CHECK_FALSE(is_same_fish("rud", "rudd"));
    const Water shelf;
    AdviceRule silver = rule("feeding");
    silver.when.fish = {"roach", "skimmers"};
    for (const char* typed : {"roach", "Roach", "ROACHES", "roachs", "skimmer", "Skimmers"}) {
        CAPTURE(typed);
        Circumstances now;
        now.fish = {typed};
        const AdviseAnswer answer = advise(shelf, {silver}, now);
        CHECK(answer.advice.size() == 1);
        CHECK((answer.now.fish.front() == "roach" || answer.now.fish.front() == "skimmers"));
    }
}

TEST_CASE("a fish that nobody has heard of is refused, with the nearest known and all of them") {
    const Water shelf;
    AdviceRule silver = rule("feeding");
    silver.when.fish = {"roach", "skimmer", "skimmers"};
    Circumstances now;
    now.fish = {"roahc"};
    try {
        advise(shelf, {silver}, now);
        FAIL("it was taken");
    } catch (const UsageError& error) {
        CHECK(error.faults().front().code == "unknown-fish");
        CHECK(error.faults().front().hint == "did you mean 'roach'? these are known:\n    roach, skimmer");
    }
}

TEST_CASE("what a strategy brought before moves it by two points at most, and one that nothing is known of by none") {
    const Water shelf;
    Circumstances now;
    const auto score_of = [&](const std::vector<BroughtBefore>& brought, const std::string& name) {
        for (const AdvisedStrategy& strategy : advise(shelf, {}, now, brought).strategies)
            if (strategy.name == name) return strategy.score;
        return -100;
    };
    const int before = score_of({}, "cold"), other = score_of({}, "warm");
    const std::vector<BroughtBefore> brought{{"Cold", 12.0, 40, true, "in winter"}};
    CHECK(score_of(brought, "cold") == before + 2);
    CHECK(score_of(brought, "warm") == other);
    CHECK(advise(shelf, {}, now, brought).own.size() == 1);
    CHECK(advise(shelf, {}, now).own.empty());
}

TEST_CASE("a rule gives way where any condition of its unless holds, and to nothing that was not said") {
    AdviceRule dark = rule("colour");
    dark.when.clarity = {"clear"};
    dark.unless.bed = {"pale"};
    dark.unless.depth.below = 1.0 * metre;
    Circumstances now;
    now.clarity = "clear";
    CHECK(holds(dark, now));
    now.bed = "dark";
    now.depth = 2.0 * metre;
    CHECK(holds(dark, now));
    now.depth = 0.5 * metre;
    CHECK_FALSE(holds(dark, now));
    now.depth.reset();
    now.bed = "pale";
    CHECK_FALSE(holds(dark, now));
}

TEST_CASE("one rule scores once, by the name before the feel, and tells its reason once") {
    const Water shelf;
    AdviceRule firm = rule("feel");
    for (const std::string& name : shelf.recipe_names()) firm.feels.push_back(shelf.recipe(name).feel);
    firm.favour = {"crumb mix"};
    firm.colours = {"brown", "light brown", "cream", "gold"};
    for (const AdvisedMix& mix : advise(shelf, {firm}, {}).mixes) {
        CAPTURE(mix.name);
        CHECK(mix.points.size() == 1);
        CHECK(mix.score == (mix.name == "crumb mix" ? 2 : 1));
    }
}

TEST_CASE("a strategy is not favoured for a form or a helping that the rule speaks against") {
    Water shelf;
    const auto with = [&](const std::string& name, std::vector<Feed> feeds) {
        Strategy strategy = draft_sessions::session(std::move(feeds), 0.10);
        strategy.name = name;
        shelf.put(strategy);
    };
    using draft_sessions::cups;
    with("large", {cups("fishmeal mix", 250, 4)});
    with("small", {cups("fishmeal mix", 25, 4)});
    with("large and small", {cups("fishmeal mix", 25, 4), cups("fishmeal mix", 250, 2)});
    AdviceRule small = rule("size");
    small.against_above = 25.0 * millilitre;
    small.favour = {"large", "small", "large and small"};
    const auto score = [&](const std::string& name) {
        for (const AdvisedStrategy& strategy : advise(shelf, {small}, {}).strategies)
            if (strategy.name == name) return strategy.score;
        return -100;
    };
    CHECK(score("large") == -2);
    CHECK(score("small") == 2);
    CHECK(score("large and small") == 0);
    small.against_above.reset();
    small.against_forms = {FeedForm::cup};
    CHECK(score("small") == -2);
    small.against_forms = {FeedForm::ball};
    CHECK(score("large") == 2);
}

TEST_CASE("a fish that is named twice counts once") {
    const Water shelf;
    Circumstances now;
    now.fish = {"carp"};
    const int one_time = advise(shelf, {}, now).strategies.front().score;
    now.fish = {"carp", "Carp"};
    CHECK(advise(shelf, {}, now).strategies.front().score == one_time);
}

TEST_CASE("a limit in braces stands where the rule names it, and what is none stays as it is written") {
    AdviceRule cold = rule("amount");
    cold.when.temperature.below = Temperature::from_celsius(8);
    const MeasuredText why = measured("below {temperature_below} they eat little {indeed}", cold);
    CHECK(why.words == "below {} they eat little {indeed}");
    REQUIRE(why.amounts.size() == 1);
    CHECK(std::get<Temperature>(why.amounts[0]).in_celsius() == Approx(8));
    CHECK(unknown_limits("{temperature_below} and {depth_from}", cold) == std::vector<std::string>{"depth_from"});
    CHECK(unknown_limits("none { here", cold).empty());
}
