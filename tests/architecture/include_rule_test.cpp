// Reads every #include "..." below src/ and holds it against the one-way line of rooms.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "architecture/source_files.h"

using namespace source_files;

namespace {

// quantities <- physics <- bait <- answers <- {questions, files, store, report} <- library <- page <- cli
const std::map<std::string, std::set<std::string>> allowed = [] {
    std::map<std::string, std::set<std::string>> rooms;
    rooms["quantities"] = {};
    rooms["physics"] = {"quantities"};
    rooms["bait"] = {"quantities", "physics"};
    rooms["answers"] = {"quantities", "physics", "bait"};
    const std::set<std::string> domain{"quantities", "physics", "bait", "answers"};
    for (const char* room : {"questions", "files", "store", "report", "solver", "card"}) rooms[room] = domain;
    rooms["card"].insert("report");  // the sheet and the class that draws it
    std::set<std::string> below = domain;
    below.insert({"questions", "files", "store", "report"});
    rooms["library"] = below;
    rooms["page"] = domain;  // runs on a phone, and is written by the command
    rooms["page"].insert({"questions", "files", "report"});
    below.insert({"library", "page"});
    rooms["cli"] = below;
    return rooms;
}();

}  // namespace

TEST_CASE("a room includes only rooms to its left") {
    const std::regex include("#include \"([^\"]+)\"");
    REQUIRE(sources().size() > 50);
    for (const fs::path& path : sources()) {
        const std::string room = fs::relative(path, source_root).begin()->string();
        if (room == "main.cpp") continue;
        INFO(path.string());
        REQUIRE(allowed.count(room) == 1);
        for (const std::string& included : matches(whole_file(path), include)) {
            INFO("includes " << included);
            const std::string its_room = fs::path(included).begin()->string();
            const bool fits = its_room == room || allowed.at(room).count(its_room) == 1;
            CHECK(fits);
        }
    }
}

TEST_CASE("a theme of the answers includes only those to its left") {
    // shared <- pellets <- mix <- {drop, strategy} <- money <- {plan, blend, learn, paid}
    const std::map<std::string, std::set<std::string>> below{
        {"shared", {}},
        {"pellets", {"shared"}},
        {"mix", {"shared", "pellets"}},
        {"drop", {"shared", "pellets", "mix"}},
        {"strategy", {"shared", "pellets", "mix"}},
        {"money", {"shared", "pellets", "mix", "strategy"}},
        {"plan", {"shared", "pellets", "mix", "strategy", "money"}},
        {"blend", {"shared", "pellets", "mix", "strategy", "money"}},
        {"learn", {"shared", "pellets", "mix", "drop", "strategy"}},
        {"paid", {"shared", "strategy", "money"}}};
    const std::regex include("#include \"answers/([^/\"]+)/[^\"]+\"");
    for (const fs::path& path : sources()) {
        const fs::path in_room = fs::relative(path, source_root);
        if (in_room.begin()->string() != "answers") continue;
        const std::string theme = std::next(in_room.begin())->string();
        INFO(path.string());
        REQUIRE(below.count(theme) == 1);
        for (const std::string& included : matches(whole_file(path), include)) {
            INFO("includes " << included);
            CHECK((included == theme || below.at(theme).count(included) == 1));
        }
    }
}

TEST_CASE("questions know what can be asked, and nothing of what is answered") {
    const std::regex include("#include \"answers/([^\"]+)\\.h\"");
    std::size_t asked = 0;
    for (const fs::path& path : sources()) {
        if (fs::relative(path, source_root).begin()->string() != "questions") continue;
        for (const std::string& included : matches(whole_file(path), include)) {
            INFO(path.string() << " includes answers/" << included);
            CHECK((included.ends_with("_request") || included == "shared/check_temperature"));
            ++asked;
        }
    }
    CHECK(asked > 10);
}

