// The sheet as a person gets it: what other programs read out of the PDF (poppler), its bytes, its file, and what the
// program loads for it.
#include <algorithm>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "bait/kitchen_rounding.h"
#include "cli/program_run.h"
#include "quantities/units.h"
#include "report/display.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

std::string words_of(const fs::path& folder, const std::string& command) {
    const fs::path out = folder / "read";
    REQUIRE(std::system(("cd '" + folder.string() + "' && " + command + " >read 2>&1").c_str()) == 0);
    return program_run::whole_file(out);
}

std::string one_line(const std::string& text) {
    std::string line;
    for (const char letter : text)
        if (letter != '\n' || (!line.empty() && line.back() != ' ')) line += letter == '\n' ? ' ' : letter;
    return line;
}

std::vector<std::string> shipped_strategies() {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(fs::path(BAITWRIGHT_SOURCE_DIR) / "recipes" / "strategies")) {
        std::string name = entry.path().stem().string();
        std::replace(name.begin(), name.end(), '-', ' ');
        names.push_back(name);
    }
    return names;
}

void add_mass(std::set<std::string>& amounts, const Json& grams) {
    if (grams.is_number() && grams.get<double>() > 0.5) amounts.insert(shown_weighed(grams.get<double>() * gram));
}

void add_water(std::set<std::string>& amounts, const Json& grams) {
    if (grams.is_number() && grams.get<double>() > 0.5)
        amounts.insert(shown_water(kitchen_water(grams.get<double>() * gram)));
}

/// What `plan --json` says is to be weighed, poured and fed, as it is shown. Liquids are shown by volume.
std::set<std::string> amounts_of(const Json& plan) {
    std::set<std::string> amounts;
    for (const Json& feed : plan["feeds"]) add_mass(amounts, feed["mass_g"]);
    for (const Json& batch : plan["batches"]) {
        add_water(amounts, batch["water_first_g"]);
        add_water(amounts, batch["water_rest_g"]);
    }
    for (const Json& soak : plan["soaks"]) {
        add_mass(amounts, soak["dry_mass_g"]);
        add_water(amounts, soak["water_to_pour_g"]);
    }
    const std::set<std::string> watery{"pump", "pour on", "first wetting", "second wetting"};
    for (const Json& job : plan["prep"]) {
        if (job["task"] == "stir in")  // each by itself, in its words
            for (const Json& portion : job["portions"]) add_mass(amounts, portion["amount_g"]);
        else
            watery.count(job["task"]) ? add_water(amounts, job["amount_g"]) : add_mass(amounts, job["amount_g"]);
    }
    add_water(amounts, plan["water_to_carry_g"]);
    add_mass(amounts, plan["wet_mass_g"]);
    return amounts;
}

const std::string forty_feeds = [] {
    std::string text = "name = \"forty\"\nlength = \"6 h\"\n";
    for (int i = 0; i < 40; ++i)
        text += "[[feed]]\nevery = \"" + std::to_string(20 + i) + " min\"\nof = \"silt bed\"\nas = \"cup\"\nsize = \"" +
                std::to_string(100 + i) + " ml\"\n";
    return text;
}();

}  // namespace

