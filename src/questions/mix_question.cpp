#include "questions/mix_question.h"

#include <algorithm>

#include "quantities/suggestion.h"
#include "questions/mix_targets.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

OnHand on_hand(const std::vector<std::string>& items) {
    OnHand on_hand;
    for (const std::string& item : items) {
        const auto equals = item.rfind('=');
        if (equals == std::string::npos || equals == 0)
            throw InputError("no-amount", "'" + item + "' does not say how much there is",
                             "write it as in --have \"brown crumb=400g\"");
        on_hand.items.push_back({item.substr(0, equals), read_amount(item.substr(equals + 1))});
    }
    return on_hand;
}

ForOnce::Extra read_extra(const std::string& text) {
    const auto [name, amount] = parted_at_equals(text, "how much of it goes in", "--with \"cooked hemp=200 g\"");
    return {name, read_amount(amount)};
}

MixTarget read_target(const std::string& flag, const Arguments& arguments) {
    const std::string text = arguments.value(flag).value_or("");
    if (flag == "--wet-volume") return WetVolume{in_range(parse_vessel_size(text))};
    if (flag == "--wet-mass") return WetMass{in_range(parse<Mass>(text))};
    if (flag == "--dry-mass") return DryMass{in_range(parse<Mass>(text))};
    return on_hand(arguments.values(flag));
}

bool is_portion_flag(const std::string& flag) {
    return std::find(portion_flags.begin(), portion_flags.end(), flag) != portion_flags.end();
}

/// What the mix is to come to, but for cups, balls and feeders.
MixTarget target(const Arguments& arguments) {
    std::string chosen;
    for (const char* flag :
         {"--wet-volume", "--wet-mass", "--dry-mass", "--cups", "--balls", "--feeders", "--have", "--from-stock"}) {
        if (!arguments.has(flag) || (is_portion_flag(flag) && is_portion_flag(chosen))) continue;
        if (!chosen.empty())
            throw UsageError("two-targets", "two targets were given: " + chosen + " and " + flag, "give one of them");
        chosen = flag;
    }
    if (chosen.empty() || is_portion_flag(chosen)) return AsWritten{};
    if (chosen == "--from-stock") return OnHand{};  // the command looks into the shed
    return flag_value(chosen, [&] { return read_target(chosen, arguments); });
}

/// One batch for so many things: one is the target, more are several.
void make_into(std::vector<TargetAtFeel> targets, MixRequest& request) {
    std::visit([&](const auto& of) { request.target = of; }, targets.front().of);
    request.feel = targets.size() == 1 ? targets.front().feel : std::nullopt;
    if (targets.size() > 1) request.several = std::move(targets);
}

MixState read_state(const std::string& text) {
    if (const auto state = find_mix_state(text)) return *state;
    const std::vector<std::string> names(mix_state_names.begin(), mix_state_names.end());
    const std::string hint = did_you_mean(text, names);
    throw InputError("unknown-state", "'" + text + "' is not a state of a mix",
                     hint.empty() ? "it can be riddled, cupped or squeezed" : hint);
}

}  // namespace

MixRequest mix_request(const Arguments& arguments) {
    MixRequest request;
    request.target = target(arguments);
    request.once.without = arguments.values("--without");
    for (const std::string& text : arguments.values("--with"))
        request.once.with.push_back(flag_value("--with", [&] { return read_extra(text); }));
    request.usual_currency = usual_currency(arguments);
    request.feel = arguments.value("--feel");
    if (std::vector<TargetAtFeel> targets = typed_targets(arguments); !targets.empty())
        make_into(std::move(targets), request);
    read_flag(arguments, "--wetness", [&](const std::string& text) { request.wetness = parse_number(text); });
    read_flag(arguments, "--state", [&](const std::string& text) { request.state = read_state(text); });
    read_flag(arguments, "--spare", [&](const std::string& text) { request.spare = parse<Ratio>(text); });
    read_flag(arguments, "--people",
              [&](const std::string& text) { request.people = read_count(text, "for example --people 4"); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { request.water_temperature = read_temperature(arguments, text); });
    read_flag(arguments, "--added",
              [&](const std::string& text) { request.already_added = nothing_or_in_range(parse<Volume>(text)); });
    read_flag(arguments, "--seed", [&](const std::string& text) { request.seed = read_seed(text); });
    return request;
}

}  // namespace baitwright
