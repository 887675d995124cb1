#include "files/advice_reader.h"

#include <algorithm>

#include "bait/strategy.h"
#include "files/toml_syntax.h"
#include "files/value_reader.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double most_of_the_feed = 5;

/// A list of texts; `known`, where it is not empty, is what they can be.
std::vector<std::string> read_list(TableReader& table, std::string_view key, std::string_view example,
                                   const std::vector<std::string>& known = {}) {
    std::vector<std::string> words;
    const toml::node* node = table.find(key);
    if (!node) return words;
    const auto* list = node->as_array();
    if (!list || list->empty()) {
        table.faults().add(place_of(*node), "wrong-type",
                           in_quotes(key) + " must be a list, not " + (list ? "an empty one" : shown(*node)),
                           "as in " + std::string(key) + " = [\"" + std::string(example) + "\"]");
        return words;
    }
    for (const toml::node& entry : *list) {
        const auto word = text_of(entry, key, example, table.faults());
        if (!word) continue;
        if (known.empty() || std::find(known.begin(), known.end(), *word) != known.end()) {
            words.push_back(*word);
            continue;
        }
        std::string hint = did_you_mean(*word, known);
        if (hint.empty()) {
            hint = "known here:";
            for (const std::string& one_of : known) hint += (one_of == known.front() ? " " : ", ") + one_of;
        }
        table.faults().add(place_of(entry), "unknown-word", in_quotes(key) + " cannot be " + in_quotes(*word), hint);
    }
    return words;
}

/// "temperature_from" and "temperature_below".
template <class Q>
FromTo<Q> read_bounds(TableReader& table, const std::string& what, std::string_view example) {
    FromTo<Q> bounds;
    const auto read = [&](const std::string& key) {
        return parsed(table, key, example, [](std::string_view text) { return parse<Q>(text); });
    };
    bounds.from = read(what + "_from");
    bounds.below = read(what + "_below");
    if (bounds.from && bounds.below && !(*bounds.from < *bounds.below))
        table.faults().add(table.place_of_value(what + "_below"), "inconsistent-values",
                           in_quotes(what + "_below") + " must be more than " + in_quotes(what + "_from"),
                           "the rule holds from the one up to the other");
    return bounds;
}

/// `when` or `unless`.
AdviceCondition read_condition(TableReader& table, std::string_view key) {
    AdviceCondition when;
    auto block = table.inner(key, "the " + in_quotes(key) + " of an advice");
    if (!block) return when;
    when.season = read_list(*block, "season", "winter", {season_names.begin(), season_names.end()});
    when.clarity = read_list(*block, "clarity", "tinged", {clarity_names.begin(), clarity_names.end()});
    when.bed = read_list(*block, "bed", "pale", {bed_names.begin(), bed_names.end()});
    when.fish = read_list(*block, "fish", "bream");
    when.temperature = read_bounds<Temperature>(*block, "temperature", "8 degC");
    when.depth = read_bounds<Length>(*block, "depth", "3 m");
    when.tow = read_bounds<Speed>(*block, "tow", "5 cm/s");
    when.hours = read_bounds<Time>(*block, "hours", "3 h");
    block->refuse_unknown_keys();
    return when;
}

std::optional<FeedShare> read_share(TableReader& table) {
    auto block = table.inner("share", "the 'share' of an advice");
    if (!block) return std::nullopt;
    FeedShare share;
    const auto ratio = [&](std::string_view key) {
        if (!block->required(key, "\"50 %\"")) return 1.0;
        return double(
            parsed(*block, key, "50 %", [](std::string_view text) { return parse<Ratio>(text); }).value_or(Ratio(1)));
    };
    share.low = ratio("low");
    share.high = ratio("high");
    block->refuse_unknown_keys();
    if (!(share.low > 0) || share.low > share.high || share.high > most_of_the_feed)
        table.faults().add(table.place_of_key("share"), "out-of-range",
                           "'share' must rise from above 0 % to at most 500 %",
                           R"(as in share = { low = "33 %", high = "50 %" })");
    return share;
}

std::string required_prose(TableReader& table, std::string_view key, std::string_view example) {
    table.required(key, example);
    return table.prose(key);
}

FeedForm form_called(const std::string& name) {
    const auto* found = std::find(feed_form_names.begin(), feed_form_names.end(), name);
    return static_cast<FeedForm>(found - feed_form_names.begin());
}

/// What a text has in braces must be a limit that the advice states.
void refuse_unknown_limits(TableReader& table, std::string_view key, const std::string& text, const AdviceRule& rule) {
    for (const std::string& limit : unknown_limits(text, rule))
        table.faults().add(
            table.place_of_value(key), "unknown-word",
            in_quotes(key) + " names " + in_quotes("{" + limit + "}") + ", which the advice does not state",
            "in braces stands a limit of its own, as in {temperature_below}");
}

}  // namespace

std::optional<AdviceRule> read_advice(TableReader& table) {
    const std::size_t faults_before = table.faults().count();
    AdviceRule rule;
    rule.line = table.place().line;
    if (table.required("about", "\"amount\""))
        rule.about = table.word("about", {advice_topics.begin(), advice_topics.end()}).value_or("");
    rule.say = required_prose(table, "say", "\"Feed half.\"");
    rule.why = required_prose(table, "why", "\"fish eat little in the cold\"");
    rule.source = table.prose("source");
    if (rule.source.empty()) rule.source = "common practice, no source";
    rule.when = read_condition(table, "when");
    rule.unless = read_condition(table, "unless");
    rule.favour = read_list(table, "favour", "open carpet");
    rule.against = read_list(table, "against", "shallow cloud");
    rule.colours = read_list(table, "colours", "brown");
    rule.feels = read_list(table, "feels", "firm");
    for (const std::string& form :
         read_list(table, "against_forms", "ball", {feed_form_names.begin(), feed_form_names.end()}))
        rule.against_forms.push_back(form_called(form));
    rule.against_above =
        parsed(table, "against_above", "25 ml", [](std::string_view text) { return parse<Volume>(text); });
    rule.share = read_share(table);
    refuse_unknown_limits(table, "say", rule.say, rule);
    refuse_unknown_limits(table, "why", rule.why, rule);
    table.refuse_unknown_keys();
    if (table.faults().count() > faults_before) return std::nullopt;
    return rule;
}

std::vector<AdviceRule> read_advice_rules(std::string_view text, const std::string& file_name) {
    std::vector<AdviceRule> rules;
    FileFaults faults(text, file_name);
    const auto root = parse_toml(text, faults);
    if (!root) return rules;
    TableReader(*root, {1, 1}, "this file", faults).each_block("advice", "an advice", [&](TableReader& table) {
        if (auto rule = read_advice(table)) {
            rule->file = file_name;
            rules.push_back(std::move(*rule));
        }
    });
    return rules;
}

}  // namespace baitwright
