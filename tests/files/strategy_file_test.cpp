// Strategies as files: what is read_strategy_file, what is written back, and every fault at its place.
#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "bait/each_setting.h"
#include "bait/strategy_names.h"
#include "files/any_ingredient.h"
#include "files/library_file.h"
#include "files/library_text.h"
#include "files/same_record.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

constexpr const char* whole_strategy = R"(name = "far bank"
purpose = "Bream."
avoid = "Not in flow."
length = "5 h"
spare = "15 %"
[water]
depth = "2.5 m"
temperature = "12 degC"
clarity = "tinged"
tow = "2 cm/s"
tow_bottom = "-1 cm/s"
[pace]
put_ins_per_hour = 12
fish_per_hour = 7.5
[[feed]]
at = "0 min"
of = "silt bed"
as = "cup"
size = "cup 250"
count = 3
feel = "soft"
[[feed]]
every = "40 min"
from = "60 min"
until = "270 min"
parts = [{ of = "fishmeal micro pellet 2 mm", share = 2, prepare = "soaked" }, { of = "sweetcorn", share = 1 }]
as = "ball"
size = "egg"
[[feed]]
every = "put-in"
of = "silt bed"
as = "feeder"
size = "30 ml"
[[feed]]
every = "6 fish"
of = "casters"
as = "loose"
amount = "20 g"
[[hookbait]]
of = "expander 4 mm"
bites_per_hour = 30
[[hookbait]]
of = "maggots"
amount = "0.25 pt"
)";

Strategy read_strategy_file(const std::string& text) {
    const LibraryFile file = read_library_file(text, "a.toml");
    for (const Fault& fault : file.faults) FAIL(fault.line << ": " << fault.message);
    REQUIRE(file.strategies.size() == 1);
    return file.strategies.front().value;
}

FeedTiming any_timing(Time length) {
    const double hours = length.in(hour);
    switch (*rc::gen::inRange(0, 5)) {
        case 0:
            return {AtOnce{number_between(0, 0.99 * hours) * hour}, {}, {}};
        case 1:
            return {EveryTime{number_between(0.01, 20) * hour}, number_between(0, 0.5 * hours) * hour, {}};
        case 2:
            return {EveryPutIn{}, {}, number_between(0.1 * hours, hours) * hour};
        case 3:
            return {WhenSlow{number_between(0.1, 100)}, number_between(0, 0.5 * hours) * hour, {}};
        default:
            return {EveryFish{*rc::gen::inRange(1, 1001)}, number_between(0, 0.5 * hours) * hour, 0.75 * length};
    }
}

Feed any_feed(Time length) {
    Feed feed;
    feed.when = any_timing(length);
    for (int i = *rc::gen::inRange(1, 4); i > 0; --i)
        feed.parts.push_back(
            {any_name(), number_between(0.01, 1e6), *rc::gen::element(Preparation::as_bought, Preparation::soaked)});
    if (feed.parts.size() == 1) feed.parts.front().share = 1;
    feed.form = static_cast<FeedForm>(*rc::gen::inRange(0, 5));
    if (feed.form == FeedForm::ball)
        feed.size = number_between(5.1, 199) * millimetre;
    else if (feed.form != FeedForm::loose)
        feed.size = number_between(0.6, 19999) * millilitre;
    else
        std::visit([&](auto either) { feed.size = either; }, any_amount());
    if (feed.form != FeedForm::loose) feed.count = *rc::gen::inRange(1, 1001);
    if (*rc::gen::arbitrary<bool>()) feed.feel = any_name();
    if (feed.form != FeedForm::ball && feed.parts.size() > 1)
        for (FeedPart& part : feed.parts)
            if (*rc::gen::arbitrary<bool>()) part.feel = any_name();
    return feed;
}

/// Lets feeds wait for the one that is used up first, which waits for none.
void let_some_wait(std::vector<Feed>& feeds, Time length) {
    feeds.front().when = {EveryPutIn{}, {}, 0.4 * length};
    for (std::size_t i = 1; i < feeds.size(); ++i) {
        FeedTiming& when = feeds[i].when;
        const bool can =
            std::holds_alternative<EveryTime>(when.rhythm) || std::holds_alternative<EveryPutIn>(when.rhythm);
        if (!can || !*rc::gen::arbitrary<bool>()) continue;
        when.from = Time{};
        when.after = "feed 1";
    }
}

