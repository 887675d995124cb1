#include "questions/shop_question.h"

#include <cmath>

#include "questions/read_flags.h"

namespace baitwright {

namespace {

constexpr std::size_t most_sessions = 400;

ShopRequest::Delivery read_delivery(const std::string& text, const Arguments& arguments) {
    const auto [shop, charge] = parted_at_equals(text, "what it asks for bringing it", "--delivery \"the mill=£4.50\"");
    return {shop, read_money(charge, arguments)};
}

}  // namespace

SessionDays session_days(const Arguments& arguments, Date today) {
    SessionDays days{today};
    read_flag(arguments, "--on", [&](const std::string& text) { days.first = parse_date(text); });
    read_flag(arguments, "--every", [&](const std::string& text) {
        const double gap = parse<Time>(text).in(day);
        if (gap < 1 || gap > 366 || gap != std::floor(gap))
            throw InputError("out-of-range", "sessions are whole days apart, from 1 d to 366 d", "as in --every 7d");
        days.gap = static_cast<int>(gap);
    });
    return days;
}

ShopRequest shop_request(const Arguments& arguments, Date today) {
    ShopRequest request;
    request.today = today;
    request.usual_currency = usual_currency(arguments);
    if (arguments.typed("--at") || !arguments.has("--at"))
        request.at = arguments.values("--at");
    else if (!arguments.has("--one-shop"))
        request.rather_at = arguments.value("--at");
    for (const std::string& text : arguments.values("--delivery"))
        request.deliveries.push_back(flag_value("--delivery", [&] { return read_delivery(text, arguments); }));
    if (arguments.has("--one-shop")) request.trips = ShopRequest::Trips::one_shop;
    read_flag(arguments, "--most-left",
              [&](const std::string& text) { request.most_left_over = nothing_or_in_range(parse<Mass>(text)); });
    return request;
}

StrategyRequest shop_what_if(const Arguments& arguments) {
    StrategyRequest what_if;
    read_flag(arguments, "--people",
              [&](const std::string& text) { what_if.people = read_count(text, "for example --people 4"); });
    return what_if;
}

std::vector<TimedWord> timed_words(const Arguments& arguments) {
    std::vector<TimedWord> words;
    std::size_t sessions = 0;
    for (const std::string& word : arguments.words()) {
        words.push_back(timed_word(word));
        sessions += static_cast<std::size_t>(words.back().times);
    }
    if (sessions > most_sessions)
        throw UsageError("too-many-sessions",
                         std::to_string(sessions) + " sessions are more than can be shopped for at once",
                         "name at most " + std::to_string(most_sessions));
    return words;
}

}  // namespace baitwright
