#include "questions/mix_question.h"

#include <fmt/format.h>

#include "answers/plan/plan_request.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
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

/// The cups and pots of the person's usual kit, or its feeders.
std::vector<KitItem> usual_vessels(const Arguments& arguments, bool feeders) {
    std::vector<KitItem> found;
    for (const std::string& text : arguments.usual_values("kit")) {
        KitItem item = parse_kit(text);
        const bool cup = item.kind == KitItem::Kind::cup || item.kind == KitItem::Kind::pot;
        if (feeders ? item.kind == KitItem::Kind::feeder : cup) found.push_back(std::move(item));
    }
    return found;
}

[[noreturn]] void ask_for_size(const std::string& count, const char* flag, const std::string& called,
                               const std::string& usual_ones, const char* size) {
    const std::string which = usual_ones.empty() ? "" : "the usual ones are " + usual_ones + "; ";
    throw InputError("no-size", fmt::format("how large is a {}?", called),
                     fmt::format("{}type {} {}x{}", which, flag, trimmed(count), size));
}

/// "4" of the one cup, pot or feeder that the person always uses.
Vessels vessels_alone(const std::string& count, const std::string& called, const Arguments& arguments) {
    const bool feeders = called == "feeder";
    const int number = parse_count(count);
    const std::vector<KitItem> usual = usual_vessels(arguments, feeders);
    if (usual.size() == 1) arguments.heed_usual(feeders ? "the size of --feeders" : "the size of --cups", "kit");
    if (usual.size() == 1) return {number, usual.front().size, called};
    std::string names;
    for (const KitItem& item : usual) names += (names.empty() ? "" : ", ") + item.name;
    if (names.empty() && !feeders) names = vessel_size_names();
    ask_for_size(count, feeders ? "--feeders" : "--cups", called, names, feeders ? "30ml" : "250ml");
}

Vessels vessels(const std::string& text, std::string called, const Arguments& arguments) {
    if (is_bare_number(text)) return vessels_alone(text, called, arguments);
    const CountedSize counted = parse_counted_size(text);
    return {counted.count, in_range(parse_vessel_size(counted.size)), std::move(called)};
}

Balls balls(const std::string& text) {
    if (is_bare_number(text)) {
        parse_count(text);
        ask_for_size(text, "--balls", "ball", ball_size_names(), "55mm");
    }
    const CountedSize counted = parse_counted_size(text);
    return {counted.count, in_range(parse_ball_size(counted.size))};
}

MixTarget read_target(const std::string& flag, const Arguments& arguments) {
    const std::string text = arguments.value(flag).value_or("");
    if (flag == "--wet-volume") return WetVolume{in_range(parse_vessel_size(text))};
    if (flag == "--wet-mass") return WetMass{in_range(parse<Mass>(text))};
    if (flag == "--dry-mass") return DryMass{in_range(parse<Mass>(text))};
    if (flag == "--cups") return vessels(text, "cup", arguments);
    if (flag == "--feeders") return vessels(text, "feeder", arguments);
    if (flag == "--have") return on_hand(arguments.values(flag));
    return balls(text);
}

MixTarget target(const Arguments& arguments) {
    std::string chosen;
    for (const char* flag :
         {"--wet-volume", "--wet-mass", "--dry-mass", "--cups", "--balls", "--feeders", "--have", "--from-stock"}) {
        if (!arguments.has(flag)) continue;
        if (!chosen.empty())
            throw UsageError("two-targets", "two targets were given: " + chosen + " and " + flag, "give one of them");
        chosen = flag;
    }
    if (chosen.empty()) return AsWritten{};
    if (chosen == "--from-stock") return OnHand{};  // the command looks into the shed
    return flag_value(chosen, [&] { return read_target(chosen, arguments); });
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