Strategy any_strategy() {
    Strategy s;
    s.name = any_name();
    s.purpose = any_text();
    s.avoid = any_text();
    s.why = any_text();
    s.note = any_text();
    s.length = number_between(0.1, 24) * hour;
    s.spare = number_between(0, 5);
    if (*rc::gen::arbitrary<bool>()) s.water.depth = number_between(0.1, 100) * metre;
    if (*rc::gen::arbitrary<bool>()) s.water.temperature = Temperature::from_celsius(number_between(0, 40));
    if (*rc::gen::arbitrary<bool>()) s.water.clarity = std::string(clarity_names[*rc::gen::inRange<std::size_t>(0, 3)]);
    if (*rc::gen::arbitrary<bool>()) s.water.tow = number_between(0, 5) * metre_per_second;
    if (*rc::gen::arbitrary<bool>()) s.water.tow_bottom = number_between(-5, 5) * metre_per_second;
    if (*rc::gen::arbitrary<bool>()) s.air.temperature = Temperature::from_celsius(number_between(-5, 45));
    if (*rc::gen::arbitrary<bool>()) s.air.humidity = number_between(0, 1);
    if (*rc::gen::arbitrary<bool>()) s.air.wind = number_between(0, 20) * metre_per_second;
    s.air.sun = *rc::gen::arbitrary<bool>();
    s.pace = {number_between(0.1, 3600), number_between(0.1, 3600)};
    for (int i = *rc::gen::inRange(1, 5); i > 0; --i) s.feeds.push_back(any_feed(s.length));
    if (*rc::gen::arbitrary<bool>()) let_some_wait(s.feeds, s.length);
    for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
        Hookbait hookbait{any_name(), BitesPerHour{number_between(0.1, 3600)}};
        if (*rc::gen::arbitrary<bool>()) std::visit([&](auto either) { hookbait.amount = either; }, any_amount());
        s.hookbaits.push_back(hookbait);
    }
    return s;
}

/// A strategy with one thing wrong; lines and columns were counted by hand.
struct BrokenStrategy {
    const char* text;
    const char* code;
    int line, column;
    const char* says;
};

/// Two good lines; what is wrong begins in line 3.
#define STRATEGY_HEAD "name = \"far bank\"\nlength = \"5 h\"\n"
/// Two good lines of a feed below it; what is wrong begins in line 5 or 6.
#define FEED STRATEGY_HEAD "[[feed]]\nof = \"silt bed\"\n"
#define CUP "as = \"cup\"\nsize = \"250 ml\"\n"
/// A strategy without fault down to line 7.
#define GOOD FEED "at = \"0 min\"\n" CUP