TEST_CASE("a sheet is one or two tagged A5 pages, and every amount of the plan can be read out of it") {
    const program_run::Folder here;
    for (const std::string& name : shipped_strategies()) {
        INFO(name);
        const std::string of = " \"" + name + "\" --start 09:30";
        REQUIRE(program_run::run(here.path(), "card" + of + " -o sheet.pdf --replace").status == 0);
        const std::string facts = words_of(here.path(), "pdfinfo sheet.pdf");
        CHECK((facts.find("Pages:           1\n") != std::string::npos ||
               facts.find("Pages:           2\n") != std::string::npos));
        CHECK(facts.find("Page size:       419.528 x 595.276 pts") != std::string::npos);  // 148 mm x 210 mm (ISO 216)
        CHECK(facts.find("Tagged:          yes") != std::string::npos);
        CHECK(facts.find("Title:           " + name) != std::string::npos);
        CHECK(program_run::whole_file(here.path() / "sheet.pdf").find("/Lang (en-GB)") != std::string::npos);
        const std::string words = one_line(words_of(here.path(), "pdftotext -raw sheet.pdf -"));
        const Json plan = Json::parse(program_run::run(here.path(), "plan" + of + " --json").output);
        std::set<std::string> amounts = amounts_of(plan);
        const Json card =
            Json::parse(program_run::run(here.path(), "card" + of + " -o sheet.pdf --replace --json").output);
        for (const Json& section : card["sheet"]["sections"])
            if (section["heading"] != "In all" || card["lines_left_out"] == 0)  // what is doubled goes first
                for (const Json& row : section["rows"]) {
                    amounts.insert(row["amount"].get<std::string>());
                    amounts.insert(row["also"].get<std::string>());
                }
        CHECK(amounts.size() > 5);
        for (const std::string& amount : amounts) {
            INFO(amount);
            CHECK(words.find(amount) != std::string::npos);
        }
    }
}

TEST_CASE("the tags of a sheet give its words in the order of reading") {
    const program_run::Folder here;
    REQUIRE(program_run::run(here.path(), "card \"open carpet\" -o sheet.pdf").status == 0);
    const std::string tree = words_of(here.path(), "pdfinfo -struct-text sheet.pdf");
    const auto title = tree.find("H1"), heading = tree.find("H2"), table = tree.find("Table"),
               cell = tree.find("\"fishmeal, brown\""), list = tree.find("LBody");
    REQUIRE(list != std::string::npos);
    CHECK(title < heading);
    CHECK(heading < table);
    CHECK(table < cell);
    CHECK(cell < list);
}

TEST_CASE("the same sheet has the same bytes, in each format") {
    const program_run::Folder here;
    for (const std::string format : {"pdf", "svg", "png"}) {
        INFO(format);
        REQUIRE(program_run::run(here.path(), "card \"tight balls\" -o one." + format).status == 0);
        REQUIRE(program_run::run(here.path(), "card \"tight balls\" -o two." + format).status == 0);
        const std::string bytes = program_run::whole_file(here.path() / ("one." + format));
        CHECK(bytes.size() > 1000);
        CHECK(bytes == program_run::whole_file(here.path() / ("two." + format)));
    }
    CHECK(words_of(here.path(), "pdfinfo one.pdf").find("Nov 25") !=
          std::string::npos);  // the day of the tests, not of the machine
}

TEST_CASE("a sheet that is there is kept unless told, and none is half written") {
    const program_run::Folder here;
    program_run::write(here.path() / "sheet.pdf", "mine");
    const auto kept = program_run::run(here.path(), "card margin -o sheet.pdf");
    CHECK(kept.status == 73);
    CHECK(kept.errors.find("--replace") != std::string::npos);
    CHECK(program_run::whole_file(here.path() / "sheet.pdf") == "mine");
    CHECK(program_run::run(here.path(), "card margin -o sheet.pdf --replace").status == 0);
    CHECK(program_run::whole_file(here.path() / "sheet.pdf").substr(0, 4) == "%PDF");
    const auto nowhere = program_run::run(here.path(), "card margin -o no-such-folder/sheet.pdf");
    CHECK(nowhere.status == 73);
    CHECK_FALSE(fs::exists(here.path() / "no-such-folder"));
}

