#include "page/phone_words.h"

#include <catch2/catch.hpp>

#include "opened_page.h"

using namespace baitwright;

namespace {

/// Nothing to type stands in it: no flag, no command, no unit as it is typed.
bool is_for_a_phone(const std::string& text) {
    for (auto at = text.find("--"); at != std::string::npos; at = text.find("--", at + 2))
        if (at + 2 < text.size() && std::isalpha(static_cast<unsigned char>(text[at + 2]))) return false;
    for (const char* typed : {"baitwright ", "degC", "degF"})
        if (text.find(typed) != std::string::npos) return false;
    return true;
}

/// Every text in what is told or refused, one after the other; keys and fields are for the page.
void gather_texts(const Json& json, std::vector<std::string>& texts) {
    const JsonData* data = json.data();
    if (!data) return;
    if (const auto* text = std::get_if<std::string>(&data->value)) texts.push_back(*text);
    if (const auto* list = std::get_if<JsonData::List>(&data->value))
        for (const Json& item : list->items) gather_texts(item, texts);
    if (const auto* record = std::get_if<JsonData::Record>(&data->value))
        for (std::size_t i = 0; i < record->keys.size(); ++i)
            if (record->keys[i] != "field" && record->keys[i] != "code") gather_texts(record->values[i], texts);
}

void check_words(Bank& bank, const Json& request) {
    Json reply = bank.ask(request);
    for (const char* key : {"json", "mixes", "strategies"}) reply.erase(key);
    std::vector<std::string> texts;
    gather_texts(reply, texts);
    for (const std::string& text : texts) {
        if (is_for_a_phone(text)) continue;
        INFO(json_text(request));
        INFO(text);
        CHECK(is_for_a_phone(text));
    }
    if (reply.contains("errors"))
        for (const Json& error : reply["errors"]) {
            INFO(json_text(request));
            CHECK_FALSE(error["hint"].is_null());
            CHECK(error["code"] != "bug");
        }
}

Json question(const std::string& what, const std::vector<std::string>& words, Json flags = Json::object()) {
    return {{"ask", what}, {"words", words}, {"flags", std::move(flags)}};
}

const std::vector<std::string>& bad_values() {
    static const std::vector<std::string> values{
        "",     "some",  "5",   "-5 g",          "0",    "1e9 kg", "12degC",  "99degC", "3 kg",  "3 l",
        "2.5m", "25:00", "x=y", "brown crumb=5", "soft", "2x",     "5 % off", "1 2 3g", "=400g", "900 h"};
    return values;
}

struct Flagged {
    const char* ask;
    const char* word;
    Json needed;  ///< what it cannot be asked without
    std::vector<std::string> flags;
};

std::vector<Flagged> all_flags() {
    const Json none = Json::object();
    const Json dry{{"--dry-mass", {"1kg"}}}, deep{{"--depth", {"2.5m"}}}, some{{"--amount", {"500g"}}};
    return {
        {"mix",
         "silt bed",
         none,
         {"--wet-volume", "--wet-mass", "--dry-mass", "--cups", "--balls", "--feeders", "--have", "--feel", "--wetness",
          "--state", "--spare", "--people", "--water-temp", "--added", "--with", "--without", "--seed"}},
        {"water", "silt bed", none, {"--dry-mass"}},
        {"water",
         "silt bed",
         dry,
         {"--added", "--weighs", "--minutes", "--feel", "--water-temp", "--cups", "--balls", "--feeders"}},
        {"dry", "silt bed", dry, {"--tub", "--hours", "--air-temp", "--humidity", "--wind", "--feel", "--dry-mass"}},
        {"soak", "fishmeal pellet 4 mm", none, {"--amount", "--grains-of", "--bites", "--length"}},
        {"soak",
         "fishmeal pellet 4 mm",
         some,
         {"--spare", "--water-temp", "--method", "--uptake", "--soaked", "--ready-at", "--with", "--strokes", "--pump",
          "--vessel", "--air", "--cup", "--ball", "--carpet"}},
        {"dose", "sweet liquid", none, {"--amount", "--bait", "--rate", "--as", "--water"}},
        {"dose", "sweet liquid", some, {"--bait", "--rate", "--as", "--water"}},
        {"dose", "silt bed", none, {"--amount", "--rate", "--as", "--feel"}},
        {"drop", "silt bed", none, {"--depth"}},
        {"drop",
         "silt bed",
         deep,
         {"--cup", "--ball", "--feeder", "--loose", "--thrown", "--squeeze", "--feel", "--tow", "--tow-bottom",
          "--water", "--water-temp", "--hook", "--compare", "--want", "--hold", "--breaks-at", "--carpet-seen",
          "--cup-weighs", "--full"}},
        {"cost",
         "open carpet",
         none,
         {"--length", "--feel", "--without", "--price", "--people", "--have", "--reused-frozen", "--on", "--seed"}},
        {"shop",
         "open carpet",
         none,
         {"--on", "--every", "--people", "--at", "--one-shop", "--delivery", "--most-left", "--have"}},
        {"plan",
         "open carpet",
         none,
         {"--start", "--from", "--travel", "--hands", "--venue", "--kit", "--pump", "--vessel", "--water-temp",
          "--air-temp", "--humidity", "--wind", "--tub", "--now", "--left", "--bites", "--length", "--people",
          "--price"}},
        {"advise",
         "",
         none,
         {"--season", "--clarity", "--bed", "--water-temp", "--depth", "--hours", "--tow", "--fish"}}};
}

}  // namespace

