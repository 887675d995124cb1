#include "questions/drop_question.h"

#include <array>
#include <vector>

#include "quantities/suggestion.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

DropForm read_form(const std::string& flag, const std::string& text) {
    if (flag == "--ball") return DroppedBall{in_range(parse_ball_size(text))};
    const Volume volume = in_range(parse_vessel_size(text));
    if (flag == "--feeder") return DroppedFeeder{volume};
    if (flag == "--loose") return DroppedLoose{volume};
    return DroppedCup{volume};
}

constexpr std::array<const char*, 4> form_flags{"--cup", "--ball", "--feeder", "--loose"};

/// The ways in that were told; several are a slip where they are not compared.
std::vector<DropForm> forms_told(const Arguments& arguments) {
    const bool compared = arguments.value("--compare").value_or("") == "forms";
    std::vector<DropForm> forms;
    std::string chosen;
    for (const char* flag : form_flags) {
        if (!arguments.has(flag)) continue;
        if (!compared && !chosen.empty())
            throw UsageError("two-forms", "two ways in were given: " + chosen + " and " + flag,
                             "give one of them, or all side by side: --compare forms");
        chosen = flag;
        forms.push_back(flag_value(chosen, [&] { return read_form(chosen, *arguments.value(chosen)); }));
    }
    return forms;
}

WaterKind read_kind(const std::string& text) {
    const std::string folded = folded_name(text);
    for (std::size_t i = 0; i < water_kind_names.size(); ++i)
        if (water_kind_names[i] == folded) return static_cast<WaterKind>(i);
    throw InputError("unknown-water", "'" + text + "' is no kind of water", "it can be still or river");
}

/// What tells of another form than the one that is asked for: a slip, not to be taken for sense.
void refuse_unfit_flags(const Arguments& arguments, const DropRequest& request) {
    const bool ball = std::holds_alternative<DroppedBall>(request.form);
    const bool cup = std::holds_alternative<DroppedCup>(request.form);
    const bool any_form = arguments.has("--want") || arguments.value("--compare").value_or("") == "forms";
    const auto only_of = [&](bool fits, std::initializer_list<const char*> flags, const char* what, const char* hint) {
        for (const char* flag : flags)
            if (!fits && !any_form && arguments.has(flag))
                throw UsageError("unfit-flag", std::string(flag) + what, hint);
    };
    only_of(ball, {"--thrown", "--squeeze"}, " goes with a ball", "leave it out, or drop a ball: --ball 55mm");
    only_of(!std::holds_alternative<DroppedLoose>(request.form), {"--hold"},
            " is the bucket test of a ball, a cup or a feeder", "leave it out, or drop a ball: --ball 55mm");
    if (cup && !any_form && request.own.holds && request.own.breaks_at)
        throw UsageError("two-looks", "--hold and --breaks-at both tell when a cupful breaks",
                         "give one of them: how deep it broke says more");
    only_of(cup, {"--breaks-at", "--cup-weighs"}, " tells of a cupful", "leave it out, or drop a cup: --cup 250ml");
    const std::string by = arguments.value("--compare").value_or("");
    const bool several_cups = by == "sizes" || (by == "forms" && !arguments.has("--cup")) || arguments.has("--want");
    if (several_cups && arguments.has("--cup-weighs"))
        throw UsageError("unfit-flag", "--cup-weighs is of one cup, and cups of several sizes are held side by side",
                         "leave it out, or drop that cup alone: --cup 250ml");
    if (arguments.has("--full") && (arguments.has("--compare") || arguments.has("--want")))
        throw UsageError("unfit-flag", "--full tells all of one feed, and several were asked for",
                         "leave it out, or drop one feed: --cup 250ml");
    if (request.own.breaks_at.value_or(Length{}) > request.depth)
        throw UsageError("out-of-range", "--breaks-at is deeper than the water",
                         "give how deep it broke, at most the depth: --depth 2.5m --breaks-at 0.8m");
}

/// "carpet=1.2m", "breaks=0.6m".
DropWish read_wish(const std::string& text) {
    const auto equals = text.find('=');
    const std::string what = text.substr(0, equals);
    if (equals == std::string::npos || (what != "carpet" && what != "breaks"))
        throw InputError("unknown-wish", "'" + text + "' cannot be searched for",
                         "write it as in --want carpet=1.2m or --want breaks=0.6m");
    return {what == "carpet" ? DropWish::Of::carpet : DropWish::Of::breaks,
            in_range(parse<Length>(text.substr(equals + 1)))};
}

}  // namespace

Squeeze read_squeeze(const std::string& text) {
    if (const auto squeeze = find_squeeze(text)) return *squeeze;
    throw InputError("unknown-squeeze", "'" + text + "' is not a way to squeeze", "it can be light, firm or hard");
}

void read_own_look(const Arguments& arguments, OwnLook& own) {
    read_flag(arguments, "--hold", [&](const std::string& text) { own.holds = in_range(parse<Time>(text)); });
    read_flag(arguments, "--breaks-at",
              [&](const std::string& text) { own.breaks_at = in_range(parse<Length>(text)); });
    read_flag(arguments, "--carpet-seen", [&](const std::string& text) { own.carpet = in_range(parse<Length>(text)); });
    read_flag(arguments, "--cup-weighs",
              [&](const std::string& text) { own.cup_weighs = in_range(parse<Mass>(text)); });
}

DropRequest drop_request(const Arguments& arguments) {
    if (!arguments.has("--depth")) throw UsageError("no-depth", "how deep is the water?", "say it with --depth 2.5m");
    DropRequest request;
    request.told_forms = forms_told(arguments);
    if (!request.told_forms.empty()) request.form = request.told_forms.front();
    request.feel = arguments.value("--feel");
    request.thrown = arguments.has("--thrown");
    read_flag(arguments, "--depth", [&](const std::string& text) { request.depth = in_range(parse<Length>(text)); });
    read_flag(arguments, "--tow", [&](const std::string& text) { request.tow = parse<Speed>(text); });
    read_flag(arguments, "--tow-bottom", [&](const std::string& text) { request.tow_bottom = parse<Speed>(text); });
    read_flag(arguments, "--water", [&](const std::string& text) { request.kind = read_kind(text); });
    read_flag(arguments, "--squeeze", [&](const std::string& text) { request.squeeze = read_squeeze(text); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { request.water = read_temperature(arguments, text); });
    request.hook = arguments.value("--hook");
    read_own_look(arguments, request.own);
    refuse_unfit_flags(arguments, request);
    return request;
}

std::optional<DropComparison> drop_comparison(const Arguments& arguments) {
    const auto by = arguments.value("--compare");
    if (!by) return std::nullopt;
    if (arguments.has("--want"))
        throw UsageError("two-questions", "--compare and --want were both given", "give one of them");
    if (*by == "feels") return DropComparison::feels;
    if (*by == "sizes") return DropComparison::sizes;
    if (*by == "forms") return DropComparison::forms;
    throw UsageError("unknown-comparison", "'" + *by + "' cannot be compared", "--compare feels, sizes or forms");
}

std::optional<DropWish> drop_wish(const Arguments& arguments) {
    std::optional<DropWish> wish;
    read_flag(arguments, "--want", [&](const std::string& text) { wish = read_wish(text); });
    return wish;
}

}  // namespace baitwright