const BrokenStrategy broken[]{
    {"name = \"far bank\"\n[[feed]]\nof = \"silt bed\"\nat = \"0 min\"\n" CUP, "missing-value", 1, 1,
     "'length' is missing; a strategy"},
    {"name = \"far bank\"\nlength = \"0 h\"\n[[feed]]\nof = \"silt bed\"\nat = \"0 min\"\n" CUP, "out-of-range", 2, 10,
     "from 1 min to 24 h, not the text '0 h'"},
    {"name = \"far bank\"\nlength = \"25 h\"\n[[feed]]\nof = \"silt bed\"\nat = \"0 min\"\n" CUP, "out-of-range", 2, 10,
     "24 h"},
    {"name = \"far bank\"\nlength = 5\n[[feed]]\nof = \"silt bed\"\nat = \"0 min\"\n" CUP, "no-unit", 2, 10,
     "'length' must be text such as \"5 h\", not the number 5"},
    {"name = \"far bank\"\nlength = \"5 kg\"\n[[feed]]\nof = \"silt bed\"\nat = \"0 min\"\n" CUP, "wrong-dimension", 2,
     10, "is a mass, but a time is needed"},
    {STRATEGY_HEAD "spare = \"10 %\"\n", "missing-value", 1, 1, "a strategy has no feed"},
    {GOOD "[watr]\ndepth = \"2 m\"\n", "unknown-key", 8, 2, "'watr' is not a key of a strategy"},
    {GOOD "[water]\ndeepth = \"2 m\"\n", "unknown-key", 9, 1, "'deepth' is not a key"},
    {GOOD "[water]\ndepth = \"0 m\"\n", "out-of-range", 9, 9, "from 1 cm to 100 m"},
    {GOOD "[water]\ntemperature = \"50 degC\"\n", "out-of-range", 9, 15, "from 0 to 40 degC"},
    {GOOD "[water]\nclarity = \"tingd\"\n", "unknown-word", 9, 11, "'clarity' cannot be 'tingd'"},
    {GOOD "[water]\ntow = \"-1 cm/s\"\n", "out-of-range", 9, 7, "from 0 to 5 m/s"},
    {GOOD "[pace]\nput_ins_per_hour = 0\n", "out-of-range", 9, 20, "must be above 0"},
    {GOOD "[pace]\nput_ins_per_hour = \"12\"\n", "wrong-type", 9, 20, "plain number"},
    {GOOD "[pace]\nfish_per_hour = 4000\n", "out-of-range", 9, 17, "not 4000"},
    {STRATEGY_HEAD "spare = \"501 %\"\n[[feed]]\nof = \"silt bed\"\nat = \"0 min\"\n" CUP, "out-of-range", 3, 9,
     "from 0 to 500 %"},
    {FEED CUP, "no-time", 3, 1, "does not say when"},
    {FEED "at = \"0 min\"\nevery = \"40 min\"\n" CUP, "two-times", 6, 1, "says twice when"},
    {FEED "at = \"300 min\"\n" CUP, "after-end", 5, 6, "'at' is not before the end of the session"},
    {FEED "at = \"6 h\"\n" CUP, "after-end", 5, 6, "not before the end"},
    {FEED "at = \"-1 min\"\n" CUP, "out-of-range", 5, 6, "not be below zero"},
    {FEED "at = 0\n" CUP, "no-unit", 5, 6, "\"0 min\", not the number 0"},
    {FEED "at = \"0 min\"\nuntil = \"60 min\"\n" CUP, "unfit-key", 6, 1, "'until' goes with 'every'"},
    {FEED "every = \"40 min\"\nfrom = \"301 min\"\n" CUP, "after-end", 6, 8, "'from' is not before"},
    {FEED "every = \"40 min\"\nfrom = \"60 min\"\nuntil = \"50 min\"\n" CUP, "inconsistent-values", 7, 9,
     "'until' must be after 'from'"},
    {FEED "every = \"40 min\"\nuntil = \"301 min\"\n" CUP, "after-end", 6, 9, "'until' is after the end"},
    {FEED "every = \"0 min\"\n" CUP, "out-of-range", 5, 9, "from 1 s to 24 h"},
    {FEED "every = \"put-in\"\n" CUP, "no-pace", 5, 9, "fed by the put-in, but no pace"},
    {FEED "every = \"6 fish\"\n" CUP, "no-pace", 5, 9, "fed by the fish, but no pace"},
    {FEED "every = \"0 fish\"\n" CUP, "out-of-range", 5, 9, "whole fish, from 1"},
    {FEED "every = \"1.5 fish\"\n" CUP, "out-of-range", 5, 9, "whole fish"},
    {FEED "every = \"putin\"\n" CUP, "unknown-word", 5, 9, "'every' cannot be 'putin'"},
    {FEED "every = \"40\"\n" CUP, "no-unit", 5, 9, "'40' has no unit"},
    {FEED "every = \"40 g\"\n" CUP, "wrong-dimension", 5, 9, "is a mass, but a time"},
    {FEED "when = \"slwo\"\n" CUP, "unknown-word", 5, 8, "'when' cannot be 'slwo'"},
    {FEED "when = \"20 min\"\n" CUP, "unknown-word", 5, 8, "'when' cannot be '20 min'"},
    {FEED "when = \"0 fish\"\n" CUP, "out-of-range", 5, 8, "whole fish, from 1"},
    {FEED "when = \"put-in\"\n" CUP, "no-pace", 5, 8, "fed by the put-in, but no pace"},
    {FEED "when = \"slow\"\nevery = \"40 min\"\n" CUP, "two-times", 5, 1, "says twice when"},
    {FEED "when = \"start\"\nfrom = \"40 min\"\n" CUP, "unfit-key", 6, 1, "'from' goes with 'every'"},
    {FEED "when = \"slow\"\nexpected = 0\n" CUP, "out-of-range", 6, 12, "from 0.1 to 100, not 0"},
    {FEED "when = \"slow\"\nexpected = 101\n" CUP, "out-of-range", 6, 12, "from 0.1 to 100, not 101"},
    {FEED "when = \"slow\"\nexpected = \"3\"\n" CUP, "wrong-type", 6, 12, "plain number"},
    {FEED "at = \"0 min\"\nexpected = 3\n" CUP, "unfit-key", 6, 1, "'expected' goes with when = \"slow\""},
    {FEED "when = \"slow\"\nafter = \"silt bed\"\n" CUP, "unfit-key", 6, 1, "'after' goes with 'every'"},
    {FEED "every = \"40 min\"\nafter = \"silt bed\"\n" CUP, "unknown-feed", 6, 9, "no other feed of the strategy is"},
    {FEED "every = \"40 min\"\nafter = 3\n" CUP, "wrong-type", 6, 9, "'after' must be text"},
    {GOOD "[[feed]]\nof = \"a\"\nevery = \"1 h\"\nfrom = \"1 h\"\nafter = \"silt bed\"\n" CUP, "unfit-key", 11, 1,
     "both say when the feed begins"},
    {GOOD "[[feed]]\nof = \"a\"\nevery = \"1 h\"\n" CUP "[[feed]]\nof = \"b\"\nevery = \"1 h\"\nafter = \"a\"\n" CUP,
     "never-used-up", 16, 9, "feed 2, a, is fed to the end of the session"},
    {GOOD "[[feed]]\nof = \"a\"\nwhen = \"slow\"\n" CUP "[[feed]]\nof = \"b\"\nevery = \"1 h\"\nafter = \"a\"\n" CUP,
     "never-used-up", 16, 9, "goes in as bites slow"},
    {GOOD "[[feed]]\nof = \"a\"\nevery = \"1 h\"\nuntil = \"2 h\"\nafter = \"b\"\n" CUP
          "[[feed]]\nof = \"b\"\nevery = \"1 h\"\nuntil = \"3 h\"\nafter = \"a\"\n" CUP,
     "circle", 12, 9, "feed 2 waits for a feed that waits for it"},
    {STRATEGY_HEAD
     "[[feed]]\nparts = [{ of = \"a\", share = 1, feel = \"soft\" }, { of = \"b\", share = 1, feel = \"firm\" }]\n"
     "at = \"0 min\"\nas = \"ball\"\nsize = \"egg\"\n",
     "unfit-feel", 4, 9, "a ball has one feel, and this one has 'soft' and 'firm'"},
    {GOOD "[air]\ntemperature = \"50 degC\"\n", "out-of-range", 9, 15, "from -5 to 45 degC"},
    {GOOD "[air]\nhumidity = \"120 %\"\n", "out-of-range", 9, 12, "from 0 to 100 %"},
    {GOOD "[air]\nwind = \"30 m/s\"\n", "out-of-range", 9, 8, "from 0 to 20 m/s"},
    {GOOD "[air]\nsun = \"yes\"\n", "wrong-type", 9, 7, "'sun' must be true or false, not the text 'yes'"},
    {GOOD "[air]\nhumdity = \"40 %\"\n", "unknown-key", 9, 1, "'humdity' is not a key"},
    {FEED "at = \"0 min\"\nsize = \"250 ml\"\n", "missing-value", 3, 1, "'as' is missing; a feed"},
    {FEED "at = \"0 min\"\nas = \"bucket\"\nsize = \"250 ml\"\n", "unknown-word", 6, 6, "'as' cannot be 'bucket'"},
    {FEED "at = \"0 min\"\nas = \"cup\"\n", "missing-value", 3, 1, "'size' is missing"},
    {FEED "at = \"0 min\"\nas = \"cup\"\nsize = \"50 mm\"\n", "unfit-size", 7, 8,
     "the size of a cup is what it holds, not '50 mm'"},
    {FEED "at = \"0 min\"\nas = \"ball\"\nsize = \"50 ml\"\n", "unfit-size", 7, 8,
     "the size of a ball is how wide it is"},
    {FEED "at = \"0 min\"\nas = \"ball\"\nsize = \"eg\"\n", "unknown-size", 7, 8, "not a size of a ball"},
    {FEED "at = \"0 min\"\nas = \"ball\"\nsize = \"1 m\"\n", "out-of-range", 7, 8, "from 5 to 200 mm"},
    {FEED "at = \"0 min\"\nas = \"cup\"\nsize = \"0 ml\"\n", "out-of-range", 7, 8, "from 0.5 ml to 20 l"},
    {GOOD "count = 0\n", "out-of-range", 8, 9, "from 1 to 1000, not 0"},
    {GOOD "count = 2.5\n", "out-of-range", 8, 9, "whole number"},
    {GOOD "count = \"3\"\n", "wrong-type", 8, 9, "plain number"},
    {GOOD "amount = \"3 g\"\n", "unfit-key", 8, 1, "'amount' belongs to loose feed"},
    {FEED "at = \"0 min\"\nas = \"loose\"\nsize = \"30 ml\"\namount = \"30 ml\"\n", "unfit-key", 7, 1,
     "'size' does not belong to loose"},
    {FEED "at = \"0 min\"\nas = \"loose\"\n", "missing-value", 3, 1, "'amount' is missing"},
    {FEED "at = \"0 min\"\nas = \"loose\"\namount = \"30 mm\"\n", "wrong-dimension", 7, 10,
     "neither a mass nor a volume"},
    {FEED "at = \"0 min\"\nas = \"loose\"\namount = \"0 g\"\n", "out-of-range", 7, 10, "from 1 mg to 10000 kg"},
    {GOOD "feel = 3\n", "wrong-type", 8, 8, "'feel' must be text"},
    {GOOD "prepare = \"boiled\"\n", "unknown-word", 8, 11, "'prepare' cannot be 'boiled'"},
    {GOOD "cuont = 3\n", "unknown-key", 8, 1, "'cuont' is not a key of a feed"},
    {STRATEGY_HEAD "[[feed]]\nat = \"0 min\"\n" CUP, "missing-value", 3, 1, "'of' is missing; a feed"},
    {GOOD "parts = [{ of = \"a\", share = 1 }]\n", "unfit-key", 4, 1, "'of' and 'parts' do not go together"},
    {STRATEGY_HEAD "[[feed]]\nparts = [{ of = \"a\" }]\nat = \"0 min\"\n" CUP, "missing-value", 4, 10,
     "'share' is missing"},
    {STRATEGY_HEAD "[[feed]]\nparts = [{ of = \"a\", share = 0 }]\nat = \"0 min\"\n" CUP, "out-of-range", 4, 30,
     "'share' must be above 0"},
    {STRATEGY_HEAD "[[feed]]\nparts = []\nat = \"0 min\"\n" CUP, "missing-value", 4, 9, "the feed has no part"},
    {STRATEGY_HEAD "[[feed]]\nparts = \"a\"\nat = \"0 min\"\n" CUP, "wrong-type", 4, 9, "must be blocks"},
    {STRATEGY_HEAD "[feed]\nof = \"silt bed\"\nat = \"0 min\"\n" CUP, "single-brackets", 3, 1,
     "'feed' stands in single brackets"},
    {GOOD "[[hookbait]]\nof = \"maggots\"\n", "no-amount", 8, 1, "does not say how much"},
    {GOOD "[[hookbait]]\nof = \"maggots\"\nbites_per_hour = 3\namount = \"1 pt\"\n", "two-amounts", 11, 1,
     "says twice"},
    {GOOD "[[hookbait]]\nof = \"maggots\"\nbites_per_hour = 0\n", "out-of-range", 10, 18, "above 0"},
    {GOOD "[[hookbait]]\nbites_per_hour = 3\n", "missing-value", 8, 1, "'of' is missing; a hookbait"},
    {GOOD "kind = \"base\"\n", "unknown-key", 8, 1, "'kind' is not a key of a feed"},
    {"kind = \"base\"\n" GOOD, "two-entries", 4, 3, "both a kind, as an ingredient, and a feed, as a strategy"},
};

}  // namespace

