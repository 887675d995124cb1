#include "page/own_mix.h"

#include <algorithm>

#include "bait/resolve_mix.h"
#include "page/json_words.h"
#include "quantities/amount_range.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/plain_words.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr std::array<const char*, 4> amount_keys{"share", "mass", "volume", "packs"};
constexpr double most_counted = 1e6;  // as in files

using Faults = std::vector<Fault>;

/// Runs the work; what is wrong is a fault of the subject, and is gathered.
template <class Work>
void gathering(Faults& faults, const std::string& subject, Work&& work) {
    try {
        work();
    } catch (const Error& error) {
        for (Fault fault : error.faults()) {
            fault.subject = subject;
            faults.push_back(std::move(fault));
        }
    }
}

double counted(const Json& told, const char* key) {
    const double count = parse_number(word_of(told, key));
    if (!(count > 0 && count <= most_counted))
        throw InputError("out-of-range", std::string("the ") + key + " must be above 0", "a number such as 2");
    return count;
}

PartAmount amount_told(const Json& part) {
    std::vector<std::string> keys;
    for (const char* key : amount_keys)
        if (!word_of(part, key).empty()) keys.emplace_back(key);
    if (keys.empty())
        throw InputError("no-amount", "the part does not say how much", "give it a share, such as 2, or a weight");
    if (keys.size() > 1)
        throw InputError("two-amounts", "the part says twice how much", "give it a share or a weight, not both");
    if (keys.front() == "mass") return in_range(parse<Mass>(word_of(part, "mass")));
    if (keys.front() == "volume") return in_range(parse<Volume>(word_of(part, "volume")));
    if (keys.front() == "packs") return WholePacks{counted(part, "packs")};
    return Share{counted(part, "share")};
}

void add_parts(const Json& told, Recipe& recipe, Faults& faults) {
    for (const Json& each : items_of(told, "parts")) {
        Part part{word_of(each, "of"), Share{1}};
        if (word_of(each, "prepare") == "soaked") part.prepare = Preparation::soaked;
        gathering(faults, "part " + std::to_string(recipe.parts.size() + 1), [&] {
            if (part.of.empty()) throw InputError("missing-value", "the part has no name", "choose what it is");
            part.amount = amount_told(each);
        });
        recipe.parts.push_back(std::move(part));
    }
}

void add_doses(const Json& told, Recipe& recipe, Faults& faults) {
    for (const Json& each : items_of(told, "doses")) {
        Dose dose{word_of(each, "of"), {}};
        gathering(faults, "dose " + std::to_string(recipe.doses.size() + 1),
                  [&] { dose.rate = parse_dose_rate(word_of(each, "amount")); });
        recipe.doses.push_back(std::move(dose));
    }
}

void check_name(const std::string& name, const Shelf& shelf) {
    if (const std::string why = refused_as_name(name); !why.empty())
        throw InputError("bad-name", "the name " + (name.empty() ? "" : in_quotes(name) + " ") + why,
                         "a name is a few plain words");
    if (const auto taken = shelf.find_ingredient(name))
        throw InputError("name-taken", in_quotes(taken->name) + " is an ingredient already", "take another name");
}

/// What is wrong with the mix as a whole, but for pieces of which something is told already.
void add_new_faults(const Faults& found, Faults& faults) {
    for (Fault fault : found) {
        if (fault.code == "unknown-feel") fault.subject = "feel";
        const auto same = [&](const Fault& told) { return !told.subject.empty() && told.subject == fault.subject; };
        if (std::none_of(faults.begin(), faults.end(), same)) faults.push_back(std::move(fault));
    }
}

}  // namespace

Recipe own_mix(const Json& told, const Shelf& shelf) {
    Recipe recipe;
    Faults faults;
    recipe.name = word_of(told, "name");
    gathering(faults, "name", [&] { check_name(recipe.name, shelf); });
    recipe.feel = word_of(told, "feel");
    recipe.purpose = word_of(told, "purpose");
    recipe.note = word_of(told, "note");
    add_parts(told, recipe, faults);
    add_doses(told, recipe, faults);
    if (recipe.parts.empty()) throw InputError("empty-mix", "there is nothing in the mix", "choose what goes into it");
    try {
        resolve(recipe, shelf);
    } catch (const InputError& error) {
        add_new_faults(error.faults(), faults);
    }
    if (!faults.empty()) throw InputError(std::move(faults));
    return recipe;
}

}  // namespace baitwright
