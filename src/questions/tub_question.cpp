#include "questions/tub_question.h"

#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// "--minutes 5" as people say it, or with a unit: "1h".
Time read_minutes(const std::string& text) {
    return nothing_or_in_range(is_bare_number(text) ? parse_number(text) * minute : parse<Time>(text));
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
    request.feel = arguments.value("--feel");
    return request;
}

}  // namespace baitwright
