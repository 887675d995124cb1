#include "questions/dry_question.h"

#include <numbers>

#include "questions/read_flags.h"

namespace baitwright {

Area read_tub(const std::string& text) {
    const auto cross = text.find('x');
    if (cross == std::string::npos) {
        const auto word = text.find(" across");
        const Length across = in_range(parse<Length>(text.substr(0, word)));
        return std::numbers::pi / 4 * across * across;
    }
    const std::string second_side = text.substr(cross + 1);
    const Length wide = in_range(parse<Length>(second_side));
    std::string first_side = text.substr(0, cross);
    if (first_side.find_first_not_of("0123456789., ") == std::string::npos) {  // the unit stands once, at the end
        const auto unit = second_side.find_first_not_of("0123456789., ");
        first_side += unit == std::string::npos ? "" : second_side.substr(unit);
    }
    return in_range(parse<Length>(first_side)) * wide;
}

DryRequest dry_request(const Arguments& arguments) {
    if (!arguments.has("--tub"))
        throw UsageError("no-tub", "how large is the open tub?",
                         "say it with --tub 40x30cm, or --tub 35cm for a round one");
    if (!arguments.has("--hours")) throw UsageError("no-hours", "how long does it stand?", "say it with --hours 5");
    DryRequest request;
    request.feel = arguments.value("--feel");
    request.covered = arguments.has("--covered");
    request.in_sun = arguments.has("--sun");
    read_flag(arguments, "--tub", [&](const std::string& text) { request.face = read_tub(text); });
    read_flag(arguments, "--hours", [&](const std::string& text) { request.hours = read_hours(text); });
    read_flag(arguments, "--dry-mass",
              [&](const std::string& text) { request.dry_mass = in_range(parse<Mass>(text)); });
    read_flag(arguments, "--air-temp",
              [&](const std::string& text) { request.air = read_temperature(arguments, text); });
    read_flag(arguments, "--humidity", [&](const std::string& text) { request.humidity = parse<Ratio>(text); });
    read_flag(arguments, "--wind", [&](const std::string& text) { request.wind = parse<Speed>(text); });
    return request;
}

}  // namespace baitwright
