// The rules of advice that we ship: none contradicts another on any day, and none scores for what it does not say.
#include <algorithm>
#include <catch2/catch.hpp>

#include "answers/strategy/advise.h"
#include "library/advice_rules.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

const std::vector<AdviceRule>& shipped_rules() {
    static const std::vector<AdviceRule> rules = advice_rules(LibraryPlace());
    return rules;
}

/// Every clarity and bed, in the cold and the warm, in flow and out of it, shallow and deep, long and short.
std::vector<Circumstances> many_days() {
    std::vector<Circumstances> days;
    for (const char* clarity : {"", "clear", "tinged", "coloured"})
        for (const char* bed : {"", "pale", "dark"})
            for (const double celsius : {4.0, 15.0, 22.0})
                for (const double depth : {0.3, 2.0, 5.0})
                    for (const double tow : {0.0, 20.0})
                        for (const double hours : {2.0, 5.0}) {
                            Circumstances now;
                            now.clarity = clarity;
                            now.bed = bed;
                            now.temperature = Temperature::from_celsius(celsius);
                            now.depth = depth * metre;
                            now.tow = tow * centimetre_per_second;
                            now.hours = hours * hour;
                            now.fish = {"bream", "bleak"};
                            days.push_back(now);
                        }
    return days;
}

bool says(const AdviceRule& rule, const std::string& word) {
    return rule.say.find(word) != std::string::npos;
}

}  // namespace

TEST_CASE("no two shipped rules of colour hold on one day, and no bed is laid where none is to be") {
    REQUIRE_FALSE(shipped_rules().empty());
    int coloured = 0;
    for (const Circumstances& now : many_days()) {
        CAPTURE(now.clarity, now.bed, now.temperature->in_celsius(), now.depth->in(metre));
        int colours = 0;
        bool lays_a_bed = false, lays_none = false, small = false;
        for (const AdviceRule& rule : shipped_rules()) {
            if (!holds(rule, now)) continue;
            colours += rule.about == "colour";
            lays_a_bed = lays_a_bed || says(rule, "lay a bed");
            lays_none = lays_none || says(rule, "no big bed");
            small = small || says(rule, "no balls");
        }
        CHECK(colours <= 1);
        if (!now.clarity.empty()) CHECK(colours == 1);
        CHECK_FALSE((lays_a_bed && (lays_none || small)));
        coloured += colours;
    }
    CHECK(coloured > 0);
}

TEST_CASE("each colour and feel that a shipped rule favours is named in what it says") {
    for (const AdviceRule& rule : shipped_rules()) {
        CAPTURE(rule.say);
        for (const std::string& colour : rule.colours) CHECK(says(rule, colour));
        for (const std::string& feel : rule.feels) CHECK(says(rule, feel));
        CHECK(unknown_limits(rule.say, rule).empty());
        CHECK(unknown_limits(rule.why, rule).empty());
    }
}

TEST_CASE("no shipped rule names as favoured a strategy that its own words speak against") {
    const auto shelf = shipped_shelf();
    int favoured = 0;
    for (const AdviceRule& rule : shipped_rules()) {
        AdviceRule always = rule;
        always.when = always.unless = {};
        for (const AdvisedStrategy& strategy : advise(*shelf, {always}, {}).strategies) {
            const auto& names = rule.favour;
            if (std::find(names.begin(), names.end(), strategy.name) == names.end()) continue;
            CAPTURE(rule.say, strategy.name);
            CHECK(strategy.score == 2);
            ++favoured;
        }
    }
    CHECK(favoured > 5);
}

TEST_CASE("in half a metre of water nothing scores for cups of a quarter of a litre where pots of 25 ml are told") {
    const auto shelf = shipped_shelf();
    Circumstances now;
    now.depth = 0.3 * metre;
    for (const AdvisedStrategy& strategy : advise(*shelf, shipped_rules(), now).strategies) {
        const bool all_large = std::all_of(strategy.feeds.begin(), strategy.feeds.end(), [](const AdvisedFeed& feed) {
            return feed.form == FeedForm::ball || feed.each > 26.0 * millilitre;
        });
        CAPTURE(strategy.name);
        if (all_large) CHECK(strategy.score < 0);
    }
}
