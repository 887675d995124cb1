#include "answers/shared/find_entries.h"

#include <catch2/catch.hpp>

#include "quantities/fault_of.h"

using namespace baitwright;

namespace {

using Sort = SearchedText::Sort;

const std::vector<SearchedEntry> searched_entries{
    {EntryKind::ingredient, "millet", "seed", {{"note", "Small; beside a red pellet."}}},
    {EntryKind::ingredient, "pelleted hemp", "base", {}},
    {EntryKind::ingredient, "small pellet 4 mm", "pellet", {{"kind", "pellet", Sort::trait}}},
    {EntryKind::ingredient, "soft hooker", "expander", {{"kind", "pellets", Sort::trait}}},
    {EntryKind::mix, "red carpet", "mix, firm", {{"purpose", "Pellets for carp."}, {"why", "Red, they say."}}},
    {EntryKind::venue, "long pit", "venue", {{"rule", "No boats."}}},
};

std::vector<std::string> names_of_found(const std::vector<std::string>& words) {
    std::vector<std::string> names;
    for (const FoundEntry& found : find_entries(words, searched_entries).found) names.push_back(found.name);
    return names;
}

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE(
    "the word in a name comes before a beginning there, a kind before a note, each whole word before a beginning") {
    CHECK(names_of_found({"pellet"}) ==
          Names{"small pellet 4 mm", "pelleted hemp", "soft hooker", "millet", "red carpet"});
}

TEST_CASE("all the words must stand somewhere, in any order, case and number") {
    CHECK(names_of_found({"PELLETS", "small"}) == Names{"small pellet 4 mm", "millet"});
    CHECK(names_of_found({"pellets 4mm"}) == Names{"small pellet 4 mm"});
    CHECK(names_of_found({"red", "pellet"}) == Names{"red carpet", "millet"});
    CHECK(names_of_found({"boat", "pit"}) == Names{"long pit"});
    CHECK(names_of_found({"pellet", "boat"}).empty());
}

TEST_CASE("two letters are no beginning") {
    CHECK(names_of_found({"pe"}).empty());
    CHECK(names_of_found({"mm"}) == Names{"small pellet 4 mm"});
}

TEST_CASE("where a word was found is told for the one that stands farthest from the name") {
    const FoundEntry found = find_entries({"red", "pellets"}, searched_entries).found.at(0);
    CHECK(found.name == "red carpet");
    CHECK(found.is == "mix, firm");
    CHECK(found.where.key == "purpose");
    CHECK(found.where.text.substr(found.at, found.size) == "Pellets");
    CHECK(find_entries({"carpet", "red"}, searched_entries).found.at(0).where.key == "name");
}

TEST_CASE("where nothing is found names that are near are told, and nothing is near nothing") {
    const FindAnswer answer = find_entries({"pelet", "4mm"}, searched_entries);
    CHECK(answer.found.empty());
    CHECK(answer.near == Names{"small pellet 4 mm"});
    CHECK(find_entries({"xyzzy"}, searched_entries).near.empty());
    CHECK(fault_of([] { find_entries({",", "-"}, searched_entries); }).code == "no-word");
}
