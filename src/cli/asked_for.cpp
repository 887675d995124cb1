#include "cli/asked_for.h"

#include <algorithm>
#include <array>

#include "answers/drop/drop_request.h"
#include "answers/paid/paid_request.h"
#include "bait/advice_rule.h"
#include "bait/break_up.h"
#include "bait/ingredient.h"
#include "bait/ingredient_facts.h"
#include "bait/mix_state.h"
#include "bait/strategy.h"
#include "bait/usual_keys.h"
#include "quantities/known_codes.h"

namespace baitwright {

namespace {

/// What is asked for by what help calls it: "FEEL"; or of one flag of one command: "usual --units". The first that fits
/// counts.
struct AskedRow {
    std::string_view called;
    AskedFor asked;
};

template <class Names>
AskedFor one_of(const Names& names) {
    AskedFor asked;
    for (const auto& name : names) asked.words.emplace_back(name);
    return asked;
}

AskedFor names_of(std::vector<Choice> choices, std::string_view joint = {}, std::vector<Choice> behind = {}) {
    return {std::move(choices), {}, {}, joint, std::move(behind)};
}

AskedFor number_in(std::vector<Measure> measures) {
    return {{}, {}, std::move(measures)};
}

std::vector<std::string> keys_to_set() {
    std::vector<std::string> keys{"colour=", "note="};
    const Ingredient any;
    visit_properties(any, [&](const auto& facts, const auto&) { keys.push_back(std::string(facts.key) + "="); });
    return keys;
}

std::vector<std::string_view> keys_of_usual() {
    std::vector<std::string_view> keys;
    for (const UsualKey& key : usual_keys) keys.push_back(key.key);
    return keys;
}

using Words = std::vector<std::string_view>;

/// Words of commands, and flags of one command, whose name means something else elsewhere.
std::vector<AskedRow> asked_of_one() {
    const std::vector<Choice> any_bait{Choice::mixes, Choice::ingredients};
    const AskedFor mix_or_one = names_of({Choice::mixes, Choice::library_files, Choice::ingredients_instead});
    return {
        {"mix RECIPE", mix_or_one},
        {"water RECIPE", mix_or_one},
        {"drop RECIPE", mix_or_one},
        {"dry RECIPE", mix_or_one},
        {"log mix RECIPE", names_of(any_bait)},
        {"log drop RECIPE", names_of(any_bait)},
        {"ingredient add NAME", names_of({Choice::library_files})},
        {"ingredient import FILE", names_of({Choice::any_files})},
        {"recipe add FILE", names_of({Choice::library_files})},
        {"strategy add FILE", names_of({Choice::library_files})},
        {"venue add FILE", names_of({Choice::library_files})},
        {"blend add FILE", names_of({Choice::library_files})},
        {"ingredient restore INGREDIENT", names_of({Choice::retired})},
        {"recipe restore RECIPE", names_of({Choice::retired})},
        {"strategy restore STRATEGY", names_of({Choice::retired})},
        {"venue restore VENUE", names_of({Choice::retired})},
        {"blend restore BLEND", names_of({Choice::retired})},
        {"drop --water", one_of(water_kind_names)},
        {"drop --compare", one_of(Words{"feels", "sizes", "forms"})},
        {"paid --by", one_of(Words{paid_by_names.begin() + 1, paid_by_names.end()})},
        {"usual --forget", one_of(keys_of_usual())},
        {"usual --units", one_of(Words{"metric", "imperial", "both"})},
        {"plan --bites", one_of(Words{"steady", "slow", "none"})},
        {"log add --water", names_of({Choice::mixes}, "=")},
        {"log mix --water", number_in({Measure::volume, Measure::mass})},
        {"plan --left", {}},
        {"soak --grains-of", {}},
        {"--without", names_of(any_bait)},
        {"--as", {}},
        {"--save", {}},
        {"--tub", {}},
        {"--ball", {{Choice::ball_sizes}, {}, {Measure::length}}},
        {"--balls", {{Choice::ball_sizes}, {}, {Measure::length}}},
        {"--pack", number_in({Measure::mass, Measure::volume})},
        {"--price-pack", number_in({Measure::mass, Measure::volume})},
    };
}

/// By what help calls it, wherever that is.
std::vector<AskedRow> asked_by_name() {
    const std::vector<Choice> any_bait{Choice::mixes, Choice::ingredients};
    return {
        {"RECIPE", names_of({Choice::mixes, Choice::library_files})},
        {"INGREDIENT", names_of({Choice::ingredients})},
        {"PELLET", names_of({Choice::pellets})},
        {"STRATEGY", names_of({Choice::strategies, Choice::library_files})},
        {"VENUE", names_of({Choice::venues, Choice::library_files})},
        {"BLEND", names_of({Choice::blends, Choice::library_files})},
        {"SPEC", names_of({Choice::blends, Choice::library_files})},
        {"WHAT", names_of(any_bait)},
        {"NAME", names_of(any_bait)},
        {"NAME=AMOUNT", names_of(any_bait, "=")},
        {"NAME=FEEL", names_of({Choice::mixes}, "=", {Choice::feels})},
        {"NAME=PRICE", names_of({Choice::ingredients}, "=")},
        {"NAME=SHARE", names_of({Choice::ingredients}, "=")},
        {"NAME=DOSE", names_of({Choice::ingredients}, "=")},
        {"SHOP", names_of({Choice::shops})},
        {"SHOP=CHARGE", names_of({Choice::shops}, "=")},
        {"FEEL", names_of({Choice::feels})},
        {"FISH", names_of({Choice::fish})},
        {"FISH=CATCH", names_of({Choice::fish}, "=")},
        {"SIZE", {{Choice::vessel_sizes}, {}, {Measure::volume}}},
        {"COUNTxSIZE", {{Choice::vessel_sizes}, {}, {Measure::volume}}},
        {"FILE", names_of({Choice::any_files})},
        {"FOLDER", names_of({Choice::folders})},
        {"STATE", one_of(mix_state_names)},
        {"HOW", one_of(squeeze_names)},
        {"CLARITY", one_of(clarity_names)},
        {"SEASON", one_of(season_names)},
        {"BED", one_of(bed_names)},
        {"KIND", one_of(ingredient_kind_names)},
        {"METHOD", one_of(Words{"covered", "measured"})},
        {"WISH", one_of(Words{"carpet=", "breaks="})},
        {"CODE", one_of(currency_codes())},
        {"CURRENCY", one_of(currency_codes())},
        {"KEY=VALUE", one_of(keys_to_set())},
    };
}

/// Amounts, by what help calls them.
std::vector<AskedRow> asked_in_units() {
    return {
        {"AMOUNT", number_in({Measure::mass, Measure::volume})},
        {"MASS", number_in({Measure::mass})},
        {"VOLUME", number_in({Measure::volume})},
        {"LENGTH", number_in({Measure::length})},
        {"TIME", number_in({Measure::time})},
        {"TEMPERATURE", number_in({Measure::temperature})},
        {"PRESSURE", number_in({Measure::pressure})},
        {"SPEED", number_in({Measure::speed})},
        {"RATIO", number_in({Measure::ratio})},
        {"SHARE", number_in({Measure::ratio})},
    };
}

/// What a person writes freely.
constexpr std::array written_freely{"CLOCK", "DATE", "DOSE", "ENTRY", "ITEM", "NUMBER",
                                    "PRICE", "RATE", "TEST", "TEXT",  "WORD"};

const AskedFor* found_row(const CommandSpec& command, std::string_view name, std::string_view value) {
    static const std::vector<AskedRow> of_one = asked_of_one(), by_name = asked_by_name(), in_units = asked_in_units();
    const std::string of_command = std::string(command.verb) + " " + std::string(name);
    for (const AskedRow& row : of_one)
        if (row.called == of_command || row.called == name) return &row.asked;
    for (const std::vector<AskedRow>* rows : {&by_name, &in_units})
        for (const AskedRow& row : *rows)
            if (row.called == value) return &row.asked;
    return nullptr;
}

bool is_known(const CommandSpec& command, std::string_view name, std::string_view value) {
    return value.empty() || found_row(command, name, value) != nullptr ||
           std::find(written_freely.begin(), written_freely.end(), value) != written_freely.end();
}

}  // namespace

AskedFor asked_for(const CommandSpec& command, const Flag& flag) {
    const AskedFor* found = found_row(command, flag.name, flag.value);
    return found ? *found : AskedFor();
}

AskedFor asked_for(const CommandSpec& command, const Word& word) {
    const AskedFor* found = found_row(command, word.name, word.name);
    return found ? *found : AskedFor();
}

bool is_known_to_ask(const CommandSpec& command, const Flag& flag) {
    return is_known(command, flag.name, flag.value);
}

bool is_known_to_ask(const CommandSpec& command, const Word& word) {
    return is_known(command, word.name, word.name);
}

}  // namespace baitwright
