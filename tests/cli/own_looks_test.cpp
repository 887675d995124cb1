#include <catch2/catch.hpp>

#include "cli/program_run.h"

using namespace program_run;

namespace {

struct LookedAt {
    int status;
    std::string answer, picture;
};

/// What the program says of a feed, as it is told but for which numbers are the person's.
LookedAt looked_at(const Folder& folder, const std::string& feed) {
    const Outcome ran = program_run::run(folder.path(), "drop " + feed + " --json --plot drop.svg --replace");
    std::string answer = ran.output;
    const auto own = answer.find("\"own\"");
    if (own != std::string::npos) answer.erase(own, answer.find(']', own) - own);
    return {ran.status, answer, ran.status == 64 ? ran.errors : program_run::whole_file(folder.path() / "drop.svg")};
}

const std::vector<std::string> feeds_looked_at{"'silt bed' --depth 2.5m --cup 250ml",
                                               "'silt bed' --depth 2.5m --cup 250ml --feel soft",
                                               "'silt bed' --depth 2.5m --ball 55mm",
                                               "'silt bed' --depth 2.5m --ball 55mm --thrown",
                                               "'silt bed' --depth 2.5m --ball 55mm --feel crumbly --thrown",
                                               "'silt bed' --depth 2.5m --feeder 30ml",
                                               "'silt bed' --depth 2.5m --loose 100ml",
                                               "'bread mist' --depth 2.5m --cup 250ml",
                                               "'pale cloud' --depth 1m --cup 100ml --feel crumbly"};

}  // namespace

TEST_CASE("a look of one's own changes the answer, or is refused with why") {
    const Folder folder;
    for (const std::string& feed : feeds_looked_at) {
        const LookedAt plain = looked_at(folder, feed);
        REQUIRE(plain.status != 64);
        for (const std::string look :
             {"--hold 3s", "--hold 200s", "--breaks-at 0.3m", "--carpet-seen 2.5m", "--cup-weighs 150g"}) {
            INFO(feed + " " + look);
            const LookedAt own = looked_at(folder, feed + " " + look);
            if (own.status == 64) {
                CHECK(own.picture.find(look.substr(0, look.find(' '))) != std::string::npos);
                continue;
            }
            CHECK(own.answer != plain.answer);
        }
    }
}

TEST_CASE("how deep it broke and how wide it lay are seen in the picture") {
    const Folder folder;
    const std::string feed = feeds_looked_at.front();
    const LookedAt plain = looked_at(folder, feed);
    for (const char* look : {" --hold 3s", " --breaks-at 0.3m", " --carpet-seen 2.5m", " --cup-weighs 150g"}) {
        INFO(look);
        const LookedAt own = looked_at(folder, feed + look);
        REQUIRE(own.status == 0);
        CHECK(own.picture != plain.picture);
    }
}
