#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "library/export_all.h"
#include "library/import_all.h"
#include "library/open_library.h"
#include "library/store_of_everything.h"
#include "quantities/fault.h"
#include "reference/whole_file.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const Date refused_day = parse_date("2026-11-28");

void lay(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

/// A folder that an export wrote, of a store with everything in it, and what an import says of it.
class ExportedFolder {
public:
    ExportedFolder() {
        const StoreOfEverything everything(folder_ / "one.db", 5);
        static_cast<void>(export_all(everything.store, kept(), "baitwright test", refused_day));
    }
    [[nodiscard]] fs::path kept() const { return folder_ / "kept"; }
    [[nodiscard]] std::string text(const char* name) const { return whole_file(kept() / name); }
    [[nodiscard]] std::vector<Fault> faults() const {
        try {
            static_cast<void>(import_all(folder_ / "two.db", kept(), refused_day, Doing::looked_at));
        } catch (const Error& error) {
            return error.faults();
        }
        return {};
    }
    /// The first fault with that text in place of the file's; the file is as it was after.
    [[nodiscard]] Fault fault_with(const char* name, const std::string& text) const {
        const std::string before = this->text(name);
        lay(kept() / name, text);
        const std::vector<Fault> found = faults();
        lay(kept() / name, before);
        INFO(name);
        REQUIRE_FALSE(found.empty());
        CHECK(found[0].file == (kept() / name).string());
        CHECK_FALSE(found[0].hint.empty());
        return found[0];
    }
    [[nodiscard]] Fault fault_with_row(const char* name, const std::string& row) const {
        const std::string before = text(name);
        const Fault fault = fault_with(name, before + row + "\n");
        CHECK(fault.line == std::count(before.begin(), before.end(), '\n') + 1);
        return fault;
    }

private:
    TemporaryFolder folder_;
};

/// In the folder of a shed with these entries of brown crumb.
void lay_shed(const fs::path& kept, const std::string& entries, const std::string& movements) {
    lay(kept / "shed-items.csv", "item,kind,last entry on\nbrown crumb,ingredient,2026-11-28\n");
    lay(kept / "shed-lots.csv",
        "lot,item,kept,got on,best before,opened on,frozen again (times),paid,shop,feel,mark\n"
        "1,brown crumb,dry,2026-11-28,,,0,,,,\n");
    lay(kept / "shed-entries.csv",
        "entry,what,on,item,session,takes back,mark\n1,bought,2026-11-28,brown crumb,,,\n"
        "2,used,2026-11-28,brown crumb,,,\n" +
            entries);
    lay(kept / "shed-movements.csv", "entry,lot,change (g)\n1,1,2000\n2,1,-500\n" + movements);
    lay(kept / "shed-from-notes.csv", "phone's mark,entry\n");
}

}  // namespace

TEST_CASE("an undoing in the shed takes one entry back that stands, and nothing else takes any back") {
    const ExportedFolder folder;
    const auto refused = [&](const std::string& entries, int line, const std::string& why) {
        lay_shed(folder.kept(), entries, "");
        const std::vector<Fault> faults = folder.faults();
        INFO(entries);
        REQUIRE(faults.size() == 1);
        INFO(faults[0].message);
        CHECK(faults[0].file == (folder.kept() / "shed-entries.csv").string());
        CHECK(faults[0].line == line);
        CHECK(faults[0].column > 20);  // the cell, not the row
        CHECK(faults[0].message.find(why) != std::string::npos);
    };
    refused("3,undone,2026-11-28,brown crumb,,,\n", 4, "says which one it takes back");
    refused("3,used,2026-11-28,brown crumb,,2,\n", 4, "only an entry that is 'undone'");
    refused("3,undone,2026-11-28,brown crumb,,2,\n4,undone,2026-11-28,brown crumb,,2,\n", 5,
            "entry 2 is undone already, by entry 3");
    refused("3,undone,2026-11-28,brown crumb,,2,\n4,undone,2026-11-28,brown crumb,,3,\n", 5, "is itself an undoing");
    refused("3,undone,2026-11-28,brown crumb,,77,\n", 4, "there is no number 77");
    lay_shed(folder.kept(), "3,undone,2026-11-28,brown crumb,,2,\n", "3,1,500\n");
    CHECK(folder.faults().empty());
}

