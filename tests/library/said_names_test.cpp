// What people say, against the names that are shipped: tests/library/said_name.csv says for each what is found, or
// what the hint must offer.
#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <map>

#include "bait/memory_shelf.h"
#include "library/open_library.h"
#include "quantities/fault_of.h"
#include "quantities/loose_words.h"
#include "quantities/said_name.h"
#include "reference/reference_rows.h"
#include "reference/whole_file.h"

using namespace baitwright;

namespace {

const MemoryShelf& names_shelf() {
    static const auto shipped = shipped_shelf();
    return *shipped;
}

std::vector<reference::Row> sayings() {
    return reference::rows_of(whole_file(BAITWRIGHT_SOURCE_DIR "/tests/library/said_name.csv"));
}

std::string name_found(const std::string& kind, const std::string& said) {
    if (kind == "ingredient") return names_shelf().ingredient(said).name;
    if (kind == "mix") return names_shelf().recipe(said).name;
    return names_shelf().strategy(said).name;
}

std::vector<std::string> parts_of(const std::string& text) {
    std::vector<std::string> parts;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find("; ", at), text.size());
        parts.push_back(text.substr(at, end - at));
        at = end + 2;
    }
    return parts;
}

/// As a person may write it: capitals here and there, more blanks, an s behind words.
std::string rewritten(const std::string& name) {
    std::string said;
    std::size_t at = 0;
    for (const LooseWord& word : loose_words(name)) {
        said += name.substr(at, word.at - at);
        for (std::size_t i = word.at; i < word.at + word.size; ++i)
            said += *rc::gen::arbitrary<bool>() ? static_cast<char>(std::toupper(static_cast<unsigned char>(name[i])))
                                                : name[i];
        if (!word.is_number && word.whole.size() >= 3 && word.whole.back() != 's' && *rc::gen::arbitrary<bool>())
            said += "s";
        at = word.at + word.size;
        if (*rc::gen::arbitrary<bool>()) said += "  ";
    }
    return said;
}

}  // namespace

TEST_CASE("what people say is found among the shipped names, or what they may mean is listed") {
    const auto rows = sayings();
    REQUIRE(rows.size() >= 40);
    for (const reference::Row& row : rows) {
        INFO(row.at("kind") << ": " << row.at("said"));
        REQUIRE(row.at("found").empty() != row.at("offered").empty());
        std::string found;
        const Fault fault = fault_of([&] { found = name_found(row.at("kind"), row.at("said")); });
        CHECK(found == row.at("found"));
        for (const std::string& offered : parts_of(row.at("offered"))) CHECK_THAT(fault.hint, Catch::Contains(offered));
    }
}

TEST_CASE("each shipped name finds itself, in any case, with more blanks and with an s behind its words") {
    const auto names = names_shelf().ingredient_names();
    CHECK(rc::check([&] {
        const std::string name = *rc::gen::elementOf(names);
        const std::string said = rewritten(name);
        RC_LOG() << said;
        RC_ASSERT(names_shelf().ingredient(said).name == name);
    }));
}

TEST_CASE("no two shipped names are the same words") {
    for (const auto& names :
         {names_shelf().ingredient_names(), names_shelf().recipe_names(), names_shelf().strategy_names()})
        for (const std::string& name : names)
            for (const std::string& other : names)
                if (name != other) {
                    INFO(name << " and " << other);
                    CHECK_FALSE(said_alike(name, other));
                }
}

TEST_CASE("a name in a file must be the whole name") {
    CHECK_FALSE(names_shelf().find_ingredient("brown crumbs").has_value());
    CHECK_FALSE(names_shelf().find_recipe("silt").has_value());
    CHECK_FALSE(names_shelf().find_strategy("tight ball").has_value());
}
