#include "cli/commands.h"

#include <algorithm>

#include "answers/shared/check_temperature.h"
#include "bait/usual_keys.h"
#include "cli/read_stock.h"
#include "cli/result_formats.h"
#include "library/own_entries.h"
#include "quantities/in_quotes.h"
#include "quantities/money.h"
#include "quantities/suggestion.h"
#include "quantities/unit_table.h"
#include "questions/dry_question.h"
#include "questions/plan_question.h"
#include "questions/read_flags.h"
#include "report/usual_report.h"

namespace baitwright {

namespace {

std::string one_of_units(const std::string& text) {
    const std::vector<std::string> systems{"metric", "imperial", "both"};
    std::string folded = folded_name(text);
    if (std::find(systems.begin(), systems.end(), folded) != systems.end()) return folded;
    const std::string hint = did_you_mean(text, systems);
    throw InputError("unknown-word", in_quotes(text) + " is none of the units to show",
                     hint.empty() ? "they are metric, imperial or both" : hint);
}

std::string currency_code(std::string text) {
    for (char& letter : text)
        if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    return std::string(currency_named(text).code);
}

/// "80 ml" of "80mls", "0.5 pt" of "half a pint": in the unit that was said, as it is written everywhere.
std::string plain_volume(const std::string& text) {
    const Volume volume = in_range(parse<Volume>(text));
    const UnitRow* unit = unit_used(text);
    if (!unit) return exact_text(volume, millilitre, "ml");
    const double number = volume.si() / unit->in_si;
    return number_text_within(number, 1e-9 * number) + " " + std::string(unit->symbol);
}

/// Reads the value as the flags that it stands in for do, and returns it as it is kept.
std::string checked_value(const std::string& key, const std::string& text, const Arguments& arguments,
                          const Store& store) {
    if (key == "pump" || key == "vessel") return plain_volume(text);
    if (key == "tub") static_cast<void>(read_tub(text));
    if (key == "kit") static_cast<void>(parse_kit(text));
    if (key == "water-temp") {
        const Temperature warmth = read_temperature(arguments, text);
        check_water_temperature(warmth);
        return is_bare_number(text) ? exact_text(warmth) : text;
    }
    if (key == "travel") static_cast<void>(read_travel(text));
    if (key == "hands") return std::to_string(read_hands(text));
    if (key == "people") return std::to_string(read_count(text, "for example --people 2"));
    if (key == "price-pack") static_cast<void>(read_amount(text));
    if (key == "venue") return known_name(store, EntryKind::venue, text);
    if (key == "shop") return shop_of(arguments, store);
    if (key == "currency") return currency_code(text);
    if (key == "units") return one_of_units(text);
    return text;
}

std::vector<std::string> keys() {
    std::vector<std::string> names;
    names.reserve(usual_keys.size());
    for (const UsualKey& key : usual_keys) names.emplace_back(key.key);
    return names;
}

std::string forgotten(const std::string& text) {
    std::string name = folded_name(text);
    name.erase(0, name.find_first_not_of('-') == std::string::npos ? 0 : name.find_first_not_of('-'));
    const std::vector<std::string> all = keys();
    if (std::find(all.begin(), all.end(), name) != all.end()) return name;
    const std::string hint = did_you_mean(name, all);
    std::string list;
    for (const std::string& key : all) list += (list.empty() ? "they are " : ", ") + key;
    throw InputError("unknown-word", in_quotes(text) + " is nothing that can be usual", hint.empty() ? list : hint);
}

/// What was typed, read and ready to be kept: by its key, nothing for what is to be forgotten.
Usual told_usual(const Arguments& arguments, const Store& store) {
    Usual told;
    for (const std::string& text : arguments.values("--forget"))
        told[flag_value("--forget", [&] { return forgotten(text); })] = {};
    for (const UsualKey& usual : usual_keys) {
        const std::string key(usual.key), flag = "--" + key;
        for (const std::string& text : arguments.values(flag)) {
            if (told.count(key) > 0 && told[key].empty())
                throw UsageError("two-wishes", key + " is to be kept and forgotten at once", "say one of the two");
            told[key].push_back(flag_value(flag, [&] { return checked_value(key, text, arguments, store); }));
        }
    }
    return told;
}

bool tells_usual(const Arguments& arguments) {
    for (const UsualKey& key : usual_keys)
        if (arguments.has("--" + std::string(key.key))) return true;
    return arguments.has("--forget") || arguments.has("--new-shop");
}

CommandResult run_usual(const Arguments& arguments, const Surroundings& around) {
    Store store = store_of(around);
    if (tells_usual(arguments))
        store.change([&] {
            for (const auto& [key, values] : told_usual(arguments, store)) store.put_usual(key, values);
        });
    return given(arguments, usual_reply(store.usual()));
}

}  // namespace

CommandSpec command_usual() {
    return {"usual",
            "what you always use: told once, it is used in every answer",
            {},
            {{"--pump", "VOLUME", "what a stroke of your pump draws: 80ml"},
             {"--vessel", "VOLUME", "the pump's whole vessel: 1l"},
             {"--tub", "SIZE", "the open face of your tub: 40x30cm, or 35cm across"},
             {"--kit", "ITEM", R"(what you have: "cup 250", "pot 25", "feeder 30", "tub 12 l"; may be repeated)", true},
             {"--venue", "VENUE", "the water whose rules count: its name in the library"},
             {"--water-temp", "TEMPERATURE", "of the water you pour on and fish in: 12degC"},
             {"--shop", "SHOP", "where you buy"},
             {"--new-shop", "", "this shop is new: no price from it yet"},
             {"--people", "NUMBER", "how many of you feed"},
             {"--travel", "TIME", "the way to the water: 40min"},
             {"--hands", "NUMBER", "how many pairs of hands prepare the bait, 1 to 10"},
             {"--currency", "CODE", "of a price without one: GBP, EUR"},
             {"--units", "WORD", "metric, imperial or both: what the answers show"},
             {"--price-pack", "SIZE", "the pack that a price is of, where you do not say it: 1kg"},
             {"--forget", "WHAT", "no longer usual: pump, vessel, ...; may be repeated", true}},
            run_usual,
            R"(baitwright usual --pump 80ml --vessel 1l --venue "long pit"
baitwright usual --kit "cup 250" --kit "pot 25" --forget pump)",
            Effect::stores};
}

}  // namespace baitwright
