#include "cli/command_soak.h"

#include <cmath>

#include "answers/soak_pellets.h"
#include "cli/picture_file.h"
#include "cli/read_flags.h"
#include "cli/result_formats.h"
#include "quantities/clock.h"
#include "report/soak_json.h"
#include "report/soak_plot.h"
#include "report/soak_text.h"
#include "shelf/library.h"

namespace baitwright {

namespace {

/// "2 parts", "1 part", "50 %": shares of the whole.
std::optional<double> read_parts(const std::string& text) {
    for (const char* ending : {"parts", "part", "%"})
        if (text.ends_with(ending)) {
            const double parts = parse_number(text.substr(0, text.size() - std::string(ending).size()));
            if (!(parts > 0 && parts <= 1e6)) throw InputError("out-of-range", "'" + text + "' is no share above zero");
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
        throw InputError("no-amount", "'" + text + "' does not say how much goes in", "write it as in --with \"glycerol=20ml\"");
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
    const auto of = text.find(" of ");
    if (of == std::string::npos)
        throw InputError("no-pellet", "'" + text + "' does not say how much of what", "write it as in --grains-of \"500g of fishmeal micro pellet 2 mm\"");
    return {read_amount(text.substr(0, of)), text.substr(of + 4)};
}

SoakTotal read_total(const Arguments& arguments) {
    SoakTotal total;
    std::string chosen;
    for (const char* flag : {"--amount", "--bites", "--grains-of"}) {
        if (!arguments.has(flag)) continue;
        if (!chosen.empty()) throw UsageError("two-amounts", "two amounts were given: " + chosen + " and " + flag, "give one of them");
        chosen = flag;
    }
    if (arguments.has("--bites") != arguments.has("--length"))
        throw UsageError("half-a-count", "--bites (an hour) and --length go together", "for example --bites 30 --length 5h");
    read_flag(arguments, "--amount", [&](const std::string& text) { std::visit([&](auto amount) { total = amount; }, read_amount(text)); });
    read_flag(arguments, "--grains-of", [&](const std::string& text) { total = read_as_many(text); });
    read_flag(arguments, "--bites", [&](const std::string& text) {
        const double bites = parse_number(text);
        if (!(bites > 0 && bites <= 1000)) throw InputError("out-of-range", "the bites an hour must be above 0 and at most 1000");
        total = BitesPlanned{bites, {}};
    });
    read_flag(arguments, "--length", [&](const std::string& text) {
        const Time length = above_zero(parse<Time>(text));
        if (length > 72.0 * hour) throw InputError("out-of-range", "a session of more than 72 hours is not planned here");
        std::get<BitesPlanned>(total).length = length;
    });
    return total;
}

int read_strokes(const std::string& text) {
    const double strokes = parse_number(text);
    if (!(strokes >= 0 && strokes <= 200) || strokes != std::floor(strokes))
        throw InputError("out-of-range", "'" + text + "' is not a whole number of strokes from 0 to 200");
    return static_cast<int>(strokes);
}

SoakMethod read_method(const std::string& text) {
    if (text == "covered") return SoakMethod::covered;
    if (text == "measured") return SoakMethod::measured;
    throw InputError("unknown-method", "'" + text + "' is no way to soak", "covered: under water, then drained; measured: just the water they are to take");
}

void read_pump(const Arguments& arguments, PumpSetup& pump) {
    read_flag(arguments, "--strokes", [&](const std::string& text) { pump.strokes = read_strokes(text); });
    read_flag(arguments, "--pump", [&](const std::string& text) { pump.stroke = above_zero(parse<Volume>(text)); });
    read_flag(arguments, "--vessel", [&](const std::string& text) { pump.vessel = above_zero(parse<Volume>(text)); });
    read_flag(arguments, "--air", [&](const std::string& text) { pump.air = above_zero(parse<Pressure>(text)); });
}

SoakRequest soak_request(const Arguments& arguments) {
    SoakRequest request;
    for (const std::string& word : arguments.words()) request.items.push_back(read_item(word));
    request.total = read_total(arguments);
    read_flag(arguments, "--spare", [&](const std::string& text) { request.spare = parse<Ratio>(text); });
    read_flag(arguments, "--water-temp", [&](const std::string& text) { request.water = parse<Temperature>(text); });
    read_flag(arguments, "--method", [&](const std::string& text) { request.method = read_method(text); });
    if (arguments.has("--uptake") && arguments.has("--soaked"))
        throw UsageError("two-soaks", "--uptake and --soaked were both given", "give how much they are to take, or how long they were under water");
    read_flag(arguments, "--uptake", [&](const std::string& text) { request.uptake = parse<Ratio>(text); });
    read_flag(arguments, "--soaked", [&](const std::string& text) { request.soaked = above_zero(parse<Time>(text)); });
    for (const std::string& text : arguments.values("--with")) request.in_the_water.push_back(flag_value("--with", [&] { return read_with(text); }));
    read_pump(arguments, request.pump);
    read_flag(arguments, "--cup", [&](const std::string& text) { request.portions.cup = above_zero(parse_vessel_size(text)); });
    read_flag(arguments, "--ball", [&](const std::string& text) { request.portions.ball = above_zero(parse_ball_size(text)); });
    read_flag(arguments, "--carpet", [&](const std::string& text) { request.portions.carpet = above_zero(parse<Length>(text)); });
    return request;
}

/// What goes with expanders alone is refused where there are none, and the other way round.
void refuse_unfit_flags(const Arguments& arguments, const SoakAnswer& answer) {
    const auto refuse = [&](std::initializer_list<const char*> flags, const char* what, const char* hint) {
        for (const char* flag : flags)
            if (arguments.has(flag)) throw UsageError("unfit-flag", std::string(flag) + what, hint);
    };
    if (answer.pumped.empty()) refuse({"--strokes", "--pump", "--vessel", "--air"}, " goes with expanders, which are pumped", "leave it out, or name an expander");
    if (answer.soaked.empty())
        refuse({"--uptake", "--soaked", "--method", "--compare-temps"}, " goes with pellets that soak; expanders are pumped", "leave it out");
}

CommandResult told(const Arguments& arguments, const std::vector<SoakAnswer>& answers, const SoakTelling& telling) {
    CommandResult result;
    for (const Warning& warning : answers.front().warnings)
        if (warning.answer_is_no) result.status = 1;
    const bool compared = arguments.has("--compare-temps");
    if (arguments.has("--json"))
        result.output = json_text(compared ? soak_comparison_json(answers) : soak_json(answers.front()));
    else if (arguments.has("--csv"))
        result.output = csv_of_rows(soak_rows(answers));
    else
        result.output = compared ? soak_comparison_text(answers) : soak_text(answers.front(), telling);
    return result;
}

/// In cold water and warm, and between them the water that was asked about.
std::vector<Temperature> waters_to_compare(const Arguments& arguments, Temperature asked) {
    const Temperature cold = Temperature::from_celsius(5), warm = Temperature::from_celsius(20);
    if (!arguments.has("--water-temp") || asked == cold || asked == warm) return {cold, warm};
    if (asked < cold) return {asked, cold, warm};
    if (asked > warm) return {cold, warm, asked};
    return {cold, asked, warm};
}

CommandResult run(const Arguments& arguments, const Surroundings& around) {
    SoakRequest request = soak_request(arguments);
    check_picture(arguments);
    SoakTelling telling{request.portions, std::nullopt, request.spare, std::nullopt};
    if (const BitesPlanned* bites = std::get_if<BitesPlanned>(&request.total)) telling.bites = *bites;
    read_flag(arguments, "--ready-at", [&](const std::string& text) { telling.ready_at = parse_clock(text); });
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    std::vector<SoakAnswer> answers{soak_pellets(*shelf, request)};
    refuse_unfit_flags(arguments, answers.front());
    if (arguments.has("--plot")) write_picture(arguments, soak_plot(answers.front()));
    if (arguments.has("--compare-temps")) {
        const std::vector<Temperature> waters = waters_to_compare(arguments, request.water);
        answers.clear();
        for (const Temperature water : waters) {
            request.water = water;
            answers.push_back(soak_pellets(*shelf, request));
        }
    }
    return told(arguments, answers, telling);
}

}  // namespace

CommandSpec command_soak() {
    CommandSpec spec{"soak", "soak, stand and pump pellets: how long, how much water, what they come to",
                     {{"PELLET", "its name; or with its own amount or share: \"fishmeal pellet 4 mm=500g\", \"...=1 part\"", true}},
                     {{"--amount", "AMOUNT", "dry, of all together: 2pt, 500g"},
                      {"--grains-of", "AMOUNT", "as many grains as \"500g of fishmeal micro pellet 2 mm\" has"},
                      {"--bites", "NUMBER", "hook pellets by the bites an hour, with --length"},
                      {"--length", "TIME", "of the session: 5h"},
                      {"--spare", "SHARE", "more than asked, to be safe: 10%"},
                      {"--water-temp", "TEMPERATURE", "of the water poured on: 8degC; 15degC where not given"},
                      {"--compare-temps", "", "the times at 5 and 20 degC side by side"},
                      {"--method", "METHOD", "covered (soak and drain) or measured (just the water they take)"},
                      {"--uptake", "SHARE", "of all the water they can take; 40% where not given"},
                      {"--soaked", "TIME", "they were under water so long: how are they?"},
                      {"--ready-at", "CLOCK", "when all is to be ready: 08:30"},
                      {"--with", "NAME=DOSE", "stirred into the water: \"glycerol=20ml\", \"salt=20 g per l water\"", true},
                      {"--strokes", "NUMBER", "of the pump, for expanders; what sinks them where not given"},
                      {"--pump", "VOLUME", "what a stroke draws; 100ml where not given"},
                      {"--vessel", "VOLUME", "the pump's whole vessel; 500ml where not given"},
                      {"--air", "PRESSURE", "of the day; 101.3kPa where not given"},
                      {"--cup", "SIZE", "for counting grains: 250ml, \"toss pot 25\""},
                      {"--ball", "SIZE", "for counting grains: 50mm, egg"},
                      {"--carpet", "LENGTH", "across what one cupful covers; 1m where not given"},
                      {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
                     run, "baitwright soak \"fishmeal pellet 4 mm\" --amount 2pt --water-temp 8degC"};
    for (const Flag& flag : picture_flags()) spec.flags.push_back(flag);
    return spec;
}

}  // namespace baitwright
