#include "answers/strategy/unroll_strategy.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "answers/asking.h"
#include "answers/sessions.h"
#include "bait/seeds.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using draft::request_for;
using namespace draft_sessions;

namespace {

double grams(const std::vector<IngredientNeed>& needs, const std::string& name) {
    for (const IngredientNeed& need : needs)
        if (need.ingredient.name == name) return need.mass.in(gram);
    return 0;
}

double all_grams(const std::vector<IngredientNeed>& needs) {
    double sum = 0;
    for (const IngredientNeed& need : needs) sum += need.mass.in(gram);
    return sum;
}

StrategyRequest lasting(Time length) {
    StrategyRequest request;
    request.length = length;
    return request;
}

StrategyRequest leaving_out(const std::string& name) {
    StrategyRequest request;
    request.without = {name};
    return request;
}

/// Seeds, raw and cooked, beside the mix of the other tests.
const Shelf& fed_seeds() {
    static const struct Fed : MemoryShelf {
        Fed() : MemoryShelf(&draft::seeds()) { put(draft::fishmeal_mix()); }
    } fed;
    return fed;
}

std::vector<Fault> faults_of(const Strategy& strategy) {
    try {
        (void)unroll_strategy(bank(), strategy);
    } catch (const InputError& error) {
        return error.faults();
    }
    return {};
}

}  // namespace

TEST_CASE("cups of a mix take what the mix takes for so many cups") {
    const UnrolledStrategy found = unroll_strategy(bank(), session({cups("fishmeal mix", 250, 3, "soft")}, 0.1));
    MixRequest request = request_for(Vessels{3, 250.0 * millilitre, "cup"}, "soft");
    request.spare = 0.1;
    const MixAnswer answer = draft::scaled(bank().recipe("fishmeal mix"), request, bank());
    CHECK(found.dry.in(gram) == Approx(answer.dry_mass.in(gram)));
    CHECK(found.water.in(gram) == Approx(answer.water_to_add.in(gram)));
    CHECK(found.wet_mass.in(gram) == Approx(answer.wet_mass.in(gram)));
    CHECK(found.wet_volume.in(millilitre) == Approx(825));
    for (const PartAnswer& part : answer.parts) CHECK(grams(found.totals, part.name) == Approx(part.mass.in(gram)));
    CHECK(grams(found.totals, "sweet liquid") == Approx(answer.additives.at(0).mass.in(gram)));
    CHECK(found.put_ins.at(0).wet_volume.in(millilitre) == Approx(750));  // without the spare
    CHECK(found.put_ins.at(0).wet_mass.in(gram) == Approx(answer.wet_mass.in(gram) / 1.1));
}

TEST_CASE("balls take what the mix takes for so many balls") {
    Feed balls = cups("fishmeal mix", 1, 8);
    balls.form = FeedForm::ball;
    balls.size = 55.0 * millimetre;
    const UnrolledStrategy found = unroll_strategy(bank(), session({balls}));
    const MixAnswer answer =
        draft::scaled(bank().recipe("fishmeal mix"), request_for(Balls{8, 55.0 * millimetre}), bank());
    CHECK(found.dry.in(gram) == Approx(answer.dry_mass.in(gram)));
    CHECK(found.feeds.at(0).fed.feel == "firm");
    CHECK(found.feeds.at(0).fed.state == MixState::squeezed);
}

// 2 x 100 ml of pellets at 640 g/l are 128 g; a tenth more 140.8 g.
TEST_CASE("dry pellets and live feed go in by their loose volume") {
    const UnrolledStrategy pellets = unroll_strategy(bank(), session({cups("fishmeal pellet 4 mm", 100, 2)}, 0.1));
    CHECK(pellets.dry.in(gram) == Approx(140.8));
    CHECK(pellets.wet_mass.in(gram) == Approx(140.8));
    CHECK(pellets.water.in(gram) == 0);
    CHECK(pellets.feeds.at(0).fed.feel.empty());
    const UnrolledStrategy maggots = unroll_strategy(bank(), session({cups("maggots", 50, 1)}));
    CHECK(maggots.dry.in(gram) == Approx(30));  // 600 g/l
}

