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
#include "quantities/currency_codes.h"

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

AskedFor from_choices(std::vector<Choice> choices, std::string_view joint = {}, std::vector<Choice> behind = {}) {
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
    keys.reserve(std::size(usual_keys));
    for (const UsualKey& key : usual_keys) keys.push_back(key.key);
    return keys;
}

using Words = std::vector<std::string_view>;

/// Words of commands, and flags of one command, whose name means something else elsewhere.
std::vector<AskedRow> asked_of_one() {
    const std::vector<Choice> any_bait{Choice::mixes, Choice::ingredients};
    const AskedFor mix_or_one = from_choices({Choice::mixes, Choice::library_files, Choice::ingredients_instead});
    return {
        {"mix RECIPE", mix_or_one},
        {"water RECIPE", mix_or_one},
        {"drop RECIPE", mix_or_one},
        {"dry RECIPE", mix_or_one},
        {"log mix RECIPE", from_choices(any_bait)},
        {"log drop RECIPE", from_choices(any_bait)},
        {"ingredient add NAME", from_choices({Choice::library_files})},
        {"ingredient import FILE", from_choices({Choice::any_files})},
        {"recipe add FILE", from_choices({Choice::library_files})},
        {"strategy add FILE", from_choices({Choice::library_files})},
        {"venue add FILE", from_choices({Choice::library_files})},
        {"blend add FILE", from_choices({Choice::library_files})},
        {"ingredient restore INGREDIENT", from_choices({Choice::retired})},
        {"recipe restore RECIPE", from_choices({Choice::retired})},
        {"strategy restore STRATEGY", from_choices({Choice::retired})},
        {"venue restore VENUE", from_choices({Choice::retired})},
        {"blend restore BLEND", from_choices({Choice::retired})},
        {"drop --water", one_of(water_kind_names)},
        {"drop --compare", one_of(Words{"feels", "sizes", "forms"})},
        {"paid --by", one_of(Words{paid_by_names.begin() + 1, paid_by_names.end()})},
        {"usual --forget", one_of(keys_of_usual())},
        {"usual --units", one_of(Words{"metric", "imperial", "both"})},
        {"plan --bites", one_of(Words{"steady", "slow", "none"})},
        {"log add --water", from_choices({Choice::mixes}, "=")},
        {"log mix --water", number_in({Measure::volume, Measure::mass})},
        {"plan --left", {}},
        {"soak --grains-of", {}},
        {"--without", from_choices(any_bait)},
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
        {"RECIPE", from_choices({Choice::mixes, Choice::library_files})},
        {"INGREDIENT", from_choices({Choice::ingredients})},
        {"PELLET", from_choices({Choice::pellets})},
        {"STRATEGY", from_choices({Choice::strategies, Choice::library_files})},
        {"VENUE", from_choices({Choice::venues, Choice::library_files})},
        {"BLEND", from_choices({Choice::blends, Choice::library_files})},
        {"SPEC", from_choices({Choice::blends, Choice::library_files})},
        {"WHAT", from_choices(any_bait)},
        {"NAME", from_choices(any_bait)},
        {"NAME=AMOUNT", from_choices(any_bait, "=")},
        {"NAME=FEEL", from_choices({Choice::mixes}, "=", {Choice::feels})},
        {"NAME=PRICE", from_choices({Choice::ingredients}, "=")},
        {"NAME=SHARE", from_choices({Choice::ingredients}, "=")},
        {"NAME=DOSE", from_choices({Choice::ingredients}, "=")},
        {"SHOP", from_choices({Choice::shops})},
        {"SHOP=CHARGE", from_choices({Choice::shops}, "=")},
        {"FEEL", from_choices({Choice::feels})},
        {"FISH", from_choices({Choice::fish})},
        {"FISH=CATCH", from_choices({Choice::fish}, "=")},
        {"SIZE", {{Choice::vessel_sizes}, {}, {Measure::volume}}},
        {"COUNTxSIZE", {{Choice::vessel_sizes}, {}, {Measure::volume}}},
        {"FILE", from_choices({Choice::any_files})},
        {"FOLDER", from_choices({Choice::folders})},
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

bool is_told_of(const CommandSpec& command, std::string_view name, std::string_view value) {
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
    return is_told_of(command, flag.name, flag.value);
}

bool is_known_to_ask(const CommandSpec& command, const Word& word) {
    return is_told_of(command, word.name, word.name);
}

}  // namespace baitwright
