#include "library/change_library.h"

#include <catch2/catch.hpp>
#include <filesystem>

#include "files/library_text.h"
#include "library/edited_ingredient.h"
#include "library/open_library.h"
#include "quantities/fault.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

class StoreFolder {
public:
    StoreFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "shed-XXXXXX").string();
        folder_ = mkdtemp(name.data());
    }
    ~StoreFolder() { std::filesystem::remove_all(folder_); }
    StoreFolder(const StoreFolder&) = delete;
    StoreFolder& operator=(const StoreFolder&) = delete;
    [[nodiscard]] std::filesystem::path path() const { return folder_ / "store.db"; }

private:
    std::filesystem::path folder_;
};

Recipe half_and_half(const std::string& name, const std::string& other) {
    Recipe recipe;
    recipe.name = name;
    recipe.parts = {{"brown crumb", 500.0 * gram}, {other, 500.0 * gram}};
    return recipe;
}

}  // namespace

TEST_CASE("a replaced ingredient is kept as the text it had, an unchanged one is left alone") {
    const StoreFolder shed;
    Store store = open_store(shed.path());
    const Ingredient before = store.ingredient("brown crumb");
    const Ingredient after =
        edited_ingredient("brown crumb", before, {{"absorption", "0.7 g/g", "measured: squeeze test", "5 %"}});
    CHECK(put_ingredients(store, {after}, parse_date("2026-03-01")).front().kind == EntryChange::Kind::replaced);
    CHECK(store.ingredient("brown crumb").absorption.value == Approx(0.7));
    CHECK(store.ingredient("brown crumb").absorption.source.origin == Origin::measured);
    const std::vector<RetiredEntry> old = store.retired("ingredient", "brown crumb");
    REQUIRE(old.size() == 1);
    CHECK(old.front().text == toml_text({before}));
    CHECK(old.front().retired_on == "2026-03-01");
    CHECK(put_ingredients(store, {after}, parse_date("2026-03-02")).front().kind == EntryChange::Kind::unchanged);
    CHECK(store.retired("ingredient", "brown crumb").size() == 1);
}

TEST_CASE("recipes that name each other are added together, and none where one is wrong") {
    const StoreFolder shed;
    Store store = open_store(shed.path());
    CHECK(put_recipes(store, {half_and_half("outer", "inner"), half_and_half("inner", "maize meal")},
                      parse_date("2026-03-01"))
              .size() == 2);
    CHECK(store.find_recipe("outer").has_value());
    CHECK_THROWS_AS(put_recipes(store, {half_and_half("fine", "maize meal"), half_and_half("wrong", "maze meel")},
                                parse_date("2026-03-01")),
                    InputError);
    CHECK_FALSE(store.find_recipe("fine").has_value());
}

TEST_CASE("what a person put into the store is not overwritten by the shipped library") {
    const StoreFolder shed;
    {
        Store store = open_store(shed.path());
        Recipe mine = half_and_half("silt bed", "maize meal");
        put_recipes(store, {mine}, parse_date("2026-03-01"));
        store.change([&] { store.set_shipped_digest("an older program"); });
    }
    const Store again = open_store(shed.path());
    CHECK(again.recipe("silt bed").parts.size() == 2);
    CHECK(again.retired("mix", "silt bed").size() == 1);
}

TEST_CASE("an ingredient like another takes its values but for those given") {
    const auto shelf = shipped_shelf();
    const Ingredient crumb = shelf->ingredient("brown crumb");
    const Ingredient red = edited_ingredient("red crumb", crumb, {{"colour", "red"}, {"particle_spread", "2.0"}});
    CHECK(red.name == "red crumb");
    CHECK(red.colour == "red");
    CHECK(red.particle_spread.value == Approx(2.0));
    CHECK(red.absorption.value == Approx(crumb.absorption.value));
    CHECK(red.packs.size() == crumb.packs.size());
    CHECK_THROWS_AS(edited_ingredient("x", crumb, {{"absorption", "2 g/g"}}), InputError);  // above its slump
    CHECK_THROWS_AS(edited_ingredient("x", std::nullopt, {{"kind", "base"}}), InputError);  // what it must state
}

TEST_CASE("a replaced strategy is kept as the text it had, and one that feeds what nobody knows is not taken") {
    const StoreFolder shed;
    Store store = open_store(shed.path());
    Strategy mine = store.strategy("open carpet");
    const std::string before = toml_text(mine);
    mine.length = 6.0 * hour;
    CHECK(put_strategies(store, {mine}, parse_date("2026-03-01")).front().kind == EntryChange::Kind::replaced);
    CHECK(store.strategy("open carpet").length.in(hour) == Approx(6));
    REQUIRE(store.retired("strategy", "open carpet").size() == 1);
    CHECK(store.retired("strategy", "open carpet").front().text == before);
    CHECK(put_strategies(store, {mine}, parse_date("2026-03-02")).front().kind == EntryChange::Kind::unchanged);
    Strategy wrong = mine;
    wrong.name = "wrong";
    wrong.feeds.front().parts.front().of = "moon dust";
    CHECK_THROWS_AS(put_strategies(store, {mine, wrong}, parse_date("2026-03-03")), InputError);
    CHECK_FALSE(store.find_strategy("wrong").has_value());
}

TEST_CASE("a store filled by an older program is given the strategies it lacks, and keeps a person's own") {
    const StoreFolder shed;
    {
        Store store = open_store(shed.path());
        Strategy mine = store.strategy("margin");
        mine.note = "mine";
        put_strategies(store, {mine}, parse_date("2026-03-01"));
        store.change([&] { store.set_shipped_digest("an older program"); });
    }
    const Store again = open_store(shed.path());
    CHECK(again.strategy("margin").note == "mine");
    CHECK(again.strategy_names() == shipped_shelf()->strategy_names());
}

TEST_CASE("a feel that would contradict those of the library is refused, and comes in with those that it goes with") {
    const StoreFolder shed;
    Store store = open_store(shed.path());
    const auto put = [&](const std::string& text) {
        static_cast<void>(put_file(store, read_library_file(text, "mine.toml"), text, parse_date("2026-03-01")));
    };
    const std::string firm = "[[feel]]\nname = \"firm\"\naim = 1.2\nbelow = 1.45\n";
    try {
        put(firm);
        FAIL("it came in");
    } catch (const InputError& error) {
        CHECK(error.faults().front().code == "not-rising");
        CHECK(error.faults().front().file == "mine.toml");
        CHECK(error.faults().front().message.find("'firm' before it ends at 1.45") != std::string::npos);
    }
    CHECK(find_feel(store.feels(), "firm")->below == 1.3);
    put(firm + "[[feel]]\nname = \"tacky\"\naim = 1.5\nbelow = 1.55\n");
    CHECK(find_feel(store.feels(), "firm")->below == 1.45);
}
