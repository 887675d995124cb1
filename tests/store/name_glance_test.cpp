// A glance at the names of a store: what is there is told, and nothing is touched, whoever is at work on it.
#include "store/name_glance.h"

#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>
#include <map>

#include "quantities/fault.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

/// Every file of the folder with its bytes, but for the memory that SQLite's processes share.
std::map<std::string, std::string> all_of(const TemporaryFolder& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::directory_iterator(folder.path()))
        files[entry.path().filename().string()] = whole_file(entry.path());
    return files;
}

Recipe mix_called(const std::string& name) {
    Recipe recipe;
    recipe.name = name;
    recipe.feel = "firm";
    return recipe;
}

void put_mix(Store& store, const std::string& name) {
    store.change([&] { store.put(mix_called(name), EntryOwner::person); });
}

std::vector<std::string> mixes_in(const fs::path& path) {
    std::vector<std::string> names;
    for (const GlancedName& name : NameGlance(path).names(EntryKind::mix)) names.push_back(name.name);
    return names;
}

}  // namespace

TEST_CASE("a glance tells the names, in their order, and leaves the folder as it was") {
    const TemporaryFolder folder;
    const fs::path path = folder / "a % b?mode=rwc#.db";
    {
        Store store = Store::open(path);
        put_mix(store, "silt bed");
        put_mix(store, "dark bed");
        store.change([&] { store.entries().put_written(EntryKind::venue, {"long pit", ""}, EntryOwner::person); });
    }
    const auto before = all_of(folder);
    CHECK(mixes_in(path) == std::vector<std::string>{"dark bed", "silt bed"});
    const NameGlance glance(path);
    CHECK(glance.names(EntryKind::mix).front().says == "firm");
    CHECK(glance.names(EntryKind::venue).front().name == "long pit");
    CHECK(glance.names(EntryKind::blend).empty());
    CHECK(glance.names(EntryKind::ingredient).empty());
    CHECK(glance.names(EntryKind::strategy).empty());
    CHECK(glance.shops().empty());
    CHECK(glance.feels().empty());
    CHECK(all_of(folder) == before);
}

TEST_CASE("what was replaced is told once by a glance, whatever its versions") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "store.db");
    store.change([&] {
        for (const char* on : {"2026-03-01", "2026-03-02"}) store.retire({"mix", "silt bed", on, "text"});
    });
    const auto retired = NameGlance(folder / "store.db").retired(EntryKind::mix);
    REQUIRE(retired.size() == 1);
    CHECK(retired.front().name == "silt bed");
}

TEST_CASE("a glance reads what another process has only in its log, and changes neither") {
    const TemporaryFolder folder;
    const fs::path path = folder / "store.db";
    {
        Store store = Store::open(path);
        put_mix(store, "silt bed");
    }
    SQLite::Database reader(path.string(), SQLite::OPEN_READWRITE);
    reader.exec("BEGIN; SELECT count(*) FROM recipe");  // what is written from here on stays in the log
    Store writer = Store::open(path);
    put_mix(writer, "pit bed");
    auto before = all_of(folder);
    REQUIRE_FALSE(before.at("store.db-wal").empty());
    CHECK(mixes_in(path) == std::vector<std::string>{"pit bed", "silt bed"});
    auto after = all_of(folder);
    before.erase("store.db-shm");  // the memory that SQLite's processes share
    after.erase("store.db-shm");
    CHECK(after == before);
}

TEST_CASE("a glance waits for nobody: where the store is locked, it tells what the file holds") {
    const TemporaryFolder folder;
    const fs::path path = folder / "store.db";
    {
        Store store = Store::open(path);
        put_mix(store, "silt bed");
    }
    SQLite::Database writer(path.string(), SQLite::OPEN_READWRITE);
    writer.exec("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; CREATE TABLE in_the_way (a)");
    CHECK(mixes_in(path) == std::vector<std::string>{"silt bed"});
}

TEST_CASE("at what is no store, of a newer program or broken there is nothing to glance at, and it stays as it is") {
    const TemporaryFolder folder;
    write_bytes(folder / "text.db", "no store");
    write_bytes(folder / "empty.db", "");
    { Store::open(folder / "newer.db"); }
    SQLite::Database(folder / "newer.db", SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 9999");
    const auto before = all_of(folder);
    for (const char* name : {"text.db", "empty.db", "newer.db", "absent.db"}) {
        CAPTURE(name);
        CHECK_THROWS_AS(NameGlance(folder / name), StorageError);
    }
    CHECK(all_of(folder) == before);
}
