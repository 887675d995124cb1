#include "library/export_all.h"

#include <sys/stat.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "files/csv.h"
#include "files/saved_by_spreadsheet.h"
#include "library/canonical_dump.h"
#include "library/exported_files.h"
#include "library/import_all.h"
#include "library/open_library.h"
#include "library/store_of_everything.h"
#include "quantities/fault.h"
#include "reference/whole_file.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const Date export_day = parse_date("2026-11-28");

void export_to(const Store& store, const fs::path& folder) {
    static_cast<void>(export_all(store, folder, "baitwright test", export_day));
}

void write_file(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

void replace_in(const fs::path& path, const std::string& what, const std::string& by) {
    std::string text = whole_file(path);
    const auto at = text.find(what);
    REQUIRE(at != std::string::npos);
    write_file(path, text.replace(at, what.size(), by));
}

std::vector<Fault> faults_of_import(const fs::path& store, const fs::path& folder) {
    try {
        static_cast<void>(import_all(store, folder, export_day));
    } catch (const Error& error) {
        return error.faults();
    }
    return {};
}

std::vector<std::string> names_in(const fs::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder)) {
        std::string name = entry.path().filename().string();
        if (!name.ends_with("-wal") && !name.ends_with("-shm")) names.push_back(std::move(name));  // of an open store
    }
    std::sort(names.begin(), names.end());
    return names;
}

}  // namespace

TEST_CASE("the shipped store taken out and in again is the same store, bit for bit") {
    const TemporaryFolder folder;
    export_to(open_store(folder / "one.db"), folder / "kept");
    static_cast<void>(import_all(folder / "two.db", folder / "kept", export_day));
    CHECK(first_differences(canonical_dump(folder / "one.db"), canonical_dump(folder / "two.db")) == "");
    static_cast<void>(open_store(folder / "two.db"));  // and has nothing to be filled with
    CHECK(first_differences(canonical_dump(folder / "one.db"), canonical_dump(folder / "two.db")) == "");
}

TEST_CASE("a store with everything in it, hostile names too, taken out and in again is the same store, bit for bit") {
    for (unsigned seed = 1; seed <= 4; ++seed) {
        INFO("seed " << seed);
        const TemporaryFolder folder;
        {
            StoreOfEverything everything(folder / "one.db", seed);
            everything.go_on(25);
            export_to(everything.store, folder / "kept");
        }
        const ImportAnswer answer = import_all(folder / "two.db", folder / "kept", export_day);
        CHECK(answer.changed.empty());
        CHECK(answer.fewer.empty());
        CHECK(first_differences(canonical_dump(folder / "one.db"), canonical_dump(folder / "two.db")) == "");
        export_to(open_store(folder / "two.db"), folder / "again");
        for (const std::string& name : exported_file_names())
            CHECK(whole_file(folder / "kept" / name) == whole_file(folder / "again" / name));
    }
}

TEST_CASE("tables that a spreadsheet saved are taken in as they were") {
    const TemporaryFolder folder;
    {
        StoreOfEverything everything(folder / "one.db", 77);
        everything.go_on(20);
        export_to(everything.store, folder / "kept");
    }
    for (const std::string& name : exported_file_names())
        if (name.ends_with(".csv"))
            write_file(folder / "kept" / name, saved_by_spreadsheet(whole_file(folder / "kept" / name)));
    static_cast<void>(import_all(folder / "two.db", folder / "kept", export_day));
    CHECK(first_differences(canonical_dump(folder / "one.db"), canonical_dump(folder / "two.db")) == "");
}

TEST_CASE("every table of the store is in the folder") {
    const TemporaryFolder folder;
    {
        StoreOfEverything everything(folder / "one.db", 3);
        everything.go_on(40);
        export_to(everything.store, folder / "kept");
    }
    for (const KeptTable& table : kept_tables()) {
        INFO(table.name);
        CHECK(read_csv(whole_file(folder / "kept" / file_of(table))).size() > 1);
    }
    std::vector<std::string> names = exported_file_names();
    names.emplace_back(export_about);
    std::sort(names.begin(), names.end());
    CHECK(names_in(folder / "kept") == names);
}

