// How a command line is read while it is typed, and how a name must be typed for bash to take it for itself.
#include "cli/typed_line.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "cli/program_run.h"

using namespace baitwright;

namespace {

const std::string breaks_of_bash = " \t\n\"'><=;|&(:";
using Parted = std::vector<std::string>;

TypedLine read_typed(const std::string& line) {
    return typed_line(line, breaks_of_bash);
}

/// What bash makes of it, a word a line.
std::string parted_by_bash(const std::string& typed) {
    const program_run::Folder here;
    program_run::write(here.path() / "line", "printf '%s\\n' " + typed + "\n");
    const std::string path = here.path().string();
    REQUIRE(std::system(("bash '" + path + "/line' >'" + path + "/told' 2>&1").c_str()) == 0);
    return program_run::whole_file(here.path() / "told");
}

}  // namespace

TEST_CASE("a line that is being typed is parted as bash parts it, and the last word may be empty") {
    CHECK(read_typed("baitwright mix si").words == Parted{"baitwright", "mix", "si"});
    CHECK(read_typed("baitwright  mix ").words == Parted{"baitwright", "mix", ""});
    CHECK(read_typed(R"(b "silt bed" 'dark bed' pit\ bed x)").words ==
          Parted{"b", "silt bed", "dark bed", "pit bed", "x"});
    CHECK(read_typed(R"(b "a \"b\" \$c \x" '\' x)").words == Parted{"b", R"(a "b" $c \x)", "\\", "x"});
    CHECK(read_typed(R"(b '' "" x)").words == Parted{"b", "", "", "x"});
    CHECK(read_typed("b si\"lt b\"e").words == Parted{"b", "silt be"});
    CHECK(read_typed("b $HOME/x `y` $(z").words == Parted{"b", "$HOME/x", "`y`", "$(z"});
    CHECK(read_typed("b x\\").words == Parted{"b", "x"});
    CHECK(read_typed("").words == Parted{""});
}

TEST_CASE("the quote that is open is known, and how much bash keeps in front of what is chosen") {
    CHECK(read_typed("b \"silt b").quote == '"');
    CHECK(read_typed("b \"silt b").kept == 0);
    CHECK(read_typed("b 'silt b").quote == '\'');
    CHECK(read_typed("b \"silt\" b").quote == 0);
    CHECK(read_typed("b --feel=fi").kept == 7);
    CHECK(read_typed("b --feel=\"fi").kept == 7);
    CHECK(read_typed("b si\"lt b").kept == 2);
    CHECK(read_typed("b a:b").kept == 2);
    CHECK(read_typed("b a\\:b").kept == 0);
    CHECK(read_typed("b \"a:b").kept == 0);
    CHECK(read_typed("b \"a:\"b").kept == 0);
    CHECK(read_typed("b a:b c").kept == 0);
}

TEST_CASE("a name is typed so that bash takes every letter of it for itself") {
    CHECK(quoted_for_bash("silt bed", 0) == "silt\\ bed");
    CHECK(quoted_for_bash("silt bed", '"') == "silt bed");
    CHECK(quoted_for_bash("it's $5", '"') == "it's \\$5");
    CHECK(quoted_for_bash("it's", '\'') == R"(it'\''s)");
    CHECK(quoted_for_bash("\u990c bed", 0) == "\u990c\\ bed");
    for (const std::string& name : {std::string(R"(it's $(touch pwned) `touch pwned` "x" \ ; & * ? [a] {b,c} <d> # ~)"),
                                    std::string("~"), std::string("a=b:c"), std::string("#1"), std::string("wow!")}) {
        CAPTURE(name);
        CHECK(parted_by_bash(quoted_for_bash(name, 0)) == name + "\n");
        CHECK(parted_by_bash("\"" + quoted_for_bash(name, '"') + "\"") == name + "\n");
        CHECK(parted_by_bash("'" + quoted_for_bash(name, '\'') + "'") == name + "\n");
    }
}

TEST_CASE("what was typed for a name is read as that name again, in any quotes") {
    rc::check([] {
        const auto name = *rc::gen::nonEmpty(rc::gen::container<std::string>(rc::gen::inRange<char>(' ', '\x7f')));
        RC_ASSERT(read_typed("b " + quoted_for_bash(name, 0)).words == (Parted{"b", name}));
        RC_ASSERT(read_typed("b \"" + quoted_for_bash(name, '"') + "\"").words == (Parted{"b", name}));
        RC_ASSERT(read_typed("b '" + quoted_for_bash(name, '\'') + "'").words == (Parted{"b", name}));
    });
}
