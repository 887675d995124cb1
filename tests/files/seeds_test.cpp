#include <catch2/catch.hpp>
#include <filesystem>

#include "files/disk.h"
#include "fuzz/check_library_file.h"

using namespace baitwright;

TEST_CASE("every fuzz seed of a library file keeps what is promised of any text") {
    const auto seeds =
        toml_files_below(std::filesystem::path(BAITWRIGHT_SOURCE_DIR) / "tests" / "fuzz" / "seeds" / "library_file");
    CHECK(seeds.size() >= 20);
    for (const auto& seed : seeds) {
        CAPTURE(seed.filename().string());
        CHECK(broken_promise(read_text_file(seed)) == "");
    }
}

TEST_CASE("bytes that are no text keep what is promised of any text") {
    CHECK(broken_promise(std::string("name = \"\0\"\n", 11)) == "");
    CHECK(broken_promise("\xEF\xBB") == "");
    CHECK(broken_promise("name = \"\xFF\"") == "");
    CHECK(broken_promise("\r\r\r") == "");
}
