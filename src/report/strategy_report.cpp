#include "report/entry_replies.h"

#include <fmt/format.h>

#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/measured_words.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

template <class Q, class Unit>
Json number_or_null(const std::optional<Q>& quantity, Unit unit) {
    return quantity ? Json(quantity->in(unit)) : Json();
}

Json number_or_null(const std::optional<double>& number) {
    return number ? Json(*number) : Json();
}

struct RhythmText {
    std::string operator()(AtOnce once) const {
        return once.at > Time{} ? "after " + shown_moment(once.at) : std::string("at the start");
    }
    std::string operator()(EveryTime every) const { return "every " + shown_moment(every.gap); }
    std::string operator()(EveryPutIn) const { return "at every put-in"; }
    std::string operator()(EveryFish every) const {
        return every.fish == 1 ? std::string("after every fish") : fmt::format("every {} fish", every.fish);
    }
    std::string operator()(WhenSlow) const { return "when bites slow"; }
};

std::string when_text(const FeedTiming& when) {
    std::string text = std::visit(RhythmText{}, when.rhythm);
    if (when.from > Time{}) text += " from " + shown_moment(when.from);
    if (!when.after.empty()) text += " once " + when.after + " is used up";
    if (when.until) text += " to " + shown_moment(*when.until);
    if (const auto* slow = std::get_if<WhenSlow>(&when.rhythm)) text += " (" + shown_reckoned(slow->times) + ")";
    return text;
}

std::string how_text(const Feed& feed) {
    const std::string size = shown_size(feed.size);
    if (feed.form == FeedForm::loose) return size + " loose";
    return fmt::format("{} {}{} of {}", feed.count, name_of(feed.form), feed.count == 1 ? "" : "s", size);
}

std::string what_text(const Feed& feed) {
    std::string text;
    for (const FeedPart& part : feed.parts) {
        text += text.empty() ? "" : ", ";
        if (feed.parts.size() > 1) text += fmt::format("{:g} ", part.share);
        const char* soaked = part.prepare == Preparation::soaked ? " (soaked)" : "";
        text += fmt::format("{}{}{}{}", part.of, soaked, part.feel.empty() ? "" : " at ", part.feel);
    }
    if (feed.parts.size() > 1) text += " by mass";
    return text + (feed.feel.empty() ? "" : ", " + feed.feel);
}

struct HookbaitText {
    std::string operator()(BitesPerHour bites) const { return fmt::format("for {:g} bites an hour", bites.bites); }
    std::string operator()(Mass mass) const { return shown_mass(mass); }
    std::string operator()(Volume volume) const { return shown_volume(volume); }
};

std::string water_text(const WaterSetting& water) {
    std::string text;
    const auto add = [&](const std::string& more) { text += (text.empty() ? "" : ", ") + more; };
    if (water.depth) add(shown_as_told(*water.depth) + " deep");
    if (water.temperature) add(shown_temperature(*water.temperature));
    if (!water.clarity.empty()) add(water.clarity);
    if (water.tow) add("tow " + shown_tow(*water.tow));
    if (water.tow_bottom) add(shown_tow(*water.tow_bottom) + " at the bottom");
    return text;
}

std::string air_text(const AirSetting& air) {
    std::string text;
    const auto add = [&](const std::string& more) { text += (text.empty() ? "" : ", ") + more; };
    if (air.temperature) add(shown_temperature(*air.temperature));
    if (air.humidity) add(shown_percent(*air.humidity) + " humid");
    if (air.wind) add(fmt::format("wind {:.3g} m/s", air.wind->in(metre_per_second)));
    if (air.sun) add("in the sun");
    return text;
}

std::string pace_text(const Pace& pace) {
    std::string text;
    if (pace.put_ins_per_hour) text = fmt::format("{:g} put-ins an hour", *pace.put_ins_per_hour);
    if (pace.fish_per_hour) text += fmt::format("{}{:g} fish an hour", text.empty() ? "" : ", ", *pace.fish_per_hour);
    return text;
}

struct RhythmJson {
    Json& feed;
    void operator()(AtOnce once) const { feed["at_minute"] = once.at.in(minute); }
    void operator()(EveryTime every) const { feed["every_minutes"] = every.gap.in(minute); }
    void operator()(EveryPutIn) const { feed["every_put_in"] = true; }
    void operator()(EveryFish every) const { feed["every_fish"] = every.fish; }
    void operator()(WhenSlow slow) const {
        feed["when"] = "slow";
        feed["expected"] = slow.times;
    }
};

struct SizeJson {
    Json& feed;
    void operator()(Mass mass) const { feed["amount_g"] = mass.in(gram); }
    void operator()(Volume volume) const { feed["size_ml"] = volume.in(millilitre); }
    void operator()(Length diameter) const { feed["diameter_mm"] = diameter.in(millimetre); }
};

Json feed_json(const Feed& feed) {
    Json json{{"at_minute", nullptr},
              {"every_minutes", nullptr},
              {"every_put_in", false},
              {"every_fish", nullptr},
              {"when", nullptr},
              {"expected", nullptr},
              {"from_minute", nullptr},
              {"until_minute", number_or_null(feed.when.until, minute)},
              {"after", text_or_null(feed.when.after)},
              {"parts", Json::array()},
              {"as", name_of(feed.form)},
              {"size_ml", nullptr},
              {"diameter_mm", nullptr},
              {"amount_g", nullptr},
              {"count", feed.count},
              {"feel", text_or_null(feed.feel)}};
    std::visit(RhythmJson{json}, feed.when.rhythm);
    if (!std::holds_alternative<AtOnce>(feed.when.rhythm)) json["from_minute"] = feed.when.from.in(minute);
    std::visit(SizeJson{json}, feed.size);
    for (const FeedPart& part : feed.parts)
        json["parts"].push_back({{"of", part.of},
                                 {"share", part.share},
                                 {"prepare", part.prepare == Preparation::soaked ? Json("soaked") : Json()},
                                 {"feel", text_or_null(part.feel)}});
    return json;
}

