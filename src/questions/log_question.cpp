#include "questions/log_question.h"

#include <array>
#include <cmath>

#include "bait/log_limits.h"
#include "bait/strategy.h"
#include "quantities/amount_range.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "quantities/units.h"
#include "questions/drop_question.h"
#include "questions/read_flags.h"

namespace baitwright {

namespace {

/// The flag that a key of session notes is told by; where its word would do, the same.
std::string flag_of_key(const std::string& key) {
    constexpr std::array<std::pair<const char*, const char*>, 6> others{{{"under_water", "--minutes"},
                                                                         {"length", "--hours"},
                                                                         {"anglers", "--people"},
                                                                         {"water_temperature", "--water-temp"},
                                                                         {"part", "--moisture"},
                                                                         {"cup", "--cup"}}};
    for (const auto& [other, flag] : others)
        if (key == other) return flag;
    std::string flag = "--" + key;
    for (char& letter : flag)
        if (letter == '_') letter = '-';
    return flag;
}

template <class Thing>
Thing checked_for_log(Thing thing) {
    std::vector<Fault> faults = log_faults(thing);
    for (Fault& fault : faults) {
        fault.message = flag_of_key(fault.subject) + ": " + fault.message;
        fault.subject.clear();
    }
    if (!faults.empty()) throw Error(FaultClass::usage, std::move(faults));
    return thing;
}

void require_flag(const Arguments& arguments, const char* flag, const char* asks, const char* example) {
    if (!arguments.has(flag)) throw UsageError("missing-flag", asks, std::string("say it with ") + example);
}

/// Measured or weighed: a millilitre is a gram.
Mass read_water_poured(const std::string& text) {
    const MassOrVolume amount = read_amount(text);
    if (const auto* volume = std::get_if<Volume>(&amount)) return volume->in(millilitre)*gram;
    return std::get<Mass>(amount);
}

/// A bare number is so many minutes.
Time minutes_under_water(const std::string& text) {
    return in_range(is_bare_number(text) ? parse_number(text) * minute : parse<Time>(text));
}

int read_fish_count(const std::string& text) {
    const double number = parse_number(text);
    if (!(number >= 0 && number <= 100000) || number != std::floor(number))
        throw InputError("out-of-range", in_quotes(text) + " is not a whole number of fish from 0 to 100000",
                         "for example 12");
    return static_cast<int>(number);
}

std::variant<Volume, Length> read_form_seen(const Arguments& arguments) {
    const bool cup = arguments.has("--cup"), ball = arguments.has("--ball");
    if (cup == ball)
        throw UsageError(cup ? "two-forms" : "no-form",
                         cup ? "--cup and --ball were both given" : "was it a cup or a ball?",
                         "give one of them: --cup 250ml or --ball 55mm");
    if (ball) return flag_value("--ball", [&] { return in_range(parse_ball_size(*arguments.value("--ball"))); });
    return flag_value("--cup", [&] { return in_range(parse_vessel_size(*arguments.value("--cup"))); });
}

/// "12 9.5kg", "12", "9.5kg".
void read_catch_amounts(const std::string& text, LoggedCatch& caught) {
    std::string_view rest = text;
    if (is_bare_number(text)) {
        caught.count = read_fish_count(text);
        return;
    }
    const auto blank = text.find(' ');
    const std::string first = text.substr(0, blank);
    if (blank != std::string::npos && is_bare_number(first) && !measured_in(text)) {
        caught.count = read_fish_count(first);
        rest.remove_prefix(blank + 1);
    }
    caught.mass = in_range(parse<Mass>(rest));
}

LoggedCatch read_caught(const std::string& text) {
    LoggedCatch caught;
    const auto [fish, amounts] =
        parted_at_equals(text, "how many, or what they weighed", "--caught \"bream=12 9.5kg\"");
    caught.fish = fish;
    read_catch_amounts(amounts, caught);
    return caught;
}

std::string read_clarity(const std::string& text) {
    for (const std::string_view word : clarity_names)
        if (word == text) return text;
    throw InputError("unknown-word", "it cannot be " + in_quotes(text), "it can be clear, tinged or coloured");
}

LoggedSession session_told(const Arguments& arguments, const std::string& strategy) {
    LoggedSession session;
    session.strategy = strategy;
    session.venue = arguments.value("--venue").value_or("");
    session.note = arguments.value("--note").value_or("");
    read_flag(arguments, "--start", [&](const std::string& text) { session.start = clock_text(parse_clock(text)); });
    read_flag(arguments, "--hours", [&](const std::string& text) { session.length = in_range(read_hours(text)); });
    read_flag(arguments, "--people",
              [&](const std::string& text) { session.anglers = read_count(text, "for example --people 2"); });
    read_flag(arguments, "--clarity", [&](const std::string& text) { session.clarity = read_clarity(text); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { session.water = read_temperature(arguments, text); });
    read_flag(arguments, "--cost", [&](const std::string& text) { session.cost = read_money(text, arguments); });
    return checked_for_log(session);
}

}  // namespace

MixToLog mix_to_log(const Arguments& arguments) {
    require_flag(arguments, "--dry", "how much dry mix was it?", "--dry 1kg");
    require_flag(arguments, "--water", "how much water went in?", "--water 680ml");
    MixToLog logged;
    LoggedMix& mix = logged.mix;
    mix.of = arguments.words().front();
    mix.feel = arguments.value("--feel").value_or("");
    read_flag(arguments, "--wetness", [&](const std::string& text) { mix.wetness = parse_number(text); });
    read_flag(arguments, "--dry", [&](const std::string& text) { mix.dry = in_range(parse<Mass>(text)); });
    read_flag(arguments, "--water", [&](const std::string& text) { mix.water = read_water_poured(text); });
    for (const std::string& text : arguments.values("--moisture"))
        flag_value("--moisture", [&] {
            const auto [name, share] = parted_at_equals(text, "how damp", "--moisture \"brown crumb=9%\"");
            logged.moistures.emplace_back(name, parse<Ratio>(share));
        });
    for (const auto& bag : logged.moistures) {
        LoggedMix damp;
        damp.parts.push_back({bag.first, Mass{}, bag.second});
        checked_for_log(damp);
    }
    mix = checked_for_log(mix);
    return logged;
}

void require_feel(const LoggedMix& mix) {
    if (mix.feel.empty() && !mix.wetness)
        throw UsageError("missing-flag", "how did it feel?", "say it with --feel firm; see: baitwright help feels");
}

LoggedSoak soak_to_log(const Arguments& arguments) {
    require_flag(arguments, "--dry", "what did they weigh dry?", "--dry 100g");
    require_flag(arguments, "--minutes", "how long were they under water?", "--minutes 6");
    require_flag(arguments, "--drained", "what did they weigh drained?", "--drained 138g");
    LoggedSoak soak;
    soak.of = arguments.words().front();
    read_flag(arguments, "--dry", [&](const std::string& text) { soak.dry = in_range(parse<Mass>(text)); });
    read_flag(arguments, "--drained", [&](const std::string& text) { soak.drained = in_range(parse<Mass>(text)); });
    read_flag(arguments, "--minutes", [&](const std::string& text) { soak.under_water = minutes_under_water(text); });
    read_flag(arguments, "--water-temp",
              [&](const std::string& text) { soak.water = read_temperature(arguments, text); });
    return checked_for_log(soak);
}

LoggedWeight weight_to_log(const Arguments& arguments) {
    require_flag(arguments, "--vessel", "what does the vessel hold?", "--vessel 1l");
    require_flag(arguments, "--weighs", "what does it weigh, level full?", "--weighs 420g");
    LoggedWeight weight;
    weight.of = arguments.words().front();
    weight.feel = arguments.value("--feel").value_or("");
    read_flag(arguments, "--vessel",
              [&](const std::string& text) { weight.vessel = in_range(parse_vessel_size(text)); });
    read_flag(arguments, "--weighs", [&](const std::string& text) { weight.mass = in_range(parse<Mass>(text)); });
    return checked_for_log(weight);
}

LoggedLook look_to_log(const Arguments& arguments) {
    OwnLook own;
    read_own_look(arguments, own);
    if (!own.holds && !own.breaks_at && !own.carpet)
        throw UsageError("missing-flag", "what was seen of it?",
                         "say at least one of --hold 40s, --breaks-at 0.6m, --carpet-seen 1.1m");
    LoggedLook look;
    look.of = arguments.words().front();
    look.feel = arguments.value("--feel").value_or("");
    look.form = read_form_seen(arguments);
    if (arguments.has("--squeeze") && !arguments.has("--ball"))
        throw UsageError("unfit-flag", "--squeeze goes with a ball", "leave it out, or say the ball: --ball 55mm");
    read_flag(arguments, "--squeeze", [&](const std::string& text) { look.squeeze = read_squeeze(text); });
    read_flag(arguments, "--depth", [&](const std::string& text) { look.depth = in_range(parse<Length>(text)); });
    look.holds = own.holds;
    look.breaks_at = own.breaks_at;
    look.carpet = own.carpet;
    return checked_for_log(look);
}

PlannedSession planned_to_log(const Arguments& arguments, const std::string& strategy) {
    PlannedSession planned;
    planned.session = session_told(arguments, strategy);
    for (const std::string& text : arguments.values("--caught"))
        planned.caught.push_back(flag_value("--caught", [&] { return read_caught(text); }));
    for (const std::string& text : arguments.values("--water"))
        flag_value("--water", [&] {
            const auto [name, amount] = parted_at_equals(text, "how much", "--water \"silt bed=720ml\"");
            planned.water.emplace_back(name, read_water_poured(amount));
        });
    for (const std::string& text : arguments.values("--feel"))
        planned.feels.push_back(
            flag_value("--feel", [&] { return parted_at_equals(text, "how it felt", "--feel \"silt bed=soft\""); }));
    return planned;
}

CatchToLog catch_to_log(const Arguments& arguments) {
    CatchToLog logged;
    if (!arguments.has("--count") && !arguments.has("--mass"))
        throw UsageError("missing-flag", "how many were they, or what did they weigh?",
                         "say it with --count 12, --mass 9.5kg or both; nothing caught is: baitwright log blank");
    logged.session = session_told(arguments, arguments.value("--strategy").value_or(""));
    logged.caught.fish = arguments.value("--fish").value_or("");
    read_flag(arguments, "--count", [&](const std::string& text) { logged.caught.count = read_fish_count(text); });
    read_flag(arguments, "--mass", [&](const std::string& text) { logged.caught.mass = in_range(parse<Mass>(text)); });
    return logged;
}

std::int64_t read_log_number(const std::string& text) {
    return flag_value("NUMBER", [&] {
        const double number = parse_number(text);
        if (!(number >= 1 && number <= 9e15) || number != std::floor(number))
            throw InputError("out-of-range", in_quotes(text) + " is not the number of an entry",
                             "see them with: baitwright log list");
        return static_cast<std::int64_t>(number);
    });
}

}  // namespace baitwright