TEST_CASE("a strategy is read_strategy_file as it was written") {
    const Strategy s = read_strategy_file(whole_strategy);
    CHECK(s.name == "far bank");
    CHECK(s.purpose == "Bream.");
    CHECK(s.length.in(hour) == Approx(5));
    CHECK(double(s.spare) == Approx(0.15));
    CHECK(s.water.depth.value().in(metre) == Approx(2.5));
    CHECK(s.water.temperature.value().in_celsius() == Approx(12));
    CHECK(s.water.clarity == "tinged");
    CHECK(s.water.tow.value().in(centimetre_per_second) == Approx(2));
    CHECK(s.water.tow_bottom.value().in(centimetre_per_second) == Approx(-1));
    CHECK(s.pace.put_ins_per_hour.value() == 12);
    CHECK(s.pace.fish_per_hour.value() == 7.5);
    REQUIRE(s.feeds.size() == 4);
    CHECK(std::get<AtOnce>(s.feeds[0].when.rhythm).at == Time{});
    CHECK(std::get<Volume>(s.feeds[0].size).in(millilitre) == Approx(250));
    CHECK(s.feeds[0].count == 3);
    CHECK(s.feeds[0].feel == "soft");
    CHECK(std::get<EveryTime>(s.feeds[1].when.rhythm).gap.in(minute) == Approx(40));
    CHECK(s.feeds[1].when.from.in(minute) == Approx(60));
    CHECK(s.feeds[1].when.until.value().in(minute) == Approx(270));
    REQUIRE(s.feeds[1].parts.size() == 2);
    CHECK(s.feeds[1].parts[0].prepare == Preparation::soaked);
    CHECK(s.feeds[1].parts[0].share == 2);
    CHECK(std::get<Length>(s.feeds[1].size).in(millimetre) == Approx(50));
    CHECK(name_of(s.feeds[1]) == "fishmeal micro pellet 2 mm and sweetcorn");
    CHECK(std::holds_alternative<EveryPutIn>(s.feeds[2].when.rhythm));
    CHECK(s.feeds[2].count == 1);
    CHECK(std::get<EveryFish>(s.feeds[3].when.rhythm).fish == 6);
    CHECK(std::get<Mass>(s.feeds[3].size).in(gram) == Approx(20));
    REQUIRE(s.hookbaits.size() == 2);
    CHECK(std::get<BitesPerHour>(s.hookbaits[0].amount).bites == 30);
    CHECK(std::get<Volume>(s.hookbaits[1].amount).in(imperial_pint) == Approx(0.25));
}