struct HookbaitJson {
    Json& hookbait;
    void operator()(BitesPerHour bites) const { hookbait["bites_per_hour"] = bites.bites; }
    void operator()(Mass mass) const { hookbait["amount_g"] = mass.in(gram); }
    void operator()(Volume volume) const { hookbait["amount_ml"] = volume.in(millilitre); }
};

Json hookbait_json(const Hookbait& hookbait) {
    Json json{{"of", hookbait.of}, {"bites_per_hour", nullptr}, {"amount_g", nullptr}, {"amount_ml", nullptr}};
    std::visit(HookbaitJson{json}, hookbait.amount);
    return json;
}

Json record_of(const Strategy& s) {
    Json record{{"name", s.name},
                {"length_minutes", s.length.in(minute)},
                {"spare", double(s.spare)},
                {"purpose", text_or_null(s.purpose)},
                {"avoid", text_or_null(s.avoid)},
                {"why", text_or_null(s.why)},
                {"note", text_or_null(s.note)},
                {"water",
                 {{"depth_m", number_or_null(s.water.depth, metre)},
                  {"temperature_c", s.water.temperature ? Json(s.water.temperature->in_celsius()) : Json()},
                  {"clarity", text_or_null(s.water.clarity)},
                  {"tow_cm_s", number_or_null(s.water.tow, centimetre_per_second)},
                  {"tow_bottom_cm_s", number_or_null(s.water.tow_bottom, centimetre_per_second)}}},
                {"air",
                 {{"temperature_c", s.air.temperature ? Json(s.air.temperature->in_celsius()) : Json()},
                  {"humidity", s.air.humidity ? Json(double(*s.air.humidity)) : Json()},
                  {"wind_m_s", number_or_null(s.air.wind, metre_per_second)},
                  {"sun", s.air.sun}}},
                {"pace",
                 {{"put_ins_per_hour", number_or_null(s.pace.put_ins_per_hour)},
                  {"fish_per_hour", number_or_null(s.pace.fish_per_hour)}}},
                {"feeds", Json::array()},
                {"hookbaits", Json::array()}};
    for (const Feed& feed : s.feeds) record["feeds"].push_back(feed_json(feed));
    for (const Hookbait& hookbait : s.hookbaits) record["hookbaits"].push_back(hookbait_json(hookbait));
    return record;
}

Told strategy_list_told(const std::vector<Strategy>& strategies) {
    Told told;
    for (const Strategy& strategy : strategies)
        told.entry(fmt::format("  {:<20}  {:<7}  ", strategy.name, shown_moment(strategy.length)), strategy.purpose);
    return told;
}

Json strategy_list_json(const std::vector<Strategy>& strategies) {
    Json json = json_record("strategy list", {});
    json["strategies"] = Json::array();
    for (const Strategy& strategy : strategies) json["strategies"].push_back(record_of(strategy));
    return json;
}

Told strategy_told(const Strategy& strategy) {
    Told told;
    told.title(fmt::format("{}, {}, {} to spare", strategy.name, shown_moment(strategy.length),
                           shown_percent(strategy.spare)));
    TextTable table({Align::left, Align::left, Align::left});
    for (const Feed& feed : strategy.feeds) table.row({what_text(feed), how_text(feed), when_text(feed.when)});
    for (const Hookbait& hookbait : strategy.hookbaits)
        table.row({hookbait.of, "on the hook", std::visit(HookbaitText{}, hookbait.amount)});
    told.table(std::move(table));
    told.gap();
    const std::string water = water_text(strategy.water), air = air_text(strategy.air);
    const std::string pace = pace_text(strategy.pace);
    if (!water.empty()) told.line("Water", water);
    if (!air.empty()) told.line("Air", air);
    if (!pace.empty()) told.line("Pace", pace);
    if (!strategy.purpose.empty()) told.line("For", strategy.purpose);
    if (!strategy.avoid.empty()) told.line("Not for", strategy.avoid);
    if (!strategy.why.empty()) told.line("Why", strategy.why);
    if (!strategy.note.empty()) told.line("Note", strategy.note);
    return told;
}

Json strategy_json(const Strategy& strategy) {
    Json json = json_record("strategy show", {});
    json.update(record_of(strategy));
    return json;
}

Rows strategy_list_rows(const std::vector<Strategy>& strategies) {
    Rows rows{{"name", "length_minutes", "feeds", "purpose", "avoid", "why"}};
    for (const Strategy& strategy : strategies)
        rows.push_back({strategy.name, number_text(strategy.length.in(minute)), std::to_string(strategy.feeds.size()),
                        strategy.purpose, strategy.avoid, strategy.why});
    return rows;
}

}  // namespace

Reply strategy_list_reply(std::vector<Strategy> strategies) {
    return reply_of(std::move(strategies), strategy_list_told, strategy_list_json, strategy_list_rows);
}

Reply strategy_reply(Strategy strategy) {
    return reply_of(std::move(strategy), strategy_told, strategy_json);
}

}  // namespace baitwright