// A soaked 2 mm pellet holds 0.4 C of water inside and 0.03 outside; its grain grows by what its pores do not take.
TEST_CASE("soaked pellets go in by their soaked volume") {
    Feed pots = cups("fishmeal micro pellet 2 mm", 25, 4);
    pots.parts.front().prepare = Preparation::soaked;
    const UnrolledStrategy found = unroll_strategy(bank(), session({pots}));
    const double capacity = bank().ingredient("fishmeal micro pellet 2 mm").capacity.value;
    const double inside = 0.4 * capacity;
    const double grain = 1 / 1.24 + std::max(0.0, inside - (1 / 1.24 - 1 / 1.40));  // ml per g dry
    const double dry = 100 / (grain / (0.650 / 1.24));
    CHECK(found.dry.in(gram) == Approx(dry));
    CHECK(found.soak_water.in(gram) == Approx(dry * (inside + 0.03)));
    CHECK(found.wet_mass.in(gram) == Approx(dry * (1 + inside + 0.03)));
    CHECK(found.totals.at(0).soaked == found.totals.at(0).mass);
}

// 30 bites x 5 h x 1.5 x 1.1 = 247.5, so 248 for one; 495 for two.
TEST_CASE("hookbaits are counted whole, half as many again as bites, with the spare") {
    Strategy strategy = session({cups("maggots", 50, 1)}, 0.1);
    strategy.hookbaits = {{"expander 4 mm", BitesPerHour{30}}};
    const UnrolledStrategy one = unroll_strategy(bank(), strategy);
    CHECK(one.hookbaits.at(0).count == 248);
    // A cylinder of 4 by 4.8 mm at 1.22 g/ml is 0.0736 g; the spread of sizes makes it exp(-4.5 ln^2 1.05) of that.
    const double each =
        std::numbers::pi / 4 * 16 * 4.8 * 1e-3 * 1.22 * std::exp(-4.5 * std::log(1.05) * std::log(1.05));
    CHECK(one.hookbaits.at(0).mass.in(gram) == Approx(248 * each));
    StrategyRequest request;
    request.people = 2;
    CHECK(unroll_strategy(bank(), strategy, request).hookbaits.at(0).count == 495);
    CHECK(one.free_offerings ==
          Approx(30 * 1.1 / 30 * unroll_strategy(bank(), session({cups("maggots", 50, 1)})).free_offerings));
}

TEST_CASE("raw seed is neither fed nor put on the hook, and each is told at its place; cooked feed is") {
    Strategy strategy = session({cups("fishmeal mix", 250, 1), cups("maple peas, dry", 100, 2)});
    strategy.feeds[0].parts.push_back({"pearl millet"});
    strategy.hookbaits = {{"sweetcorn", 100.0 * millilitre}, {"vetches, raw", 100.0 * gram}};
    std::vector<std::string> places;
    try {
        (void)unroll_strategy(fed_seeds(), strategy);
    } catch (const InputError& error) {
        for (const Fault& fault : error.faults()) {
            CHECK(fault.code == "cook-first");
            places.push_back(fault.subject);
        }
    }
    CHECK(places == std::vector<std::string>{"feed 1 part 2", "feed 2 part 1", "hookbait 2"});
    strategy = session({cups("cooked maple peas", 250, 1), cups("pea meal", 250, 1)});
    strategy.hookbaits = {{"cooked maple peas", 100.0 * gram}};
    const UnrolledStrategy fed = unroll_strategy(fed_seeds(), strategy);
    CHECK(grams(fed.totals, "cooked maple peas") > 100);
    REQUIRE(fed.cautions.size() == 3);  // of cooking, of the meal, of its dust
    CHECK_THAT(fed.cautions[1], Catch::Contains("heat-treated"));
}