TEST_CASE("when can be said in words, and what is fed as bites slow is reckoned twice where it does not say") {
    const auto when_of = [](const std::string& lines) {
        return read_strategy_file(FEED + lines + CUP "[pace]\nput_ins_per_hour = 12\nfish_per_hour = 7\n")
            .feeds[0]
            .when;
    };
    CHECK(std::get<WhenSlow>(when_of("when = \"slow\"\n").rhythm).times == 2);
    const FeedTiming slow = when_of("when = \"Slow\"\nexpected = 2.5\nfrom = \"60 min\"\nuntil = \"4 h\"\n");
    CHECK(std::get<WhenSlow>(slow.rhythm).times == 2.5);
    CHECK(slow.from.in(minute) == Approx(60));
    CHECK(slow.until.value().in(hour) == Approx(4));
    CHECK(std::get<AtOnce>(when_of("when = \"start\"\n").rhythm).at == Time{});
    CHECK(std::holds_alternative<EveryPutIn>(when_of("when = \"put-in\"\n").rhythm));
    CHECK(std::get<EveryFish>(when_of("when = \"6 fish\"\n").rhythm).fish == 6);
}

TEST_CASE("parts have feels of their own; the one feel of a part alone or of a ball is that of its feed") {
    const std::string two = "parts = [{ of = \"a\", share = 2, feel = \"soft\" }, { of = \"b\", share = 1 }]\n";
    const auto feed_of = [](const std::string& lines) {
        return read_strategy_file(STRATEGY_HEAD "[[feed]]\nat = \"0 min\"\n" + lines).feeds.at(0);
    };
    const Feed cup = feed_of(two + CUP);
    CHECK(cup.feel.empty());
    CHECK(cup.parts[0].feel == "soft");
    CHECK(cup.parts[1].feel.empty());
    const Feed ball = feed_of(two + "as = \"ball\"\nsize = \"egg\"\n");
    CHECK(ball.feel == "soft");
    CHECK(ball.parts[0].feel.empty());
    CHECK(feed_of("parts = [{ of = \"a\", share = 2, feel = \"firm\" }]\n" CUP).feel == "firm");
}

