// What the compiler and the linker were asked for against slips in memory, read off the program as it lies there; and
// what the program does where memory is short, or /proc is not there. Sanitizers need to do all of it their own way.
#include <catch2/catch.hpp>

#include "cli/load_module.h"
#include "cli/program_run.h"
#include "quantities/fault.h"

#ifndef BAITWRIGHT_SANITIZED

namespace {

namespace fs = std::filesystem;

/// What a tool of binutils says of the program.
std::string told_of_program(const std::string& tool) {
    const program_run::Folder here;
    const std::string out = (here.path() / "told").string();
    REQUIRE(std::system((tool + " '" BAITWRIGHT_PROGRAM "' >'" + out + "' 2>&1").c_str()) == 0);
    return program_run::whole_file(out);
}

bool says(const std::string& text, const char* word) {
    return text.find(word) != std::string::npos;
}

/// How the program ends with so many kilobytes of address space.
program_run::Outcome run_within(int kilobytes, const std::string& line) {
    const program_run::Folder here;
    const std::string command = "cd '" + here.path().string() + "' && ulimit -v " + std::to_string(kilobytes) +
                                " && HOME=\"$PWD\" XDG_DATA_HOME=\"$PWD/data\" '" BAITWRIGHT_PROGRAM "' " + line +
                                " >output 2>errors";
    const int raw = std::system(command.c_str());
    return {WIFEXITED(raw) ? WEXITSTATUS(raw) : 128 + WTERMSIG(raw), program_run::whole_file(here.path() / "output"),
            program_run::whole_file(here.path() / "errors")};
}

}  // namespace

TEST_CASE("the program's tables are read-only before it begins, and it may lie anywhere in memory") {
    const std::string parts = told_of_program("readelf -lW"), tags = told_of_program("readelf -dW");
    CHECK(says(parts, "GNU_RELRO"));
    CHECK((says(tags, "BIND_NOW") || says(tags, " NOW")));
    CHECK(says(told_of_program("readelf -hW"), "DYN"));
    const std::string stack = parts.substr(parts.find("GNU_STACK"));
    CHECK_FALSE(says(stack.substr(0, stack.find('\n')), "RWE"));
}

TEST_CASE("the program notices where its stack is overwritten") {
    CHECK(says(told_of_program("readelf -sW"), "__stack_chk_fail"));
}

#ifdef BAITWRIGHT_CHECKED  // where it is optimised, as a release is
TEST_CASE("the program checks what it copies and what it indexes") {
    const std::string symbols = told_of_program("readelf -sW");
    CHECK(says(symbols, "_chk@"));
    CHECK(says(told_of_program("readelf -p .rodata"), "__n < this->size()"));
}
#endif

TEST_CASE("with too little memory the program says so, and is not ended by it") {
    int enough_to_begin = 4000;  // below, the system's loader gives up before the program's first line
    while (enough_to_begin < 400000 && run_within(enough_to_begin, "--version").status != 0) enough_to_begin += 250;
    int refused = 0;
    for (int kilobytes = enough_to_begin; kilobytes <= enough_to_begin + 10000; kilobytes += 250) {
        const program_run::Outcome outcome = run_within(kilobytes, "mix \"silt bed\" --wet-volume 3l");
        INFO(kilobytes << " kB: " << outcome.errors);
        CHECK((outcome.status == 0) == outcome.errors.empty());
        if (outcome.status == 0) continue;  // it had enough
        CHECK(outcome.status < 128);
        CHECK(outcome.status != 70);
        CHECK(says(outcome.errors, "hint: "));
        CHECK_FALSE(says(outcome.errors, "damaged"));
        ++refused;
    }
    CHECK(refused > 0);
}

#endif

TEST_CASE("a module is never taken from the folder that one is in") {
    const program_run::Folder here;
    const fs::path before = fs::current_path();
    const baitwright::Module module{"mine.so", "make", "no-module", "a thing", "another thing"};
    program_run::write(here.path() / "mine.so", "");
    fs::current_path(here.path());
    CHECK_THROWS_AS(baitwright::module_of_program(module, "card", ""), baitwright::NotFound);
    CHECK_THROWS_AS(baitwright::module_of_program(module, "card", "baitwright"), baitwright::NotFound);
    CHECK(baitwright::module_of_program(module, "card", here.path() / "baitwright") == here.path() / "mine.so");
    fs::current_path(before);
}
