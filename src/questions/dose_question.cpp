#include "questions/dose_question.h"

#include "quantities/worded.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// "15ml in 0.5pt of fishmeal micro pellet 2 mm"
AdditiveRequest::Carried read_carried(const std::string& text) {
    const auto in = behind_amount(text, " in ");
    const auto of = behind_amount(text, " of ", in == std::string::npos ? 0 : in + 4);
    if (in == std::string::npos || of == std::string::npos)
        throw InputError("no-earlier-dose", "'" + text + "' does not say what went into how much of what",
                         "write it as in --as \"15ml in 0.5pt of fishmeal micro pellet 2 mm\"");
    return {read_amount(text.substr(0, in)), read_amount(text.substr(in + 4, of - in - 4)), text.substr(of + 4)};
}

}  // namespace

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
            throw UsageError(
                "unfit-flag", std::string(flag) + " goes with an additive, and this is a mix",
                worded("a mix states its own doses: see baitwright recipe show", "a mix states its own doses"));
}

}  // namespace baitwright
