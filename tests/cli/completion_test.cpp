// What may come next on a command line: from the table of commands and from the store that would be used, and nothing
// is made, written or said for it.
#include <fmt/format.h>
#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <map>

#include "cli/asked_for.h"
#include "cli/command_groups.h"
#include "cli/flags_of.h"
#include "cli/program_run.h"
#include "cli/shipped_names.h"
#include "files/library_file.h"
#include "library/shipped_files.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;
using Texts = std::vector<std::string>;

/// The lines that come of it; the last word of the line is the one that is being typed.
Texts next_lines(const program_run::Folder& here, const std::string& line) {
    const program_run::Outcome outcome = program_run::run(here.path(), "complete " + line);
    CAPTURE(line);
    CHECK(outcome.status == 0);
    CHECK(outcome.errors.empty());
    Texts lines;
    for (std::size_t at = 0; at < outcome.output.size();) {
        const std::size_t end = outcome.output.find('\n', at);
        lines.push_back(outcome.output.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

/// Without what is said of each.
Texts next_words(const program_run::Folder& here, const std::string& line) {
    Texts words = next_lines(here, line);
    for (std::string& word : words) word = word.substr(0, std::max<std::size_t>(word.find('\t'), 1));
    return words;
}

bool holds(const Texts& texts, const std::string& text) {
    return std::find(texts.begin(), texts.end(), text) != texts.end();
}

std::map<std::string, std::string> files_below(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        const std::string name = entry.path().filename().string();
        if (name != "output" && name != "errors")
            files[entry.path().string()] = entry.is_regular_file() ? program_run::whole_file(entry.path()) : "";
    }
    return files;
}

void typed_for_good(const program_run::Folder& here, const std::string& line) {
    REQUIRE(program_run::run(here.path(), line).status == 0);
}

}  // namespace

TEST_CASE("the first word is one of the commands, with what it does") {
    const program_run::Folder here;
    const Texts all = next_words(here, "''");
    for (const CommandSpec& command : all_commands())
        CHECK(holds(all, std::string(command.verb.substr(0, command.verb.find(' ')))));
    CHECK(holds(all, "help"));
    CHECK(holds(all, "--version"));
    CHECK_FALSE(holds(all, "complete"));
    CHECK_FALSE(holds(all, "manual"));
    CHECK(next_lines(here, "wat") == Texts{"water\thow wet the tub is, and what puts it right"});
    CHECK(next_lines(here, "shout").empty());
    CHECK(next_words(here, "").size() == all.size());
}

TEST_CASE("the second word is one of those of the first") {
    const program_run::Folder here;
    CHECK(next_words(here, "recipe ''") == second_words("recipe"));
    CHECK(next_words(here, "stock his") == Texts{"history"});
    CHECK(next_words(here, "help stock un") == Texts{"undo"});
    CHECK(next_words(here, "help wet") == Texts{"wetness"});
    CHECK(next_words(here, "learn un") == Texts{"undo"});
}

TEST_CASE("every flag of every command is offered, until it is given") {
    const program_run::Folder here;
    for (const CommandSpec& command : all_commands()) {
        CAPTURE(command.verb);
        const Texts offered = next_words(here, std::string(command.verb) + " -");
        CHECK(offered.size() == flags_of(command).size() + 1);
        for (const Flag* flag : flags_of(command)) CHECK(holds(offered, std::string(flag->name)));
    }
    CHECK_FALSE(holds(next_words(here, "mix 'silt bed' --feel firm --"), "--feel"));
    CHECK_FALSE(holds(next_words(here, "mix 'silt bed' --feel=firm --"), "--feel"));
    CHECK(holds(next_words(here, "mix 'silt bed' --balls 12x55mm --"), "--balls"));
    CHECK_FALSE(holds(next_words(here, "mix 'silt bed' --json --"), "--csv"));
    CHECK_FALSE(holds(next_words(here, "mix 'silt bed' --store x.db --"), "--library"));
    CHECK(holds(next_words(here, "mix 'silt bed' ''"), "--wet-volume"));
    CHECK(next_words(here, "mix 'silt bed' -- --").empty());
}

TEST_CASE("help calls nothing by a name that completion does not know") {
    for (const CommandSpec& command : all_commands()) {
        for (const Flag* flag : flags_of(command)) {
            CAPTURE(command.verb, flag->name, flag->value);
            CHECK(is_known_to_ask(command, *flag));
        }
        for (const Word& word : command.words) {
            CAPTURE(command.verb, word.name);
            CHECK(is_known_to_ask(command, word));
        }
    }
}

TEST_CASE("a value is one of those that there are, where they are known") {
    const program_run::Folder here;
    CHECK(next_words(here, "mix 'silt bed' --feel ''") == Texts{"dusty", "crumbly", "firm", "tacky", "soft", "slop"});
    CHECK(next_words(here, "mix 'silt bed' --feel=fi") == Texts{"--feel=firm"});
    CHECK(next_words(here, "mix 'silt bed' --state ''") == Texts{"riddled", "cupped", "squeezed"});
    CHECK(next_words(here, "advise --season s") == Texts{"spring", "summer"});
    CHECK(next_words(here, "advise --bed ''") == Texts{"pale", "dark"});
    CHECK(next_words(here, "advise --fish brea") == Texts{"bream"});
    CHECK(next_words(here, "usual --units ''") == Texts{"metric", "imperial", "both"});
    CHECK(next_words(here, "usual --forget pu") == Texts{"pump"});
    CHECK(next_words(here, "usual --currency E") == Texts{"EUR"});
    CHECK(next_words(here, "paid --by ''") == Texts{"season", "clarity", "venue", "temperature"});
    CHECK(next_words(here, "drop 'silt bed' --water ''") == Texts{"still", "river"});
    CHECK(next_words(here, "drop 'silt bed' --squeeze ''") == Texts{"light", "firm", "hard"});
    CHECK(next_words(here, "soak x --method ''") == Texts{"covered", "measured"});
    CHECK(next_words(here, "plan x --bites ''") == Texts{"steady", "slow", "none"});
    CHECK(next_words(here, "soak x --bites ''").empty());
    CHECK(next_words(here, "ingredient list --kind so") == Texts{"soil"});
    CHECK(next_words(here, "price list --shop 'the mi'") == Texts{"the mill"});
    CHECK(next_words(here, "ingredient add x --set absorp") == Texts{"absorption="});
    CHECK(next_words(here, "plan x --start ''").empty());
    CHECK(next_words(here, "mix x --on ''").empty());
}

TEST_CASE("a number gets the units that fit, a count the sizes with a name") {
    const program_run::Folder here;
    const Texts volumes = next_words(here, "mix x --wet-volume 3");
    CHECK(holds(volumes, "3l"));
    CHECK(holds(volumes, "3ml"));
    CHECK_FALSE(holds(volumes, "3g"));
    CHECK(next_words(here, "mix x --wet-mass 2.5k") == Texts{"2.5kg"});
    CHECK(next_words(here, "mix x --balls 12xeg") == Texts{"12xegg"});
    CHECK(next_words(here, "drop x --cup toss") == Texts{"toss pot 10", "toss pot 25", "toss pot 40"});
    CHECK(next_words(here, "drop x --cup 25") == next_words(here, "drop x --loose 25"));
}

TEST_CASE("words that belong to a value are none of the command's") {
    const program_run::Folder here;
    CHECK(next_words(here, "mix --dry-mass 1.5 kg 'silt b'") == Texts{"silt bed"});
    CHECK(next_words(here, "drop --depth 8 ft 6 in 'silt b'") == Texts{"silt bed"});
    CHECK(next_words(here, "stock use 'silt bed' ''") != next_words(here, "stock use ''"));
}

TEST_CASE("the names read off the lines of the shipped files are those that the whole reading finds") {
    std::map<EntryKind, std::map<std::string, std::string>> read;
    for (const ShippedFile& shipped : shipped_files()) {
        const LibraryFile file = read_library_file(shipped.text, std::string(shipped.name));
        for (const Ingredient& one : file.ingredients) read[EntryKind::ingredient][one.name] = name_of(one.kind);
        for (const auto& entry : file.recipes) read[EntryKind::mix][entry.value.name] = entry.value.feel;
        for (const auto& entry : file.strategies) read[EntryKind::strategy][entry.value.name] = "";
        for (const auto& entry : file.venues) read[EntryKind::venue][entry.value.name] = "";
        for (const auto& entry : file.blends) read[EntryKind::blend][entry.value.name] = "";
    }
    CHECK(read.size() == entry_kind_names.size());
    for (const auto& [kind, names] : read) {
        CAPTURE(name_of(kind));
        std::map<std::string, std::string> told;
        for (const GlancedName& name : shipped_names(kind)) told[name.name] = name.says;
        CHECK(told == names);
    }
    CHECK(shipped_shops().size() == 2);
}

TEST_CASE("without a store the names are the shipped ones, and none is made") {
    const program_run::Folder here;
    CHECK(next_lines(here, "mix sil") == Texts{"silt bed\tfirm"});
    CHECK(next_words(here, "mix SIL") == Texts{"silt bed"});
    CHECK(next_words(here, "mix 'brown cr'") == Texts{"brown crumb"});
    CHECK(next_words(here, "recipe show 'brown cr'").empty());
    CHECK(next_lines(here, "soak 'expander 4'") == Texts{"expander 4 mm\texpander"});
    CHECK(next_words(here, "soak 'brown cr'").empty());
    CHECK(next_words(here, "plan open") == Texts{"open carpet"});
    CHECK(next_words(here, "plan x --venue lo") == Texts{"long pit"});
    CHECK(next_words(here, "blend club") == Texts{"club sack"});
    CHECK(next_words(here, "mix x --have 'brown cr'") == Texts{"brown crumb="});
    CHECK(next_words(here, "mix x --have 'brown crumb=4'").empty());
    CHECK(next_words(here, "log add --feel 'silt bed=fi'") == Texts{"silt bed=firm"});
    CHECK_FALSE(fs::exists(here.path() / "data"));
    CHECK_FALSE(fs::exists(here.path() / ".local"));
}

TEST_CASE("the names are those of the store that would be used, which is left as it is") {
    const program_run::Folder here;
    typed_for_good(here, "recipe copy 'silt bed' --as 'our pit' --store shed.db");
    typed_for_good(here, "recipe copy 'silt bed' --as 'my canal'");
    typed_for_good(here, "recipe remove 'my canal'");
    typed_for_good(here, "recipe copy 'silt bed' --as 'my river'");
    program_run::write(here.path() / "lib" / "mixes.toml",
                       "[[mix]]\nname = \"lib mix\"\nfeel = \"firm\"\n[[mix.part]]\nof = \"x\"\nmass = \"1 kg\"\n");
    const auto before = files_below(here.path());
    CHECK(next_words(here, "mix my") == Texts{"my river"});
    CHECK(next_words(here, "recipe restore my") == Texts{"my canal"});
    CHECK(next_words(here, "mix our").empty());
    CHECK(next_words(here, "mix --store shed.db our") == Texts{"our pit"});
    CHECK(next_words(here, "mix --store=shed.db our") == Texts{"our pit"});
    CHECK(next_words(here, "mix --store '~/shed.db' our") == Texts{"our pit"});
    CHECK(next_words(here, "mix --library lib lib") == Texts{"lib mix"});
    CHECK(next_words(here, "mix --library lib x --feel fi") == Texts{"firm"});
    CHECK(next_words(here, "mix --library nowhere lib").empty());
    CHECK(files_below(here.path()) == before);
}

TEST_CASE("of a store that cannot be read there are no names, and no word of it; flags there are") {
    const program_run::Folder here;
    program_run::write(here.path() / "text.db", "no store\n");
    program_run::write(here.path() / "empty.db", "");
    fs::create_directory(here.path() / "folder.db");
    REQUIRE(mkfifo((here.path() / "pipe.db").c_str(), 0600) == 0);
    const auto before = files_below(here.path());
    for (const std::string store : {"text.db", "empty.db", "folder.db", "pipe.db", "/dev/zero"}) {
        CAPTURE(store);
        CHECK(next_words(here, "mix --store " + store + " sil").empty());
        CHECK(next_words(here, "mix --store " + store + " x --wet-m") == Texts{"--wet-mass"});
    }
    CHECK(next_words(here, "mix --store absent.db sil") == Texts{"silt bed"});
    CHECK(files_below(here.path()) == before);
}

TEST_CASE("files are the shell's to offer, but for library files that lie here") {
    const program_run::Folder here;
    program_run::write(here.path() / "own mix.toml", "");
    program_run::write(here.path() / "own.txt", "");
    CHECK(next_lines(here, "restore ''") == Texts{"\tfiles"});
    CHECK(next_lines(here, "mix x --store ''") == Texts{"\tfiles"});
    CHECK(next_lines(here, "mix x --store=a") == Texts{"\tfiles"});
    CHECK(next_lines(here, "import ''") == Texts{"\tfolders"});
    CHECK(next_lines(here, "mix ./ow") == Texts{"\tfiles"});
    CHECK(next_words(here, "mix ow") == Texts{"own mix.toml"});
    CHECK(next_words(here, "recipe add ''") == Texts{"own mix.toml"});
}

TEST_CASE("bash is answered as it is to be put behind what is typed") {
    const program_run::Folder here;
    const auto answers = [&](const std::string& line) { return next_lines(here, "--bash ' :=\"' " + line); };
    CHECK(answers("'baitwright mix sil'") == Texts{"silt\\ bed"});
    CHECK(answers("'baitwright mix \"sil'") == Texts{"silt bed"});
    CHECK(answers("'baitwright mix x --feel=fi'") == Texts{"firm"});
    CHECK(answers("'baitwright restore '") == Texts{"\tfiles"});
    CHECK(answers("baitwright").empty());
    CHECK(answers("''").empty());
    CHECK_FALSE(answers("'baitwright '").empty());
}
