#include "quantities/in_quotes.h"

#include <catch2/catch.hpp>
#include <string>

using namespace baitwright;

TEST_CASE("words are quoted as they were written") {
    CHECK(in_quotes("2½ pt") == "'2½ pt'");
}

TEST_CASE("long words are cut between letters") {
    CHECK(in_quotes(std::string(60, 'a')) == "'" + std::string(60, 'a') + "'");
    CHECK(in_quotes(std::string(61, 'a')) == "'" + std::string(60, 'a') + "...'");
    CHECK(in_quotes(std::string(59, 'a') + "½½") == "'" + std::string(59, 'a') + "...'");
}

TEST_CASE("what could drive a terminal is not quoted") {
    CHECK(in_quotes("a\x1b[31m\n.\x7f") == "'a\\u001b[31m\\u000a.\\u007f'");
}
