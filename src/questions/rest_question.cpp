#include "questions/rest_question.h"

#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "questions/plan_question.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// "11:20" with a start; "110" or "110 min" after it.
Time read_now(const std::string& text, const std::optional<int>& start) {
    if (!is_clock(text)) {
        if (is_bare_number(text)) return nothing_or_in_range(parse_number(text) * minute);
        return nothing_or_in_range(parse<Time>(text));
    }
    if (!start)
        throw InputError("no-start", in_quotes(text) + " is a time of day, and the start has none",
                         "say --start 09:30 as well, or minutes after the start, as in --now 110");
    return minutes_between(*start, parse_clock(text));
}

/// Where the longest amount at the front ends, before a blank: "half a pint" of "half a pint of maggots". Where the
/// first figures with their unit end, if none reads as one; npos where a blank or a word is wanting.
std::size_t end_of_amount(const std::string& text) {
    if (measured_in(text)) return std::string::npos;
    for (auto blank = text.rfind(' '); blank != std::string::npos && blank > 0; blank = text.rfind(' ', blank - 1))
        if (measured_in(std::string_view(text).substr(0, blank))) return blank;
    const std::size_t end = text.find_first_not_of("0123456789.½¼¾/ ");
    return end == std::string::npos ? text.size() : text.find(' ', end);
}

/// "1.5 l silt bed", "300 g of maggots".
LeftOver read_left(const std::string& text) {
    const std::size_t end = end_of_amount(text);
    if (end == std::string::npos || end + 1 >= text.size())
        throw InputError("no-amount", in_quotes(text) + " does not say how much of what is left",
                         "write it as in --left \"1.5 l silt bed\"");
    std::string name = text.substr(end + 1);
    if (name.starts_with("of ")) name.erase(0, 3);
    return {name, read_amount(text.substr(0, end))};
}

Bites read_bites(const std::string& text) {
    if (text == "steady") return Bites::steady;
    if (text == "slow") return Bites::slow;
    if (text == "none") return Bites::none;
    throw InputError("unknown-word", "bites are not " + in_quotes(text), "they are steady, slow or none");
}

}  // namespace

RestRequest rest_request(const Arguments& arguments, const std::optional<int>& start) {
    RestRequest request;
    read_flag(arguments, "--now", [&](const std::string& text) { request.now = read_now(text, start); });
    for (const std::string& text : arguments.values("--left"))
        request.left.push_back(flag_value("--left", [&] { return read_left(text); }));
    read_flag(arguments, "--bites", [&](const std::string& text) { request.bites = read_bites(text); });
    return request;
}

void refuse_unfit_rest_flags(const Arguments& arguments) {
    for (const char* flag : {"--left", "--bites"})
        if (arguments.has(flag) && !arguments.has("--now"))
            throw UsageError("unfit-flag", std::string(flag) + " goes with --now", "say when it is, as in --now 11:20");
    if (arguments.has("--now") && !arguments.has("--left") && !arguments.has("--bites"))
        throw UsageError("missing-flag", "--now was given, but not what is left",
                         "say it as in --left \"1.5 l silt bed\", or how they bite, as in --bites slow");
}

}  // namespace baitwright
