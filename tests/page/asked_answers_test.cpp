#include <catch2/catch.hpp>

#include "cli/program_run.h"
#include "opened_page.h"
#include "page/advice_data.h"

using namespace baitwright;

namespace {

using Flags = std::vector<std::pair<std::string, std::string>>;

/// A question, in the words of both.
struct Asked {
    std::string ask, command;
    std::vector<std::string> words;
    Flags flags = {};
};

std::string quoted(const std::string& text) {
    return " '" + text + "'";
}

std::string typed_line(const Asked& asked) {
    std::string line = asked.command;
    for (const std::string& word : asked.words) line += quoted(word);
    for (const auto& [flag, value] : asked.flags) line += " " + flag + (value.empty() ? "" : quoted(value));
    return line;
}

Json request_of(const Asked& asked) {
    Json flags = Json::object();
    for (const auto& [flag, value] : asked.flags) {
        std::vector<std::string> values = flags.contains(flag) ? flags[flag].texts() : std::vector<std::string>{};
        values.push_back(value);
        flags[flag] = values;
    }
    return {{"ask", asked.ask}, {"words", asked.words}, {"flags", flags}, {"give", {"told", "json"}}};
}

/// All letters that are told, without what only sets them.
std::string letters_of(const std::string& text) {
    std::string letters;
    for (const char letter : text)
        if (letter != ' ' && letter != '\n') letters += letter;
    return letters;
}

std::string first_letters(const Json& told) {
    return letters_of(told[0].contains("text") ? told[0]["text"].text() : told[0]["rows"][0][0].text());
}

void check_like_the_program(Bank& bank, const program_run::Folder& folder, const Asked& asked) {
    const std::string line = typed_line(asked);
    INFO(line);
    const program_run::Outcome ran = program_run::run(folder.path(), line + " --json");
    const Json reply = bank.ask(request_of(asked));
    INFO(json_text(reply));
    INFO(ran.errors);
    REQUIRE(reply.contains("json"));
    CHECK(reply["status"] == ran.status);
    const auto json = parsed_json(ran.output);
    REQUIRE(json);
    CHECK(json_text(reply["json"]) == json_text(*json));
    const std::string said = letters_of(program_run::run(folder.path(), line).output);
    REQUIRE_FALSE(reply["told"].empty());
    CHECK(said.find(first_letters(reply["told"])) != std::string::npos);
}

}  // namespace

TEST_CASE("what else is asked on the page is answered as the command of that name answers") {
    const auto shelf = shipped_shelf();
    Bank bank;
    opened_page::open(bank, *shelf, {"open carpet", "tight balls", "cold water"}, program_run::today);
    const program_run::Folder folder;
    const std::vector<Asked> questions{
        {"dose", "dose", {"sweet liquid"}, {{"--amount", "500g"}, {"--rate", "20 ml per kg dry"}}},
        {"dose", "dose", {"silt bed"}, {{"--amount", "1kg"}}},
        {"compare", "compare", {"open carpet", "tight balls=2"}, {{"--empty-shed", ""}, {"--length", "3h"}}},
        {"shop", "shop", {"open carpet=3", "tight balls"}, {{"--every", "7d"}, {"--empty-shed", ""}}},
        {"shop", "shop", {"open carpet"}, {{"--one-shop", ""}, {"--have", "brown crumb=400g"}, {"--people", "2"}}},
        {"drop", "drop", {"silt bed"}, {{"--depth", "2.5m"}, {"--compare", "forms"}}},
        {"drop", "drop", {"silt bed"}, {{"--depth", "2.5m"}, {"--want", "carpet=1.2m"}}},
        {"soak", "soak", {"fishmeal pellet 4 mm"}, {{"--amount", "500g"}, {"--compare-temps", ""}}},
        {"mix", "mix", {"brown crumb"}, {{"--dry-mass", "1kg"}}},
        {"recipe", "recipe show", {"silt bed"}},
        {"strategy", "strategy show", {"open carpet"}},
        {"ingredient", "ingredient show", {"brown crumb"}},
        {"find", "find", {"hemp", "cooked"}},
    };
    for (const Asked& asked : questions) check_like_the_program(bank, folder, asked);
}

TEST_CASE("advice on a page of every strategy is the command's") {
    const auto shelf = shipped_shelf();
    Bank bank;
    opened_page::open(bank, *shelf, shelf->strategy_names(), program_run::today);
    const program_run::Folder folder;
    for (const Flags& flags :
         std::vector<Flags>{{{"--water-temp", "6degC"}, {"--clarity", "clear"}, {"--fish", "roach"}},
                            {{"--season", "summer"}, {"--hours", "5h"}, {"--fish", "bream"}},
                            {{"--depth", "6m"}, {"--tow", "12cm/s"}, {"--bed", "pale"}},
                            {{"--clarity", "clear"}, {"--bed", "pale"}, {"--depth", "0.5m"}},
                            {}})
        check_like_the_program(bank, folder, {"advise", "advise", {}, flags});
}

TEST_CASE("the rules of advice go with a page, there and back") {
    const std::vector<AdviceRule> rules = advice_rules({});
    const Json data = advice_data(rules);
    CHECK(json_text(advice_data(advice_in(*parsed_json(json_text(data))))) == json_text(data));
    REQUIRE(data.size() == rules.size());
    CHECK(advice_in(data)[0].when.temperature.below == rules[0].when.temperature.below);
    CHECK(advice_in(data)[0].share->high == rules[0].share->high);
    int give_way = 0, speak_against = 0;
    for (std::size_t i = 0; i < rules.size(); ++i) {
        const AdviceRule there = advice_in(data)[i];
        CHECK(there.unless.bed == rules[i].unless.bed);
        CHECK(there.unless.tow.from == rules[i].unless.tow.from);
        CHECK(there.against_forms == rules[i].against_forms);
        CHECK(there.against_above == rules[i].against_above);
        give_way += !there.unless.bed.empty();
        speak_against += !there.against_forms.empty();
    }
    CHECK((give_way > 0 && speak_against > 0));
}

TEST_CASE("each new question refuses a slip as the command does") {
    const auto shelf = shipped_shelf();
    Bank bank;
    opened_page::open(bank, *shelf, {"open carpet", "tight balls"}, program_run::today);
    const program_run::Folder folder;
    const std::vector<Asked> slips{
        {"dose", "dose", {"sweet liqid"}},
        {"dose", "dose", {"silt bed"}, {{"--rate", "20 ml per kg dry"}}},
        {"compare", "compare", {"open carpet"}},
        {"compare", "compare", {"open carpet", "OPEN carpet"}},
        {"shop", "shop", {"open carpet=500"}},
        {"shop", "shop", {"open carpet"}, {{"--every", "36h"}}},
        {"drop", "drop", {"silt bed"}, {{"--depth", "2.5m"}, {"--compare", "colours"}}},
        {"mix", "mix", {"fishmeal pellet 8 mm"}},
        {"advise", "advise", {}, {{"--season", "monsoon"}}},
        {"recipe", "recipe show", {"silt bad"}},
    };
    for (const Asked& asked : slips) {
        INFO(typed_line(asked));
        const Json reply = bank.ask(request_of(asked));
        const auto errors = parsed_json(program_run::run(folder.path(), typed_line(asked) + " --json").errors);
        REQUIRE(errors);
        REQUIRE(reply.contains("errors"));
        REQUIRE(reply["errors"].size() == errors->at("errors").size());
        CHECK(reply["errors"][0]["code"] == errors->at("errors")[0]["code"]);
    }
}