TEST_CASE("what a person changed in the folder is theirs, and is told") {
    const TemporaryFolder folder;
    export_to(open_store(folder / "one.db"), folder / "kept");
    replace_in(folder / "kept/mixes.toml", "name = \"silt bed\"", "name = \"silt bed\"\nnote = \"mine\"");
    write_file(folder / "kept/usual.csv", "what,place,value\npump,1,80 ml\n");
    const ImportAnswer answer = import_all(folder / "two.db", folder / "kept", export_day);
    CHECK(answer.changed == std::vector<std::string>{"mix silt bed", "usual pump"});
    const Store store = open_store(folder / "two.db");
    CHECK(store.recipe("silt bed").note == "mine");
    CHECK(store.usual().at("pump") == std::vector<std::string>{"80 ml"});
    const auto dump = canonical_dump(folder / "two.db");
    CHECK(std::count(dump.begin(), dump.end(), "stamp: 'mix' 'silt bed' 2 0") == 1);
}

TEST_CASE("a movement that a person added counts, and its entry gets the same mark wherever it is taken in") {
    const TemporaryFolder folder;
    export_to(open_store(folder / "one.db"), folder / "kept");
    const fs::path kept = folder / "kept";
    write_file(kept / "shed-items.csv", "item,kind,last entry on\nbrown crumb,ingredient,2026-11-28\n");
    write_file(kept / "shed-lots.csv",
               "lot,item,kept,got on,best before,opened on,frozen again (times),paid,shop,feel,mark\n"
               "1,brown crumb,dry,2026-11-28,,,0,,,,\n");
    write_file(kept / "shed-entries.csv",
               "entry,what,on,item,session,takes back,mark\n"
               "1,bought,2026-11-28,brown crumb,,,\n"
               "2,used,2026-11-28,brown crumb,,,\n"
               "3,undone,2026-11-28,brown crumb,,2,\n");
    write_file(kept / "shed-movements.csv", "entry,lot,change (g)\n1,1,2000\n2,1,-500\n3,1,500\n");
    static_cast<void>(import_all(folder / "two.db", kept, export_day));
    static_cast<void>(import_all(folder / "three.db", kept, export_day));
    CHECK(open_store(folder / "two.db").shed().left_of("brown crumb") == Milligrams{2'000'000});
    CHECK(canonical_dump(folder / "two.db") == canonical_dump(folder / "three.db"));
}

TEST_CASE("a bag added by hand counts once, also where its row is written otherwise later") {
    const TemporaryFolder folder;
    const fs::path kept = folder / "kept";
    export_to(open_store(folder / "one.db"), kept);
    const std::string heading = "lot,item,kept,got on,best before,opened on,frozen again (times),paid,shop,feel,mark\n";
    write_file(kept / "shed-items.csv", "item,kind,last entry on\nbrown crumb,ingredient,2026-11-28\n");
    write_file(kept / "shed-lots.csv", heading + "1,brown crumb,dry,2026-11-28,2027-02-01,,0,,,,\n");
    write_file(kept / "shed-entries.csv",
               "entry,what,on,item,session,takes back,mark\n1,bought,2026-11-28,brown crumb,,,\n");
    write_file(kept / "shed-movements.csv", "entry,lot,change (g)\n1,1,2000\n");
    static_cast<void>(import_all(folder / "one.db", kept, export_day));
    replace_in(kept / "shed-lots.csv", "2027-02-01", "2027-12-01");
    static_cast<void>(import_all(folder / "one.db", kept, export_day));
    CHECK(open_store(folder / "one.db").shed().left_of("brown crumb") == Milligrams{2'000'000});
}

TEST_CASE("a price changed by hand makes nobody's own of an ingredient that is shipped") {
    const TemporaryFolder folder;
    const fs::path kept = folder / "kept";
    Store store = open_store(folder / "one.db");
    export_to(store, kept);
    replace_in(kept / "ingredients.toml", "£2.10", "£2.35");
    static_cast<void>(import_all(folder / "one.db", kept, export_day));
    export_to(store, folder / "again");
    CHECK_THAT(whole_file(folder / "again/entries.csv"), Catch::Contains("ingredient,brown crumb,shipped,"));
}

