// What the fuzz targets found worth keeping, replayed in every build, and so under the sanitizers too. The seeds of a
// library file are replayed by `tests/files/seeds_test.cpp`.
#include <algorithm>
#include <catch2/catch.hpp>
#include <vector>

#include "cli/program_run.h"
#include "fuzz/check_command_line.h"
#include "fuzz/check_csv.h"
#include "fuzz/check_notes.h"
#include "fuzz/check_page.h"
#include "fuzz/check_quantities.h"
#include "fuzz/check_store_file.h"

using namespace baitwright;

namespace {

template <class Check>
void replay(const char* target, std::size_t fewest, Check&& check) {
    std::vector<std::filesystem::path> seeds;
    const auto folder = std::filesystem::path(BAITWRIGHT_SOURCE_DIR) / "tests" / "fuzz" / "seeds" / target;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) seeds.push_back(entry.path());
    std::sort(seeds.begin(), seeds.end());
    CHECK(seeds.size() >= fewest);
    for (const auto& seed : seeds) {
        CAPTURE(seed.filename().string());
        CHECK(check(program_run::whole_file(seed)) == "");
    }
}

}  // namespace

TEST_CASE("every fuzz seed of an amount is read to a value that comes back, or refused in words") {
    replay("quantities", 20, fuzz::broken_amount);
}

TEST_CASE("every fuzz seed of a CSV file keeps what is promised of any text") {
    replay("csv", 20, fuzz::broken_csv);
}

TEST_CASE("every fuzz seed of session notes keeps what is promised of any text") {
    replay("notes", 20, fuzz::broken_notes);
}

TEST_CASE("every fuzz seed of a request to the page's engine is replied to") {
    replay("page", 20, fuzz::broken_page);
}

TEST_CASE("every fuzz seed of a command line is answered, or refused in words") {
    replay("command_line", 20, fuzz::broken_command_line);
}

TEST_CASE("every fuzz seed of a store's file is read, or refused in words") {
    replay("store_file", 20, fuzz::broken_store);
}

TEST_CASE("the fuzz targets tell a broken promise from a kept one") {
    CHECK(fuzz::lacking({}) != "");
    CHECK(fuzz::lacking({Fault{"code", "message", ""}}) != "");
    CHECK(fuzz::lacking({Fault{"code", "message", "hint"}}) == "");
    CHECK(fuzz::lacking_in_file({Fault{"code", "message", "hint"}}) != "");
    CHECK(fuzz::wrong_with([]() -> std::string { throw std::out_of_range("at"); }) != "");
    CHECK(fuzz::wrong_with([]() -> std::string { throw InputError("code", "message", "hint"); }) == "");
    CHECK(fuzz::leads_out("../a"));
    CHECK(fuzz::leads_out("--store=/tmp/a"));
    CHECK(fuzz::leads_out("-o/tmp/a"));
    CHECK_FALSE(fuzz::leads_out("./case.toml"));
}

TEST_CASE("the fuzz target of stores begins with one that has something of each kind") {
    const fuzz::FuzzFolder& folder = fuzz::fuzz_folder();
    const fuzz::FuzzFolder::Inside inside(folder);
    folder.lay(folder.store());
    for (const char* word : {"brown crumb", "maize meal", "silt bed"})
        CHECK(run_program({"stock"}).output.find(word) != std::string::npos);
    CHECK(run_program({"log", "list"}).output.find("bream") != std::string::npos);
    CHECK(run_program({"price", "list"}).output.find("the mill") != std::string::npos);
    for (const auto& command : fuzz::reading_commands()) {
        CAPTURE(command[0]);
        CHECK(fuzz::wrong_with_run(command) == "");
    }
}
