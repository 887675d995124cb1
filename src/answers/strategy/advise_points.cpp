#include "answers/strategy/advise_points.h"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "quantities/quantity_text.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr int much = 2, some = 1;
constexpr double near_kelvin = 3, far_kelvin = 8;    // between the water that is and the one it is meant for
constexpr double near_depth = 1.5, far_depth = 2.5;  // as ratios
constexpr double worth_a_point = 1.5;                // times as much as the others, or as little
constexpr Speed flowing = 10.0 * centimetre_per_second;

bool is_among(const std::vector<std::string>& names, const std::string& name) {
    return std::any_of(names.begin(), names.end(),
                       [&](const std::string& one_of) { return folded_name(one_of) == folded_name(name); });
}

/// A size that was told is met to its last digits.
constexpr double as_told = 1.001;

bool speaks_against(const AdviceRule& rule, const AdvisedFeed& feed) {
    const auto& forms = rule.against_forms;
    return std::find(forms.begin(), forms.end(), feed.form) != forms.end() ||
           (rule.against_above && feed.each > as_told * *rule.against_above);
}

/// What the rule makes of the strategy: it is never favoured for what the rule speaks against.
int points_by(const AdviceRule& rule, const Strategy& strategy, const std::vector<AdvisedFeed>& feeds) {
    const auto spoken_against =
        std::count_if(feeds.begin(), feeds.end(), [&](const AdvisedFeed& feed) { return speaks_against(rule, feed); });
    const bool all = spoken_against > 0 && spoken_against == static_cast<std::ptrdiff_t>(feeds.size());
    if (all || is_among(rule.against, strategy.name)) return -much;
    return spoken_against == 0 && is_among(rule.favour, strategy.name) ? much : 0;
}

/// By its name, else by its colour or its feel; with the word that it is favoured for.
AdvicePoint point_by(const AdviceRule& rule, const std::string& mix, const std::string& feel,
                     const std::string& colour) {
    MeasuredText why = measured(rule.why, rule);
    if (is_among(rule.against, mix)) return {-much, std::move(why)};
    if (is_among(rule.favour, mix)) return {much, std::move(why)};
    for (const std::string& word : {colour, feel})
        if (is_among(rule.colours, word) || is_among(rule.feels, word)) {
            why.words = word + ": " + why.words;
            return {some, std::move(why)};
        }
    return {};
}

void add_fish(const std::string& purpose, const Circumstances& now, std::vector<AdvicePoint>& points) {
    for (const std::string& fish : now.fish)
        if (names_fish(purpose, fish)) points.push_back({much, "meant for " + fish});
}

void add_temperature(const WaterSetting& water, const Circumstances& now, std::vector<AdvicePoint>& points) {
    if (!water.temperature || !now.temperature) return;
    const double away = std::abs(water.temperature->in_celsius() - now.temperature->in_celsius());
    const MeasuredText meant{"meant for water of {}", {*water.temperature}};
    if (away <= near_kelvin) points.push_back({much, meant});
    if (away > far_kelvin) points.push_back({-much, meant});
}

void add_clarity(const WaterSetting& water, const Circumstances& now, std::vector<AdvicePoint>& points) {
    if (water.clarity.empty() || now.clarity.empty()) return;
    if (water.clarity == now.clarity) points.push_back({some, "meant for " + now.clarity + " water"});
    if ((water.clarity == "clear" && now.clarity == "coloured") ||
        (water.clarity == "coloured" && now.clarity == "clear"))
        points.push_back({-some, "meant for " + water.clarity + " water"});
}

void add_depth(const WaterSetting& water, const Circumstances& now, std::vector<AdvicePoint>& points) {
    if (!water.depth || !now.depth) return;
    const double ratio = std::max(*water.depth / *now.depth, *now.depth / *water.depth);
    const MeasuredText meant{"meant for {} of water", {*water.depth}};
    if (ratio <= near_depth) points.push_back({some, meant});
    if (ratio > far_depth) points.push_back({-some, meant});
}

void add_tow(const WaterSetting& water, const Circumstances& now, std::vector<AdvicePoint>& points) {
    if (!now.tow) return;
    const bool for_flow = water.tow && *water.tow >= flowing, flows = *now.tow >= flowing;
    if (for_flow && flows) points.push_back({much, "meant for flow"});
    if (for_flow && !flows) points.push_back({-much, "meant for flow"});
    if (!for_flow && flows) points.push_back({-much, "meant for still or slow water"});
}

}  // namespace

std::optional<AdvicePoint> point_of(const BroughtBefore& brought) {
    const double times = brought.times;
    if (times < worth_a_point && times > 1 / worth_a_point) return {};
    const double shown = std::round(times * 10) / 10;
    const std::string much_as = shown == 2 ? "twice" : shown == 0.5 ? "half" : number_text(shown) + " times";
    std::string reason = "brought you " + much_as + " as much an hour as your other ways";
    if (!brought.where.empty()) reason += " " + brought.where;
    reason +=
        " (" + std::to_string(brought.sessions) + " sessions, " + (brought.sure ? "as good as sure" : "not sure") + ")";
    const int points = brought.sure ? much : some;
    return AdvicePoint{times > 1 ? points : -points, reason};
}

bool names_fish(std::string_view text, std::string_view fish) {
    const auto is_letter = [](char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; };
    std::string lower;
    for (const char c : text) lower += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    for (auto at = lower.find(fish); at != std::string::npos; at = lower.find(fish, at + 1)) {
        auto end = at + fish.size();
        if (end < lower.size() && lower[end] == 's') ++end;
        if ((at == 0 || !is_letter(lower[at - 1])) && (end >= lower.size() || !is_letter(lower[end]))) return true;
    }
    return false;
}

bool is_same_fish(std::string_view fish, std::string_view other) {
    if (fish.size() > other.size()) std::swap(fish, other);
    const std::string_view ending = other.substr(fish.size());
    return other.starts_with(fish) && (ending.empty() || ending == "s" || ending == "es");
}

std::vector<AdvicePoint> points_of(const Strategy& strategy, const std::vector<AdvisedFeed>& feeds,
                                   const std::vector<AdviceRule>& holding, const Circumstances& now) {
    std::vector<AdvicePoint> points;
    for (const AdviceRule& rule : holding)
        if (const int by_rule = points_by(rule, strategy, feeds); by_rule != 0)
            points.push_back({by_rule, measured(rule.why, rule)});
    add_fish(strategy.purpose, now, points);
    add_temperature(strategy.water, now, points);
    add_clarity(strategy.water, now, points);
    add_depth(strategy.water, now, points);
    add_tow(strategy.water, now, points);
    return points;
}

std::vector<AdvicePoint> points_of(const Recipe& recipe, const std::string& feel, const std::string& colour,
                                   const std::vector<AdviceRule>& holding, const Circumstances& now) {
    std::vector<AdvicePoint> points;
    add_fish(recipe.purpose, now, points);
    for (const AdviceRule& rule : holding)
        if (AdvicePoint point = point_by(rule, recipe.name, feel, colour); point.points != 0)
            points.push_back(std::move(point));
    return points;
}

}  // namespace baitwright
