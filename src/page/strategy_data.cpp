#include "page/strategy_data.h"

#include "page/data_values.h"

namespace baitwright {

namespace {

/// The number that an alternative holds.
struct HeldNumber {
    double operator()(AtOnce once) const { return once.at.si(); }
    double operator()(EveryTime every) const { return every.gap.si(); }
    double operator()(EveryPutIn) const { return 0; }
    double operator()(EveryFish every) const { return every.fish; }
    double operator()(WhenSlow slow) const { return slow.times; }
    double operator()(BitesPerHour bites) const { return bites.bites; }
    template <class D>
    double operator()(Quantity<D> quantity) const {
        return quantity.si();
    }
};

template <class Alternatives>
Json held_data(const Alternatives& value) {
    return Json::array({value.index(), std::visit(HeldNumber{}, value)});
}

FeedRhythm rhythm_in(const Json& data) {
    switch (whole_in(data[0])) {
        case 0:
            return AtOnce{dressed_number<Time>(data[1])};
        case 1:
            return EveryTime{dressed_number<Time>(data[1])};
        case 2:
            return EveryPutIn{};
        case 3:
            return EveryFish{whole_in(data[1])};
        default:
            return WhenSlow{data[1].number()};
    }
}

FeedSize size_in(const Json& data) {
    switch (whole_in(data[0])) {
        case 0:
            return dressed_number<Mass>(data[1]);
        case 1:
            return dressed_number<Volume>(data[1]);
        default:
            return dressed_number<Length>(data[1]);
    }
}

std::variant<BitesPerHour, Mass, Volume> hook_amount_in(const Json& data) {
    switch (whole_in(data[0])) {
        case 0:
            return BitesPerHour{data[1].number()};
        case 1:
            return dressed_number<Mass>(data[1]);
        default:
            return dressed_number<Volume>(data[1]);
    }
}

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

Json feed_data(const Feed& feed) {
    Json data{{"when", held_data(feed.when.rhythm)},
              {"from", feed.when.from.si()},
              {"parts", list_data(feed.parts, fed_part_data)},
              {"as", static_cast<int>(feed.form)},
              {"size", held_data(feed.size)},
              {"count", feed.count}};
    put_stated(data, "until", feed.when.until);
    put_text(data, "after", feed.when.after);
    put_text(data, "feel", feed.feel);
    return data;
}

Feed feed_in(const Json& data) {
    Feed feed;
    feed.when = {rhythm_in(data["when"]), dressed_number<Time>(data["from"]), {}, text_in(data, "after")};
    take_stated(data, "until", feed.when.until);
    take_list(data, "parts", feed.parts, fed_part_in);
    feed.form = static_cast<FeedForm>(whole_in(data["as"]));
    feed.size = size_in(data["size"]);
    feed.count = whole_in(data["count"]);
    feed.feel = text_in(data, "feel");
    return feed;
}

/// Each number of the water, the air and the pace with its key.
template <class AStrategy, class Visit>
void visit_settings(AStrategy& strategy, Visit&& visit) {
    visit("depth", strategy.water.depth);
    visit("temperature", strategy.water.temperature);
    visit("tow", strategy.water.tow);
    visit("tow_bottom", strategy.water.tow_bottom);
    visit("air", strategy.air.temperature);
    visit("humidity", strategy.air.humidity);
    visit("wind", strategy.air.wind);
    visit("put_ins_per_hour", strategy.pace.put_ins_per_hour);
    visit("fish_per_hour", strategy.pace.fish_per_hour);
}

/// Each of its texts with its key, but for the name.
template <class AStrategy, class Visit>
void visit_strategy_texts(AStrategy& strategy, Visit&& visit) {
    visit("purpose", strategy.purpose);
    visit("avoid", strategy.avoid);
    visit("why", strategy.why);
    visit("note", strategy.note);
    visit("clarity", strategy.water.clarity);
}

}  // namespace

Json strategy_data(const Strategy& strategy) {
    Json data{{"name", strategy.name}, {"length", strategy.length.si()}, {"spare", strategy.spare.si()}};
    visit_strategy_texts(strategy, [&](const char* key, const std::string& text) { put_text(data, key, text); });
    visit_settings(strategy, [&](const char* key, const auto& number) { put_stated(data, key, number); });
    if (strategy.air.sun) data["sun"] = true;
    put_list(data, "feeds", strategy.feeds, feed_data);
    put_list(data, "hookbaits", strategy.hookbaits, [](const Hookbait& hookbait) {
        return Json{{"of", hookbait.of}, {"amount", held_data(hookbait.amount)}};
    });
    return data;
}

Strategy strategy_in(const Json& data) {
    Strategy strategy;
    strategy.name = data["name"].text();
    strategy.length = dressed_number<Time>(data["length"]);
    strategy.spare = data["spare"].number();
    visit_strategy_texts(strategy, [&](const char* key, std::string& text) { text = text_in(data, key); });
    visit_settings(strategy, [&](const char* key, auto& number) { take_stated(data, key, number); });
    strategy.air.sun = data.contains("sun");
    take_list(data, "feeds", strategy.feeds, feed_in);
    take_list(data, "hookbaits", strategy.hookbaits, [](const Json& hookbait) {
        return Hookbait{hookbait["of"].text(), hook_amount_in(hookbait["amount"])};
    });
    return strategy;
}

}  // namespace baitwright
