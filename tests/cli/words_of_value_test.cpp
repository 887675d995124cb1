// A flag's value typed in several words, without quotes: read as the quoted one, and no recipe lost in it.
#include "cli/words_of_value.h"

#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <sstream>

#include "cli/command.h"
#include "cli/parse_arguments.h"
#include "quantities/number_text.h"

using namespace baitwright;

namespace {

const CommandSpec& command_called(std::string_view verb) {
    const auto& all = all_commands();
    return *std::find_if(all.begin(), all.end(), [&](const CommandSpec& command) { return command.verb == verb; });
}

std::vector<std::string> parted(const std::string& text) {
    std::istringstream in(text);
    std::vector<std::string> words;
    for (std::string word; in >> word;) words.push_back(word);
    return words;
}

/// The flag's value, typed in words before the name and behind it.
void check_joined(const char* verb, const std::string& flag, const std::string& value) {
    CAPTURE(verb, flag, value);
    const CommandSpec& command = command_called(verb);
    std::vector<std::string> before{flag};
    for (const std::string& word : parted(value)) before.push_back(word);
    std::vector<std::string> behind{"silt bed"};
    behind.insert(behind.end(), before.begin(), before.end());
    std::vector<std::string> equals = before;
    equals.erase(equals.begin());
    equals.front() = flag + '=' + equals.front();
    before.emplace_back("silt bed");
    equals.emplace_back("silt bed");
    for (const auto& given : {before, behind, equals}) {
        const Arguments read = parse_arguments(command, given);
        CHECK(read.value(flag) == value);
        CHECK(read.words() == std::vector<std::string>{"silt bed"});
    }
}

}  // namespace

TEST_CASE("an amount in several words is one value, and the name beside it stays a name") {
    check_joined("mix", "--dry-mass", "1.5 kg");
    check_joined("mix", "--dry-mass", "1 lb 4 oz");
    check_joined("mix", "--dry-mass", "1lb 4oz");
    check_joined("mix", "--dry-mass", "half a kilo");
    check_joined("mix", "--wet-volume", "a pint and a half");
    check_joined("mix", "--wet-volume", "three quarters of a litre");
    check_joined("mix", "--wet-volume", "20 fl oz");
    check_joined("mix", "--water-temp", "8 deg C");
    check_joined("mix", "--water-temp", "8 °C");
    check_joined("mix", "--spare", "10 %");
    check_joined("mix", "--cups", "4 x 250 ml");
    check_joined("mix", "--cups", "4x 250 ml");
    check_joined("mix", "--cups", "4 x cup 250");
    check_joined("mix", "--cups", "4 x half a pint");
    check_joined("mix", "--balls", "12 x 55mm");
    check_joined("mix", "--balls", "12 x golf ball");
    check_joined("mix", "--feeders", "20 × 30 ml");
    check_joined("mix", "--have", "crumb=400 g");
    check_joined("drop", "--depth", "8 ft 6 in");
    check_joined("drop", "--depth", "8 ' 6 \"");
    check_joined("drop", "--tow", "5 cm/s");
    check_joined("dry", "--tub", "40 x 30 cm");
    check_joined("dry", "--hours", "2 h 30 min");
    check_joined("dry", "--hours", "an hour and a half");
    check_joined("plan", "--start", "9 am");
    check_joined("plan", "--start", "9.30 p.m.");
    check_joined("plan", "--from", "40 min");
    check_joined("dose", "--rate", "25 ml per kg dry");
    check_joined("soak", "--with", "glycerol=20 ml");
}

TEST_CASE("a word that is no unit of the amount before it is left for the command") {
    const auto words_behind = [](const char* takes, const char* value, std::vector<std::string> after) {
        return words_of_value(takes, value, after);
    };
    CHECK(words_behind("MASS", "1.5kg", {"silt", "bed"}) == 0);
    CHECK(words_behind("MASS", "1.5", {"silt", "bed"}) == 0);
    CHECK(words_behind("MASS", "1.5", {"kg", "bed"}) == 1);
    CHECK(words_behind("MASS", "1.5", {"kg", "20"}) == 1);
    CHECK(words_behind("MASS", "1,5", {"kg"}) == 1);  // for its readers to refuse, with a better hint
    CHECK(words_behind("TIME", "2h", {"30"}) == 0);
    CHECK(words_behind("TIME", "2", {"h", "30"}) == 1);
    CHECK(words_behind("LENGTH", "8ft", {"6 in"}) == 0);
    CHECK(words_behind("CLOCK", "9", {"silt bed"}) == 0);
    CHECK(words_behind("CLOCK", "09:30", {"am"}) == 1);
    CHECK(words_behind("COUNTxSIZE", "4", {"x", "silt bed"}) == 0);
    CHECK(words_behind("COUNTxSIZE", "4", {"kg"}) == 0);
    CHECK(words_behind("NUMBER", "4", {"kg"}) == 0);
    CHECK(words_behind("FEEL", "a", {"pint"}) == 0);
    CHECK(words_behind("ITEM", "4", {"pt"}) == 0);
    CHECK(words_behind("MASS", "half", {}) == 0);
}

TEST_CASE("an amount in words of its own reads as the quoted one, whatever its numbers") {
    CHECK(rc::check([] {
        const std::string large = *rc::gen::element<std::string>("kg", "lb", "gms", "stone", "ft", "pints", "hrs", "%"),
                          number = number_text(*rc::gen::inRange(1, 4000) / 8.0);
        std::vector<std::string> given{"silt bed", "--dry-mass", number, large};
        if (large == "lb") {
            given.push_back(std::to_string(*rc::gen::inRange(0, 16)));
            given.emplace_back("oz");
        }
        std::string quoted = number;
        for (std::size_t i = 3; i < given.size(); ++i) quoted += ' ' + given[i];
        const CommandSpec& mix = command_called("mix");
        RC_ASSERT(parse_arguments(mix, given).value("--dry-mass") ==
                  parse_arguments(mix, {"silt bed", "--dry-mass", quoted}).value("--dry-mass"));
    }));
}
