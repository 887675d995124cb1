// The library as a page carries it: there and back to the bit.
#include "page/library_data.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/each_setting.h"
#include "bait/ingredient_completion.h"
#include "bait/ingredient_facts.h"
#include "files/library_text.h"
#include "library/named.h"
#include "library/open_library.h"
#include "store/random_entries.h"
#include "store/written_out.h"

using namespace baitwright;

namespace {

/// Through the very text that a page holds.
CarriedLibrary there_and_back(const CarriedLibrary& library) {
    const auto read = parsed_json(json_line(library_data(library), JsonLetters::ascii));
    REQUIRE(read.has_value());
    return library_in(*read);
}

/// The same with letters of ASCII alone, for a text that is no UTF-8 cannot be JSON.
Json in_ascii(const Json& json) {
    if (json.is_null()) return {};
    if (const auto* text = std::get_if<std::string>(&json.data()->value)) {
        std::string ascii;
        for (const char letter : *text) ascii += static_cast<unsigned char>(letter) < 128 ? letter : '?';
        return ascii;
    }
    if (const auto* list = std::get_if<JsonData::List>(&json.data()->value)) {
        Json all = Json::array();
        for (const Json& item : list->items) all.push_back(in_ascii(item));
        return all;
    }
    if (!std::holds_alternative<JsonData::Record>(json.data()->value)) return json;
    Json record = Json::object();
    for (const std::string& key : json.keys()) record[key] = in_ascii(json.at(key));
    return record;
}

std::string all_written_out(const CarriedLibrary& library) {
    std::string all;
    for (const Recipe& recipe : library.recipes) all += written_out(recipe);
    for (const Strategy& strategy : library.strategies) all += written_out(strategy);
    return all;
}

/// What a shelf makes of it: what was derived is not carried but derived again.
Ingredient derived_anew(Ingredient ingredient) {
    const auto keep_stated = [](auto& property) {
        if (!property.stated()) property = {};
    };
    visit_properties(ingredient, [&](const auto&, auto& property) { keep_stated(property); });
    visit_composition(ingredient.composition, [&](std::string_view, auto& share) { keep_stated(share); });
    complete(ingredient);
    return ingredient;
}

/// Any number that is still finite in the smaller units of a text.
double any_amount() {
    const double number = any_number();
    return std::isfinite(number * 1e6) ? number : number * 1e-6;
}

Venue any_venue() {
    Venue venue;
    venue.name = "lower water";
    venue.note = *rc::gen::element<std::string>("", "Ask first.");
    const std::vector<RuleSubject> subjects{AllFeed{}, Groundbait{}, IngredientKind::pellet, OneIngredient{"wheat"}};
    for (const RuleSubject& subject : subjects) {
        if (*rc::gen::arbitrary<bool>())
            venue.limits.push_back({subject, Mass::from_si(any_amount()),
                                    *rc::gen::element(VenueLimit::Reckoned::dry, VenueLimit::Reckoned::wet),
                                    *rc::gen::element(VenueLimit::Per::angler, VenueLimit::Per::everyone)});
        if (*rc::gen::arbitrary<bool>()) venue.limits.push_back({subject, Volume::from_si(any_amount())});
        if (*rc::gen::arbitrary<bool>())
            venue.bans.push_back({subject, *rc::gen::element<std::string>("", "It rots.")});
    }
    venue.rules = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>("No lights.", "Quiet."));
    return venue;
}

}  // namespace

TEST_CASE("the whole shipped library comes out of a page's text as it went in") {
    const auto shelf = shipped_shelf();
    CarriedLibrary library;
    for (const std::string& name : shelf->ingredient_names()) library.ingredients.push_back(shelf->ingredient(name));
    for (const std::string& name : shelf->recipe_names()) library.recipes.push_back(shelf->recipe(name));
    for (const std::string& name : shelf->strategy_names()) library.strategies.push_back(shelf->strategy(name));
    library.venues = all_venues({});
    library.feels = shelf->feels();
    const CarriedLibrary back = there_and_back(library);
    REQUIRE(library.ingredients.size() > 100);
    REQUIRE(back.ingredients.size() == library.ingredients.size());
    for (std::size_t i = 0; i < library.ingredients.size(); ++i) {
        Ingredient carried = back.ingredients[i];
        complete(carried);
        CHECK(written_out(carried) == written_out(library.ingredients[i]));
    }
    REQUIRE(back.recipes.size() == library.recipes.size());
    for (std::size_t i = 0; i < library.recipes.size(); ++i)
        CHECK(written_out(back.recipes[i]) == written_out(library.recipes[i]));
    REQUIRE(back.strategies.size() == library.strategies.size());
    for (std::size_t i = 0; i < library.strategies.size(); ++i)
        CHECK(written_out(back.strategies[i]) == written_out(library.strategies[i]));
    REQUIRE_FALSE(library.venues.empty());
    REQUIRE(back.venues.size() == library.venues.size());
    for (std::size_t i = 0; i < library.venues.size(); ++i)
        CHECK(toml_text(back.venues[i]) == toml_text(library.venues[i]));
    CHECK(toml_text(back.feels) == toml_text(library.feels));
}

TEST_CASE("any ingredient, mix and strategy come out of a page's data as they went in") {
    CHECK(rc::check([] {
        const CarriedLibrary library{{any_ingredient("coarse meal"), any_ingredient("fine meal")},
                                     {any_recipe("river mix")},
                                     {any_strategy("far bank")},
                                     {},
                                     {}};
        const CarriedLibrary back = library_in(library_data(library));
        RC_ASSERT(back.ingredients.size() == 2U);
        for (std::size_t i = 0; i < 2; ++i)
            RC_ASSERT(written_out(derived_anew(back.ingredients[i])) ==
                      written_out(derived_anew(library.ingredients[i])));
        RC_ASSERT(all_written_out(back) == all_written_out(library));
    }));
}

TEST_CASE("each setting of a strategy and a feed comes out of a page's text alone") {
    CarriedLibrary library;
    for (const auto& [key, strategy] : one_setting_each()) library.strategies.push_back(strategy);
    const CarriedLibrary back = there_and_back(library);
    REQUIRE(back.strategies.size() == library.strategies.size());
    for (std::size_t i = 0; i < library.strategies.size(); ++i)
        CHECK(written_out(back.strategies[i]) == written_out(library.strategies[i]));
}

TEST_CASE("any number comes out of a page's text to the bit") {
    CHECK(rc::check([] {
        const CarriedLibrary library{{any_ingredient("meal")}, {any_recipe("mix")}, {any_strategy("bank")}, {}, {}};
        const CarriedLibrary before = library_in(in_ascii(library_data(library))), after = there_and_back(before);
        RC_ASSERT(written_out(derived_anew(after.ingredients.at(0))) ==
                  written_out(derived_anew(before.ingredients.at(0))));
        RC_ASSERT(all_written_out(after) == all_written_out(before));
    }));
}

TEST_CASE("the rules of any water come out of a page's text to the bit") {
    CHECK(rc::check([] {
        CarriedLibrary library;
        library.venues.push_back(any_venue());
        const Venue back = there_and_back(library).venues.at(0);
        RC_ASSERT(toml_text(back) == toml_text(library.venues[0]));
    }));
}

TEST_CASE("data that are not whole are refused, not made up") {
    CarriedLibrary library;
    library.ingredients.push_back(ingredient_named("meal"));
    Json data = library_data(library);
    data.erase("sources");
    CHECK_THROWS(library_in(data));
    CHECK_THROWS(library_in("name = "));
}
