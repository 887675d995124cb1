#include "page/bank_data.h"

#include <catch2/catch.hpp>

#include "library/open_library.h"
#include "page/bank_page.h"
#include "page/built_page.h"
#include "page/library_data.h"
#include "progress_heard.h"

using namespace baitwright;

namespace {

BankContents contents_with(const Shelf& shelf, const std::string& strategy) {
    BankContents contents;
    contents.library = &shelf;
    contents.made_on = parse_date("2026-05-16");
    contents.version = "0.1.0";
    contents.strategies.push_back({&shelf, shelf.strategy(strategy)});
    return contents;
}

}  // namespace

TEST_CASE("a page carries the whole library, each entry once") {
    const auto shelf = shipped_shelf();
    const Json data = bank_data(contents_with(*shelf, "open carpet"));
    const CarriedLibrary carried = library_in(data["library"]);
    CHECK(carried.ingredients.size() == shelf->ingredient_names().size());
    CHECK(carried.recipes.size() == shelf->recipe_names().size());
    CHECK(carried.strategies.size() == shelf->strategy_names().size());
    CHECK(carried.feels.size() == shelf->feels().size());
    CHECK(data["strategies"].texts() == std::vector<std::string>{"open carpet"});
}

TEST_CASE("gathering what a page carries says how far it is") {
    const auto shelf = shipped_shelf();
    const std::string all = std::to_string(shelf->ingredient_names().size());
    const std::vector<std::string> heard = progress_heard_in([&] { bank_data(contents_with(*shelf, "open carpet")); });
    REQUIRE(heard.size() >= 2);
    CHECK(heard.front() == "gathering what the page carries 1/" + all);
    CHECK(heard.back() == "gathering what the page carries " + all + "/" + all);
}

TEST_CASE("a page of no strategy in particular offers all of the library's") {
    const auto shelf = shipped_shelf();
    BankContents contents = contents_with(*shelf, "open carpet");
    contents.strategies.clear();
    const Json data = bank_data(contents);
    CHECK(data["strategies"].texts() == shelf->strategy_names());
}

TEST_CASE("what a strategy's own file means by a name takes the place of what the library means by it") {
    const auto shelf = shipped_shelf();
    MemoryShelf mine(shelf.get());
    Recipe other = shelf->recipe("silt bed");
    other.parts.pop_back();
    mine.put(other);
    BankContents contents = contents_with(*shelf, "open carpet");
    contents.strategies.front().shelf = &mine;
    for (const Recipe& carried : library_in(bank_data(contents)["library"]).recipes)
        if (carried.name == "silt bed") CHECK(carried.parts.size() == other.parts.size());
}

TEST_CASE("pages that work anything out differently have different ids, the same page the same") {
    const auto shelf = shipped_shelf();
    BankContents contents = contents_with(*shelf, "open carpet");
    const Json data = bank_data(contents);
    CHECK(bank_data(contents)["id"] == data["id"]);
    CHECK(data["id"].text().size() == 16);
    contents.people = 2;
    CHECK(bank_data(contents)["id"] != data["id"]);
    CHECK(bank_data(contents_with(*shelf, "tight balls"))["id"] != data["id"]);
}

TEST_CASE("a browser without the engine is told the strategies on offer, with their mixes and their water") {
    const auto shelf = shipped_shelf();
    BankContents contents = contents_with(*shelf, "open carpet");
    contents.strategies.push_back({shelf.get(), shelf->strategy("tight balls")});
    const Json told = bank_data(contents)["contents"];
    REQUIRE(told["strategies"].size() == 2);
    CHECK(told["strategies"][0]["name"] == "open carpet");
    CHECK(told["strategies"][0]["depth_m"] == 2.5);
    CHECK_FALSE(told["strategies"][0]["mixes"].empty());
    CHECK(told["mixes"].size() == shelf->recipe_names().size());
}

TEST_CASE("a page knows what a phone told of its shed and has been taken home") {
    const auto shelf = shipped_shelf();
    BankContents contents = contents_with(*shelf, "open carpet");
    CHECK(bank_data(contents)["taken_home"].texts().empty());
    contents.taken_home = {"mhz3k4dq0027e01", "mhz3k0v2001a7c4"};
    CHECK(bank_data(contents)["taken_home"].texts() == contents.taken_home);
}

TEST_CASE("two strategies that mean different things by a name are not put into one page") {
    const auto shelf = shipped_shelf();
    MemoryShelf mine(shelf.get());
    Recipe other = shelf->recipe("silt bed");
    other.parts.pop_back();
    mine.put(other);
    BankContents contents = contents_with(*shelf, "open carpet");
    Strategy again = shelf->strategy("open carpet");
    again.name = "open carpet, mine";
    for (Feed& feed : again.feeds) feed.parts = {{"silt bed"}};
    contents.strategies.push_back({&mine, again});
    CHECK_THROWS_WITH(bank_data(contents), "the strategies mean different things by 'silt bed'");
}

TEST_CASE("the data stand where the page has a place for them, and no name can end the script that holds them") {
    const std::string hostile = "</script><script>alert(1)</script>";
    const Json data{{"strategies", {hostile.c_str()}}, {"library", {{"name", hostile}}}};
    const std::string page = bank_page("<p>@PLAIN@</p><b>@BANK_DATA@</b><i>@BANK_LIBRARY@</i>", "Pour", data);
    const std::string plain =
        "<p>Pour</p><b>{\"strategies\":[\"\\u003c/script>\\u003cscript>alert(1)\\u003c/script>\"]}</b><i>";
    REQUIRE(page.substr(0, plain.size()) == plain);
    const std::string packed = page.substr(plain.size(), page.size() - plain.size() - 4);
    CHECK(packed.size() > 20);
    CHECK(packed.find('<') == std::string::npos);
    CHECK(page.substr(page.size() - 4) == "</i>");
    CHECK_THROWS_AS(bank_page("@PLAIN@<b>@BANK_DATA@</b>", "", data), std::logic_error);
    CHECK_THROWS_AS(bank_page("<b>@BANK_DATA@</b><i>@BANK_LIBRARY@</i>", "", data), std::logic_error);
}

TEST_CASE("the page as it is built has a place for all its data") {
    const std::string built = built_page();
    if (built.empty()) return;  // made where Emscripten is installed
    const std::string page = bank_page(built, "<p>Pour</p>", {{"strategies", {"x"}}, {"library", "y"}});
    CHECK(page.find("<p>Pour</p>") != std::string::npos);
    CHECK(page.find("@BANK_") == std::string::npos);
}
