#include "files/file_faults.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "files/library_file.h"

using namespace baitwright;

TEST_CASE("of a file's faults the first twenty by their places are told, whatever order they were found in") {
    std::string text;
    for (int line = 1; line <= 100; ++line) text += "line " + std::to_string(line) + "\n";
    FileFaults faults(text, "a.toml");
    for (int line = 100; line >= 1; --line) faults.add({line, 1}, "slip", "slip", "mend it");
    CHECK(faults.count() == 100);
    CHECK(faults.tells_of({20, 0}));
    CHECK_FALSE(faults.tells_of({21, 1}));
    const std::vector<Fault> told = faults.in_file_order();
    REQUIRE(told.size() == 21);
    CHECK(told[0].source_line == "line 1");
    CHECK(told[19].source_line == "line 20");
    CHECK(told[20].more == 80);
}

TEST_CASE("faults of one place are told in the order in which they were found") {
    FileFaults faults("a\n", "a.toml");
    for (const char* code : {"first", "second", "third"}) faults.add({1, 1}, code, "slip", "mend it");
    const std::vector<Fault> told = faults.in_file_order();
    REQUIRE(told.size() == 3);
    CHECK(told[0].code == "first");
    CHECK(told[2].code == "third");
}

TEST_CASE("a file of more values than a library has is refused before it is read") {
    std::string text = "cautions = [";
    for (int i = 0; i < 300001; ++i) text += "1,";
    const LibraryFile file = read_library_file(text + "]\n", "a.toml");
    REQUIRE(file.faults.size() == 1);
    CHECK(file.faults[0].code == "too-large");
}

TEST_CASE("commas and brackets in quotes and remarks are no values") {
    const std::string many(300001, ',');
    const LibraryFile file = read_library_file("# " + many + "\nname = \"" + many + "\"\n", "a.toml");
    CHECK(std::none_of(file.faults.begin(), file.faults.end(),
                       [](const Fault& fault) { return fault.code == "too-large"; }));
}