TEST_CASE("the air of a strategy is read as it was written") {
    const AirSetting air =
        read_strategy_file(GOOD "[air]\ntemperature = \"30 degC\"\nhumidity = \"40 %\"\nwind = \"3 m/s\"\nsun = true\n")
            .air;
    CHECK(air.temperature.value().in_celsius() == Approx(30));
    CHECK(double(air.humidity.value()) == Approx(0.4));
    CHECK(air.wind.value().in(metre_per_second) == Approx(3));
    CHECK(air.sun);
    CHECK_FALSE(read_strategy_file(GOOD).air.sun);
}

TEST_CASE("a strategy takes a tenth more where it does not say") {
    CHECK(double(read_strategy_file(GOOD).spare) == Approx(0.10));
}

TEST_CASE("several strategies, mixes and ingredients share a file") {
    const LibraryFile file = read_library_file(
        "[[strategy]]\nname = \"a\"\nlength = \"1 h\"\n[[strategy.feed]]\nof = \"c\"\nat = \"0 min\"\n" CUP
        "[[mix]]\nname = \"c\"\n[[mix.part]]\nof = \"crumb\"\nshare = 1\n"
        "[[strategy]]\nname = \"b\"\nlength = \"1 h\"\n[[strategy.feed]]\nof = \"c\"\nat = \"0 min\"\n" CUP,
        "a.toml");
    CHECK(file.faults.empty());
    REQUIRE(file.strategies.size() == 2);
    CHECK(file.strategies[1].value.name == "b");
    CHECK(file.recipes.size() == 1);
}

