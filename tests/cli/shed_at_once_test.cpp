// Two bookings typed at the same moment, as two people at one shed would: the processes share a store and nothing else.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "cli/program_run.h"

namespace {

using program_run::run;
using program_run::whole_file;

double left_of(const std::filesystem::path& here, const std::string& name) {
    const auto json = nlohmann::json::parse(run(here, "stock \"" + name + "\" --json").output);
    return json["items"].empty() ? 0 : json["items"][0]["left_g"].get<double>();
}

}  // namespace

TEST_CASE("two bookings at once both succeed, or one is told to try again; what is booked is booked once") {
    const program_run::Folder folder;
    const std::filesystem::path& here = folder.path();
    for (const char* name : {"fishmeal, brown", "brown crumb", "ground fishmeal pellet", "maize meal"})
        REQUIRE(run(here, "stock buy \"" + std::string(name) + "\" 20kg").status == 0);
    int booked = 0;
    for (int round = 0; round < 10; ++round) {
        const std::string booking =
            "mix \"silt bed\" --dry-mass 1kg --book --store data/baitwright/baitwright.db >/dev/null 2>&1; echo $? >";
        run(here, "--version; ( '" BAITWRIGHT_PROGRAM "' " + booking + "first ) & ( '" BAITWRIGHT_PROGRAM "' " +
                      booking + "second ) & wait");
        for (const char* which : {"first", "second"}) {
            const std::string status = whole_file(here / which);
            CHECK((status == "0\n" || status == "75\n"));
            booked += status == "0\n" ? 1 : 0;
        }
    }
    CHECK(booked >= 10);
    // silt bed is 4 fishmeal, 3 brown crumb, 2 ground fishmeal pellet, 1 maize meal.
    CHECK(left_of(here, "fishmeal, brown") == 20000 - 400 * booked);
    CHECK(left_of(here, "brown crumb") == 20000 - 300 * booked);
    CHECK(left_of(here, "maize meal") == 20000 - 100 * booked);
}