TEST_CASE("what the command line says with flags is said on a phone without them") {
    const std::vector<std::pair<std::string, std::string>> pairs{
        {"for example --depth 2.5m", "for example 2.5m"},
        {"say how much, for example --dry-mass 1kg or --wet-volume 3l", "say how much, for example 1kg or 3l"},
        {"say it with --without \"fishmeal, brown\"", "for example \"fishmeal, brown\""},
        {"leave --added out", "leave the water poured in out"},
        {"give one of --feel and --wetness", "give one of the feel and the wetness"},
        {"allow more with --most-left, or leave it out", "allow more with what may be left over, or leave it out"},
        {"say --start 09:30 as well", "say the start (09:30) as well"},
        {"--thrown goes with a ball", "a throw goes with a ball"},
        {"for example --bites 30 --length 5h", "for example 30 with the length 5h"},
        {"from 0 to 45 degC, as in 12degC", "from 0 to 45 \u00b0C, as in 12 \u00b0C"},
        {"a well-set table -- as ever", "a well-set table -- as ever"},
        {"", ""}};
    for (const auto& [terminal, phone] : pairs) CHECK(phone_words(terminal) == phone);
}

TEST_CASE("a fault on a phone has the field that it is a fault of as a key and not in its words") {
    const Fault told = phone_fault({"no-number", "--depth: 'x' is no number", "for example --depth 2.5m"});
    CHECK(told.subject == "--depth");
    CHECK(told.message == "'x' is no number");
    CHECK(phone_fault({"no-depth", "how deep is the water?", "say it with --depth 2.5m"}).subject == "--depth");
    CHECK(phone_fault({"out-of-range", "AMOUNT: that is more than 10 t", "check the unit"}).subject == "AMOUNT");
    CHECK(phone_fault({"x", "it is odd", "leave --spare out"}).subject.empty());
    CHECK(phone_fault({"x", "'I' is a letter", "take another", "part 2"}).subject == "part 2");
}

