#include "report/entry_replies.h"

#include <fmt/format.h>

#include "bait/strategy_settings.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/measured_words.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

using Align = TextTable::Align;

/// As water runs where it is stated in the unit for that; the wind, and all else, in the unit of files.
template <class D>
std::string shown_in(Quantity<D> measure, const MeasureFacts<D>& facts) {
    if constexpr (std::is_same_v<Quantity<D>, Speed>)
        if (facts.symbol == "cm/s") return shown_tow(measure);
    return fmt::format("{:.3g} {}", measure.in(facts.unit), facts.symbol);
}

/// Adds what is told of each setting that it is shown, with commas between.
struct SettingsText {
    std::string& text;
    void operator()(const SettingNames& facts, const std::string& shown) const {
        if (!shown.empty()) text += (text.empty() ? "" : ", ") + fmt::format(fmt::runtime(facts.told), shown);
    }
    void operator()(const SettingNames& facts, bool truth) const { (*this)(facts, std::string(truth ? "yes" : "")); }
    void operator()(const SettingNames&, int) const {}  // told with the size
    void operator()(const SettingNames& facts, double rate) const { (*this)(facts, fmt::format("{:g}", rate)); }
    void operator()(const SettingNames& facts, Temperature warmth) const { (*this)(facts, shown_temperature(warmth)); }
    template <class D>
    void operator()(const MeasureFacts<D>& facts, Quantity<D> measure) const {
        if constexpr (std::is_same_v<Quantity<D>, Length>)
            (*this)(facts, shown_as_told(measure));
        else if constexpr (std::is_same_v<Quantity<D>, Ratio>)
            (*this)(facts, shown_percent(measure));
        else
            (*this)(facts, shown_in(measure, facts));
    }
    template <class Facts, class Q>
    void operator()(const Facts& facts, const std::optional<Q>& number) const {
        if (number) (*this)(facts, *number);
    }
};

/// Puts each setting that it is shown under its key.
struct SettingsJson {
    Json& json;
    template <class Plain>
    void operator()(const SettingNames& facts, const Plain& plain) const {
        json[facts.json] = plain;
    }
    void operator()(const SettingNames& facts, const std::string& text) const { json[facts.json] = text_or_null(text); }
    void operator()(const SettingNames& facts, Temperature warmth) const { json[facts.json] = warmth.in_celsius(); }
    void operator()(const MomentFacts& facts, Time moment) const { json[facts.json] = moment.in(minute); }
    template <class D>
    void operator()(const MeasureFacts<D>& facts, Quantity<D> measure) const {
        json[facts.json] = Dimensional<D> ? measure.in(facts.unit) : measure.si();
    }
    template <class Facts, class Q>
    void operator()(const Facts& facts, const std::optional<Q>& number) const {
        json[facts.json] = nullptr;
        if (number) (*this)(facts, *number);
    }
};

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

/// What a feed waits for comes before its moments.
struct SpanText {
    std::string& names;
    std::string& moments;
    void operator()(const NameFacts& facts, const std::string& name) const {
        if (!name.empty()) names += fmt::format(fmt::runtime(facts.told), name);
    }
    void operator()(const MomentFacts& facts, const std::optional<Time>& moment) const {
        if (moment) moments += fmt::format(fmt::runtime(facts.told), shown_moment(*moment));
    }
    void operator()(const MomentFacts& facts, Time moment) const {
        if (moment > Time{}) (*this)(facts, std::optional(moment));
    }
};

std::string when_text(const FeedTiming& when) {
    std::string text = std::visit(RhythmText{}, when.rhythm), moments;
    visit_span(when, SpanText{text, moments});
    text += moments;
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
    visit_helping(feed, SettingsText{text});
    return text;
}

struct HookbaitText {
    std::string operator()(BitesPerHour bites) const { return fmt::format("for {:g} bites an hour", bites.bites); }
    std::string operator()(Mass mass) const { return shown_mass(mass); }
    std::string operator()(Volume volume) const { return shown_volume(volume); }
};

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
    Json json{{"at_minute", nullptr},  {"every_minutes", nullptr}, {"every_put_in", false},
              {"every_fish", nullptr}, {"when", nullptr},          {"expected", nullptr}};
    visit_span(feed.when, SettingsJson{json});
    if (std::holds_alternative<AtOnce>(feed.when.rhythm)) json["from_minute"] = nullptr;
    json.update({{"parts", Json::array()},
                 {"as", name_of(feed.form)},
                 {"size_ml", nullptr},
                 {"diameter_mm", nullptr},
                 {"amount_g", nullptr}});
    visit_helping(feed, SettingsJson{json});
    std::visit(RhythmJson{json}, feed.when.rhythm);
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
    Json record{{"name", s.name}};
    visit_extent(s, SettingsJson{record});
    visit_prose(s, SettingsJson{record});
    visit_blocks(s, [&](const BlockFacts& block, auto&& walk) { walk(SettingsJson{record[block.key]}); });
    record.update({{"feeds", Json::array()}, {"hookbaits", Json::array()}});
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
    visit_blocks(strategy, [&](const BlockFacts& block, auto&& walk) {
        std::string text;
        walk(SettingsText{text});
        if (!text.empty()) told.line(std::string(block.told), text);
    });
    visit_prose(strategy, [&](const ProseFacts& facts, const std::string& text) {
        if (!text.empty()) told.line(std::string(facts.told), text);
    });
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
