#include "questions/swap_question.h"

#include "questions/read_flags.h"

namespace baitwright {

namespace {

Ratio read_rest(const std::string& text) {
    const Ratio share = parse<Ratio>(text);
    if (!(share >= 0 && share <= 1))
        throw InputError("out-of-range", "'" + text + "' is not a share from 0 to 100 %", "for example 10%");
    return share;
}

int read_at_most(const std::string& text) {
    const double count = parse_number(text);
    if (!(count >= 1 && count <= 3) || count != static_cast<int>(count))
        throw InputError("out-of-range", "'" + text + "' is not 1, 2 or 3",
                         "more than three are no swap but another mix");
    return static_cast<int>(count);
}

}  // namespace

SwapRequest swap_request(const Arguments& arguments) {
    SwapRequest request;
    request.usual_currency = usual_currency(arguments);
    request.without = arguments.values("--without");
    if (request.without.empty())
        throw UsageError("nothing-out", "what did you run out of?", "say it with --without \"fishmeal, brown\"");
    read_flag(arguments, "--rest-may-move", [&](const std::string& text) { request.rest_may_move = read_rest(text); });
    read_flag(arguments, "--at-most", [&](const std::string& text) { request.at_most = read_at_most(text); });
    return request;
}

}  // namespace baitwright
