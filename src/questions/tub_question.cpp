#include "questions/tub_question.h"

#include "quantities/in_quotes.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// "--minutes 5" as people say it, or with a unit: "1h".
Time read_minutes(const std::string& text) {
    return nothing_or_in_range(is_bare_number(text) ? parse_number(text) * minute : parse<Time>(text));
}

/// "250ml": the size alone, for how many of them is the question.
std::string size_alone(const std::string& flag, const std::string& text) {
    if (const auto times = text.find_first_of("xX*");
        times != std::string::npos && is_bare_number(text.substr(0, times)))
        throw InputError("surplus-count", in_quotes(text) + " says how many, which is what the answer tells",
                         "give the size alone, as in " + flag + " " + std::string(trimmed(text.substr(times + 1))));
    return text;
}

std::vector<TubPortion> tub_portions(const Arguments& arguments) {
    std::vector<TubPortion> portions;
    const auto vessel = [&](const std::string& flag, const char* called) {
        read_flag(arguments, flag, [&](const std::string& text) {
            portions.emplace_back(Vessels{1, in_range(parse_vessel_size(size_alone(flag, text))), called});
        });
    };
    vessel("--cups", "cup");
    vessel("--feeders", "feeder");
    read_flag(arguments, "--balls", [&](const std::string& text) {
        portions.emplace_back(Balls{1, in_range(parse_ball_size(size_alone("--balls", text)))});
    });
    return portions;
}

}  // namespace

TubRequest tub_request(const Arguments& arguments) {
    TubRequest request;
    if (!arguments.has("--dry-mass"))
        throw UsageError("no-dry-mass", "how much dry mix is in the tub?", "say it with --dry-mass 1kg");
    if (arguments.has("--added") == arguments.has("--weighs"))
        throw UsageError("no-water",
                         arguments.has("--added") ? "the water is given twice" : "how much water is in the tub?",
                         "give one of --added 700ml (poured in) and --weighs 1.6kg (what it all weighs now)");
    read_flag(arguments, "--dry-mass",
              [&](const std::string& text) { request.dry_mass = in_range(parse<Mass>(text)); });
    read_flag(arguments, "--added",
              [&](const std::string& text) { request.water = WaterPoured{nothing_or_in_range(parse<Volume>(text))}; });
    read_flag(arguments, "--weighs",
              [&](const std::string& text) { request.water = TubWeighs{in_range(parse<Mass>(text))}; });
    read_flag(arguments, "--minutes", [&](const std::string& text) { request.since = read_minutes(text); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { request.water_temperature = read_temperature(arguments, text); });
    read_flag(arguments, "--seed", [&](const std::string& text) { request.seed = read_seed(text); });
    request.feel = arguments.value("--feel");
    request.portions = tub_portions(arguments);
    return request;
}

}  // namespace baitwright
