#include "questions/paid_question.h"

#include <algorithm>

#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

PaidBy read_paid_by(const std::string& text) {
    const auto found = std::find(paid_by_names.begin() + 1, paid_by_names.end(), text);
    if (found != paid_by_names.end()) return static_cast<PaidBy>(found - paid_by_names.begin());
    const std::string near = did_you_mean(text, {paid_by_names.begin() + 1, paid_by_names.end()});
    throw InputError("unknown-word", "it cannot be " + in_quotes(text),
                     near.empty() ? "it can be season, clarity, venue or temperature" : near);
}

}  // namespace

PaidRequest paid_request(const Arguments& arguments) {
    PaidRequest request;
    request.strategies = arguments.words();
    request.fish = arguments.value("--fish").value_or("");
    read_flag(arguments, "--by", [&](const std::string& text) { request.by = read_paid_by(text); });
    read_flag(arguments, "--since", [&](const std::string& text) { request.since = parse_date(text); });
    return request;
}

}  // namespace baitwright