TEST_CASE("raw seed that is left out is no fault") {
    Strategy strategy = session({cups("fishmeal mix", 250, 1), cups("maple peas, dry", 100, 2)});
    CHECK(unroll_strategy(fed_seeds(), strategy, leaving_out("maple peas, dry")).feeds.size() == 1);
}

TEST_CASE("an amount of hookbaits is taken as it stands, for each and each time") {
    Strategy strategy = session({cups("maggots", 50, 1)}, 0.5);
    strategy.hookbaits = {{"sweetcorn", 100.0 * millilitre}};
    CHECK(unroll_strategy(bank(), strategy).hookbaits.at(0).mass.in(gram) == Approx(70));
    StrategyRequest request;
    request.people = 2;
    request.times = 3;
    CHECK(unroll_strategy(bank(), strategy, request).hookbaits.at(0).mass.in(gram) == Approx(420));
}

TEST_CASE("parts of a feed share it by mass as bought") {
    Feed feed = cups("x", 200, 1);
    feed.parts = {{"cooked hemp", 3}, {"sweetcorn", 1}};
    const UnrolledStrategy found = unroll_strategy(bank(), session({feed}));
    CHECK(grams(found.totals, "cooked hemp") == Approx(3 * grams(found.totals, "sweetcorn")));
    CHECK(found.wet_volume.in(millilitre) == Approx(200));
    feed.form = FeedForm::loose;
    feed.size = 100.0 * gram;
    CHECK(grams(unroll_strategy(bank(), session({feed})).totals, "sweetcorn") == Approx(25));
}

TEST_CASE("casters in a ball of mix ride along at the mix's feel") {
    Feed ball = cups("x", 1, 1);
    ball.parts = {{"fishmeal mix", 9}, {"casters", 1}};
    ball.form = FeedForm::ball;
    ball.size = 60.0 * millimetre;
    const FeedNeed need = unroll_strategy(bank(), session({ball})).feeds.at(0);
    CHECK(need.fed.feel == "firm");
    CHECK(grams(need.ingredients, "casters") == Approx(0.1 * need.dry.in(gram)));
    CHECK(need.name == "fishmeal mix and casters");
}

TEST_CASE("people and sessions multiply everything, and nothing else changes") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 3)}, 0.1);
    const UnrolledStrategy one = unroll_strategy(bank(), strategy);
    StrategyRequest request;
    request.people = 4;
    request.times = 3;
    const UnrolledStrategy many = unroll_strategy(bank(), strategy, request);
    CHECK(many.dry.in(gram) == Approx(12 * one.dry.in(gram)));
    CHECK(many.water.in(gram) == Approx(12 * one.water.in(gram)));
    CHECK(many.put_ins.size() == one.put_ins.size());
}

// Two sessions at 50 %: 1 + 1 x 0.5 = 1.5 makings of the damp mix, and two lots of pellets.
TEST_CASE("mix from the freezer is not made again; what goes in dry is") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 1), cups("fishmeal pellet 4 mm", 100, 1)});
    StrategyRequest request;
    request.times = 2;
    request.reused = 0.5;
    const UnrolledStrategy found = unroll_strategy(bank(), strategy, request);
    const UnrolledStrategy once = unroll_strategy(bank(), strategy);
    CHECK(found.feeds[0].dry.in(gram) == Approx(1.5 * once.feeds[0].dry.in(gram)));
    CHECK(found.feeds[1].dry.in(gram) == Approx(2 * once.feeds[1].dry.in(gram)));
    request.times = 1;
    CHECK(fault_of([&] { (void)unroll_strategy(bank(), strategy, request); }).code == "unfit-flag");
    request.times = 3;
    request.reused = 0.6;
    CHECK(fault_of([&] { (void)unroll_strategy(bank(), strategy, request); }).code == "out-of-range");
}