TEST_CASE("heavy libraries are known to one room each") {
    const std::map<std::string, std::string> owner{
        {"CLI/", "cli"},        {"SQLiteCpp/", "store"}, {"sqlite3.h", "store"}, {"toml++/", "files"},
        {"utf8proc", "report"}, {"Clp", "solver"},       {"Coin", "solver"},     {"cairo", "card"},
        {"pango", "card"},      {"nlohmann/", "report"}, {"Eigen/", "answers"}};
    const std::regex include("#include <([^>]+)>");
    for (const fs::path& path : sources()) {
        const std::string room = fs::relative(path, source_root).begin()->string();
        for (const std::string& included : matches(whole_file(path), include))
            for (const auto& [library, its_room] : owner)
                if (included.rfind(library, 0) == 0) {
                    INFO(path.string() << " includes " << included);
                    CHECK(room == its_room);
                }
    }
}

TEST_CASE("modules are loaded and never linked: no room includes one, and only the command line loads one") {
    const std::regex include("#include [<\"]([^>\"]+)[>\"]");
    for (const fs::path& path : sources()) {
        const std::string room = fs::relative(path, source_root).begin()->string();
        for (const std::string& included : matches(whole_file(path), include)) {
            INFO(path.string() << " includes " << included);
            const std::string its_room = fs::path(included).begin()->string();
            if (its_room == "solver" || its_room == "card") CHECK(room == its_room);
            if (included == "dlfcn.h") CHECK(room == "cli");
        }
    }
}

TEST_CASE("the rooms that run on a phone touch no file, thread, clock or database") {
    const std::set<std::string> phone{"quantities", "physics", "bait",   "answers",
                                      "questions",  "files",   "report", "page"};
    const std::regex include("#include <([^>]+)>");
    const std::set<std::string> forbidden{"filesystem", "fstream", "thread", "mutex", "ctime", "sqlite3.h"};
    for (const fs::path& path : sources()) {
        if (phone.count(fs::relative(path, source_root).begin()->string()) == 0) continue;
        // What a phone is built without.
        if (path.stem() == "disk" || path.stem() == "new_folder" || path.stem() == "new_name") continue;
        for (const std::string& included : matches(whole_file(path), include)) {
            INFO(path.string() << " includes " << included);
            CHECK(forbidden.count(included) == 0);
        }
        INFO(path.string());
        for (const char* clock :
             {"system_clock", "steady_clock", "high_resolution_clock"})  // of <chrono> only the calendar
            CHECK(whole_file(path).find(clock) == std::string::npos);
    }
}

TEST_CASE("no source file is longer than 300 lines and none has a catch-all name") {
    const std::regex catch_all("util|common|misc|helper|manager|core");
    for (const fs::path& path : sources()) {
        INFO(path.string());
        const std::string text = whole_file(path);
        CHECK(std::count(text.begin(), text.end(), '\n') <= 300);
        CHECK_FALSE(std::regex_search(fs::relative(path, source_root).string(), catch_all));
    }
}

TEST_CASE("an answer is told, printed and judged in one place each") {
    // What only one file may do, and which.
    const std::vector<std::pair<std::string, std::set<std::string>>> places{
        {R"(\bjson_text\()",
         {"report/json.h", "report/json_text.cpp", "cli/result_formats.cpp", "cli/program.cpp",
          "cli/new_store_told.cpp", "cli/usual_told.cpp", "cli/dry_run.cpp"}},
        {R"(\bparagraph\()",
         {"report/text_table.h", "report/text_table.cpp", "report/told.cpp", "cli/help.cpp", "cli/help_topics.cpp",
          "cli/usual_told.cpp", "cli/version.cpp"}},
        {R"(\.answer_is_no\b)", {"report/reply.cpp", "report/shop_report.cpp"}}};
    for (const auto& [what, where] : places)
        for (const fs::path& path : sources()) {
            const std::string name = fs::relative(path, source_root).generic_string();
            if (where.count(name) == 1 || name.starts_with("answers/")) continue;
            INFO(name << " has " << what);
            CHECK_FALSE(std::regex_search(whole_file(path), std::regex(what)));
        }
}
