#include "page/bank_data.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>

#include "answers/strategy/named_in_strategy.h"
#include "files/library_text.h"
#include "files/value_text.h"
#include "page/advice_data.h"
#include "page/bank.h"
#include "page/learnt_data.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// Entries as TOML by name; what is put in twice must be the same.
class Entries {
public:
    void put(const std::string& name, std::string toml) {
        const auto [entry, is_new] = by_name_.emplace(folded_name(name), toml);
        if (is_new)
            in_order_.push_back(std::move(toml));
        else if (entry->second != toml)
            throw UsageError("two-meanings", "the strategies mean different things by " + in_quotes(name),
                             "make a page of each");
    }
    [[nodiscard]] bool has(const std::string& name) const { return by_name_.count(folded_name(name)) > 0; }
    [[nodiscard]] std::string toml() const {
        std::string text;
        for (const std::string& entry : in_order_) text += entry + "\n";
        return text;
    }

private:
    std::map<std::string, std::string> by_name_;
    std::vector<std::string> in_order_;
};

/// What no answer of the page tells is left out of it.
std::string carried_text(Recipe recipe) {
    for (std::string* prose : {&recipe.purpose, &recipe.avoid, &recipe.why, &recipe.note}) prose->clear();
    return toml_text(recipe) + "\n";
}

std::string carried_text(Ingredient ingredient) {
    ingredient.note.clear();
    // Its solid's density follows from it where none is stated.
    if (ingredient.skeleton_density.stated()) ingredient.composition = {};
    return toml_text(std::vector<Ingredient>{std::move(ingredient)});
}

std::string carried_text(Strategy strategy) {
    for (std::string* prose : {&strategy.purpose, &strategy.avoid, &strategy.why, &strategy.note}) prose->clear();
    return toml_text(strategy);
}

/// What the shelf has by that name: a mix, an ingredient, or both.
void put_named(Entries& entries, const std::string& name, const Shelf& shelf) {
    const auto recipe = shelf.find_recipe(name);
    const auto ingredient = shelf.find_ingredient(name);
    entries.put(name, (recipe ? carried_text(*recipe) : std::string()) +
                          (ingredient ? carried_text(*ingredient) : std::string()));
}

/// What no strategy of the page needs: the other mixes with what is in them, and the other pellets.
std::string other_entries(const Shelf& library, const Entries& carried) {
    Entries more;
    const auto put = [&](const std::string& name) {
        if (!carried.has(name) && !more.has(name)) put_named(more, name, library);
    };
    for (const std::string& name : library.recipe_names()) {
        const Recipe recipe = library.recipe(name);
        put(name);
        for (const Part& part : recipe.parts) put(part.of);
        for (const Dose& dose : recipe.doses) put(dose.of);
    }
    for (const std::string& name : library.ingredient_names()) {
        const IngredientKind kind = library.ingredient(name).kind;
        if (kind == IngredientKind::pellet || kind == IngredientKind::expander) put(name);
    }
    return more.toml();
}

/// The usual ones of the ingredients that were measured, which tell of the hand.
std::string usual_entries(const BankContents& contents) {
    Entries usual;
    const auto put = [&](const std::string& name, const Shelf& shelf) {
        const auto ingredient = shelf.find_ingredient(name);
        if (!ingredient || !has_measured_mark(*ingredient) || usual.has(name)) return;
        if (auto before = shelf.find_usual(name)) usual.put(name, carried_text(*std::move(before)));
    };
    for (const CarriedStrategy& carried : contents.strategies)
        for (const std::string& name : names_in(carried.strategy, *carried.shelf)) put(name, *carried.shelf);
    for (const std::string& name : contents.library->ingredient_names()) put(name, *contents.library);
    return usual.toml();
}

/// Where the strategies feed no mix, one of the library's, with what is in it: Mix opens on something.
void put_a_mix(Entries& entries, const BankContents& contents) {
    const auto feeds_a_mix = [](const CarriedStrategy& carried) {
        const std::set<std::string> names = names_in(carried.strategy, *carried.shelf);
        return std::any_of(names.begin(), names.end(),
                           [&](const std::string& name) { return carried.shelf->find_recipe(name).has_value(); });
    };
    if (std::any_of(contents.strategies.begin(), contents.strategies.end(), feeds_a_mix)) return;
    for (const std::string& name : contents.library->recipe_names()) {
        const Recipe recipe = contents.library->recipe(name);
        const auto is_mix = [&](const Part& part) { return contents.library->find_recipe(part.of).has_value(); };
        if (std::any_of(recipe.parts.begin(), recipe.parts.end(), is_mix)) continue;
        put_named(entries, name, *contents.library);
        for (const Part& part : recipe.parts) put_named(entries, part.of, *contents.library);
        for (const Dose& dose : recipe.doses) put_named(entries, dose.of, *contents.library);
        return;
    }
}

/// As `stock_told` reads it.
std::string kept_words(const KeptMix& tub) {
    std::string words = tub.of + "=" + amount_text(tub.mass) + " ";
    words += name_of(tub.state);
    return tub.feel.empty() ? words : words + " " + tub.feel;
}

