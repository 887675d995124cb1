#include "files/toml_reader.h"

#include <algorithm>
#include <cmath>

#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

std::string number_shown(double value) {
    if (std::isnan(value)) return "nan";
    if (std::isinf(value)) return value > 0 ? "inf" : "-inf";
    return number_text(value);
}

/// A long list of keys would hide what the message says.
std::string keys_hint(std::string_view key, const std::vector<std::string>& known) {
    std::string near = did_you_mean(key, known);
    if (!near.empty()) return near;
    return known.size() <= 12 ? "known here: " + joined(known, ", ") : "take the line out";
}

/// By the rules of names; nothing, and a fault, where they are broken.
std::optional<std::string> as_name(const toml::node& node, std::string_view key, FileFaults& faults) {
    const auto text = text_of(node, key, "brown crumb", faults);
    if (!text) return std::nullopt;
    std::string name(trimmed(*text));
    const std::string why = refused_as_name(name);
    if (why.empty()) return name;
    faults.add(place_of(node), "bad-name", in_quotes(key) + " " + why, "a name is a few plain words");
    return std::nullopt;
}

}  // namespace

Position place_of(const toml::node& node) {
    return {static_cast<int>(node.source().begin.line), static_cast<int>(node.source().begin.column)};
}

std::string shown(const toml::node& node) {
    if (const auto* text = node.as_string()) return "the text " + in_quotes(text->get());
    if (const auto* whole = node.as_integer()) return "the number " + std::to_string(whole->get());
    if (const auto* real = node.as_floating_point()) return "the number " + number_shown(real->get());
    if (const auto* truth = node.as_boolean()) return truth->get() ? "true" : "false";
    if (node.is_date()) return "a date";
    if (node.is_date_time()) return "a date and time";
    if (node.is_time()) return "a time of day";
    return node.is_array() ? "a list" : "a block";
}

std::optional<std::string> text_of(const toml::node& node, std::string_view key, std::string_view example,
                                   FileFaults& faults, LineBreaks line_breaks) {
    const auto* text = node.as_string();
    if (!text) {
        faults.add(place_of(node), "wrong-type",
                   in_quotes(key) + " must be text such as \"" + std::string(example) + "\", not " + shown(node),
                   "text stands in quotes");
        return std::nullopt;
    }
    if (const std::string unfit = unfit_in(text->get(), line_breaks); !unfit.empty()) {
        const bool control = first_unfit_letter(text->get(), line_breaks)->why == UnfitLetter::Why::control;
        faults.add(place_of(node), control ? "control-character" : "unfit-letter", in_quotes(key) + " holds " + unfit,
                   "write it on one line, in plain letters");
        return std::nullopt;
    }
    return text->get();
}

std::optional<double> number_of(const toml::node& node, std::string_view key, double lowest, double highest,
                                FileFaults& faults) {
    const auto value = node.value<double>();
    if (!value || !node.is_number()) {
        faults.add(place_of(node), "wrong-type",
                   in_quotes(key) + " must be a plain number such as " + number_text(lowest > 0 ? lowest : 1) +
                       ", not " + shown(node),
                   "a number without a unit stands without quotes");
        return std::nullopt;
    }
    if (*value >= lowest && *value <= highest) return value;
    faults.add(place_of(node), "out-of-range",
               in_quotes(key) + " must be from " + number_text(lowest) + " to " + number_text(highest) + ", not " +
                   number_shown(*value),
               "write a number in that range");
    return std::nullopt;
}

Position TableReader::place_of_key(std::string_view key) const {
    const auto entry = table_.find(key);
    if (entry == table_.end()) return place_;
    const toml::source_position begin = entry->first.source().begin;
    return {static_cast<int>(begin.line), static_cast<int>(begin.column)};
}

Position TableReader::place_of_value(std::string_view key) const {
    const toml::node* node = table_.get(key);
    return node ? baitwright::place_of(*node) : place_;
}

const toml::node* TableReader::find(std::string_view key) {
    if (std::find(known_.begin(), known_.end(), key) == known_.end()) known_.emplace_back(key);
    return table_.get(key);
}

const toml::node* TableReader::required(std::string_view key, std::string_view example) {
    const toml::node* node = find(key);
    if (!node)
        faults_.add(place_, "missing-value", in_quotes(key) + " is missing; " + what_ + " must state it",
                    "add a line such as " + std::string(key) + " = " + std::string(example));
    return node;
}

