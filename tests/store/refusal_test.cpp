#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>
#include <unistd.h>

#include <catch2/catch.hpp>
#include <stdexcept>

#include "bait/feel.h"
#include "bait/ingredient.h"
#include "quantities/fault.h"
#include "store/child_process.h"
#include "store/store.h"
#include "store/store_fault.h"
#include "store/temporary_folder.h"

using namespace baitwright;
using Catch::Matchers::Contains;

namespace {

// What opening a file says, and that the file is the same byte for byte and alone in its folder.
StorageError refusal_of(const std::filesystem::path& path) {
    const std::string before = whole_file(path);
    const auto entries = [&] { return std::distance(std::filesystem::directory_iterator(path.parent_path()), {}); };
    const auto count = entries();
    try {
        Store::open(path);
    } catch (const StorageError& error) {
        CHECK(whole_file(path) == before);
        CHECK(entries() == count);
        CHECK_THAT(error.what(), Contains(path.filename().string()));
        CHECK_FALSE(error.faults().front().hint.empty());
        return error;
    }
    throw std::runtime_error("opened without an error");
}

void make(const std::filesystem::path& path, const std::string& sql) {
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE).exec(sql);
}

}  // namespace

TEST_CASE("a text file is refused as not a store") {
    const TemporaryFolder folder;
    for (const char* text : {"x", "SQLite format 3", "name = \"river mix\"\n"}) {
        write_bytes(folder / "mix.toml", text);
        const StorageError error = refusal_of(folder / "mix.toml");
        CHECK(error.fault_class() == FaultClass::input_output);
        CHECK(error.faults().front().code == "not-a-store");
    }
    write_bytes(folder / "mix.toml", std::string(100000, 'x'));
    CHECK(refusal_of(folder / "mix.toml").faults().front().code == "not-a-store");
}

TEST_CASE("an empty file is refused") {
    const TemporaryFolder folder;
    write_bytes(folder / "library.db", "");
    CHECK(refusal_of(folder / "library.db").faults().front().code == "empty-file");
}