std::vector<std::string> have_words(const BankContents& contents) {
    std::set<std::string> names;
    for (const CarriedStrategy& carried : contents.strategies) names.merge(names_in(carried.strategy, *carried.shelf));
    std::vector<std::string> words;
    for (const std::string& name : names) {
        Mass mass;
        for (const StockLot& lot : contents.stock.lots(name, contents.made_on)) mass += lot.mass;
        if (mass > Mass{}) words.push_back(name + "=" + amount_text(mass));
        for (const KeptMix& tub : contents.stock.kept(name))
            if (is_good_on(tub, contents.made_on)) words.push_back(kept_words(tub));
    }
    return words;
}

/// FNV-1a, 64 bits. **Source**: Fowler, Noll, Vo, "The FNV Non-Cryptographic Hash Algorithm" (IETF draft), from memory.
std::string digest_of(const std::string& text) {
    std::uint64_t hash = 0xcbf29ce484222325u;
    for (const char letter : text) hash = (hash ^ static_cast<unsigned char>(letter)) * 0x100000001b3u;
    return fmt::format("{:016x}", hash);
}

std::optional<std::string> first_of(const Usual& usual, const char* key) {
    const auto found = usual.find(key);
    return found == usual.end() || found->second.empty() ? std::nullopt : std::optional(found->second.front());
}

/// As the fields of the page write it.
Json always_json(const Usual& usual) {
    Json always;
    for (const char* key : {"pump", "vessel"}) {
        const auto told = first_of(usual, key);
        always[key] = told ? Json(amount_text(parse<Volume>(*told))) : Json();
    }
    const auto warmth = first_of(usual, "water-temp");
    always["water_temp"] =
        warmth ? Json(number_text_within(parse<Temperature>(*warmth).in_celsius(), 1e-9) + " \u00b0C") : Json();
    return always;
}

/// What a phone asks of Mix when it opens the strategy for the first time (`mix_place.js`), word for word.
Json first_question(const Json& strategy, const Json& mixes, const Json& always, int people) {
    const Json& mix = strategy["mixes"].empty() ? mixes[0]["name"] : strategy["mixes"][0];
    Json flags{{"--wet-volume", {"3 l"}}};
    const auto own = std::find_if(mixes.begin(), mixes.end(), [&](const Json& one) { return one["name"] == mix; });
    if (const Json* fed = strategy["feels"].find(mix.text()); fed && own != mixes.end() && !(*fed == (*own)["feel"]))
        flags["--feel"] = Json::array({*fed});
    const Json& warmth = strategy["water_temp_c"];
    flags["--water-temp"] = {!always["water_temp"].is_null()
                                 ? always["water_temp"].text()
                                 : (warmth.is_null() ? std::string("15") : number_text(warmth.number())) + " \u00b0C"};
    flags["--people"] = {std::to_string(people)};
    return {{"ask", "mix"}, {"words", Json::array({mix})}, {"flags", flags}, {"give", {"told", "json"}}};
}

/// What there is to choose from, and the first answers, so that a phone has something to show before its engine is
/// open.
void answer_ahead(Json& data) {
    Bank bank;
    Json open{{"ask", "open"},          {"library", data["library"]},
              {"usual", data["usual"]}, {"currency", data["currency"]},
              {"units", data["units"]}, {"today", data["made_on"]},
              {"have", data["have"]}};
    open["advice"] = data["advice"];
    if (const Json* learnt = data.find("learnt")) open["learnt"] = *learnt;
    data["contents"] = bank.ask(open);
    data["known"] = Json::array();
    if (data["contents"]["mixes"].empty()) return;
    for (const Json& strategy : data["contents"]["strategies"]) {
        const Json question = first_question(strategy, data["contents"]["mixes"], data["always"],
                                             static_cast<int>(data["people"].number()));
        data["known"].push_back({{"asked", question}, {"reply", bank.ask(question)}});
    }
}

}  // namespace

Json bank_data(const BankContents& contents) {
    Entries entries;
    Json names = Json::array();
    for (const CarriedStrategy& carried : contents.strategies) {
        for (const std::string& name : names_in(carried.strategy, *carried.shelf))
            put_named(entries, name, *carried.shelf);
        names.push_back(carried.strategy.name);
    }
    put_a_mix(entries, contents);
    Entries strategies;
    for (const CarriedStrategy& carried : contents.strategies)
        strategies.put(carried.strategy.name, carried_text(carried.strategy));
    Json data{{"version", contents.version},
              {"made_on", date_text(contents.made_on)},
              {"start", contents.start ? Json(clock_text(*contents.start)) : Json()},
              {"people", contents.people},
              {"strategies", std::move(names)},
              {"have", have_words(contents)},
              {"usual", usual_entries(contents)},
              {"currency", contents.usual_currency ? Json(contents.usual_currency->code) : Json()},
              {"units", first_of(contents.always, "units").value_or("")},
              {"always", always_json(contents.always)},
              {"advice", advice_data(contents.advice)},
              {"library", toml_text(contents.library->feels()) + entries.toml() + strategies.toml()},
              {"more", other_entries(*contents.library, entries)}};
    if (Json learnt = learnt_data(*contents.library); !learnt.is_null()) data["learnt"] = std::move(learnt);
    data["id"] = digest_of(json_line(data, JsonLetters::utf8));
    answer_ahead(data);
    return data;
}

}  // namespace baitwright
