// What the log says to type next, and what it refuses, by what a person would mean.
#include <catch2/catch.hpp>

#include "cli/program_run.h"

using program_run::Folder;
using program_run::run;

namespace {

bool is_told(const std::string& text, const std::string& words) {
    std::string plain = text;  // as it is read, whatever the lines
    for (std::size_t at = 0; (at = plain.find('\n', at)) != std::string::npos;) {
        std::size_t end = at + 1;
        while (end < plain.size() && plain[end] == ' ') ++end;
        plain.replace(at, end - at, " ");
    }
    return plain.find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("the way to take a session out of the shed says for how many, where that is not as usual") {
    const Folder here;
    REQUIRE(run(here.path(), "stock buy \"brown crumb\" 20kg").status == 0);
    CHECK(is_told(run(here.path(), "log blank \"tight balls\" --on 2026-06-10").output,
                  "\"tight balls\" --on 2026-06-10"));
    CHECK(is_told(run(here.path(), "log blank \"tight balls\" --people 2 --on 2026-06-11").output,
                  "--on 2026-06-11 --people 2"));
    REQUIRE(run(here.path(), "usual --people 2").status == 0);
    CHECK(is_told(run(here.path(), "log blank \"tight balls\" --people 1 --on 2026-06-12").output,
                  "--on 2026-06-12 --people 1"));
    CHECK_FALSE(is_told(run(here.path(), "log blank \"tight balls\" --people 2 --on 2026-06-13").output, "--people 2"));
}

TEST_CASE("a wetness that is another feel than the one that is told is refused") {
    const Folder here;
    const auto refused = run(here.path(), "log mix \"silt bed\" --dry 1kg --water 450ml --feel firm --wetness 2.5");
    CHECK(refused.status == 64);
    CHECK(is_told(refused.errors, "--wetness: 2.5 is slop, not firm"));
    CHECK(run(here.path(), "log mix \"silt bed\" --dry 1kg --water 680ml --feel firm --wetness 1.2").status == 0);
}

TEST_CASE("a session of more than a day goes into the log, without what nobody reckoned") {
    const Folder here;
    CHECK(run(here.path(), "log blank \"tight balls\" --hours 72h --on 2026-06-10").status == 0);
    const auto refused = run(here.path(), "log add --planned \"tight balls\" --hours 25h --on 2026-06-20");
    CHECK(refused.status == 64);
    CHECK(is_told(refused.errors, "--hours: what goes in is reckoned for 24 h at the most"));
    CHECK(is_told(refused.errors, "baitwright log blank \"tight balls\" --hours 30h"));
}

TEST_CASE("a catch of the small hours is told whose it may be") {
    const Folder here;
    REQUIRE(run(here.path(), "log blank \"tight balls\" --on 2026-06-10 --start 19:00 --hours 12h").status == 0);
    const auto alone = run(here.path(), "log catch --fish bream --count 1 --on 2026-06-11");
    CHECK(is_told(alone.output, "'tight balls' of 2026-06-10 ran on past midnight"));
    CHECK(is_told(alone.output, "--on 2026-06-10"));
    CHECK_FALSE(is_told(run(here.path(), "log catch --fish bream --count 1 --on 2026-06-12").output, "past midnight"));
}

TEST_CASE("sessions that were taken back are not counted in what a copy holds") {
    const Folder here;
    REQUIRE(run(here.path(), "log blank \"tight balls\" --on 2026-06-10").status == 0);
    REQUIRE(run(here.path(), "log blank \"tight balls\" --on 2026-06-11").status == 0);
    REQUIRE(run(here.path(), "log undo").status == 0);
    CHECK(is_told(run(here.path(), "backup kept.db").output, "and 1 session."));
}