std::optional<std::string> TableReader::text(std::string_view key, LineBreaks line_breaks) {
    const toml::node* node = find(key);
    return node ? text_of(*node, key, "...", faults_, line_breaks) : std::nullopt;
}

std::optional<std::string> TableReader::name(std::string_view key) {
    const toml::node* node = required(key, "\"brown crumb\"");
    return node ? as_name(*node, key, faults_) : std::nullopt;
}

std::string TableReader::other_name(std::string_view key) {
    const toml::node* node = find(key);
    return node ? as_name(*node, key, faults_).value_or("") : "";
}

std::optional<double> TableReader::number(std::string_view key, double lowest, double highest) {
    const toml::node* node = find(key);
    return node ? number_of(*node, key, lowest, highest, faults_) : std::nullopt;
}

std::optional<bool> TableReader::truth(std::string_view key) {
    const toml::node* node = find(key);
    if (!node) return std::nullopt;
    const auto said = node->value_exact<bool>();
    if (!said)
        faults_.add(place_of(*node), "wrong-type",
                    "'" + std::string(key) + "' must be true or false, not " + shown(*node),
                    "write " + std::string(key) + " = true, without quotation marks");
    return said;
}

std::optional<std::string> TableReader::word(std::string_view key, const std::vector<std::string>& words) {
    const toml::node* node = find(key);
    if (!node) return std::nullopt;
    auto text = text_of(*node, key, words.front(), faults_);
    if (!text || std::find(words.begin(), words.end(), *text) != words.end()) return text;
    const std::string near = did_you_mean(*text, words);
    faults_.add(baitwright::place_of(*node), "unknown-word", in_quotes(key) + " cannot be " + in_quotes(*text),
                near.empty() ? "known here: " + joined(words, ", ") : near);
    return std::nullopt;
}

std::optional<TableReader> TableReader::inner(std::string_view key, std::string_view what) {
    const toml::node* node = find(key);
    if (!node) return std::nullopt;
    if (const auto* table = node->as_table()) return TableReader(*table, baitwright::place_of(*node), what, faults_);
    faults_.add(baitwright::place_of(*node), "wrong-type",
                in_quotes(key) + " must be a block in braces, not " + shown(*node),
                "as in " + std::string(key) + " = { ... }");
    return std::nullopt;
}

std::optional<Date> TableReader::date(std::string_view key) {
    const toml::node* node = find(key);
    if (!node) return {};
    if (const auto* date = node->as_date()) {
        const toml::date on = date->get();
        if (on.year < 1900 || on.year > 2999) {
            faults_.add(baitwright::place_of(*node), "not-a-date", in_quotes(key) + " is out of range",
                        "a date can be from 1900-01-01 to 2999-12-31");
            return {};
        }
        return std::chrono::year_month_day{std::chrono::year(on.year), std::chrono::month(on.month),
                                           std::chrono::day(on.day)};
    }
    faults_.add(baitwright::place_of(*node), "wrong-type",
                in_quotes(key) + " must be a date such as 2026-03-01, not " + shown(*node),
                "write year, month and day, without quotes and without a time");
    return {};
}

void TableReader::each_block(std::string_view key, std::string_view what,
                             const std::function<void(TableReader&)>& visit) {
    const toml::node* node = find(key);
    if (!node) return;
    const std::string heading = "[[" + std::string(key) + "]]";
    const auto visit_one = [&](const toml::node& block) {
        if (const auto* table = block.as_table()) {
            TableReader reader(*table, baitwright::place_of(block), what, faults_);
            return visit(reader);
        }
        faults_.add(baitwright::place_of(block), "wrong-type", in_quotes(key) + " must be blocks, not " + shown(block),
                    "head each block " + heading);
    };
    if (node->is_table())
        faults_.add(baitwright::place_of(*node), "single-brackets",
                    in_quotes(key) + " stands in single brackets, but there may be several",
                    "head each block " + heading + ", with the blocks it belongs to in front of its name");
    if (const auto* list = node->as_array())
        for (const toml::node& block : *list) visit_one(block);
    else
        visit_one(*node);
}

void TableReader::refuse_unknown_keys() const {
    for (auto&& [key, value] : table_) {
        if (std::find(known_.begin(), known_.end(), key.str()) != known_.end()) continue;
        const Position place = place_of_key(key.str());
        faults_.add(place, "unknown-key", in_quotes(key.str()) + " is not a key of " + what_,
                    faults_.tells_of(place) ? keys_hint(key.str(), known_) : "take the line out");
    }
}

}  // namespace baitwright