TEST_CASE("accents stand on a sheet as they were written") {
    const program_run::Folder here;
    program_run::write(
        here.path() / "peche.toml",
        "name = \"pêche à l'épuisette, Köder, łąka\"\nlength = \"2 h\"\n[[feed]]\nat = \"0 min\"\nof = \"silt bed\"\nas = \"cup\"\nsize = \"250 ml\"\n");
    REQUIRE(program_run::run(here.path(), "card peche.toml -o sheet.pdf").status == 0);
    CHECK(one_line(words_of(here.path(), "pdftotext sheet.pdf -")).find("pêche à l'épuisette, Köder, łąka") !=
          std::string::npos);
    REQUIRE(program_run::run(here.path(), "card peche.toml -o sheet.svg").status == 0);
    CHECK(program_run::whole_file(here.path() / "sheet.svg").find("<title>pêche à l'épuisette, Köder, łąka</title>") !=
          std::string::npos);
}

TEST_CASE("forty feeds take more pages, and each of them is there in letters of 9 pt or more") {
    const program_run::Folder here;
    program_run::write(here.path() / "forty.toml", forty_feeds);
    const auto told = program_run::run(here.path(), "card forty.toml -o sheet.pdf --json");
    REQUIRE(told.status == 0);
    const Json card = Json::parse(told.output);
    CHECK(card["letters_pt"] >= 9);
    CHECK(card["pages"] > 1);
    const std::string words = one_line(words_of(here.path(), "pdftotext -raw sheet.pdf -"));
    for (int i = 0; i < 40; ++i)
        CHECK(words.find("1 cup of " + std::to_string(100 + i) + " ml, silt bed") != std::string::npos);
    CHECK(words_of(here.path(), "pdfinfo sheet.pdf").find("Pages:           " + card["pages"].dump() + "\n") !=
          std::string::npos);
    // No word stands outside the margins: the boxes of all words, in points from the upper left corner.
    std::istringstream boxes(words_of(here.path(), "pdftotext -bbox sheet.pdf -"));
    int found = 0;
    for (std::string line; std::getline(boxes, line);) {
        double x1 = 0, y1 = 0, x2 = 0, y2 = 0;
        if (std::sscanf(line.c_str(), " <word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\" yMax=\"%lf\"", &x1, &y1, &x2,
                        &y2) != 4)
            continue;
        ++found;
        INFO(line);
        CHECK(x1 > 19.8);  // the margin is 7 mm
        CHECK(x2 < 419.5 - 19.8);
        CHECK(y1 > 15);
        CHECK(y2 < 595.3 - 15);
    }
    CHECK(found > 100);
}

TEST_CASE("only card loads Pango") {
    const program_run::Folder here;
    const auto loads = [&](const std::string& line) {
        program_run::run(here.path(), line);
        const std::string command = "cd '" + here.path().string() +
                                    "' && HOME=\"$PWD\" XDG_DATA_HOME=\"$PWD/data\" LD_DEBUG=files '" +
                                    BAITWRIGHT_PROGRAM + "' " + line + " >read 2>&1";
        (void)!std::system(command.c_str());
        return program_run::whole_file(here.path() / "read").find("libpango") != std::string::npos;
    };
    CHECK(loads("card margin -o sheet.pdf --replace"));
    for (const char* line : {"mix \"silt bed\" --wet-volume 3l", "plan margin", "cost margin", "strategy list",
                             "advise --season winter", "--help", "card margin -o sheet.txt"}) {
        INFO(line);
        CHECK_FALSE(loads(line));
    }
}

TEST_CASE("without its drawing, card says what is missing and writes nothing") {
    const program_run::Folder here;
    fs::copy_file(BAITWRIGHT_PROGRAM, here.path() / "alone");
    const std::string command =
        "cd '" + here.path().string() + "' && ./alone card margin -o sheet.pdf --store store.db >read 2>&1";
    CHECK(WEXITSTATUS(std::system(command.c_str())) == 66);
    const std::string told = program_run::whole_file(here.path() / "read");
    CHECK(told.find("baitwright_card.so") != std::string::npos);
    CHECK(told.find("libpango1.0-dev") != std::string::npos);
    CHECK_FALSE(fs::exists(here.path() / "sheet.pdf"));
}
