#include <algorithm>
#include <catch2/catch.hpp>
#include <regex>
#include <set>
#include <string>

#include "cli/command.h"
#include "reference/whole_file.h"

using namespace baitwright;

namespace {

/// What stands in the text as code: `mix`, `stock buy`.
std::vector<std::string> code_in(const std::string& text) {
    const std::regex code("`([^`]+)`");
    std::vector<std::string> found;
    for (std::sregex_iterator it(text.begin(), text.end(), code), end; it != end; ++it) found.push_back((*it)[1]);
    return found;
}

bool takes(const CommandSpec& command, std::string_view name) {
    return std::any_of(command.flags.begin(), command.flags.end(), [&](const Flag& flag) { return flag.name == name; });
}

}  // namespace

TEST_CASE("the table of commands names each command, in the order of help, and its link leads somewhere") {
    const std::string document = whole_file(BAITWRIGHT_SOURCE_DIR "/docs/commands.md");
    const std::regex row("\\| \\[`([a-z ]+)`\\]\\(#([a-z-]+)\\) \\|");
    std::vector<std::string> named, known;
    for (std::sregex_iterator it(document.begin(), document.end(), row), end; it != end; ++it) {
        named.push_back((*it)[1]);
        std::string heading = "\n## " + std::string((*it)[2]) + "\n";
        std::replace(heading.begin(), heading.end(), '-', ' ');
        INFO(heading);
        CHECK(document.find(heading) != std::string::npos);
    }
    for (const CommandSpec& command : all_commands()) known.emplace_back(command.verb);
    CHECK(named == known);
}

TEST_CASE("the document says of just those commands that they take --csv which do") {
    const std::string document = whole_file(BAITWRIGHT_SOURCE_DIR "/docs/commands.md");
    const auto end = document.find(" also take `--csv`");
    REQUIRE(end != std::string::npos);
    const auto begin = document.rfind("\n\n", end);
    std::vector<std::string> takers;
    for (const CommandSpec& command : all_commands())
        if (takes(command, "--csv")) takers.emplace_back(command.verb);
    CHECK(code_in(document.substr(begin, end - begin)) == takers);
}

TEST_CASE("each command that asks how many anglers feed, or where one buys, takes what is usual") {
    for (const CommandSpec& command : all_commands()) {
        if (command.verb == "usual" || command.verb == "price list") continue;  // told there; a list of all shops
        for (const Flag& flag : command.flags) {
            CAPTURE(command.verb, flag.name);
            if (flag.name == "--people") CHECK(flag.usual == "people");
            if (flag.name == "--shop") CHECK(flag.usual == "shop");
            if (flag.name == "--at" && flag.value == "SHOP") CHECK(flag.usual == "shop");
        }
    }
}