TEST_CASE("a folder with something wrong in it says all of it, and makes no store") {
    const TemporaryFolder folder;
    {
        StoreOfEverything everything(folder / "one.db", 5);
        export_to(everything.store, folder / "kept");
    }
    const fs::path kept = folder / "kept";
    const auto refused = [&](const char* name, const std::string& text, const char* code, int line) {
        const std::string before = whole_file(kept / name);
        write_file(kept / name, text);
        const std::vector<Fault> faults = faults_of_import(folder / "two.db", kept);
        write_file(kept / name, before);
        INFO(name << ": " << (faults.empty() ? std::string("nothing") : faults[0].message));
        REQUIRE_FALSE(faults.empty());
        CHECK(faults[0].code == code);
        CHECK(faults[0].line == line);
        CHECK(faults[0].file == (kept / name).string());
        CHECK_FALSE(faults[0].hint.empty());
        CHECK_FALSE(fs::exists(folder / "two.db"));
        CHECK(names_in(folder.path()).size() == 2);  // one.db and the folder
    };
    const std::string movements = whole_file(kept / "shed-movements.csv");
    refused("shed-movements.csv", movements + "99999,1,5\n", "unknown-row",
            static_cast<int>(std::count(movements.begin(), movements.end(), '\n')) + 1);
    refused("shed-movements.csv", "entry,lot,change (g)\n1,1,5\n1,1,5\n", "set-twice", 3);
    refused("shed-lots.csv", "lot\n", "missing-column", 1);
    const std::string log = whole_file(kept / "log.csv");
    const int next = static_cast<int>(std::count(log.begin(), log.end(), '\n')) + 1;
    refused("log.csv", log + "99999,mix,2026-11-28,,x,,,no,\n", "inconsistent-values", next);
    refused("log.csv", log + "99999,bag,2026-11-28,99998,x,,,no,\n", "unknown-row", next);
    refused("log.csv", log + "99999,undone,2026-11-28,,x,,99998,no,\n", "unknown-row", next);
    refused("log.csv", log + "99999,undone,2026-11-28,,x,,,no,\n", "inconsistent-values", next);
    refused("mixes.toml", "[[mix]]\nname = \"x\"\n[[mix.part]]\nof = \"brown crum\"\nshare = 1\n", "unknown-ingredient",
            4);
    refused("ingredients.toml", "[[ingredient]]\nname = \"x\"\nkind = \"powdr\"\n", "unknown-word", 3);
    refused("about.toml", "format = 2\n", "newer-format", 1);
    refused("about.toml", "format = \n", "not-toml", 1);
    refused("old-prices.csv",
            "ingredient,pack,price,on,shop\nnobody's crumb,1 kg,\xC2\xA3"
            "2,2026-11-28,\n",
            "unknown-row", 2);
}

TEST_CASE("a file that is missing is named, and a folder that no export wrote is none") {
    const TemporaryFolder folder;
    export_to(open_store(folder / "one.db"), folder / "kept");
    fs::remove(folder / "kept/log.csv");
    fs::remove(folder / "kept/feels.toml");
    const std::vector<Fault> faults = faults_of_import(folder / "two.db", folder / "kept");
    REQUIRE(faults.size() == 2);
    CHECK(faults[0].code == "missing-file");
    CHECK(faults_of_import(folder / "two.db", folder / "nowhere").at(0).code == "no-such-folder");
    fs::create_directory(folder / "other");
    CHECK(faults_of_import(folder / "two.db", folder / "other").at(0).code == "no-export");
    CHECK_FALSE(fs::exists(folder / "two.db"));
}