TEST_CASE("another feel is asked of what is wetted alone") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 1), cups("fishmeal pellet 4 mm", 100, 1)});
    StrategyRequest request;
    request.feel = "slop";
    const UnrolledStrategy found = unroll_strategy(bank(), strategy, request);
    CHECK(found.feeds[0].fed.feel == "slop");
    CHECK(found.feeds[1].fed.feel.empty());
    CHECK(found.water > unroll_strategy(bank(), strategy).water);
    request.feel = "slopy";
    CHECK(fault_of([&] { (void)unroll_strategy(bank(), strategy, request); }).code == "unknown-feel");
}

TEST_CASE("without an ingredient the rest fills the same cups in the same proportions") {
    const Strategy strategy = session({cups("fishmeal mix", 250, 4)});
    const UnrolledStrategy whole = unroll_strategy(bank(), strategy);
    const UnrolledStrategy less = unroll_strategy(bank(), strategy, leaving_out("Brown  crumb"));
    CHECK(less.wet_volume.in(litre) == Approx(1));
    CHECK(grams(less.totals, "brown crumb") == 0);
    CHECK(grams(less.totals, "fishmeal, brown") / grams(less.totals, "maize meal") ==
          Approx(grams(whole.totals, "fishmeal, brown") / grams(whole.totals, "maize meal")));
    CHECK(all_grams(less.totals) > grams(whole.totals, "fishmeal, brown"));
    CHECK(grams(less.totals, "sweet liquid") / less.dry.in(gram) ==
          Approx(grams(whole.totals, "sweet liquid") / whole.dry.in(gram)));
}

TEST_CASE("without a feed or a hookbait the others are as they were") {
    Strategy strategy = session({cups("fishmeal mix", 250, 1), cups("maggots", 100, 1)});
    strategy.hookbaits = {{"maggots", 10.0 * gram}};
    const UnrolledStrategy less = unroll_strategy(bank(), strategy, leaving_out("fishmeal mix"));
    REQUIRE(less.feeds.size() == 1);
    CHECK(less.feeds[0].written == 1);
    CHECK(less.put_ins.at(0).feed == 0);
    CHECK(unroll_strategy(bank(), strategy, leaving_out("maggots")).hookbaits.empty());
    CHECK(unroll_strategy(bank(), strategy, leaving_out("Maggot")).hookbaits.empty());
    const Fault fault = fault_of([&] { (void)unroll_strategy(bank(), strategy, leaving_out("magots")); });
    CHECK(fault.code == "not-in-strategy");
    CHECK(fault.hint == "did you mean 'maggots'?");
    StrategyRequest all;
    all.without = {"maggots", "fishmeal mix"};
    CHECK(fault_of([&] { (void)unroll_strategy(bank(), strategy, all); }).code == "nothing-left");
}

TEST_CASE("a shorter session leaves out what would come after its end") {
    Feed late = cups("maggots", 50, 1);
    late.when = {AtOnce{4.0 * hour}, {}, {}};
    const Strategy strategy = session({cups("fishmeal mix", 250, 1), late});
    CHECK(unroll_strategy(bank(), strategy).feeds.size() == 2);
    CHECK(unroll_strategy(bank(), strategy, lasting(3.0 * hour)).feeds.size() == 1);
    CHECK(fault_of([&] { (void)unroll_strategy(bank(), strategy, lasting(25.0 * hour)); }).code == "out-of-range");
}

