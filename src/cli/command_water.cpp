#include "cli/command_water.h"

#include "answers/right_a_mix.h"
#include "cli/read_flags.h"
#include "report/tub_report.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

/// "--minutes 5" as people say it, or with a unit: "1h".
Time read_minutes(const std::string& text) {
    try {
        return parse<Time>(text);
    } catch (const InputError& error) {
        if (error.faults().front().code != "no-unit") throw;
        return parse_number(text) * minute;
    }
}

TubRequest tub_request(const Arguments& arguments) {
    TubRequest request;
    if (!arguments.has("--dry-mass"))
        throw UsageError("no-dry-mass", "how much dry mix is in the tub?", "say it with --dry-mass 1kg");
    if (arguments.has("--added") == arguments.has("--weighs"))
        throw UsageError("no-water", arguments.has("--added") ? "the water is told twice" : "how much water is in the tub?",
                         "give one of --added 700ml (poured in) and --weighs 1.6kg (what it all weighs now)");
    read_flag(arguments, "--dry-mass", [&](const std::string& text) { request.dry_mass = above_zero(parse<Mass>(text)); });
    read_flag(arguments, "--added", [&](const std::string& text) { request.water = WaterPoured{parse<Volume>(text)}; });
    read_flag(arguments, "--weighs", [&](const std::string& text) { request.water = TubWeighs{above_zero(parse<Mass>(text))}; });
    read_flag(arguments, "--minutes", [&](const std::string& text) { request.since = read_minutes(text); });
    read_flag(arguments, "--water-temp", [&](const std::string& text) { request.water_temperature = parse<Temperature>(text); });
    request.feel = arguments.value("--feel");
    return request;
}

CommandResult run(const Arguments& arguments, const Surroundings& around) {
    const TubRequest request = tub_request(arguments);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const NamedRecipe named = recipe_argument(arguments.words().front(), *shelf);
    const TubAnswer answer = with_places(named, [&] { return right_a_mix(named.shelf(), named.recipe, request); });
    return {arguments.has("--json") ? json_text(tub_json(answer)) : tub_text(answer), 0};
}

}  // namespace

CommandSpec command_water() {
    return {"water", "put a tub right: how wet it is now and settled, and what to add",
            {{"RECIPE", "the mix in the tub: its name, a TOML file, or - for standard input"}},
            {{"--dry-mass", "MASS", "the dry mix that went into the tub: 1kg"},
             {"--added", "VOLUME", "the water poured in so far: 700ml"},
             {"--weighs", "MASS", "in its place, what the wet mix weighs now, without the tub; also after drying out"},
             {"--minutes", "TIME", "since the water went in: 2, 20min; settled where not given"},
             {"--feel", "FEEL", "how wet you want it; the mix's own feel where not given"},
             {"--water-temp", "TEMPERATURE", "of the water poured in: 8degC"}},
            run, "baitwright water \"silt bed\" --dry-mass 1kg --added 820ml --minutes 5"};
}

}  // namespace baitwright
