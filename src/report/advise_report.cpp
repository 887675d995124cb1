#include "report/replies.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/feed_size.h"
#include "report/measured_words.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

constexpr std::size_t most_told = 3;

std::string circumstances_text(const Circumstances& now) {
    std::vector<std::string> said;
    if (!now.season.empty()) said.push_back(now.season);
    if (!now.clarity.empty()) said.push_back(now.clarity + " water");
    if (now.temperature) said.push_back(shown_temperature(*now.temperature));
    if (now.depth) said.push_back(shown_as_told(*now.depth) + " deep");
    if (now.tow) said.push_back("tow " + shown_tow(*now.tow));
    if (now.hours) said.push_back(shown_time(*now.hours));
    if (!now.bed.empty()) said.push_back(now.bed + " bed");
    for (const std::string& fish : now.fish) said.push_back(fish);
    return said.empty() ? "any day; say the season, the water or the fish to hear more" : joined(said, ", ");
}

std::string feed_text(const AdvisedFeed& feed) {
    const int all = feed.count * static_cast<int>(feed.put_ins);
    std::string text = feed.form == FeedForm::loose ? fmt::format("{} times {} loose", all, shown_size(feed.size))
                                                    : fmt::format("{} {}{} of {}", all, name_of(feed.form),
                                                                  all == 1 ? "" : "s", shown_size(feed.size));
    text += ", " + feed.name;
    if (!feed.feel.empty()) text += ", " + feed.feel;
    if (!feed.colour.empty()) text += ", " + feed.colour;
    return text;
}

/// The reasons of one sign, each once.
std::string reasons_text(const std::vector<AdvicePoint>& points, int sign) {
    std::vector<std::string> said;
    for (const AdvicePoint& point : points) {
        const std::string reason = shown_words(point.reason);
        if (point.points * sign > 0 && std::find(said.begin(), said.end(), reason) == said.end())
            said.push_back(reason);
    }
    std::string text;
    for (const std::string& reason : said) text += (text.empty() ? "" : "; ") + reason;
    return text;
}

std::string points_text(int score) {
    return fmt::format("{} {}", score, score == 1 || score == -1 ? "point" : "points");
}

void tell_for_and_against(Told& told, const std::vector<AdvicePoint>& points) {
    if (const std::string speaks_for = reasons_text(points, 1); !speaks_for.empty())
        told.entry("     for      ", sentence(speaks_for));
    if (const std::string against = reasons_text(points, -1); !against.empty())
        told.entry("     against  ", sentence(against));
}

std::string amount_text(const AdvisedStrategy& strategy) {
    const Mass all = strategy.as_written, low = strategy.low, high = strategy.high;
    const auto shown = [](Mass mass) { return shown_mass(scale_mass(mass)); };
    if (low == all && high == all) return shown(all) + " as it goes in";
    if (low == all) return shown(all) + " as it goes in, with up to " + shown(high - all) + " more ready";
    const std::string advised = low == high ? shown(low) : shown_mass(scale_mass(low), scale_mass(high));
    if (high < all || high == all) return advised + " as it goes in, out of its " + shown(all);
    return advised + " as it goes in; as written it has " + shown(all);
}

void tell_strategies(Told& told, const AdviseAnswer& answer) {
    told.heading("Strategies");
    for (std::size_t i = 0; i < std::min(most_told, answer.strategies.size()); ++i) {
        const AdvisedStrategy& strategy = answer.strategies[i];
        told.entry(fmt::format("  {}  ", i + 1),
                   fmt::format("{}, {}: {}.", strategy.name, points_text(strategy.score), amount_text(strategy)));
        for (const AdvisedFeed& feed : strategy.feeds) told.entry("     feed     ", feed_text(feed));
        tell_for_and_against(told, strategy.points);
    }
}