TEST_CASE("the places of a strategy are those of its values") {
    const LibraryFile file = read_library_file(whole_strategy, "a.toml");
    const EntryPlaces& places = file.strategies.at(0).places;
    CHECK(places.at(feed_part_subject(1, 1)).line == 17);
    CHECK(places.at(feed_feel_subject(1)).line == 21);
    CHECK(places.at(feed_part_subject(2, 2)).line == 26);
    CHECK(places.at(feed_part_subject(2, 2)).column == 87);
    CHECK(places.at(hookbait_subject(2)).line == 43);
}

TEST_CASE("any strategy is written and read_strategy_file back as it was") {
    CHECK(rc::check([] {
        const Strategy strategy = any_strategy();
        const LibraryFile back = read_library_file(toml_text(strategy), "a.toml");
        for (const Fault& fault : back.faults) RC_LOG() << fault.source_line << "\n" << fault.message << "\n";
        RC_ASSERT(back.faults.empty());
        RC_ASSERT(back.strategies.size() == 1U);
        RC_ASSERT(first_difference(strategy, back.strategies[0].value) == std::string());
    }));
}

TEST_CASE("each setting of a strategy and a feed is written and read back alone") {
    for (const auto& [key, strategy] : one_setting_each()) {
        INFO(toml_text(strategy));
        CHECK(first_difference(strategy, plain_strategy()) != "");
        CHECK(toml_text(strategy).find(key + " = ") != std::string::npos);
        CHECK(first_difference(strategy, read_strategy_file(toml_text(strategy))) == "");
    }
}

TEST_CASE("each slip in a strategy is told at its place, and the strategy left out") {
    for (const BrokenStrategy& one : broken) {
        INFO(one.text);
        const LibraryFile file = read_library_file(one.text, "a.toml");
        REQUIRE_FALSE(file.faults.empty());
        INFO(file.faults.front().message << " | " << file.faults.front().hint);
        CHECK(file.faults.size() == 1);
        CHECK(file.faults.front().code == one.code);
        CHECK(file.faults.front().line == one.line);
        CHECK(file.faults.front().column == one.column);
        CHECK(file.faults.front().message.find(one.says) != std::string::npos);
        CHECK(file.strategies.empty());
    }
}

TEST_CASE("two strategies of one name in a file are one too many") {
    const LibraryFile file = read_library_file(
        GOOD
        "[[strategy]]\nname = \"Far  bank\"\nlength = \"5 h\"\n[[strategy.feed]]\nof = \"a\"\nat = \"0 min\"\n" CUP,
        "a.toml");
    REQUIRE(file.faults.size() == 1);
    CHECK(file.faults.front().code == "duplicate-name");
    CHECK(file.strategies.size() == 1);
    CHECK(file.faulty_strategies.size() == 1);
}

TEST_CASE("a mistyped key or word of a strategy comes with the right one") {
    const auto hint = [](const std::string& text) { return read_library_file(text, "a.toml").faults.at(0).hint; };
    CHECK(hint(GOOD "cuont = 3\n") == "did you mean 'count'?");
    CHECK(hint(FEED "every = \"putin\"\n" CUP) == "did you mean 'put-in'?");
    CHECK(hint(GOOD "[water]\nclarity = \"tingd\"\n") == "did you mean 'tinged'?");
    CHECK(hint(FEED "at = \"0 min\"\nas = \"bal\"\nsize = \"50 mm\"\n") == "did you mean 'ball'?");
}
