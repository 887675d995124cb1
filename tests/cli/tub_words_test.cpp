// What `mix` and `water` say of the same tub: one judgement, in the same words.
#include <algorithm>
#include <catch2/catch.hpp>

#include "cli/program_run.h"

namespace {

/// All its letters, however the lines are broken.
std::string letters(std::string text) {
    text.erase(std::remove_if(text.begin(), text.end(), [](unsigned char one) { return std::isspace(one) != 0; }),
               text.end());
    return text;
}

}  // namespace

TEST_CASE("what water tells to do, mix tells in the same words, in one tub or in several") {
    const program_run::Folder here;
    for (const char* dry : {"1kg", "20kg"})
        for (const char* added : {"300ml", "420ml", "600ml", "900ml", "5l", "12l", "30l"}) {
            const std::string tub = "\"silt bed\" --dry-mass " + std::string(dry) + " --added " + added +
                                    " --library " + BAITWRIGHT_SOURCE_DIR + "/recipes";
            CAPTURE(tub);
            const std::string water = letters(program_run::run(here.path(), "water " + tub).output);
            const std::string mix = letters(program_run::run(here.path(), "mix " + tub).output);
            const auto begin = water.find("Dothis"), end = water.find("Holds");
            REQUIRE(begin < end);
            REQUIRE(end != std::string::npos);
            const std::string told = water.substr(begin + 6, end - begin - 6);
            CHECK(told.size() > 20);
            CHECK(mix.find(told) != std::string::npos);
        }
}
