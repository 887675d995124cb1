#include "page/phone_words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace baitwright {

namespace {

/// Where a flag's own letters do not say what it is. Those without a value end in '!'.
constexpr std::array<std::pair<std::string_view, std::string_view>, 42> flag_names{{
    {"--added", "the water poured in"},
    {"--air", "the air's pressure"},
    {"--air-temp", "the air's warmth"},
    {"--as", "the earlier dose"},
    {"--at", "the shop"},
    {"--bed", "the bed"},
    {"--breaks-at", "how deep you saw it break"},
    {"--carpet-seen", "how wide you saw it lie"},
    {"--compare", "the comparison"},
    {"--compare-temps", "cold and warm water side by side!"},
    {"--cup-weighs", "what your cup weighs"},
    {"--dry-mass", "the dry mix"},
    {"--empty-shed", "an empty shed!"},
    {"--every", "the time between sessions"},
    {"--from", "the beginning of the work"},
    {"--from-stock", "what is in the shed!"},
    {"--full", "all of one feed!"},
    {"--grains-of", "as many grains as"},
    {"--hands", "the pairs of hands"},
    {"--have", "what you have"},
    {"--hold", "how long you saw it hold"},
    {"--holds", "what it weighs"},
    {"--hook", "the hook pellet"},
    {"--is", "the price"},
    {"--left", "what is left"},
    {"--loose", "the loose handful"},
    {"--method", "the way of soaking"},
    {"--most-left", "what may be left over"},
    {"--now", "the time now"},
    {"--on", "the day"},
    {"--one-shop", "one shop for all!"},
    {"--people", "the number of anglers"},
    {"--ready-at", "when it must be ready"},
    {"--reused-frozen", "the share that is frozen again"},
    {"--soaked", "the time under water"},
    {"--thrown", "a throw!"},
    {"--travel", "the way to the water"},
    {"--want", "what is wished for"},
    {"--water-temp", "the water's warmth"},
    {"--weighs", "what it weighs now"},
    {"--with", "what is added"},
    {"--without", "what is left out"},
}};

/// What follows a flag that is spoken of, and is no value of it.
constexpr std::array<std::string_view, 16> no_values{"and",  "or",  "out", "as",   "goes",  "go",   "both", "beside",
                                                     "were", "was", "is",  "must", "needs", "with", "are",  "tells"};

/// After these words a flag and its value are an example.
constexpr std::array<std::string_view, 7> before_examples{"for example", "as in", "such as",       "say it with",
                                                          "see",         "add",   "write it as in"};

bool is_flag_letter(char letter) {
    return (letter >= 'a' && letter <= 'z') || letter == '-';
}

/// Where the next flag begins, from there on.
std::size_t next_flag(std::string_view text, std::size_t from) {
    for (auto at = text.find("--", from); at != std::string_view::npos; at = text.find("--", at + 2)) {
        const bool begins = at == 0 || text[at - 1] == ' ' || text[at - 1] == '(' || text[at - 1] == '\'';
        if (begins && at + 2 < text.size() && std::isalpha(static_cast<unsigned char>(text[at + 2]))) return at;
    }
    return std::string_view::npos;
}

std::string_view flag_at(std::string_view text, std::size_t at) {
    std::size_t end = at;
    while (end < text.size() && is_flag_letter(text[end])) ++end;
    return text.substr(at, end - at);
}

std::string name_of_flag(std::string_view flag) {
    for (const auto& [known, name] : flag_names)
        if (known == flag) return std::string(name.back() == '!' ? name.substr(0, name.size() - 1) : name);
    std::string name = "the ";
    for (const char letter : flag.substr(2)) name += letter == '-' ? ' ' : letter;
    return name;
}

bool takes_no_value(std::string_view flag) {
    return std::any_of(flag_names.begin(), flag_names.end(),
                       [&](const auto& known) { return known.first == flag && known.second.back() == '!'; });
}

/// The value that stands behind a flag; empty where none does.
std::string_view value_behind(std::string_view text, std::string_view flag, std::size_t end) {
    if (takes_no_value(flag) || end + 1 >= text.size() || text[end] != ' ') return {};
    const std::string_view rest = text.substr(end + 1);
    if (rest.front() == '"') {
        const auto close = rest.find('"', 1);
        return close == std::string_view::npos ? std::string_view() : rest.substr(0, close + 1);
    }
    std::string_view word = rest.substr(0, rest.find_first_of(" ,;)"));
    if (!word.empty() && word.back() == ':') word.remove_suffix(1);
    if (word.substr(0, 2) == "--") return {};
    return std::find(no_values.begin(), no_values.end(), word) == no_values.end() ? word : std::string_view();
}

bool ends_with(std::string_view text, std::string_view end) {
    return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

/// Whether what stands before it makes a flag and its value an example: such words, or an example before it.
bool is_example(std::string_view before, bool after_example) {
    while (!before.empty() && before.back() == ' ') before.remove_suffix(1);
    for (const std::string_view words : before_examples)
        if (ends_with(before, words)) return true;
    return after_example &&
           (ends_with(before, "or") || ends_with(before, "and") || ends_with(before, ",") || ends_with(before, "of"));
}

std::string without_flags(std::string_view text) {
    std::string result;
    std::size_t done = 0;
    bool after_example = false;
    for (auto at = next_flag(text, 0); at != std::string_view::npos; at = next_flag(text, done)) {
        const std::string_view between = text.substr(done, at - done);
        const bool beside_example = after_example && between == " ";
        result += between;
        const std::string_view flag = flag_at(text, at);
        const std::string_view value = value_behind(text, flag, at + flag.size());
        done = at + flag.size() + (value.empty() ? 0 : value.size() + 1);
        const bool example = !value.empty() && is_example(result, after_example);
        after_example = after_example || example;
        if (example)
            result += value;
        else if (beside_example && !value.empty())
            result += "with " + name_of_flag(flag) + " " + std::string(value);
        else
            result += name_of_flag(flag) + (value.empty() ? "" : " (" + std::string(value) + ")");
    }
    return result += text.substr(done);
}

void replace_all(std::string& text, std::string_view from, std::string_view to) {
    for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
}

std::string with_signs(std::string text) {
    for (const char* scale : {"C", "F"}) {
        const std::string sign = " \u00b0" + std::string(scale), plain = "deg" + std::string(scale);
        replace_all(text, " " + plain, sign);
        replace_all(text, plain, sign);
    }
    return text;
}

bool is_field_letter(char letter) {
    return is_flag_letter(letter) || (letter >= 'A' && letter <= 'Z');
}

/// The flag or the word in capitals that a message begins with, before a colon.
std::string_view field_before_colon(std::string_view message) {
    std::size_t end = 0;
    while (end < message.size() && is_field_letter(message[end])) ++end;
    const std::string_view word = message.substr(0, end);
    const bool named =
        word.substr(0, 2) == "--" ||
        (end > 1 && std::all_of(word.begin(), word.end(), [](char letter) { return letter >= 'A' && letter <= 'Z'; }));
    return named && message.substr(end, 2) == ": " ? word : std::string_view();
}

std::string_view flag_in(std::string_view text) {
    const auto at = next_flag(text, 0);
    return at == std::string_view::npos ? std::string_view() : flag_at(text, at);
}

}  // namespace

std::string phone_words(std::string_view text) {
    std::string words = without_flags(text);
    replace_all(words, "say it with ", "for example ");
    return with_signs(std::move(words));
}

Fault phone_fault(Fault fault) {
    const std::string_view before_colon = field_before_colon(fault.message);
    std::string field(before_colon);
    if (field.empty()) field = flag_in(fault.message);
    if (field.empty() && fault.hint.rfind("leave", 0) != 0) field = flag_in(fault.hint);
    if (fault.subject.empty()) fault.subject = field;
    if (!before_colon.empty()) fault.message.erase(0, before_colon.size() + 2);
    fault.message = phone_words(fault.message);
    fault.hint = phone_words(fault.hint);
    return fault;
}

}  // namespace baitwright
