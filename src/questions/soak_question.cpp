#include "questions/soak_question.h"

#include <algorithm>
#include <cmath>

#include "quantities/clock.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

bool is_percent(const std::string& word) {
    return word.ends_with('%');
}

/// "50 %" beside "1 part" is no whole that could be shared out: all are shares in %, or none is.
void refuse_mixed_shares(const std::vector<std::string>& words) {
    const auto percent_at = std::find_if(words.begin(), words.end(), is_percent);
    const auto other_at = std::find_if_not(words.begin(), words.end(), is_percent);
    if (percent_at == words.end() || other_at == words.end()) return;
    throw UsageError("mixed-shares", "'" + *percent_at + "' is a share in %, and '" + *other_at + "' is not",
                     R"(give all of them in %, or all in parts: "expander 4 mm=2 parts" "expander 6 mm=1 part")");
}

/// What is shared out is all of it, and no more.
void refuse_more_than_all(const std::vector<std::string>& words, const std::vector<SoakItem>& items) {
    constexpr double all = 100 + 1e-9;
    double sum = 0;
    for (std::size_t i = 0; i < words.size(); ++i)
        if (is_percent(words[i])) sum += items[i].parts;
    if (sum > all)
        throw UsageError("more-than-all",
                         "the shares come to " + number_text_within(sum, 1e-6 * sum) + " %, more than all of it",
                         "let them come to 100 %, or say them in parts: \"expander 4 mm=2 parts\"");
}

/// "2 parts", "1 part", "50 %": shares of the whole.
std::optional<double> read_parts(const std::string& text) {
    for (const char* ending : {"parts", "part", "%"})
        if (text.ends_with(ending)) {
            const double parts = parse_number(text.substr(0, text.size() - std::string(ending).size()));
            if (!(parts > 0 && parts <= 1e6))
                throw InputError("out-of-range", "'" + text + "' is not a share above zero",
                                 R"(a share is above 0 and at most 1000000: "2 parts", "40 %")");
            return parts;
        }
    return std::nullopt;
}

/// "fishmeal pellet 4 mm", "fishmeal pellet 4 mm=500g", "red pellet 2 mm=1 part".
SoakItem read_item(const std::string& word) {
    const auto equals = word.rfind('=');
    if (equals == std::string::npos) return {word, std::nullopt, 1};
    SoakItem item{word.substr(0, equals), std::nullopt, 1};
    const std::string amount = word.substr(equals + 1);
    if (const auto parts = flag_value(item.of, [&] { return read_parts(amount); }))
        item.parts = *parts;
    else
        item.amount = flag_value(item.of, [&] { return read_amount(amount); });
    return item;
}

/// "glycerol=20ml", "red dye powder=5 g per kg dry", "salt=2 %".
InTheWater read_with(const std::string& text) {
    const auto equals = text.rfind('=');
    if (equals == std::string::npos || equals == 0)
        throw InputError("no-amount", "'" + text + "' does not say how much goes in",
                         "write it as in --with \"glycerol=20ml\"");
    const std::string dose = text.substr(equals + 1);
    InTheWater in{text.substr(0, equals), Mass{}};
    if (dose.find(" per ") != std::string::npos || dose.find('%') != std::string::npos)
        in.dose = parse_dose_rate(dose);
    else
        std::visit([&](auto amount) { in.dose = amount; }, read_amount(dose));
    return in;
}

/// "500g of fishmeal micro pellet 2 mm"
AsManyAs read_as_many(const std::string& text) {
    const auto of = behind_amount(text, " of ");
    if (of == std::string::npos)
        throw InputError("no-pellet", "'" + text + "' does not say how much of what",
                         "write it as in --grains-of \"500g of fishmeal micro pellet 2 mm\"");
    return {read_amount(text.substr(0, of)), text.substr(of + 4)};
}

SoakTotal read_total(const Arguments& arguments) {
    SoakTotal total;
    std::string chosen;
    for (const char* flag : {"--amount", "--bites", "--grains-of"}) {
        if (!arguments.has(flag)) continue;
        if (!chosen.empty())
            throw UsageError("two-amounts", "two amounts were given: " + chosen + " and " + flag, "give one of them");
        chosen = flag;
    }
    if (arguments.has("--bites") != arguments.has("--length"))
        throw UsageError("half-a-count", "--bites (an hour) and --length go together",
                         "for example --bites 30 --length 5h");
    read_flag(arguments, "--amount",
              [&](const std::string& text) { std::visit([&](auto amount) { total = amount; }, read_amount(text)); });
    read_flag(arguments, "--grains-of", [&](const std::string& text) { total = read_as_many(text); });
    read_flag(arguments, "--bites", [&](const std::string& text) {
        const double bites = parse_number(text);
        if (!(bites > 0 && bites <= 1000))
            throw InputError("out-of-range", "the bites an hour must be above 0 and at most 1000",
                             "for example --bites 30");
        total = BitesPlanned{bites, {}};
    });
    read_flag(arguments, "--length", [&](const std::string& text) {
        const Time length = in_range(read_hours(text));
        if (length > 72.0 * hour)
            throw InputError("out-of-range", "a session of more than 72 hours is not planned here",
                             "for example --length 5h");
        std::get<BitesPlanned>(total).length = length;
    });
    return total;
}