TEST_CASE("every fault of a strategy is told at once, each with its subject") {
    Feed ball = cups("maggots", 1, 1);
    ball.form = FeedForm::ball;
    ball.size = 50.0 * millimetre;
    Feed dusty = cups("fishmeal mix", 1, 1, "dusty");
    dusty.form = FeedForm::ball;
    dusty.size = 50.0 * millimetre;
    Feed unpaced = cups("fishmeal mix", 50, 1);
    unpaced.when.rhythm = EveryPutIn{};
    Feed soaked = cups("brown crumb", 50, 1);
    soaked.parts.front().prepare = Preparation::soaked;
    Strategy strategy =
        session({cups("fishmeal mx", 50, 1), cups("fishmeal mix", 50, 1, "frim"), ball, dusty, unpaced, soaked});
    strategy.hookbaits = {{"maggts", BitesPerHour{3}}, {"brown crumb", BitesPerHour{3}}};
    const std::vector<Fault> faults = faults_of(strategy);
    REQUIRE(faults.size() == 8);
    const std::vector<std::pair<std::string, std::string>> expected{{"unknown-ingredient", "feed 1 part 1"},
                                                                    {"unknown-feel", "feed 2 feel"},
                                                                    {"unfit-state", "feed 3 part 1"},
                                                                    {"unfit-state", "feed 4 feel"},
                                                                    {"no-pace", "feed 5"},
                                                                    {"unfit-preparation", "feed 6 part 1"},
                                                                    {"unknown-ingredient", "hookbait 1"},
                                                                    {"unfit-hookbait", "hookbait 2"}};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        CHECK(faults[i].code == expected[i].first);
        CHECK(faults[i].subject == expected[i].second);
    }
    CHECK(faults[0].hint == "did you mean 'fishmeal mix'?");
}

TEST_CASE("a fault inside a mix that is fed is told of the feed, with the mix's name") {
    MemoryShelf shelf(&bank());
    shelf.put(draft::mix_of("broken", {{"no such meal", 1}}));
    const Fault fault = fault_of([&] { (void)unroll_strategy(shelf, session({cups("broken", 50, 1)})); });
    CHECK(fault.subject == "feed 1 part 1");
    CHECK_THAT(fault.message, Catch::Contains("no such meal") && Catch::Contains("in the mix 'broken'"));
}

TEST_CASE("the totals of any strategy are the sums of its feeds and hookbaits, to a thousandth of a gram") {
    CHECK(rc::check([] {
        MemoryShelf shelf(&bank());
        const Strategy strategy = any_session(shelf);
        StrategyRequest request;
        request.people = *rc::gen::inRange(1, 5);
        request.times = *rc::gen::inRange(1, 4);
        const UnrolledStrategy found = unroll_strategy(shelf, strategy, request);
        double needs = 0, dry = 0, wet = 0, water = 0, from_put_ins = 0, additives = 0;
        for (const FeedNeed& feed : found.feeds) {
            needs += all_grams(feed.ingredients);
            dry += feed.dry.in(gram);
            wet += feed.wet_mass.in(gram);
            water += (feed.water + feed.soak_water).in(gram);
            additives += all_grams(feed.ingredients) - feed.dry.in(gram);
        }
        for (const HookbaitNeed& hook : found.hookbaits) needs += hook.mass.in(gram);
        for (const PutIn& put_in : found.put_ins) from_put_ins += put_in.wet_mass.in(gram);
        const auto near = [](double a, double b) { return std::abs(a - b) <= 1e-3 + 1e-9 * std::abs(b); };
        RC_ASSERT(near(all_grams(found.totals), needs));
        RC_ASSERT(near(found.dry.in(gram), dry));
        RC_ASSERT(near(wet, dry + additives + water));  // nothing comes from nowhere
        RC_ASSERT(near(wet, from_put_ins * (1 + strategy.spare) * request.people * request.times));
        for (const PutIn& put_in : found.put_ins) RC_ASSERT(put_in.at < found.length);
    }));
}

TEST_CASE("a longer session never needs less of anything") {
    CHECK(rc::check([] {
        MemoryShelf shelf(&bank());
        const Strategy strategy = any_session(shelf);
        const UnrolledStrategy shorter = unroll_strategy(shelf, strategy, lasting(draft::drawn(1, 600, 1) * minute));
        const UnrolledStrategy longer =
            unroll_strategy(shelf, strategy, lasting(shorter.length + draft::drawn(0, 600, 1) * minute));
        for (const IngredientNeed& need : shorter.totals)
            RC_ASSERT(grams(longer.totals, need.ingredient.name) >= need.mass.in(gram) * (1 - 1e-12));
        RC_ASSERT(longer.put_ins.size() >= shorter.put_ins.size());
    }));
}

