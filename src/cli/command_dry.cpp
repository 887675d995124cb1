#include "cli/command_dry.h"

#include <numbers>

#include "answers/dry_out.h"
#include "questions/read_flags.h"
#include "report/dry_report.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

/// "40x30cm", "40cm x 30cm", or "35cm" across for a round one.
Area read_tub(const std::string& text) {
    const auto cross = text.find('x');
    if (cross == std::string::npos) {
        const Length across = in_range(parse<Length>(text));
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

/// "5", as people say hours, or with a unit: "90min".
Time read_hours(const std::string& text) {
    try {
        return parse<Time>(text);
    } catch (const InputError& error) {
        if (error.faults().front().code != "no-unit") throw;
        return parse_number(text) * hour;
    }
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
    read_flag(arguments, "--air-temp", [&](const std::string& text) { request.air = parse<Temperature>(text); });
    read_flag(arguments, "--humidity", [&](const std::string& text) { request.humidity = parse<Ratio>(text); });
    read_flag(arguments, "--wind", [&](const std::string& text) { request.wind = parse<Speed>(text); });
    return request;
}

CommandResult run_dry(const Arguments& arguments, const Surroundings& around) {
    const DryRequest request = dry_request(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const NamedRecipe named = recipe_argument(arguments.words().front(), *shelf);
    const DryAnswer answer = with_places(named, [&] { return dry_out(named.shelf(), named.recipe, request); });
    return {arguments.has("--json") ? json_text(dry_json(answer)) : dry_text(answer), 0};
}

}  // namespace

CommandSpec command_dry() {
    return {"dry",
            "how an open tub dries out: water lost, when it leaves its feel, what to spray back",
            {{"RECIPE", "the mix in the tub: its name, a TOML file, or - for standard input"}},
            {{"--tub", "SIZE", "its open face: 40x30cm, or 35cm across for a round one"},
             {"--hours", "TIME", "how long it stands: 5, 90min"},
             {"--dry-mass", "MASS", "the dry mix in it (default 1kg)"},
             {"--feel", "FEEL", "how wet it starts (default: the mix's own feel)"},
             {"--air-temp", "TEMPERATURE", "of the air (default 18degC)"},
             {"--humidity", "SHARE", "of the air (default 60%)"},
             {"--wind", "SPEED", "over the tub (default 2m/s)"},
             {"--covered", "", "it has a lid on"},
             {"--sun", "", "it stands in the sun"}},
            run_dry,
            "baitwright dry \"silt bed\" --tub 40x30cm --hours 5 --air-temp 24degC"};
}

}  // namespace baitwright