TEST_CASE("nothing that the engine tells of any entry names a flag or a command") {
    const auto shelf = shipped_shelf();
    Bank bank;
    opened_page::open(bank, *shelf, shelf->strategy_names());
    for (const std::string& name : shelf->recipe_names()) {
        check_words(bank, question("mix", {name}, {{"--dry-mass", {"1kg"}}}));
        check_words(bank, question("water", {name}, {{"--dry-mass", {"1kg"}}, {"--added", {"300ml"}}}));
        check_words(bank,
                    question("dry", {name}, {{"--dry-mass", {"1kg"}}, {"--hours", {"5"}}, {"--tub", {"40x30cm"}}}));
        check_words(bank, question("drop", {name}, {{"--depth", {"2m"}}, {"--compare", {"forms"}}}));
        check_words(bank, question("dose", {name}, {{"--amount", {"1kg"}}}));
        check_words(bank, question("recipe", {name}));
    }
    for (const std::string& name : shelf->strategy_names())
        for (const char* what : {"plan", "cost", "shop", "strategy"}) check_words(bank, question(what, {name}));
    for (const std::string& name : shelf->ingredient_names()) {
        check_words(bank, question("ingredient", {name}));
        check_words(bank, question("mix", {name}, {{"--dry-mass", {"1kg"}}}));
        check_words(bank, question("soak", {name}, {{"--amount", {"500g"}}}));
        check_words(bank, question("drop", {name}, {{"--depth", {"2m"}}, {"--hook", {name}}}));
    }
    check_words(bank, {{"ask", "shed"}, {"entries", Json::array()}});
}

TEST_CASE("no slip is answered with a flag or a command, and each has a hint") {
    const auto shelf = shipped_shelf();
    Bank bank;
    opened_page::open(bank, *shelf, {"open carpet", "tight balls"});
    for (const Flagged& asked : all_flags())
        for (const std::string& flag : asked.flags)
            for (const std::string& value : bad_values()) {
                Json flags = asked.needed;
                flags[flag] = Json::array({value});
                check_words(
                    bank,
                    question(asked.ask,
                             asked.word[0] ? std::vector<std::string>{asked.word} : std::vector<std::string>{}, flags));
            }
    for (const char* what : {"mix", "water", "dry", "soak", "dose", "drop", "cost", "compare", "shop", "plan", "find",
                             "ingredient", "recipe", "strategy", "nonsense"})
        for (const char* word : {"", "silt", "silt bad", "brown crumb", "open carpet", "open carpet=0", "x", "---"})
            check_words(bank, question(what, {word}));
}

TEST_CASE("two flags that do not go together are refused without their names") {
    const auto shelf = shipped_shelf();
    Bank bank;
    opened_page::open(bank, *shelf, {"open carpet"});
    for (const Json& flags :
         std::vector<Json>{{{"--depth", {"2.5m"}}, {"--cup", {"250ml"}}, {"--ball", {"egg"}}},
                           {{"--depth", {"2.5m"}}, {"--compare", {"feels"}}, {"--full", {""}}},
                           {{"--depth", {"2.5m"}}, {"--want", {"carpet=1m"}}, {"--compare", {"feels"}}},
                           {{"--depth", {"2.5m"}}, {"--loose", {"100ml"}}, {"--hold", {"30s"}}}})
        check_words(bank, question("drop", {"silt bed"}, flags));
    check_words(bank, question("mix", {"silt bed"}, {{"--wet-volume", {"3l"}}, {"--dry-mass", {"1kg"}}}));
    check_words(bank, question("mix", {"silt bed"}, {{"--feel", {"soft"}}, {"--wetness", {"1.2"}}}));
    check_words(bank, question("soak", {"fishmeal pellet 4 mm"},
                               {{"--amount", {"1kg"}}, {"--uptake", {"40%"}}, {"--soaked", {"10min"}}}));
    check_words(bank, question("plan", {"open carpet"}, {{"--bites", {"slow"}}}));
    check_words(bank, question("plan", {"open carpet"}, {{"--now", {"11:20"}}, {"--left", {"1 l silt bed"}}}));
    check_words(bank, question("water", {"silt bed"},
                               {{"--dry-mass", {"1kg"}}, {"--added", {"300ml"}}, {"--weighs", {"1.4kg"}}}));
}
