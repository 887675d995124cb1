#include "page/bank_data.h"

#include <algorithm>
#include <set>

#include "files/value_text.h"
#include "page/advice_data.h"
#include "page/bank.h"
#include "page/carried_library.h"
#include "page/digest.h"
#include "page/learnt_data.h"
#include "quantities/clock.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// As `stock_told` reads it.
std::string kept_words(const KeptMix& tub) {
    std::string words = tub.of + "=" + amount_text(tub.mass) + " ";
    words += name_of(tub.state);
    return tub.feel.empty() ? words : words + " " + tub.feel;
}

/// All that the page can be asked of: mixes and ingredients.
std::set<std::string> carried_names(const CarriedLibrary& library) {
    std::set<std::string> names;
    for (const Ingredient& ingredient : library.ingredients) names.insert(ingredient.name);
    for (const Recipe& recipe : library.recipes) names.insert(recipe.name);
    return names;
}

std::vector<std::string> have_words(const BankContents& contents, const CarriedLibrary& library) {
    std::vector<std::string> words;
    for (const std::string& name : carried_names(library)) {
        Mass mass;
        for (const StockLot& lot : contents.stock.lots(name, contents.made_on)) mass += lot.mass;
        if (mass > Mass{}) words.push_back(name + "=" + amount_text(mass));
        for (const KeptMix& tub : contents.stock.kept(name))
            if (is_good_on(tub, contents.made_on)) words.push_back(kept_words(tub));
    }
    return words;
}

/// What the page opens on: its strategies, or all that the library has.
std::vector<std::string> offered_strategies(const BankContents& contents) {
    if (contents.strategies.empty()) return contents.library->strategy_names();
    std::vector<std::string> names;
    for (const CarriedStrategy& carried : contents.strategies) names.push_back(carried.strategy.name);
    return names;
}

std::optional<std::string> first_of(const Usual& usual, const char* key) {
    const auto found = usual.find(key);
    return found == usual.end() || found->second.empty() ? std::nullopt : std::optional(found->second.front());
}

/// What else of it a plan goes by, as the command line would give it; the venue where the page carries it.
Json plan_flags_always(const BankContents& contents) {
    const Usual& usual = contents.always;
    Json flags = Json::object();
    for (const char* key : {"travel", "hands", "kit", "tub"})
        if (const auto found = usual.find(key); found != usual.end()) flags[std::string("--") + key] = found->second;
    if (const auto name = first_of(usual, "venue"))
        for (const Venue& venue : contents.venues)
            if (folded_name(venue.name) == folded_name(*name)) flags["--venue"] = {venue.name};
    return flags;
}

/// As the fields of the page write it.
Json always_json(const BankContents& contents) {
    const Usual& usual = contents.always;
    Json always{{"plan", plan_flags_always(contents)}};
    for (const char* key : {"pump", "vessel"}) {
        const auto told = first_of(usual, key);
        always[key] = told ? Json(amount_text(parse<Volume>(*told))) : Json();
    }
    const auto warmth = first_of(usual, "water-temp");
    always["water_temp"] =
        warmth ? Json(number_text_within(parse<Temperature>(*warmth).in_celsius(), 1e-9) + " \u00b0C") : Json();
    return always;
}

Json open_request(const Json& data) {
    Json request{{"ask", "open"}, {"today", data["made_on"]}};
    for (const char* key : {"library", "usual", "advice", "learnt", "currency", "units", "have"})
        if (const Json* value = data.find(key)) request[key] = *value;
    return request;
}

/// What there is to choose from, for a browser in which the engine cannot be opened: of the strategies those on offer.
Json first_contents(const Json& data) {
    Bank bank;
    Json contents = bank.ask(open_request(data));
    const std::vector<std::string> offered = data["strategies"].texts();
    Json strategies = Json::array();
    for (const Json& strategy : contents["strategies"])
        if (std::find(offered.begin(), offered.end(), strategy["name"].text()) != offered.end())
            strategies.push_back(strategy);
    contents["strategies"] = std::move(strategies);
    contents["ingredients"] = Json::array();
    return contents;
}

}  // namespace

Json bank_data(const BankContents& contents) {
    const CarriedLibrary library = carried_library(contents);
    Json data{{"version", contents.version},
              {"made_on", date_text(contents.made_on)},
              {"start", contents.start ? Json(clock_text(*contents.start)) : Json()},
              {"people", contents.people},
              {"strategies", offered_strategies(contents)},
              {"have", have_words(contents, library)},
              {"taken_home", contents.taken_home},
              {"usual", library_data(usual_of(contents))},
              {"currency", contents.usual_currency ? Json(contents.usual_currency->code) : Json()},
              {"units", first_of(contents.always, "units").value_or("")},
              {"always", always_json(contents)},
              {"advice", advice_data(contents.advice)},
              {"library", library_data(library)}};
    if (Json learnt = learnt_data(*contents.library); !learnt.is_null()) data["learnt"] = std::move(learnt);
    data["id"] = digest_of({json_line(data, JsonLetters::utf8)});
    data["contents"] = first_contents(data);
    return data;
}

}  // namespace baitwright
