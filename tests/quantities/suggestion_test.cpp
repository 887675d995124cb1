#include "quantities/suggestion.h"

#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace baitwright;

namespace {

const std::vector<std::string> names{"brown crumb", "white crumb", "fishmeal micro pellet 2 mm", "Hemp", "maize meal"};

}  // namespace

TEST_CASE("a mistyped name is taken for the nearest one") {
    CHECK(nearest_name("brwon crumb", names) == "brown crumb");
    CHECK(nearest_name("brown crumbs", names) == "brown crumb");
    CHECK(nearest_name("WHITE CRUM", names) == "white crumb");
    CHECK(nearest_name("hmep", names) == "Hemp");
    CHECK(nearest_name(" maize  meal ", names) == "maize meal");
}

TEST_CASE("up to a third of the letters may be wrong, and one always") {
    CHECK(nearest_name("abcdef", {"abcdxy"}) == "abcdxy");
    CHECK_FALSE(nearest_name("abcdef", {"abcxyz"}));
    CHECK(nearest_name("kq", {"kg"}) == "kg");
    CHECK_FALSE(nearest_name("kq", {"mg"}));
}

TEST_CASE("words that share no letter are not near, however short") {
    CHECK_FALSE(nearest_name("q", {"g"}));
    CHECK_FALSE(nearest_name("", names));
    CHECK_FALSE(nearest_name("bread", names));
    CHECK_FALSE(nearest_name("bread", {}));
}

TEST_CASE("a name that holds all the words, or their beginnings, is near") {
    CHECK(nearest_name("micro pellet", names) == "fishmeal micro pellet 2 mm");
    CHECK(nearest_name("pellet fish", names) == "fishmeal micro pellet 2 mm");
    CHECK(nearest_name("2 mm", names) == "fishmeal micro pellet 2 mm");
    CHECK_FALSE(nearest_name("m", names));
    CHECK_FALSE(nearest_name("micro crumb", names));
}

TEST_CASE("of names equally near the first is taken") {
    CHECK(nearest_name("crumb", names) == "brown crumb");
    CHECK(nearest_name("rumb", {"numb", "crumb"}) == "numb");
}

TEST_CASE("a very long word has no neighbour") {
    CHECK_FALSE(nearest_name(std::string(100000, 'a'), {std::string(100000, 'a')}));
}

TEST_CASE("the hint asks in one sentence, or keeps silent") {
    CHECK(did_you_mean("brwon crumb", names) == "did you mean 'brown crumb'?");
    CHECK(did_you_mean("bread", names).empty());
}

TEST_CASE("names that hold the word come before those that only look like it, whole words first") {
    const std::vector<std::string> many{"cereal pellets", "millet", "pelleted hemp", "red pellet 4 mm"};
    CHECK(names_near("pellet", many, 9) ==
          std::vector<std::string>{"cereal pellets", "red pellet 4 mm", "pelleted hemp"});
    CHECK(names_near("pellet", many, 2) == std::vector<std::string>{"cereal pellets", "red pellet 4 mm"});
    CHECK(names_near("4mm pellets", many, 9) == std::vector<std::string>{"red pellet 4 mm"});
    CHECK(names_near("hemp pell", many, 9) == std::vector<std::string>{"pelleted hemp"});
}

TEST_CASE("where no name holds the words the nearest in letters are told, as a whole or word by word") {
    CHECK(names_near("brwon crumb", names, 9) == std::vector<std::string>{"brown crumb"});
    CHECK(names_near("pelet", names, 9) == std::vector<std::string>{"fishmeal micro pellet 2 mm"});
    CHECK(names_near("pelet 3 mm", names, 9).empty());
    CHECK(names_near("rumb", {"numb", "crumb"}, 9) == std::vector<std::string>{"numb", "crumb"});
    CHECK(names_near("bread", names, 9).empty());
    CHECK(names_near("", names, 9).empty());
    CHECK(names_near(std::string(100000, 'a'), {std::string(100000, 'a')}, 9).empty());
}

TEST_CASE("six of many names are told, and how many more there are") {
    CHECK(which_of({"a", "b"}) == "which of these: 'a', 'b'; type one of them");
    CHECK(which_of({"a", "b", "c", "d", "e", "f", "g", "h"}) ==
          "which of these: 'a', 'b', 'c', 'd', 'e', 'f' and 2 more; type one of them");
    CHECK(near_names_hint("crumb", names) == "which of these: 'brown crumb', 'white crumb'; type one of them");
    CHECK(near_names_hint("crum brown", names) == "did you mean 'brown crumb'?");
    CHECK(near_names_hint("bread", names).empty());
}

TEST_CASE("names are compared without case and spare blanks") {
    CHECK(folded_name("  Brown \t CRUMB\n") == "brown crumb");
    CHECK(folded_name("É") == "É");
    CHECK(folded_name("").empty());
}