TEST_CASE("an export replaces an earlier one as a whole, and nothing else") {
    const TemporaryFolder folder;
    const Store store = open_store(folder / "one.db");
    export_to(store, folder / "kept");
    write_file(folder / "kept/usual.csv", "changed");
    export_to(store, folder / "kept");
    CHECK(whole_file(folder / "kept/usual.csv") == "what,place,value\n");
    write_file(folder / "kept/my notes.txt", "mine");
    CHECK_THROWS_AS(export_to(store, folder / "kept"), StorageError);
    CHECK(whole_file(folder / "kept/my notes.txt") == "mine");
    fs::create_directory(folder / "empty");
    export_to(store, folder / "empty");
    CHECK(fs::exists(folder / "empty/about.toml"));
    CHECK_THROWS_AS(export_to(store, folder / "one.db"), StorageError);
    CHECK_THROWS_AS(export_to(store, folder / "no/such/place"), StorageError);
    CHECK(names_in(folder.path()) == std::vector<std::string>{"empty", "kept", "one.db"});
}

TEST_CASE("what a killed export left goes with the next one") {
    const TemporaryFolder folder;
    const Store store = open_store(folder / "one.db");
    fs::create_directory(folder / ".kept.999999999-0.new");
    write_file(folder / ".kept.999999999-0.new/log.csv", "half");
    export_to(store, folder / "kept");
    CHECK(names_in(folder.path()) == std::vector<std::string>{"kept", "one.db"});
}

TEST_CASE("what is taken out is for its owner alone") {
    const TemporaryFolder folder;
    export_to(open_store(folder / "one.db"), folder / "kept");
    struct stat status {};
    REQUIRE(::stat((folder / "kept").c_str(), &status) == 0);
    CHECK((status.st_mode & 0777U) == 0700U);
    REQUIRE(::stat((folder / "kept/log.csv").c_str(), &status) == 0);
    CHECK((status.st_mode & 0777U) == 0600U);
}

TEST_CASE("a folder taken into the store that it came from changes nothing, however often") {
    const TemporaryFolder folder;
    {
        StoreOfEverything everything(folder / "one.db", 21);
        everything.go_on(15);
        export_to(everything.store, folder / "kept");
    }
    const auto before = canonical_dump(folder / "one.db");
    for (int times = 0; times < 2; ++times) {
        const ImportAnswer answer = import_all(folder / "one.db", folder / "kept", export_day);
        REQUIRE(answer.merged);
        CHECK_FALSE(answer.merged->anything());
        CHECK(answer.merged->conflicts.empty());
        CHECK(first_differences(before, canonical_dump(folder / "one.db")) == "");
    }
}

TEST_CASE("a folder taken into a store that went on keeps what it did since, and what was changed by hand stands") {
    const TemporaryFolder folder;
    StoreOfEverything everything(folder / "one.db", 22);
    Store& store = everything.store;
    export_to(store, folder / "kept");
    replace_in(folder / "kept/mixes.toml", "name = \"silt bed\"", "name = \"silt bed\"\nnote = \"mine\"");
    everything.go_on(10);
    const auto entries_before = store.kept().count(kept_table("shed-entries"));
    const ImportAnswer answer = import_all(folder / "one.db", folder / "kept", export_day);
    CHECK(answer.changed == std::vector<std::string>{"mix silt bed"});
    CHECK(store.recipe("silt bed").note == "mine");
    CHECK(store.kept().count(kept_table("shed-entries")) == entries_before);
}

TEST_CASE("what is only looked at changes nothing and makes nothing") {
    const TemporaryFolder folder;
    {
        StoreOfEverything everything(folder / "one.db", 23);
        export_to(everything.store, folder / "kept");
    }
    CHECK(import_all(folder / "two.db", folder / "kept", export_day, Doing::looked_at).contents.mixes > 10);
    CHECK_FALSE(fs::exists(folder / "two.db"));
    const auto before = canonical_dump(folder / "one.db");
    replace_in(folder / "kept/mixes.toml", "name = \"silt bed\"", "name = \"silt bed\"\nnote = \"mine\"");
    const ImportAnswer answer = import_all(folder / "one.db", folder / "kept", export_day, Doing::looked_at);
    REQUIRE(answer.merged);
    CHECK(answer.merged->only_shown);
    CHECK(canonical_dump(folder / "one.db") == before);
    CHECK(names_in(folder.path()) == std::vector<std::string>{"kept", "one.db"});
}
