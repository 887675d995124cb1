#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cctype>

#include "bait/each_setting.h"
#include "bait/feel.h"
#include "bait/ingredient_completion.h"
#include "bait/ingredient_facts.h"
#include "day_of.h"
#include "quantities/plain_words.h"
#include "quantities/units.h"
#include "store/random_entries.h"
#include "store/store.h"
#include "store/temporary_folder.h"
#include "store/written_out.h"

using namespace baitwright;

namespace {

template <class Entry>
void put(Store& store, const Entry& entry, EntryOwner owner = EntryOwner::person) {
    store.change([&] { store.put(entry, owner); });
}

// What a store gives back of an ingredient: derived values are not kept but derived again.
Ingredient as_completed(Ingredient ingredient) {
    const auto keep_stated = [](auto& property) {
        if (!property.stated()) property = {};
    };
    visit_properties(ingredient, [&](const auto&, auto& property) { keep_stated(property); });
    visit_composition(ingredient.composition, [&](std::string_view, auto& share) { keep_stated(share); });
    complete(ingredient);
    return ingredient;
}

std::string shouted(std::string name) {
    std::transform(name.begin(), name.end(), name.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::toupper(letter)); });
    return "  " + name;
}

}  // namespace

TEST_CASE("an ingredient comes back with every stated field to the bit") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK(rc::check("ingredient", [&] {
        const Ingredient put_in = any_ingredient("coarse meal");
        put(store, put_in);
        RC_ASSERT(written_out(store.ingredient_to_mend("coarse meal").value()) == written_out(as_completed(put_in)));
    }));
    CHECK(store.ingredient_names() == std::vector<std::string>{"coarse meal"});
}

TEST_CASE("a recipe comes back with every field to the bit") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK(rc::check("recipe", [&] {
        const Recipe put_in = any_recipe("river mix");
        put(store, put_in);
        RC_ASSERT(written_out(store.recipe_to_mend("river mix").value()) == written_out(put_in));
    }));
}

TEST_CASE("a strategy comes back with every field to the bit") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK(rc::check("strategy", [&] {
        const Strategy put_in = any_strategy("far bank");
        put(store, put_in);
        RC_ASSERT(written_out(store.strategy_to_mend("far bank").value()) == written_out(put_in));
    }));
    CHECK(store.strategy_names() == std::vector<std::string>{"far bank"});
}

TEST_CASE("each setting of a strategy and a feed comes back alone") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    for (const auto& [key, strategy] : one_setting_each()) {
        INFO(key);
        CHECK(written_out(strategy) != written_out(plain_strategy()));
        put(store, strategy);
        CHECK(written_out(store.find_strategy("far bank").value()) == written_out(strategy));
        put(store, plain_strategy());
        CHECK(written_out(store.find_strategy("far bank").value()) == written_out(plain_strategy()));
    }
}

TEST_CASE("a strategy put twice has the feeds and hookbaits of the last") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    Strategy first = strategy_named("far bank"), second = strategy_named("Far Bank");
    first.feeds.resize(3);
    for (Feed& feed : first.feeds) {
        feed.parts = {{"crumb"}, {"meal"}};
        feed.size = 0.25 * litre;
    }
    first.hookbaits = {{"maggots", BitesPerHour{30}}};
    second.feeds.resize(1);
    second.feeds.front().parts = {{"soil"}};
    second.feeds.front().size = 0.25 * litre;
    put(store, first);
    put(store, second);
    REQUIRE(store.find_strategy("far bank")->feeds.size() == 1);
    CHECK(store.find_strategy("far bank")->feeds.front().parts.front().of == "soil");
    CHECK(store.find_strategy("far bank")->feeds.front().parts.size() == 1);
    CHECK(store.find_strategy("far bank")->hookbaits.empty());
    CHECK(store.strategy_names() == std::vector<std::string>{"Far Bank"});
}

TEST_CASE("an entry is found by any name that folds to its own") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK(rc::check("names", [&] {
        const std::string name = mended_name(any_text());
        put(store, ingredient_named(name));
        put(store, recipe_named(name));
        put(store, strategy_named(name));
        RC_ASSERT(store.find_ingredient(shouted(name)).value().name == name);
        RC_ASSERT(store.find_recipe(shouted(name)).value().name == name);
        RC_ASSERT(store.find_strategy(shouted(name)).value().name == name);
    }));
}

