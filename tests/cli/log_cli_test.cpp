// The log through the program: edited, carried to another store, and entered all or not at all.
#include <catch2/catch.hpp>
#include <cstdlib>

#include "cli/program_run.h"

using program_run::Folder;
using program_run::Outcome;

namespace {

/// Types `log edit` with that editor named, and with a folder for temporary files of its own.
Outcome log_edited(const Folder& here, const std::string& editor, const std::string& line) {
    const std::filesystem::path temporary = here.path() / "tmp";
    std::filesystem::create_directories(temporary);
    setenv("TMPDIR", temporary.c_str(), 1);
    unsetenv("VISUAL");
    setenv("EDITOR", editor.c_str(), 1);
    const Outcome outcome = program_run::run(here.path(), line);
    unsetenv("EDITOR");
    unsetenv("TMPDIR");
    return outcome;
}

bool holds_text(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

std::string typed_well(const Folder& here, const std::string& line) {
    const Outcome outcome = program_run::run(here.path(), line);
    INFO(line << "\n" << outcome.errors);
    CHECK(outcome.status == 0);
    return outcome.output;
}

void log_a_season(const Folder& here) {
    typed_well(here,
               "log add --planned \"open carpet\" --on 2026-11-21 --hours 4h --clarity tinged --water-temp 9degC "
               "--caught \"bream=12 9.5kg\" --caught roach=30 --water \"silt bed=340ml\" --cost £3.10 --note \"cold\"");
    typed_well(here, "log blank \"tight balls\" --on 2026-11-20 --hours 4h --people 2");
    typed_well(here,
               "log mix \"silt bed\" --dry 1kg --water 680ml --feel firm --on 2026-11-20 "
               "--moisture \"brown crumb=9%\"");
    typed_well(here, "log mix \"silt bed\" --dry 1kg --water 680ml --feel firm --on 2026-11-21");
    typed_well(here, "log mix \"silt bed\" --dry 1kg --water 680ml --feel firm --on 2026-11-21");
    typed_well(here, "log soak \"fishmeal pellet 4 mm\" --dry 100g --minutes 6 --drained 138g --on 2026-11-20");
    typed_well(here, "log weigh \"silt bed\" --vessel 250ml --weighs 230g --feel soft --on 2026-11-20");
    typed_well(here, "log drop \"silt bed\" --ball 55mm --squeeze hard --hold 40s --on 2026-11-20");
    typed_well(here, "log bag \"brown crumb\" --on 2026-11-22");
    typed_well(here, "log catch --fish tench --count 1 --on 2026-11-19");
}

}  // namespace

TEST_CASE("a mix changed in the editor takes the old one's place, worked out anew by what was changed") {
    const Folder here;
    typed_well(here, "log mix \"silt bed\" --dry 1kg --water 680ml --feel firm --on 2026-11-20");
    const Outcome outcome = log_edited(here, "sed -i -e s/firm/soft/ -e s/680/900/", "log edit 1");
    CHECK(outcome.status == 0);
    CHECK(holds_text(outcome.output, "In the log as number 3: silt bed, 1000 g dry and 900 ml, soft."));
    const std::string shown = typed_well(here, "log show 3 --json");
    CHECK(holds_text(shown, "\"wetness\": 1.7"));
    CHECK(holds_text(shown, "\"water_g\": 900"));
    CHECK(holds_text(typed_well(here, "log show 1"), "taken back by number 2"));
    CHECK_FALSE(holds_text(typed_well(here, "log list"), "firm"));
    CHECK(std::filesystem::is_empty(here.path() / "tmp"));
}

TEST_CASE("a session is edited with all that belongs to it, and what was not changed stays as it was weighed") {
    const Folder here;
    typed_well(
        here,
        "log add --planned \"open carpet\" --on 2026-11-21 --caught \"bream=2 1.2kg\" --water \"silt bed=300ml\"");
    const std::string before = typed_well(here, "log show 1 --json");
    const Outcome outcome = log_edited(here, "sed -i s/bream/tench/", "log edit 2");
    CHECK(outcome.status == 0);
    const std::string number = outcome.output.substr(outcome.output.find("as number ") + 10, 1);
    CHECK(holds_text(typed_well(here, "log list"), "2 tench, 1.2 kg"));
    const std::string parts = before.substr(before.find("\"parts\""), 200);
    CHECK(holds_text(typed_well(here, "log list --json"), parts));
    CHECK(holds_text(log_edited(here, "true", "log edit " + number).output, "ou changed nothing"));
}

TEST_CASE("a slip made in the editor leaves the log as it was, and keeps the text") {
    const Folder here;
    typed_well(here, "log mix \"silt bed\" --dry 1kg --water 680ml --feel firm --on 2026-11-20");
    const std::string before = typed_well(here, "log list --json");
    const Outcome slip = log_edited(here, "sed -i s/water/wader/", "log edit 1");
    CHECK(slip.status == 65);
    CHECK(holds_text(slip.errors, "'wader' is not a key of a mix"));
    CHECK(holds_text(slip.errors, "your text is kept in"));
    CHECK_FALSE(std::filesystem::is_empty(here.path() / "tmp"));
    CHECK(typed_well(here, "log list --json") == before);
}

TEST_CASE("a log carried to another store by its notes is the same there, and is known when it comes again") {
    const Folder here, there;
    log_a_season(here);
    typed_well(here, "log notes -o log.toml");
    std::filesystem::copy_file(here.path() / "log.toml", there.path() / "log.toml");
    typed_well(there, "log add --from log.toml");
    CHECK(typed_well(there, "log notes") == typed_well(here, "log notes"));
    const std::string again = typed_well(there, "log add --from log.toml");
    CHECK(holds_text(again, "8 other entries are in the log already."));
    CHECK_FALSE(holds_text(again, "say something else"));
    CHECK(typed_well(there, "log notes") == typed_well(here, "log notes"));
}

TEST_CASE("one slip anywhere in notes keeps all of them out") {
    const Folder here;
    program_run::write(
        here.path() / "notes.toml",
        "[[bag]]\non = 2026-11-20\nof = \"brown crumb\"\n[[bag]]\non = 2027-11-20\nof = \"brown crumb\"\n");
    CHECK(program_run::run(here.path(), "log add --from notes.toml").status == 65);
    CHECK(holds_text(typed_well(here, "log list"), "The log is empty"));
}

TEST_CASE("a session is offered to the shed while the shed holds something and it was not booked that day") {
    const Folder here;
    const std::string entered = typed_well(here, "log add --planned \"tight balls\" --on 2026-11-20");
    CHECK_FALSE(holds_text(entered, "stock session"));
    for (const char* name : {"fishmeal, brown", "brown crumb", "maize meal"})
        typed_well(here, std::string("stock count \"") + name + "\" 5kg --on 2026-11-01");
    const std::string line = "log add --planned \"open carpet\" --on 2026-11-21 --hours 4h --people 2";
    CHECK(holds_text(typed_well(here, line),
                     "baitwright stock session \"open carpet\" --on\n          2026-11-21 --length 4h --people 2"));
}

TEST_CASE("what is usual stands in for the session, and prices that are missing leave its cost out") {
    const Folder here;
    typed_well(here, "usual --venue \"long pit\" --people 2 --water-temp 8degC");
    const std::string entered = typed_well(here, "log blank \"open carpet\" --on 2026-11-20");
    CHECK(holds_text(entered, "2 anglers"));
    CHECK(holds_text(entered, "long pit; water of 8"));
    CHECK(holds_text(entered, "Your usual"));
    typed_well(here, "price convert --without-prices");
    CHECK_FALSE(holds_text(typed_well(here, "log blank \"open carpet\" --on 2026-11-21"), "cost"));
}
