// A pound that is asked for is a pound: what is told in ounces is not rounded to grams first.
#include <catch2/catch.hpp>
#include <regex>

#include "cli/program_run.h"

using program_run::run;

namespace {

/// The ounces in front of each part of a mix, and of all of it.
std::vector<double> ounces_weighed(const std::string& text) {
    static const std::regex cell(" (\\d+)\\.(\\d) oz  ");
    std::vector<double> ounces;
    for (auto it = std::sregex_iterator(text.begin(), text.end(), cell); it != std::sregex_iterator(); ++it)
        ounces.push_back(std::stod((*it)[1].str() + "." + (*it)[2].str()));
    return ounces;
}

}  // namespace

TEST_CASE("what is asked for in ounces and pounds is told back as that") {
    const program_run::Folder folder;
    REQUIRE(run(folder.path(), "usual --units imperial").status == 0);
    for (const char* ounces : {"2", "3", "4", "7", "10", "13"}) {
        CAPTURE(ounces);
        const auto soaked = run(folder.path(), std::string("soak \"fishmeal pellet 6 mm\" --amount ") + ounces + "oz");
        CHECK(soaked.output.find(std::string(ounces) + ".0 oz (") != std::string::npos);
    }
    const auto mixed = run(folder.path(), "mix \"silt bed\" --dry-mass 1lb");
    // silt bed is 4 fishmeal, 3 brown crumb, 2 ground fishmeal pellet, 1 maize meal.
    CHECK(ounces_weighed(mixed.output) == std::vector<double>{6.4, 4.8, 3.2, 1.6});
    CHECK(std::regex_search(mixed.output, std::regex("in all, before water +1 lb  ")));
    CHECK(
        run(folder.path(), "water \"silt bed\" --dry-mass 1lb --added 1floz").output.find("with 1 fl oz of water in") !=
        std::string::npos);
}
