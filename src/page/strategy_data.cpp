#include "page/strategy_data.h"

#include "bait/strategy_settings.h"
#include "page/data_values.h"

namespace baitwright {

namespace {

Json fed_part_data(const FeedPart& part) {
    Json data{{"of", part.of}, {"share", part.share}};
    if (part.prepare == Preparation::soaked) data["soaked"] = true;
    put_text(data, "feel", part.feel);
    return data;
}

FeedPart fed_part_in(const Json& data) {
    const Preparation prepare = data.contains("soaked") ? Preparation::soaked : Preparation::as_bought;
    return {data["of"].text(), data["share"].number(), prepare, text_in(data, "feel")};
}

/// Puts each setting that it is shown under its name.
struct PutSetting {
    Json& data;
    void operator()(const SettingNames& facts, const std::string& text) const { put_text(data, facts.carried, text); }
    void operator()(const SettingNames& facts, bool truth) const {
        if (truth) data[facts.carried] = true;
    }
    void operator()(const SettingNames& facts, int count) const { data[facts.carried] = count; }
    void operator()(const SettingNames& facts, const auto& number) const { data[facts.carried] = bare_number(number); }
    template <class Q>
    void operator()(const SettingNames& facts, const std::optional<Q>& number) const {
        put_stated(data, facts.carried, number);
    }
};

/// Takes it from there.
struct TakeSetting {
    const Json& data;
    void operator()(const SettingNames& facts, std::string& text) const { text = text_in(data, facts.carried); }
    void operator()(const SettingNames& facts, bool& truth) const { truth = data.contains(facts.carried); }
    template <class Q>
    void operator()(const SettingNames& facts, Q& number) const {
        number = dressed_number<Q>(data[facts.carried]);
    }
    template <class Q>
    void operator()(const SettingNames& facts, std::optional<Q>& number) const {
        take_stated(data, facts.carried, number);
    }
};

Json feed_data(const Feed& feed) {
    Json data{{"when", held_data(feed.when.rhythm)},
              {"parts", list_data(feed.parts, fed_part_data)},
              {"as", static_cast<int>(feed.form)},
              {"size", held_data(feed.size)}};
    visit_feed_settings(feed, PutSetting{data});
    return data;
}

Feed feed_in(const Json& data) {
    Feed feed;
    feed.when.rhythm = held_in<FeedRhythm>(data["when"]);
    take_list(data, "parts", feed.parts, fed_part_in);
    feed.form = static_cast<FeedForm>(whole_in(data["as"]));
    feed.size = held_in<FeedSize>(data["size"]);
    visit_feed_settings(feed, TakeSetting{data});
    return feed;
}

}  // namespace

Json strategy_data(const Strategy& strategy) {
    Json data{{"name", strategy.name}};
    visit_settings(strategy, PutSetting{data});
    put_list(data, "feeds", strategy.feeds, feed_data);
    put_list(data, "hookbaits", strategy.hookbaits, [](const Hookbait& hookbait) {
        return Json{{"of", hookbait.of}, {"amount", held_data(hookbait.amount)}};
    });
    return data;
}

Strategy strategy_in(const Json& data) {
    Strategy strategy;
    strategy.name = data["name"].text();
    visit_settings(strategy, TakeSetting{data});
    take_list(data, "feeds", strategy.feeds, feed_in);
    take_list(data, "hookbaits", strategy.hookbaits, [](const Json& hookbait) {
        return Hookbait{hookbait["of"].text(), held_in<decltype(Hookbait::amount)>(hookbait["amount"])};
    });
    return strategy;
}

}  // namespace baitwright
