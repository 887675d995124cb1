// The list of a strategy's settings: nothing in it is called like another, and what is not possible is told.
#include "bait/strategy_settings.h"

#include <catch2/catch.hpp>
#include <set>

#include "bait/beyond_range.h"
#include "bait/each_setting.h"

using namespace baitwright;

namespace {

/// The names of a place, each of which may come once.
struct NamesOnce {
    std::set<std::string> names;
    void add(std::string_view name) {
        INFO(name);
        CHECK_FALSE(name.empty());
        CHECK(names.insert(std::string(name)).second);
    }
};

/// What files, store, JSON and page call the settings, beside what they call the rest.
struct NamesOfSettings {
    NamesOnce files, columns, json, carried;
    void operator()(const SettingNames& facts) {
        files.add(facts.key);
        columns.add(facts.column);
        json.add(facts.json);
        carried.add(facts.carried);
    }
};

}  // namespace

TEST_CASE("no setting of a strategy is called like another in files, the store, JSON or a page's data") {
    const Strategy strategy;
    NamesOfSettings top{{{"name", "feed", "hookbait"}},
                        {{"id", "name", "folded", "owner"}},
                        {{"name", "feeds", "hookbaits"}},
                        {{"name", "feeds", "hookbaits"}}};
    const auto add = [&](const SettingNames& facts, const auto&) { top(facts); };
    visit_prose(strategy, add);
    visit_extent(strategy, add);
    visit_blocks(strategy, [&](const BlockFacts& block, auto&& walk) {
        top.files.add(block.key);
        top.json.add(block.key);
        NamesOfSettings own{{}, top.columns, {}, top.carried};
        walk([&](const SettingNames& facts, const auto&) { own(facts); });
        top.columns = own.columns;
        top.carried = own.carried;
    });
    CHECK(top.columns.names.size() == 4 + settings_of(strategy).size());
}

TEST_CASE("no setting of a feed is called like another in files, the store, JSON or a page's data") {
    NamesOfSettings names{{{"at", "every", "when", "expected", "of", "parts", "prepare", "as", "size", "amount"}},
                          {{"strategy_id", "position", "rhythm", "every", "form", "measure", "size"}},
                          {{"at_minute", "every_minutes", "every_put_in", "every_fish", "when", "expected", "parts",
                            "as", "size_ml", "diameter_mm", "amount_g"}},
                          {{"when", "parts", "as", "size"}}};
    const Feed feed;
    visit_feed_settings(feed, [&](const SettingNames& facts, const auto&) { names(facts); });
}

TEST_CASE("each setting as its example has it lies in its range") {
    CHECK(beyond_range(plain_strategy()).empty());
    REQUIRE(one_setting_each().size() > 15);
    for (const auto& [key, strategy] : one_setting_each()) {
        INFO(key);
        CHECK(beyond_range(strategy).empty());
    }
}

TEST_CASE("each form of a feed has sizes of its own, and no other") {
    const auto lies_in_range = [](FeedForm form, const FeedSize& size) {
        Strategy strategy = plain_strategy();
        strategy.feeds.front().form = form;
        strategy.feeds.front().size = size;
        return beyond_range(strategy).empty();
    };
    const FeedSize ball = 50.0 * millimetre, wide = 20.0 * metre, cup = 250.0 * millilitre, barrel = 21.0 * litre,
                   handful = 60.0 * gram;
    for (const FeedSize& none_of_a_ball : {cup, handful, wide})
        CHECK_FALSE(lies_in_range(FeedForm::ball, none_of_a_ball));
    CHECK(lies_in_range(FeedForm::ball, ball));
    for (const FeedForm vessel : {FeedForm::cup, FeedForm::feeder}) {
        CHECK(lies_in_range(vessel, cup));
        for (const FeedSize& none_of_a_vessel : {ball, barrel, handful})
            CHECK_FALSE(lies_in_range(vessel, none_of_a_vessel));
    }
    for (const FeedSize& loose : {cup, barrel, handful}) CHECK(lies_in_range(FeedForm::loose, loose));
    CHECK_FALSE(lies_in_range(FeedForm::loose, ball));
}

TEST_CASE("a number of a strategy beyond its range is told in words") {
    const auto told = [](auto&& change) {
        Strategy strategy = plain_strategy();
        change(strategy);
        return beyond_range(strategy);
    };
    CHECK(told([](Strategy& s) { s.length = Time{}; }) == "the session must be from 1 min to 24 h");
    CHECK(told([](Strategy& s) { s.spare = 5.1; }) == "what is to spare must be from 0 to 500 %");
    CHECK(told([](Strategy& s) { s.water.depth = Length{}; }) == "the depth must be from 1 cm to 100 m");
    CHECK(told([](Strategy& s) { s.water.temperature = Temperature::from_celsius(41); }) ==
          "the water must be from 0 to 40 degC");
    CHECK(told([](Strategy& s) { s.water.tow = -1.0 * metre_per_second; }) == "the tow must be at most 5 m/s");
    CHECK(told([](Strategy& s) { s.water.tow_bottom = -1.0 * metre_per_second; }).empty());
    CHECK(told([](Strategy& s) { s.water.tow_bottom = 6.0 * metre_per_second; }) == "the tow must be at most 5 m/s");
    CHECK(told([](Strategy& s) { s.air.temperature = Temperature::from_celsius(-6); }) ==
          "the air must be from -5 to 45 degC");
    CHECK(told([](Strategy& s) { s.air.humidity = 1.01; }) == "the humidity must be from 0 to 100 %");
    CHECK(told([](Strategy& s) { s.air.wind = 21.0 * metre_per_second; }) == "the wind must be from 0 to 20 m/s");
    CHECK(told([](Strategy& s) { s.pace.fish_per_hour = 0; }) == "the pace must be above 0 and at most 3600 an hour");
    CHECK(told([](Strategy& s) { s.feeds[1].count = 1001; }) == "in feed 2, the count must be from 1 to 1000");
}
