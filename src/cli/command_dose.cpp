#include "cli/command_dose.h"

#include "answers/dose_amounts.h"
#include "cli/mix_flags.h"
#include "cli/result_formats.h"
#include "quantities/suggestion.h"
#include "questions/read_flags.h"
#include "report/dose_report.h"
#include "report/rows.h"
#include "shelf/recipe_argument.h"

namespace baitwright {

namespace {

/// "15ml in 0.5pt of fishmeal micro pellet 2 mm"
AdditiveRequest::Carried read_carried(const std::string& text) {
    const auto in = text.find(" in "), of = text.find(" of ", in == std::string::npos ? 0 : in);
    if (in == std::string::npos || of == std::string::npos)
        throw InputError("no-earlier-dose", "'" + text + "' does not say what went into how much of what",
                         "write it as in --as \"15ml in 0.5pt of fishmeal micro pellet 2 mm\"");
    return {read_amount(text.substr(0, in)), read_amount(text.substr(in + 4, of - in - 4)), text.substr(of + 4)};
}

/// The amount of a mix: --amount is dry mass, or a volume of the wet mix; or one of the targets of `mix`.
MixRequest mix_amount_request(const Arguments& arguments) {
    MixRequest request;
    request.feel = arguments.value("--feel");
    read_flag(arguments, "--amount", [&](const std::string& text) {
        const MassOrVolume amount = read_amount(text);
        if (const Mass* mass = std::get_if<Mass>(&amount))
            request.target = DryMass{*mass};
        else
            request.target = WetVolume{std::get<Volume>(amount)};
    });
    return request;
}

AdditiveRequest additive_request(const Arguments& arguments) {
    AdditiveRequest request;
    request.additive = arguments.words().front();
    if (!arguments.has("--amount"))
        throw UsageError("no-amount", "how much bait is it for?",
                         "say it with --amount 500g, or --amount 2pt --bait \"...\"");
    read_flag(arguments, "--amount", [&](const std::string& text) { request.amount = read_amount(text); });
    read_flag(arguments, "--rate", [&](const std::string& text) { request.rate = parse_dose_rate(text); });
    read_flag(arguments, "--as", [&](const std::string& text) { request.carried = read_carried(text); });
    read_flag(arguments, "--water", [&](const std::string& text) { request.water = in_range(parse<Volume>(text)); });
    request.bait = arguments.value("--bait").value_or("");
    return request;
}

void refuse_additive_flags(const Arguments& arguments) {
    for (const char* flag : {"--rate", "--as", "--bait", "--water"})
        if (arguments.has(flag))
            throw UsageError("unfit-flag", std::string(flag) + " goes with an additive, and this is a mix",
                             "a mix states its own doses: see baitwright recipe show");
}

[[noreturn]] void refuse_unknown(const Shelf& shelf, const std::string& word) {
    std::vector<std::string> names = shelf.ingredient_names();
    for (std::string& name : shelf.recipe_names()) names.push_back(std::move(name));
    const std::string hint = did_you_mean(word, names);
    throw NotFound("unknown-additive", "no additive or mix is called '" + word + "'",
                   hint.empty() ? "see them with: baitwright ingredient list --kind liquid" : hint);
}

CommandResult run_dose(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const std::string& word = arguments.words().front();
    DoseAnswer answer;
    if (!means_a_file(word) && shelf->find_ingredient(word)) {
        answer = dose_additive(*shelf, additive_request(arguments));
    } else {
        if (!means_a_file(word) && !shelf->find_recipe(word)) refuse_unknown(*shelf, word);
        refuse_additive_flags(arguments);
        const MixRequest request = mix_amount_request(arguments);
        const NamedRecipe named = recipe_argument(word, *shelf);
        answer = with_places(named, [&] { return dose_mix(named.shelf(), named.recipe, request); });
    }
    CommandResult result;
    for (const Warning& warning : answer.warnings)
        if (warning.answer_is_no) result.status = 1;
    result.output = arguments.has("--json")  ? json_text(dose_json(answer))
                    : arguments.has("--csv") ? csv_of_rows(dose_rows(answer))
                                             : dose_text(answer);
    return result;
}

}  // namespace

CommandSpec command_dose() {
    return {"dose",
            "how much of an additive: by its rate, its label, or as you dosed another bait",
            {{"WHAT", "a mix, for all its additives; or one additive, for a bait"}},
            {{"--amount", "AMOUNT", "of the bait: 500g, 2pt; of a mix its dry mass, or a volume of it wet"},
             {"--bait", "INGREDIENT", "what the additive goes on; a volume needs it"},
             {"--rate", "RATE", R"("25 ml per kg dry", "2 %" (default: the label's))"},
             {"--as", "DOSE", "as much as on another bait: \"15ml in 0.5pt of fishmeal micro pellet 2 mm\""},
             {"--water", "VOLUME", "what it is stirred into; tells the strength"},
             {"--feel", "FEEL", "of a mix"},
             {"--csv", "", "as CSV for a spreadsheet, unrounded"}},
            run_dose,
            R"(baitwright dose "sweet liquid" --amount 2pt --bait "fishmeal pellet 4 mm" --rate "20 ml per kg dry")"};
}

}  // namespace baitwright