TEST_CASE("what goes in as bites slow is reckoned in for everyone with the spare, and is on no clock") {
    // 3 times 2 cups for 2 anglers with a tenth to spare: 3 x 2 x 2 x 1.1 = 13.2 cups of 250 ml
    Strategy strategy = session({cups("fishmeal mix", 250, 2, "soft")}, 0.10);
    strategy.feeds[0].when = {WhenSlow{3}, {}, {}};
    StrategyRequest request;
    request.people = 2;
    const UnrolledStrategy slow = unroll_strategy(bank(), strategy, request);
    REQUIRE(slow.feeds.size() == 1);
    CHECK(slow.put_ins.empty());
    CHECK(slow.feeds[0].slow_times == 3);
    CHECK(slow.feeds[0].put_ins == 3);
    CHECK(slow.feeds[0].portions == Approx(13.2));
    CHECK(slow.feeds[0].wet_volume.in(millilitre) == Approx(3300));
    strategy.feeds[0].when = at_start;  // as much for each time as the same by the clock
    CHECK(slow.dry.in(gram) == Approx(3 * unroll_strategy(bank(), strategy, request).dry.in(gram)));
    CHECK(all_grams(slow.totals) == Approx(all_grams(slow.feeds[0].ingredients)));
}

TEST_CASE("a cup of parts at two feels is full, its dry masses stand in their shares, and each is as wet as alone") {
    Strategy strategy = session({cups("fishmeal mix", 250, 2)});
    strategy.feeds[0].parts = {{"fishmeal mix", 3, Preparation::as_bought, "soft"},
                               {"brown crumb", 1, Preparation::as_bought, "firm"}};
    const UnrolledStrategy both = unroll_strategy(bank(), strategy);
    REQUIRE(both.feeds.size() == 2);
    CHECK((both.feeds[0].written == 0 && both.feeds[1].written == 0));
    CHECK((both.feeds[0].fed.feel == "soft" && both.feeds[1].fed.feel == "firm"));
    CHECK(both.wet_volume.in(millilitre) == Approx(500));
    CHECK(both.feeds[0].dry.in(gram) == Approx(3 * both.feeds[1].dry.in(gram)));
    REQUIRE(both.put_ins.size() == 2);
    CHECK((both.put_ins[0].at == both.put_ins[1].at && both.put_ins[0].feed != both.put_ins[1].feed));
    const UnrolledStrategy soft = unroll_strategy(bank(), session({cups("fishmeal mix", 250, 2, "soft")}));
    const UnrolledStrategy firm = unroll_strategy(bank(), session({cups("brown crumb", 250, 2, "firm")}));
    CHECK(both.feeds[0].water / both.feeds[0].dry == Approx(soft.water / soft.dry));
    CHECK(both.feeds[1].water / both.feeds[1].dry == Approx(firm.water / firm.dry));
    strategy.feeds[0].form = FeedForm::loose;  // the same by mass: both together weigh what goes in
    strategy.feeds[0].size = 100.0 * gram;
    strategy.feeds[0].count = 1;
    CHECK(unroll_strategy(bank(), strategy).wet_mass.in(gram) == Approx(100));
    strategy.feeds[0].form = FeedForm::ball;
    strategy.feeds[0].size = 45.0 * millimetre;
    CHECK(fault_of([&] { (void)unroll_strategy(bank(), strategy); }).code == "unfit-feel");
}

TEST_CASE("what is left out of a cup of two feels leaves its room to the other") {
    Strategy strategy = session({cups("fishmeal mix", 250, 1)});
    strategy.feeds[0].parts = {{"fishmeal mix", 3, Preparation::as_bought, "soft"}, {"casters", 1}};
    const UnrolledStrategy left = unroll_strategy(bank(), strategy, leaving_out("casters"));
    REQUIRE(left.feeds.size() == 1);
    CHECK(left.wet_volume.in(millilitre) == Approx(250));
}