TEST_CASE("a database of another program is refused, in either journal mode and even with a log to be read in") {
    const TemporaryFolder folder;
    make(folder / "plain.db", "CREATE TABLE t (a)");
    CHECK(refusal_of(folder / "plain.db").faults().front().code == "foreign-database");
    make(folder / "other.db",
         "PRAGMA application_id = 1; PRAGMA user_version = 1; PRAGMA journal_mode = WAL;"
         "CREATE TABLE ingredient (a)");
    CHECK(refusal_of(folder / "other.db").fault_class() == FaultClass::input_output);
    const TemporaryFolder left;
    const pid_t child = start_child([&] {
        auto* never_closed =
            new SQLite::Database((left / "a.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        never_closed->exec("PRAGMA journal_mode = WAL; CREATE TABLE t (a)");
    });
    REQUIRE(end_of(child) == 0);
    const std::string log = whole_file(left / "a.db-wal");
    REQUIRE_FALSE(log.empty());
    CHECK(refusal_of(left / "a.db").faults().front().code == "foreign-database");
    CHECK(whole_file(left / "a.db-wal") == log);
}

TEST_CASE("a store cut short is refused as damaged") {
    const TemporaryFolder folder;
    Store::open(folder / "library.db");
    const std::string whole = whole_file(folder / "library.db");
    for (const std::size_t size : {std::size_t{4096}, whole.size() / 2, whole.size() - 4096, whole.size() - 1}) {
        write_bytes(folder / "library.db", whole.substr(0, size));
        const StorageError error = refusal_of(folder / "library.db");
        CHECK(error.fault_class() == FaultClass::input_output);
        CHECK(error.faults().front().code == "damaged-store");
    }
    for (const std::size_t size : {std::size_t{1}, std::size_t{50}, std::size_t{100}, std::size_t{2000}}) {
        write_bytes(folder / "library.db", whole.substr(0, size));
        CHECK(refusal_of(folder / "library.db").fault_class() == FaultClass::input_output);
    }
}

TEST_CASE("a store of a newer program is refused as data that this one cannot read") {
    const TemporaryFolder folder;
    Store::open(folder / "library.db");
    make(folder / "library.db", "PRAGMA user_version = 999");
    const StorageError error = refusal_of(folder / "library.db");
    CHECK(error.fault_class() == FaultClass::bad_data);
    CHECK_THAT(error.what(), Contains("999"));
}

TEST_CASE("a newer version that is still in the log alone is refused as well") {
    const TemporaryFolder folder;
    Store::open(folder / "library.db");
    SQLite::Database newer((folder / "library.db").string(), SQLite::OPEN_READWRITE);
    newer.exec("PRAGMA user_version = 999");
    CHECK(refusal_of(folder / "library.db").fault_class() == FaultClass::bad_data);
}

TEST_CASE("a store without one of its tables is damaged") {
    const TemporaryFolder folder;
    Store::open(folder / "library.db");
    make(folder / "library.db",
         "DROP TABLE feel; INSERT INTO ingredient VALUES"
         "(1, 'meal', 'meal', 'stone', '', '', NULL, NULL, NULL, NULL, NULL, NULL, '', 'person')");
    const Store store = Store::open(folder / "library.db");
    CHECK_THROWS_AS(store.feels(), StorageError);
    CHECK_THROWS_WITH(store.find_ingredient("meal"), Contains("stone") && Contains("library.db"));
}

TEST_CASE("a folder is refused as a store") {
    const TemporaryFolder folder;
    CHECK_THROWS_WITH(Store::open(folder.path()), Contains("folder"));
    try {
        Store::open(folder.path());
    } catch (const StorageError& error) {
        CHECK(error.fault_class() == FaultClass::cannot_create);
    }
}

TEST_CASE("folders that are missing are made, unless a file stands in their place") {
    const TemporaryFolder folder;
    CHECK_NOTHROW(Store::open(folder.path() / "a" / "b" / "library.db"));
    write_bytes(folder / "file", "x");
    try {
        Store::open(folder.path() / "file" / "library.db");
        FAIL("opened inside a file");
    } catch (const StorageError& error) {
        CHECK(error.fault_class() == FaultClass::cannot_create);
    }
    CHECK(whole_file(folder / "file") == "x");
}

TEST_CASE("names that SQLite would take for something else are plain files") {
    const TemporaryFolder folder;
    for (const char* name : {"file:library.db?mode=memory", ":memory:", "it's 100 % mine; \"really\".db"}) {
        Store::open(folder / name);
        CHECK(std::filesystem::file_size(folder / name) > 0);
    }
}

TEST_CASE("a store cannot be made or written where one may not write") {
    const TemporaryFolder folder;
    namespace fs = std::filesystem;
    Store::open(folder / "library.db");
    const std::string before = whole_file(folder / "library.db");
    fs::permissions(folder / "library.db", fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read);
    fs::permissions(folder.path(), fs::perms::owner_all | fs::perms::others_read | fs::perms::others_exec);
    if (::geteuid() != 0) fs::permissions(folder.path(), fs::perms::owner_read | fs::perms::owner_exec);
    const auto refused = [&](const char* name) {
        return end_of(start_child([&] {
            if (::geteuid() == 0 && ::setuid(65534) != 0) return;  // nothing is refused to root: be nobody
            try {
                Store store = Store::open(folder / name);
                store.change([&] { store.set_shipped_digest("x"); });
            } catch (const StorageError& error) {
                if (error.fault_class() == FaultClass::cannot_create) ::_exit(7);
            }
        }));
    };
    CHECK(refused("library.db") == 7);
    CHECK(refused("other.db") == 7);
    CHECK(whole_file(folder / "library.db") == before);
    fs::permissions(folder.path(), fs::perms::owner_all);
}

TEST_CASE("a store that memory was too short for is not called damaged") {
    const StorageError told = storage_error(SQLite::Exception("out of memory", SQLITE_NOMEM), "shed.db");
    CHECK_FALSE(is_damage(told));
    CHECK(told.faults().front().code == "no-memory");
    CHECK_THAT(told.what(), Contains("not enough memory") && Contains("shed.db"));
    CHECK(told.fault_class() == FaultClass::try_again);
}
