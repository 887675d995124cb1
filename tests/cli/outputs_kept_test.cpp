// What is written, and where: never over the store, never half, and what is done is said even where the answer is lost.
#include <unistd.h>

#include <catch2/catch.hpp>

#include "cli/program.h"
#include "cli/program_run.h"

namespace {

namespace fs = program_run::fs;

std::string store_in(const program_run::Folder& folder) {
    return program_run::whole_file(folder.path() / "data" / "baitwright" / "baitwright.db");
}

std::size_t entries_in(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

/// Types the line with its answer going to a full disk.
program_run::Outcome run_onto_full_disk(const program_run::Folder& folder, const std::string& line) {
    program_run::run(folder.path(), line + " >/dev/full 2>said; echo $? >status; true");
    return {std::stoi(program_run::whole_file(folder.path() / "status")), "",
            program_run::whole_file(folder.path() / "said")};
}

}  // namespace

TEST_CASE("no answer is written over the store, whatever its name, --replace or not") {
    const program_run::Folder here;
    program_run::run(here.path(), "recipe list --store shed.db");
    fs::create_symlink("shed.db", here.path() / "link.toml");
    fs::create_directory(here.path() / "sub");
    const std::string before = program_run::whole_file(here.path() / "shed.db");
    for (const char* command :
         {"ingredient export --to shed.db", "ingredient export --to link.toml", "ingredient export --to sub/../shed.db",
          "ingredient export --to shed.db-wal", "card margin -o shed.db", "page margin -o shed.db",
          "page margin --site .", "drop \"silt bed\" --depth 2m --plot shed.db"}) {
        INFO(command);
        const program_run::Outcome outcome =
            program_run::run(here.path(), std::string(command) + " --replace --store shed.db");
        CHECK(outcome.status == 64);
        CHECK(outcome.errors.find("is the store") != std::string::npos);
    }
    CHECK(program_run::run(here.path(), "ingredient export --to new.db --store new.db").status == 64);
    CHECK(program_run::whole_file(here.path() / "shed.db") == before);
}

TEST_CASE("a file that cannot be made ends with 73 and a hint, whatever stands in its way") {
    const program_run::Folder here;
    for (const char* loop : {"loop.toml", "loop.toml.pdf", "loop.toml.html"})
        fs::create_symlink(loop, here.path() / loop);
    program_run::write(here.path() / "file", "x");
    for (const std::string& name : {std::string(300, 'a'), std::string("loop.toml"), std::string("file/a.toml"),
                                    std::string("no/a.toml"), std::string(5000, 'a'), std::string("loop.toml/a")})
        for (const char* typed :
             {"ingredient export --to ", "page margin -o ", "card margin -o ", "recipe list --store "}) {
            const std::string command = typed;
            const bool card = command.starts_with("card"), page = command.starts_with("page");
            INFO(command << name.substr(0, 20));
            CHECK(program_run::run(here.path(), command + name + (card ? ".pdf" : page ? ".html" : "")).status == 73);
        }
    CHECK(program_run::run(here.path(), "ingredient export --to " + std::string(250, 'a')).status == 0);
}

TEST_CASE("a change that is made although its answer is lost is said to be made") {
    const program_run::Folder here;
    program_run::run(here.path(), "ingredient export \"brown crumb\" --to my.toml");
    program_run::run(here.path(), "stock buy \"brown crumb\" 5kg");
    for (const char* command :
         {"stock buy \"brown crumb\" 1kg", "stock use \"brown crumb\" 100g", "stock waste \"brown crumb\" 100g",
          "stock count \"brown crumb\" 1kg", "stock undo", "stock keep \"silt bed\" 1kg",
          "price sweetcorn --pack 1kg --is £3", "ingredient add \"my crumb\" --like \"brown crumb\"",
          "ingredient measure \"my crumb\" --absorption \"0.7 g/g\"", "ingredient import my.toml"}) {
        INFO(command);
        const std::string before = store_in(here);
        const program_run::Outcome outcome = run_onto_full_disk(here, command);
        CHECK(outcome.status == 74);
        CHECK(outcome.errors.find("in the store all the same") != std::string::npos);
        if (std::string(command).find("import") == std::string::npos) CHECK(store_in(here) != before);
    }
    const program_run::Outcome asked = run_onto_full_disk(here, "stock");
    CHECK(asked.status == 74);
    CHECK(asked.errors.find("all the same") == std::string::npos);
}

TEST_CASE("a named store is made only where its folder is, and that it was made is said") {
    const program_run::Folder here;
    const program_run::Outcome refused = program_run::run(here.path(), "stock --store sheds/mine.db");
    CHECK(refused.status == 73);
    CHECK(refused.errors.find("there is no folder 'sheds'") != std::string::npos);
    CHECK_FALSE(fs::exists(here.path() / "sheds"));
    const program_run::Outcome made = program_run::run(here.path(), "stock --store mine.db");
    CHECK(made.status == 0);
    CHECK(made.errors.find("a new store was made, 'mine.db'") != std::string::npos);
    CHECK(program_run::run(here.path(), "stock --store mine.db").errors.empty());
    CHECK(program_run::run(here.path(), "stock --json --store other.db").output.find("\"new-store\"") !=
          std::string::npos);
    const program_run::Outcome unknown =
        program_run::run(here.path(), "stock use \"my own crumb\" 1kg --store slip.db");
    CHECK(unknown.status == 66);
    CHECK(unknown.errors.find("is it the one you meant?") != std::string::npos);
}

TEST_CASE("what a killed run left of a file is swept when the file is written again, and nothing else is") {
    const program_run::Folder here;
    const std::string dead = "9999999", own = std::to_string(getpid());
    for (const std::string& name : {".bags.toml." + dead + "-0.new", ".bags.toml." + own + "-0.new",
                                    ".other.toml." + dead + "-0.new", std::string(".bags.toml.mine.new")})
        program_run::write(here.path() / name, "half");
    CHECK(program_run::run(here.path(), "ingredient export --to bags.toml").status == 0);
    CHECK_FALSE(fs::exists(here.path() / (".bags.toml." + dead + "-0.new")));
    for (const std::string& kept :
         {".bags.toml." + own + "-0.new", ".other.toml." + dead + "-0.new", std::string(".bags.toml.mine.new")})
        CHECK(fs::exists(here.path() / kept));
    CHECK(entries_in(here.path()) == 7);  // three kept, the file, the answer, its errors, the usual store's folder
}

TEST_CASE("old versions of an entry can be read back as a file, the last of them live") {
    const program_run::Folder here;
    for (const char* mass : {"400 g", "300 g", "200 g"}) {
        program_run::write(here.path() / "bed.toml",
                           "name = \"my bed\"\n[[part]]\nof = \"brown crumb\"\nmass = \"" + std::string(mass) + "\"\n");
        REQUIRE(program_run::run(here.path(), "recipe add bed.toml").status == 0);
    }
    program_run::write(here.path() / "old.toml", program_run::run(here.path(), "recipe show \"my bed\" --old").output);
    CHECK(program_run::run(here.path(), "recipe check old.toml").status == 0);
    CHECK(program_run::whole_file(here.path() / "old.toml").find("400 g") != std::string::npos);
}
