#include "quantities/amount_words.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "quantities/number_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

constexpr std::array<std::string_view, 12> counting_words{"one",   "two",   "three", "four", "five",   "six",
                                                          "seven", "eight", "nine",  "ten",  "eleven", "twelve"};
constexpr std::size_t most_said_words = 9;
constexpr std::size_t most_said_digits = 6;

bool is_plain_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// "three-quarters" as "three quarters"; a sign in front stays one.
std::string without_hyphens(std::string text) {
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == '-' && is_plain_letter(text[i - 1]) && is_plain_letter(text[i + 1])) text[i] = ' ';
    return text;
}

/// Cheap, for every amount of every file comes by: one in figures has words only behind an "and".
bool may_be_in_words(std::string_view text) {
    if (text.empty() || text.size() > 80) return false;
    return is_plain_letter(text.front()) || folded_name(text).find(" and ") != std::string::npos;
}

/// Takes words off the front of what a person said.
class SaidWords {
public:
    explicit SaidWords(const std::string& folded) {
        for (std::size_t at = 0; at < folded.size();) {
            const auto end = std::min(folded.find(' ', at), folded.size());
            words_.emplace_back(folded.substr(at, end - at));
            at = end + 1;
        }
    }

    [[nodiscard]] std::size_t size() const { return words_.size(); }

    bool take(std::string_view word) {
        if (at_ >= words_.size() || words_[at_] != word) return false;
        ++at_;
        return true;
    }
    bool take_article() { return take("a") || take("an"); }

    /// "half", "a quarter", "three quarters", "two thirds".
    std::optional<double> take_part() {
        const std::size_t before = at_;
        const int parts = take("three") ? 3 : take("two") ? 2 : 1;
        if (parts == 1 && !take_article()) take("one");
        if (parts == 1 && take("half")) return 0.5;
        if (parts != 2 && (take("quarter") || take("quarters"))) return parts / 4.0;
        if (parts != 3 && (take("third") || take("thirds"))) return parts / 3.0;
        at_ = before;
        return std::nullopt;
    }

    /// "and a half", which may stand before the unit or behind it; 0 where it does not.
    double take_and_a_part() {
        const std::size_t before = at_;
        if (take("and"))
            if (const auto part = take_part()) return *part;
        at_ = before;
        return 0;
    }

    /// "two", "twelve", "2".
    std::optional<double> take_whole() {
        if (at_ >= words_.size()) return std::nullopt;
        for (std::size_t i = 0; i < counting_words.size(); ++i)
            if (take(counting_words.at(i))) return static_cast<double>(i + 1);
        std::string_view digits = words_[at_];
        if (digits.size() > most_said_digits || digits.find_first_not_of("0123456789") != std::string_view::npos)
            return std::nullopt;
        ++at_;
        return take_number(digits);
    }

    /// The unit, of one to three words.
    const UnitRow* take_unit() {
        for (std::size_t count = std::min<std::size_t>(3, words_.size() - at_); count >= 1; --count) {
            std::string name = words_[at_];
            for (std::size_t i = 1; i < count; ++i) name += ' ' + words_[at_ + i];
            const UnitRow* unit = name.size() > 1 ? unit_called(name) : nullptr;
            if (!unit || !comes_in_parts(unit->measure)) continue;
            at_ += count;
            return unit;
        }
        return nullptr;
    }

    [[nodiscard]] bool at_end() const { return at_ == words_.size(); }

private:
    std::vector<std::string> words_;
    std::size_t at_ = 0;
};

/// "half a kilo", "quarter of an hour", "three quarter pint".
std::optional<AmountInWords> part_of_a_unit(SaidWords words) {
    const auto part = words.take_part();
    if (!part) return std::nullopt;
    const bool of = words.take("of");
    if (!words.take_article() && of) return std::nullopt;
    const UnitRow* unit = words.take_unit();
    if (!unit || !words.at_end()) return std::nullopt;
    return AmountInWords{*part, unit};
}

/// "a pint", "two pints", "two and a half pints", "a pint and a half", "2 pints and a half".
std::optional<AmountInWords> whole_units(SaidWords words) {
    const bool article = words.take_article();
    const auto whole = article ? 1.0 : words.take_whole();
    if (!whole) return std::nullopt;
    double more = article ? 0 : words.take_and_a_part();
    const UnitRow* unit = words.take_unit();
    if (!unit) return std::nullopt;
    if (more == 0) more = words.take_and_a_part();
    if (!words.at_end()) return std::nullopt;
    return AmountInWords{*whole + more, unit};
}

}  // namespace

std::optional<AmountInWords> amount_in_words(std::string_view text) {
    if (!may_be_in_words(trimmed(text))) return std::nullopt;
    const SaidWords words(folded_name(without_hyphens(std::string(text))));
    if (words.size() > most_said_words) return std::nullopt;
    const auto part = part_of_a_unit(words);
    return part ? part : whole_units(words);
}

}  // namespace baitwright