TEST_CASE("an undoing in the log takes one entry back, too") {
    const ExportedFolder folder;
    CHECK(folder.fault_with_row("log.csv", "99999,undone,2026-11-28,,,,,no,").code == "inconsistent-values");
    CHECK(folder.fault_with_row("log.csv", "99999,bag,2026-11-28,,x,,1,no,").message.find("only an entry") !=
          std::string::npos);
}

TEST_CASE("the start of a session in a folder is a time of day, and its clarity a word that is known") {
    const ExportedFolder folder;
    const std::string sessions = folder.text("log-sessions.csv");
    const auto with = [&](const std::string& start, const std::string& clarity) {
        const auto begin = sessions.find('\n') + 1, entry_end = sessions.find(',', begin);
        const auto start_end = sessions.find(',', entry_end + 1);
        const std::string head = sessions.substr(0, begin) + sessions.substr(begin, entry_end - begin);
        return head + "," + start + sessions.substr(start_end, 1) + "300,1,,," + clarity + ",,,\n";
    };
    CHECK(folder.fault_with("log-sessions.csv", with("25:99", "clear")).code == "not-a-clock");
    const Fault murky = folder.fault_with("log-sessions.csv", with("9:30", "murky"));
    CHECK(murky.code == "unknown-word");
    CHECK(murky.line == 2);
    CHECK(murky.hint.find("clear, tinged, coloured, or empty") != std::string::npos);
    CHECK(folder.fault_with("log-sessions.csv", with("", "clea")).hint == "did you mean 'clear'?");
    lay(folder.kept() / "log-sessions.csv", with("9.30", ""));
    for (const Fault& fault : folder.faults()) CHECK(fault.file != (folder.kept() / "log-sessions.csv").string());
}

TEST_CASE("a feel in a row of one's own is one that is known, and what came home with notes keeps its word") {
    const ExportedFolder folder;
    const std::string log = folder.text("log.csv"), mixes = folder.text("log-mixes.csv");
    lay(folder.kept() / "log.csv", log + "99999,mix,2026-11-28,,silt bed,,,no,\n");
    const Fault gooey = folder.fault_with_row("log-mixes.csv", "99999,gooey,1.2,0.1,1000,600,0");
    CHECK(gooey.code == "unknown-feel");
    CHECK(gooey.column == 7);
    CHECK(folder.fault_with_row("log-mixes.csv", "99999,../x,1.2,0.1,1000,600,0").code == "bad-name");
    lay(folder.kept() / "log-mixes.csv", mixes + "99999,Firm,1.2,0.1,1000,600,0\n");
    CHECK(folder.faults().empty());
    const auto firm = mixes.find(",firm,");
    REQUIRE(firm != std::string::npos);
    lay(folder.kept() / "log.csv", log);
    lay(folder.kept() / "log-mixes.csv", std::string(mixes).replace(firm, 6, ",gooey,"));
    CHECK(folder.faults().empty());
    CHECK(folder.fault_with_row("shed-lots.csv", "99999,silt bed,cold,2026-11-28,,,0,,,gooey,").code == "unknown-feel");
}

TEST_CASE("what the doctor would find in the store and could not mend is refused with the folder") {
    const ExportedFolder folder;
    lay(folder.kept() / "old-prices.csv",
        "ingredient,pack,price,on,shop\nbrown crumb,0 kg,\xC2\xA3"
        "2,2026-11-28,\n");
    const std::vector<Fault> faults = folder.faults();
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].code == "stored-out-of-range");
    CHECK(faults[0].message.find("brown crumb") != std::string::npos);
}

TEST_CASE("a folder with an about.toml of a person's own is not taken for an export") {
    const TemporaryFolder folder;
    const Store store = open_store(folder / "one.db");
    fs::create_directory(folder / "mine");
    for (const char* own : {"# about my lake\n", "title = \"my lake\"\n", "format = 1\n", "format = \n",
                            "format = 1\nmade_by = \"me\"\nstore_version = 9\n[rows]\n"}) {
        INFO(own);
        lay(folder / "mine/about.toml", own);
        CHECK_THROWS_AS(export_all(store, folder / "mine", "baitwright test", refused_day), StorageError);
        CHECK(whole_file(folder / "mine/about.toml") == own);
    }
}
