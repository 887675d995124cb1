#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bait/strategy_settings.h"
#include "quantities/quantity_text.h"

/// The settings of a strategy and of its feeds by the list, for tests that each of them comes through.
namespace baitwright {

/// What stands under a key: text, or the number in SI; neither where nothing is stated.
struct StatedSetting {
    std::string key;
    std::string text;
    std::optional<double> number;
};

class SettingsStated {
public:
    template <class Member>
    void operator()(const SettingNames& facts, const Member& member) {
        all.push_back({std::string(facts.key), {}, {}});
        state(member);
    }
    std::vector<StatedSetting> all;

private:
    void state(const std::string& text) { all.back().text = text; }
    void state(double number) { all.back().number = number; }
    void state(Temperature warmth) { all.back().number = warmth.in_kelvin(); }
    template <class D>
    void state(Quantity<D> quantity) {
        all.back().number = quantity.si();
    }
    template <class Q>
    void state(const std::optional<Q>& quantity) {
        if (quantity) state(*quantity);
    }
};

inline std::vector<StatedSetting> settings_of(const Strategy& strategy) {
    SettingsStated stated;
    visit_settings(strategy, stated);
    return stated.all;
}
inline std::vector<StatedSetting> settings_of(const Feed& feed) {
    SettingsStated stated;
    visit_feed_settings(feed, stated);
    return stated.all;
}

/// States the one of that place in the list as its example has it.
struct StateOne {
    int left;
    std::string key = {};
    template <class Facts, class Member>
    void operator()(const Facts& facts, Member& member) {
        if (left-- != 0) return;
        key = facts.key;
        state(facts, member);
    }

private:
    static void state(const SettingNames&, std::string& text) { text = "feed 2"; }
    static void state(const WordFacts& facts, std::string& word) { word = facts.words[1]; }
    static void state(const SettingNames&, bool& truth) { truth = !truth; }
    static void state(const SettingNames&, std::optional<double>& rate) { rate = 7.5; }
    static void state(const RangeFacts<int>&, int& count) { count = 3; }
    static void state(const MomentFacts& facts, Time& moment) { moment = parse<Time>(facts.example); }
    static void state(const MomentFacts& facts, std::optional<Time>& moment) { moment = parse<Time>(facts.example); }
    template <class Q>
    static void state(const RangeFacts<Q>& facts, Q& value) {
        value = parse<Q>(facts.example);
    }
    template <class Q>
    static void state(const RangeFacts<Q>& facts, std::optional<Q>& value) {
        value = parse<Q>(facts.example);
    }
};

/// With nothing that need not be stated.
inline Strategy plain_strategy() {
    Strategy plain;
    plain.name = "far bank";
    plain.length = 6.0 * hour;
    plain.spare = 0.25;
    const Feed cup{{EveryTime{30.0 * minute}, {}, {}}, {{"silt bed"}}, FeedForm::cup, 250.0 * millilitre, 1, ""};
    plain.feeds = {cup, cup};
    plain.feeds[1].parts[0].of = "casters";
    plain.feeds[1].when.until = 2.0 * hour;
    return plain;
}

/// For each setting of the list, by its key, the plain strategy with that one stated; those of feeds in the first.
inline std::vector<std::pair<std::string, Strategy>> one_setting_each() {
    std::vector<std::pair<std::string, Strategy>> all;
    while (true) {
        Strategy strategy = plain_strategy();
        StateOne stating{static_cast<int>(all.size())};
        visit_settings(strategy, stating);
        visit_feed_settings(strategy.feeds[0], stating);
        if (stating.left >= 0) return all;
        all.emplace_back(stating.key, strategy);
    }
}

}  // namespace baitwright
