#include <catch2/catch.hpp>

#include "program_run.h"

namespace {

std::string soak_told(const std::string& flags, const std::string& locale) {
    const program_run::Folder folder;
    return program_run::run(folder.path(), "soak 'fishmeal pellet 4 mm' --amount 500g " + flags, "/dev/null", locale)
        .output;
}

}  // namespace

TEST_CASE("temperatures have a degree sign where the terminal takes UTF-8, and only there") {
    CHECK(soak_told("", "en_GB.utf8").find("water at 15 °C;") != std::string::npos);
    CHECK(soak_told("", "C.UTF-8").find("water at 15 °C;") != std::string::npos);
    CHECK(soak_told("", "C").find("water at 15 degC;") != std::string::npos);
    CHECK(soak_told("", "'' LC_CTYPE=POSIX LANG=C.UTF-8").find("water at 15 degC;") != std::string::npos);
    CHECK(soak_told("", "'' LC_CTYPE= LANG=C.UTF-8").find("water at 15 °C;") != std::string::npos);
}

TEST_CASE("a temperature is typed as C, degC or °C") {
    const std::string cold = soak_told("--water-temp 8degC", "C.UTF-8");
    CHECK(cold.find("water at 8 °C;") != std::string::npos);
    for (const char* typed : {"8C", "'8 C'", "8°C", "'8 °C'", "'8 degC'"})
        CHECK(soak_told(std::string("--water-temp ") + typed, "C.UTF-8") == cold);
}
