#include "files/toml_syntax.h"

#include <algorithm>
#include <array>
#include <string>

#include "files/utf8.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

/// What a mistake in the punctuation is called, by words that stand in the parser's own description of it.
struct SyntaxRule {
    std::string_view where, what;  ///< both must stand in the description
    std::string_view message, hint;
};

constexpr std::string_view quote_amounts = R"(words and amounts with a unit stand in quotes, as in "400 g")";
constexpr std::string_view one_line_table =
    R"(write it on one line, as in { value = "6.5 %", spread = "15 %" }, without a comma at its end)";
constexpr std::string_view whole_heading = "a heading looks like [[part]], with as many brackets behind as before";

/// The first that fits counts.
constexpr std::array syntax_rules{
    SyntaxRule{"table header", "cannot redefine", "this heading stands in the file already, or is a key",
               "blocks of one sort are all headed alike, with two brackets: [[part]]"},
    SyntaxRule{"table header", "", "this heading is not written right", whole_heading},
    SyntaxRule{"string", "unknown escape", "a backslash with this letter means nothing",
               "write two backslashes for one, or put the text in single quotes"},
    SyntaxRule{"string", "", "this text in quotes has no end on its line", "close it with the quote it begins with"},
    SyntaxRule{"array", "", "this list is not closed, or a comma is missing", R"(write it as in ["dust", "nuts"])"},
    SyntaxRule{"inline table", "", "what stands in braces is not written right", one_line_table},
    SyntaxRule{"date", "", "this is not a day of the calendar", "write a date as in 2026-03-01"},
    SyntaxRule{"time", "", "this is not a time of day", "write a date as in 2026-03-01, without a time"},
    SyntaxRule{"", "leading zeroes", "a number cannot begin with 0", "leave out the zeroes in front"},
    SyntaxRule{"", "not representable", "this number is too large",
               "the largest whole number a file can hold has 18 digits; write it shorter, as in 1.5e9"},
    SyntaxRule{"key-value pair", "expected '='", "a '=' is missing behind the key",
               "a line reads key = value; a key of several words is joined by _"},
    SyntaxRule{"key-value pair", "expected value", "nothing follows the '='",
               "write a value behind it, or take the line out"},
    SyntaxRule{"key-value pair", "end-of-file", "the file ends in the middle of a line", "a line reads key = value"},
    SyntaxRule{"key-value pair", "expected a comment", "something follows the value", quote_amounts},
    SyntaxRule{"value", "", "this is no value", quote_amounts},
    SyntaxRule{"integer", "", "this number is not written right", quote_amounts},
    SyntaxRule{"floating-point", "", "this number is not written right", quote_amounts},
    SyntaxRule{"boolean", "", "this is no value", quote_amounts},
    SyntaxRule{"", "bare key starting", "a name is missing here", "a line reads key = value, and a heading [[part]]"},
    SyntaxRule{"", "expected keys", "a line cannot begin like this",
               "begin it with a key of the letters a to z, with a heading such as [[part]], or with # for a remark"},
};

bool holds(std::string_view text, std::string_view words) {
    return text.find(words) != std::string_view::npos;
}

/// "Error while parsing string: encountered end-of-file" in its two halves.
std::pair<std::string_view, std::string_view> scope_and_detail(std::string_view description) {
    const auto colon = description.find(": ");
    if (colon == std::string_view::npos) return {{}, description};
    return {description.substr(0, colon), description.substr(colon + 2)};
}

Position position_of(const toml::source_region& region) {
    return {static_cast<int>(region.begin.line), static_cast<int>(region.begin.column)};
}

/// The key of "cannot redefine existing string 'name'".
std::string_view key_set_twice(std::string_view detail) {
    const auto first = detail.find('\'');
    const auto last = detail.rfind('\'');
    return first < last && last != std::string_view::npos ? detail.substr(first + 1, last - first - 1)
                                                          : std::string_view{};
}

/// The parser points at the second value; a person looks for its key, which stands before it in that line.
Position place_of_key_before(Position value, std::string_view key, std::string_view text) {
    const std::string_view line = LineWalker(text).line(value.line);
    std::size_t end = 0;
    for (int column = 1; column < value.column && end < line.size(); ++column) do
            ++end;
        while (end < line.size() && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U);
    const auto at = line.substr(0, end).rfind(key);
    if (at == std::string_view::npos) return value;
    return {value.line, place_of_byte(line, at).column};
}

