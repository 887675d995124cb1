#include "questions/convert_question.h"

#include "quantities/in_quotes.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

constexpr double highest_rate = 1e6;

double read_rate_of_exchange(const std::string& text) {
    const double rate = parse_number(text);
    if (!(rate > 0 && rate <= highest_rate))
        throw InputError("out-of-range", in_quotes(text) + " is not a rate above 0 and at most 1000000",
                         "say how many of the new currency one of the old buys, as in --at 1.17");
    return rate;
}

void refuse_beside_without_prices(const Arguments& arguments) {
    for (const char* flag : {"--to", "--at", "--from", "--on"})
        if (arguments.has(flag))
            throw UsageError("unfit-flag", std::string(flag) + " does not go with --without-prices",
                             "leave one of the two out");
}

}  // namespace

ConvertRequest convert_request(const Arguments& arguments) {
    ConvertRequest request;
    if (arguments.has("--dry-run")) request.doing = ConvertRequest::Doing::only_shown;
    if (arguments.has("--without-prices")) {
        refuse_beside_without_prices(arguments);
        return request;
    }
    if (!arguments.has("--to"))
        throw UsageError("no-currency", "what currency are the prices to be in?",
                         "say it with --to EUR; or take them all out of use: --without-prices");
    if (!arguments.has("--at"))
        throw UsageError("no-rate", "how many of the new currency does one of the old buy?",
                         "say it with --at 1.17, where \u00a31.00 is \u20ac1.17");
    read_flag(arguments, "--to", [&](const std::string& text) { request.to = &currency_named(text); });
    read_flag(arguments, "--from", [&](const std::string& text) { request.from = &currency_named(text); });
    read_flag(arguments, "--at", [&](const std::string& text) { request.rate = read_rate_of_exchange(text); });
    if (request.from && *request.from == *request.to)
        throw UsageError("same-currency", "--from and --to are both " + std::string(request.to->code),
                         "name two currencies, as in --from GBP --to EUR");
    return request;
}

}  // namespace baitwright
