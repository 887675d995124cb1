#include "quantities/said_name.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace baitwright;

namespace {

const std::vector<std::string> sayable{
    "brown crumb",      "brown leam, dry", "fishmeal pellet 4 mm", "fishmeal pellet 6 mm",
    "fishmeal, brown",  "hemp oil",        "micro pellet 2 mm",    "salt",
    "salt water (10 %)"};

std::string meant_by(const std::string& said) {
    const SaidName found = said_name(said, sayable);
    CHECK((!found.name || found.several.empty()));
    return found.name.value_or("");
}

Fault fault_of_saying(const std::string& said) {
    return fault_of_name(said, sayable, {"unknown-thing", "no thing is called so", "see them all"});
}

}  // namespace

TEST_CASE("a name is found as it is said: in any case, in the plural, without commas and blanks") {
    CHECK(meant_by(" BROWN  crumb") == "brown crumb");
    CHECK(meant_by("brown crumbs") == "brown crumb");
    CHECK(meant_by("brown leam dry") == "brown leam, dry");
    CHECK(meant_by("fishmeal pellets 4mm") == "fishmeal pellet 4 mm");
    CHECK(meant_by("salt water 10%") == "salt water (10 %)");
}

TEST_CASE("its beginning is enough where only one begins so") {
    CHECK(meant_by("hemp") == "hemp oil");
    CHECK(meant_by("brown c") == "brown crumb");
    CHECK(meant_by("fishmeal pellet 4") == "fishmeal pellet 4 mm");
    CHECK(meant_by("micro pel") == "micro pellet 2 mm");
    CHECK(meant_by("br").empty());
    CHECK(meant_by("fishmeal pellet").empty());
}

TEST_CASE("a whole name is never in doubt, though others begin with it") {
    CHECK(meant_by("salt") == "salt");
    CHECK(meant_by("salts") == "salt");
}

TEST_CASE("a word in the middle names nothing") {
    CHECK(meant_by("pellet").empty());
    CHECK(meant_by("crumb").empty());
    CHECK(said_name("pellet", sayable).several.empty());
    CHECK(meant_by("").empty());
    CHECK(meant_by("-").empty());
}

TEST_CASE("two names that are the same words are told apart by their full names alone") {
    const std::vector<std::string> twins{"hemp", "hemps"};
    CHECK(said_name("HEMPS", twins).name == "hemps");
    CHECK(said_name("hemp", twins).name == "hemp");
    CHECK(said_name("hemp's", twins).several == twins);
    CHECK(said_name("oil", {"Oil ", "oil"}).name == "Oil ");
    CHECK(said_name("oils", {"Oil", "oil"}).name == "Oil");
}

TEST_CASE("where several may be meant they are listed, those of the sort first") {
    const Fault fault = fault_of_saying("fishmeal");
    CHECK(fault.code == "several-fit");
    CHECK(fault.message == "'fishmeal' may be any of several");
    CHECK(fault.hint ==
          "which of these: 'fishmeal, brown', 'fishmeal pellet 4 mm', 'fishmeal pellet 6 mm'; type one of them");
}

TEST_CASE("where none is meant those that are near are told, and else where to look") {
    CHECK(fault_of_saying("brwon crumb").hint == "did you mean 'brown crumb'?");
    CHECK(fault_of_saying("brwon crumb").code == "unknown-thing");
    CHECK_THAT(fault_of_saying("pellet").hint, Catch::Contains("'fishmeal pellet 6 mm', 'micro pellet 2 mm'; type"));
    CHECK(fault_of_saying("xyz").hint == "see them all");
}

TEST_CASE("whatever names there are, each full name finds itself") {
    CHECK(rc::check([](std::vector<std::string> names) {
        RC_PRE(!names.empty());
        const std::string& one_name = names[*rc::gen::inRange<std::size_t>(0, names.size())];
        const SaidName found = said_name(one_name, names);
        RC_ASSERT(found.name.has_value());
        RC_ASSERT(said_name(*found.name, {one_name}).name == one_name);
    }));
}

TEST_CASE("a name that is added never puts another in doubt, and never takes its place") {
    CHECK(rc::check([] {
        const auto part =
            rc::gen::elementOf(std::vector<std::string>{"hemp", "hemps", "oil", "4 mm", "4mm", "salt", ", raw", "-"});
        const auto name =
            rc::gen::map(rc::gen::container<std::vector<std::string>>(3, part),
                         [](const std::vector<std::string>& parts) { return parts[0] + " " + parts[1] + parts[2]; });
        std::vector<std::string> names = *rc::gen::container<std::vector<std::string>>(name);
        const std::string added = *name;
        std::vector<std::string> more = names;
        more.insert(more.begin(), added);
        for (const std::string& known : names) {
            if (added == known) continue;
            RC_ASSERT(said_name(known, more).name == said_name(known, names).name);
        }
    }));
}