TEST_CASE("what was never put is not found") {
    const TemporaryFolder folder;
    const Store store = Store::open(folder / "library.db");
    CHECK_FALSE(store.find_ingredient("coarse meal"));
    CHECK_FALSE(store.find_recipe("river mix"));
    CHECK_FALSE(store.find_strategy("far bank"));
    CHECK(store.strategy_names().empty());
    CHECK(store.feels().empty());
    CHECK(store.ingredient_names().empty());
    CHECK(store.recipe_names().empty());
    CHECK(store.shipped_digest().empty());
    CHECK(store.retired("mix", "river mix").empty());
}

TEST_CASE("an entry put twice is there once, as it was put last") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    Ingredient older = ingredient_named("Coarse Meal");
    older.cautions = {"dust", "gluten"};
    older.packs = {{1.0 * kilogram, Money(340, currency_named("GBP")), day_of("2026-03-01"), "the mill"}};
    put(store, older, EntryOwner::shipped);
    Ingredient newer = ingredient_named("coarse  meal");
    newer.cautions = {"mould"};
    put(store, newer);
    CHECK(store.ingredient_names() == std::vector<std::string>{"coarse  meal"});
    CHECK(store.find_ingredient("coarse meal")->cautions == std::vector<std::string>{"mould"});
    CHECK(store.find_ingredient("coarse meal")->packs.empty());
}

TEST_CASE("a recipe put twice has the parts of the last") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put(store, Recipe{"river mix", {}, {}, {}, {}, {}, {{"crumb", Share{2}}, {"meal", Share{1}}}, {}});
    put(store, Recipe{"River mix", {}, {}, {}, {}, {}, {{"soil", Share{1}}}, {}});
    REQUIRE(store.find_recipe("river mix")->parts.size() == 1);
    CHECK(store.find_recipe("river mix")->parts.front().of == "soil");
    CHECK(store.recipe_names() == std::vector<std::string>{"River mix"});
}

TEST_CASE("feels rise by their upper edge whatever the order in which they were put") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put(store, Feel{"soft", 1.7, 1.9, "in a cup"});
    put(store, Feel{"dusty", 0.7, 0.82, "a cloud"});
    put(store, Feel{"firm", 1.1, 1.2, "a ball"});
    put(store, Feel{"Firm", 1.2, 1.3, "a ball that holds"});
    const std::vector<Feel> feels = store.feels();
    REQUIRE(feels.size() == 3);
    CHECK(feels[0].name == "dusty");
    CHECK(feels[1].name == "Firm");
    CHECK(feels[1].aim == 1.2);
    CHECK(feels[1].below == 1.3);
    CHECK(feels[1].purpose == "a ball that holds");
    CHECK(feels[2].name == "soft");
}

TEST_CASE("names come in alphabetical order") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    for (const char* name : {"wheat bran", "Brown crumb", "leam", "aniseed"}) put(store, ingredient_named(name));
    CHECK(store.ingredient_names() == std::vector<std::string>{"aniseed", "Brown crumb", "leam", "wheat bran"});
}

TEST_CASE("retired entries of one name come back in the order in which they went") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        store.retire({"mix", "river mix", "2026-03-01", "feel = \"firm\""});
        store.retire({"mix", "pond mix", "2026-03-02", "other"});
        store.retire({"mix", "River Mix", "2026-04-01", "feel = \"soft\""});
        store.retire({"ingredient", "river mix", "2026-05-01", "not a mix"});
    });
    const std::vector<RetiredEntry> retired = store.retired("mix", "river mix");
    REQUIRE(retired.size() == 2);
    CHECK(retired[0].text == "feel = \"firm\"");
    CHECK(retired[1].name == "River Mix");
    CHECK(retired[1].retired_on == "2026-04-01");
}

TEST_CASE("the digest of the shipped files is the one set last, and outlives the process that set it") {
    const TemporaryFolder folder;
    {
        Store store = Store::open(folder / "library.db");
        store.change([&] { store.set_shipped_digest("1"); });
        store.change([&] { store.set_shipped_digest("2"); });
    }
    CHECK(Store::open(folder / "library.db").shipped_digest() == "2");
}
