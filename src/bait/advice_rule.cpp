#include "bait/advice_rule.h"

#include <algorithm>

namespace baitwright {

namespace {

struct NamedLimit {
    std::string name;
    MeasuredText::Amount amount;
};

bool is_one_of(const std::vector<std::string>& words, const std::string& word) {
    return words.empty() || std::find(words.begin(), words.end(), word) != words.end();
}

bool any_is_one_of(const std::vector<std::string>& words, const std::vector<std::string>& given) {
    return words.empty() ||
           std::any_of(given.begin(), given.end(), [&](const std::string& word) { return is_one_of(words, word); });
}

/// Whether any of the conditions that it states holds.
bool any_holds(const AdviceCondition& unless, const Circumstances& now) {
    const auto words = [](const std::vector<std::string>& stated, const std::string& word) {
        return !stated.empty() && is_one_of(stated, word);
    };
    const auto bounds = [](const auto& stated, const auto& value) { return stated.stated() && stated.hold(value); };
    return words(unless.season, now.season) || words(unless.clarity, now.clarity) || words(unless.bed, now.bed) ||
           (!unless.fish.empty() && any_is_one_of(unless.fish, now.fish)) ||
           bounds(unless.temperature, now.temperature) || bounds(unless.depth, now.depth) ||
           bounds(unless.tow, now.tow) || bounds(unless.hours, now.hours);
}

template <class Q>
void add_limits(std::vector<NamedLimit>& limits, const std::string& what, const FromTo<Q>& bounds) {
    if (bounds.from) limits.push_back({what + "_from", *bounds.from});
    if (bounds.below) limits.push_back({what + "_below", *bounds.below});
}

std::vector<NamedLimit> limits_of(const AdviceRule& rule) {
    std::vector<NamedLimit> limits;
    add_limits(limits, "temperature", rule.when.temperature);
    add_limits(limits, "depth", rule.when.depth);
    add_limits(limits, "tow", rule.when.tow);
    add_limits(limits, "hours", rule.when.hours);
    if (rule.against_above) limits.push_back({"against_above", *rule.against_above});
    return limits;
}

/// The text cut at its braces: what stands in them is every second piece.
std::vector<std::string> cut_at_braces(const std::string& text) {
    std::vector<std::string> pieces;
    std::size_t from = 0;
    for (auto open = text.find('{'); open != std::string::npos; open = text.find('{', from)) {
        const auto close = text.find('}', open);
        if (close == std::string::npos) break;
        pieces.push_back(text.substr(from, open - from));
        pieces.push_back(text.substr(open + 1, close - open - 1));
        from = close + 1;
    }
    pieces.push_back(text.substr(from));
    return pieces;
}

const NamedLimit* limit_called(const std::vector<NamedLimit>& limits, const std::string& name) {
    const auto found =
        std::find_if(limits.begin(), limits.end(), [&](const NamedLimit& limit) { return limit.name == name; });
    return found == limits.end() ? nullptr : &*found;
}

}  // namespace

bool holds(const AdviceRule& rule, const Circumstances& now) {
    const AdviceCondition& when = rule.when;
    return is_one_of(when.season, now.season) && is_one_of(when.clarity, now.clarity) && is_one_of(when.bed, now.bed) &&
           any_is_one_of(when.fish, now.fish) && when.temperature.hold(now.temperature) && when.depth.hold(now.depth) &&
           when.tow.hold(now.tow) && when.hours.hold(now.hours) && !any_holds(rule.unless, now);
}

MeasuredText measured(const std::string& text, const AdviceRule& rule) {
    const std::vector<NamedLimit> limits = limits_of(rule);
    const std::vector<std::string> pieces = cut_at_braces(text);
    MeasuredText measured;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const NamedLimit* limit = i % 2 == 1 ? limit_called(limits, pieces[i]) : nullptr;
        measured.words += limit ? "{}" : i % 2 == 1 ? "{" + pieces[i] + "}" : pieces[i];
        if (limit) measured.amounts.push_back(limit->amount);
    }
    return measured;
}

std::vector<std::string> unknown_limits(const std::string& text, const AdviceRule& rule) {
    const std::vector<NamedLimit> limits = limits_of(rule);
    const std::vector<std::string> pieces = cut_at_braces(text);
    std::vector<std::string> unknown;
    for (std::size_t i = 1; i < pieces.size(); i += 2)
        if (!limit_called(limits, pieces[i])) unknown.push_back(pieces[i]);
    return unknown;
}

}  // namespace baitwright
