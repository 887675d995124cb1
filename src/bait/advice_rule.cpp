#include "bait/advice_rule.h"

#include <algorithm>

namespace baitwright {

namespace {

bool is_one_of(const std::vector<std::string>& words, const std::string& word) {
    return words.empty() || std::find(words.begin(), words.end(), word) != words.end();
}

bool any_is_one_of(const std::vector<std::string>& words, const std::vector<std::string>& given) {
    return words.empty() ||
           std::any_of(given.begin(), given.end(), [&](const std::string& word) { return is_one_of(words, word); });
}

}  // namespace

bool holds(const AdviceRule& rule, const Circumstances& now) {
    const AdviceCondition& when = rule.when;
    return is_one_of(when.season, now.season) && is_one_of(when.clarity, now.clarity) && is_one_of(when.bed, now.bed) &&
           any_is_one_of(when.fish, now.fish) && when.temperature.hold(now.temperature) && when.depth.hold(now.depth) &&
           when.tow.hold(now.tow) && when.hours.hold(now.hours);
}

}  // namespace baitwright