void add_syntax_fault(const toml::parse_error& error, std::string_view text, FileFaults& faults) {
    const auto [scope, detail] = scope_and_detail(error.description());
    const Position place = position_of(error.source());
    if (holds(scope, "key-value pair") && holds(detail, "cannot redefine")) {
        const std::string_view key = key_set_twice(detail);
        faults.add(place_of_key_before(place, key, text), "set-twice", in_quotes(key) + " is set twice here",
                   "keep one of the two lines");
        return;
    }
    for (const SyntaxRule& rule : syntax_rules)
        if (holds(scope, rule.where) && holds(detail, rule.what))
            return faults.add(place, "not-toml", std::string(rule.message), std::string(rule.hint));
    faults.add(place, "not-toml", "this cannot be read: " + in_quotes(detail),
               "a line reads key = value; " + std::string(quote_amounts));
}

/// Behind a quote: where its text ends, past the closing quote, or past the line or file where it does not close.
std::size_t end_of_quoted(std::string_view text, std::size_t start) {
    const char quote = text[start];
    const std::string three(3, quote);
    const bool long_text = text.substr(start, 3) == three;
    const std::string_view closing = long_text ? std::string_view(three) : std::string_view(three).substr(0, 1);
    for (std::size_t at = start + closing.size(); at < text.size(); ++at) {
        if (text[at] == '\\' && quote == '"')
            ++at;
        else if (text[at] == quote && text.substr(at, closing.size()) == closing)
            return at + closing.size();
        else if (text[at] == '\n' && !long_text)
            return at;
    }
    return text.size();
}

/// The place of the first key that is dotted deeper than any file needs. The parser would build so many tables inside
/// each other, and taking them apart again could exhaust the stack.
std::optional<std::size_t> first_deep_key(std::string_view text) {
    constexpr int deepest = 16;
    int dots = 0;
    for (std::size_t at = 0; at < text.size();) {
        const char c = text[at];
        if (c == '"' || c == '\'') {
            at = end_of_quoted(text, at);
            continue;
        }
        if (c == '#') at = std::min(text.find('\n', at), text.size() - 1);
        if (c == '.' && ++dots > deepest) return at;
        if (std::string_view("=,[]{}\n#").find(c) != std::string_view::npos) dots = 0;
        ++at;
    }
    return std::nullopt;
}

/// The place of the value that is one too many. Each takes the parser some hundred bytes, however short it is written:
/// without a limit a file of a few megabytes could take all the memory there is.
std::optional<std::size_t> first_value_too_many(std::string_view text) {
    constexpr std::size_t most_values = 300000;  // a library of ten thousand ingredients
    std::size_t values = 0;
    for (std::size_t at = 0; at < text.size();) {
        const char c = text[at];
        if (c == '"' || c == '\'') {
            at = end_of_quoted(text, at);
            continue;
        }
        if (std::string_view("=,[{").find(c) != std::string_view::npos && ++values > most_values) return at;
        at = c == '#' ? std::min(text.find('\n', at), text.size()) : at + 1;
    }
    return std::nullopt;
}

}  // namespace

std::optional<toml::table> parse_toml(std::string_view text, FileFaults& faults) {
    if (const auto bad = first_bad_byte(text)) {
        faults.add(place_of_byte(text, *bad), "not-utf-8", "the file is not in UTF-8 from here on",
                   "save it as UTF-8 in the editor");
        return std::nullopt;
    }
    if (const auto deep = first_deep_key(text)) {
        faults.add(place_of_byte(text, *deep), "too-deep", "this key has more dots than any key of a library file",
                   "write a key without dots");
        return std::nullopt;
    }
    if (const auto too_many = first_value_too_many(text)) {
        faults.add(place_of_byte(text, *too_many), "too-large", "the file holds more than 300,000 values",
                   "split it into several files");
        return std::nullopt;
    }
    try {
        return toml::parse(text);
    } catch (const toml::parse_error& error) {
        add_syntax_fault(error, text, faults);
        return std::nullopt;
    }
}

}  // namespace baitwright