int read_strokes(const std::string& text) {
    const double strokes = parse_number(text);
    if (!(strokes >= 0 && strokes <= 200) || strokes != std::floor(strokes))
        throw InputError("out-of-range", "'" + text + "' is not a whole number of strokes from 0 to 200",
                         "for example --strokes 4");
    return static_cast<int>(strokes);
}

/// From the evening to the morning. **Source**: common practice, no source.
constexpr Time overnight = 10.0 * hour;

/// How long they were under water: "40min", "overnight".
Time read_time_under_water(const std::string& text) {
    return folded_name(text) == "overnight" ? overnight : in_range(parse<Time>(text));
}

SoakMethod read_method(const std::string& text) {
    if (text == "covered") return SoakMethod::covered;
    if (text == "measured") return SoakMethod::measured;
    throw InputError("unknown-method", "'" + text + "' is not a way to soak",
                     "covered: under water, then drained; measured: just the water they are to take");
}

}  // namespace

void read_pump(const Arguments& arguments, PumpSetup& pump) {
    read_flag(arguments, "--strokes", [&](const std::string& text) { pump.strokes = read_strokes(text); });
    read_flag(arguments, "--pump", [&](const std::string& text) { pump.stroke = in_range(parse<Volume>(text)); });
    read_flag(arguments, "--vessel", [&](const std::string& text) { pump.vessel = in_range(parse<Volume>(text)); });
    read_flag(arguments, "--air", [&](const std::string& text) { pump.air = in_range(parse<Pressure>(text)); });
}

SoakRequest soak_request(const Arguments& arguments) {
    SoakRequest request;
    refuse_mixed_shares(arguments.words());
    for (const std::string& word : arguments.words()) request.items.push_back(read_item(word));
    refuse_more_than_all(arguments.words(), request.items);
    request.total = read_total(arguments);
    read_flag(arguments, "--spare", [&](const std::string& text) { request.spare = parse<Ratio>(text); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { request.water = read_temperature(arguments, text); });
    read_flag(arguments, "--method", [&](const std::string& text) { request.method = read_method(text); });
    if (arguments.has("--uptake") && arguments.has("--soaked"))
        throw UsageError("two-soaks", "--uptake and --soaked were both given",
                         "give how much they are to take, or how long they were under water");
    read_flag(arguments, "--uptake", [&](const std::string& text) { request.uptake = parse<Ratio>(text); });
    read_flag(arguments, "--soaked", [&](const std::string& text) { request.soaked = read_time_under_water(text); });
    for (const std::string& text : arguments.values("--with"))
        request.in_the_water.push_back(flag_value("--with", [&] { return read_with(text); }));
    read_pump(arguments, request.pump);
    read_flag(arguments, "--cup",
              [&](const std::string& text) { request.portions.cup = in_range(parse_vessel_size(text)); });
    read_flag(arguments, "--ball",
              [&](const std::string& text) { request.portions.ball = in_range(parse_ball_size(text)); });
    read_flag(arguments, "--carpet",
              [&](const std::string& text) { request.portions.carpet = in_range(parse<Length>(text)); });
    read_flag(arguments, "--ready-at", [&](const std::string& text) { request.ready_at = parse_clock(text); });
    return request;
}

void refuse_unfit_soak_flags(const Arguments& arguments, bool soaked, bool pumped) {
    const auto refuse = [&](std::initializer_list<const char*> flags, const char* what, const char* hint) {
        for (const char* flag : flags)
            if (arguments.typed(flag)) throw UsageError("unfit-flag", std::string(flag) + what, hint);
    };
    if (!pumped)
        refuse({"--strokes", "--pump", "--vessel", "--air"}, " goes with expanders, which are pumped",
               "leave it out, or name an expander");
    if (!soaked)
        refuse({"--uptake", "--soaked", "--method", "--compare-temps"},
               " goes with pellets that soak; expanders are pumped", "leave it out");
}

std::vector<Temperature> waters_to_compare(const Arguments& arguments, Temperature asked) {
    const Temperature cold = Temperature::from_celsius(5), warm = Temperature::from_celsius(20);
    if (!arguments.has("--water-temp") || asked == cold || asked == warm) return {cold, warm};
    if (asked < cold) return {asked, cold, warm};
    if (asked > warm) return {cold, warm, asked};
    return {cold, asked, warm};
}

}  // namespace baitwright