void tell_mixes(Told& told, const AdviseAnswer& answer) {
    told.heading("Mixes");
    for (std::size_t i = 0; i < std::min(most_told, answer.mixes.size()); ++i) {
        const AdvisedMix& mix = answer.mixes[i];
        told.entry(fmt::format("  {}  ", i + 1),
                   fmt::format("{}, {}: {}{}.", mix.name, points_text(mix.score), mix.feel,
                               mix.colour.empty() ? "" : ", mostly " + mix.colour));
        tell_for_and_against(told, mix.points);
    }
}

std::string with_capital(std::string word) {
    if (!word.empty()) word.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(word.front())));
    return word;
}

Json points_json(const std::vector<AdvicePoint>& points) {
    Json list = Json::array();
    for (const AdvicePoint& point : points)
        list.push_back({{"points", point.points}, {"reason", metric_words(point.reason)}});
    return list;
}

Json size_json(const FeedSize& size) {
    Json json = {{"size_g", nullptr}, {"size_ml", nullptr}, {"size_mm", nullptr}};
    if (const Mass* mass = std::get_if<Mass>(&size)) json["size_g"] = mass->in(gram);
    if (const Volume* volume = std::get_if<Volume>(&size)) json["size_ml"] = volume->in(millilitre);
    if (const Length* width = std::get_if<Length>(&size)) json["size_mm"] = width->in(millimetre);
    return json;
}

Json feed_json(const AdvisedFeed& feed) {
    Json json = {{"of", feed.name},
                 {"feel", text_or_null(feed.feel)},
                 {"colour", text_or_null(feed.colour)},
                 {"as", name_of(feed.form)},
                 {"count", feed.count},
                 {"put_ins", feed.put_ins}};
    json.update(size_json(feed.size));
    return json;
}

Told advise_told(const AdviseAnswer& answer) {
    Told told;
    told.title("Advice for " + circumstances_text(answer.now));
    if (answer.advice.empty()) told.say("No advice fits those conditions.");
    for (const AdviceRule& rule : answer.advice)
        told.line(with_capital(rule.about), fmt::format("{} Because {} ({}).", shown_words(measured(rule.say, rule)),
                                                        shown_words(measured(rule.why, rule)), rule.source));
    told.gap();
    tell_strategies(told, answer);
    told.gap();
    tell_mixes(told, answer);
    told.gap();
    const std::string first = "The venue's rules come first, and what the water shows you comes before any of this. ";
    told.line("Mind", first + (answer.own.empty()
                                   ? "It is all common practice, no source, and changes no other answer."
                                   : "What your log says is yours, and no fair trial; all else is common practice, no "
                                     "source. It changes no other answer."));
    return told;
}

Json advise_json(const AdviseAnswer& answer) {
    Json json = json_record("advise", {});
    Json advice = Json::array(), strategies = Json::array(), mixes = Json::array();
    for (const AdviceRule& rule : answer.advice)
        advice.push_back({{"about", rule.about},
                          {"text", metric_words(measured(rule.say, rule))},
                          {"reason", metric_words(measured(rule.why, rule))},
                          {"source", rule.source}});
    for (const AdvisedStrategy& strategy : answer.strategies) {
        Json feeds = Json::array();
        for (const AdvisedFeed& feed : strategy.feeds) feeds.push_back(feed_json(feed));
        strategies.push_back(
            {{"name", strategy.name},
             {"score", strategy.score},
             {"points", points_json(strategy.points)},
             {"feeds", feeds},
             {"wet_mass_g", strategy.as_written.in(gram)},
             {"advised_wet_mass_g", {{"low", strategy.low.in(gram)}, {"high", strategy.high.in(gram)}}}});
    }
    for (const AdvisedMix& mix : answer.mixes)
        mixes.push_back({{"name", mix.name},
                         {"score", mix.score},
                         {"feel", mix.feel},
                         {"colour", text_or_null(mix.colour)},
                         {"points", points_json(mix.points)}});
    json["advice"] = advice;
    json["strategies"] = strategies;
    json["mixes"] = mixes;
    return json;
}

}  // namespace

Reply advise_reply(AdviseAnswer answer) {
    return reply_of(std::move(answer), advise_told, advise_json);
}

}  // namespace baitwright
