#include "store/restore_store.h"

#include <sys/resource.h>
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <csignal>
#include <random>

#include "bait/ingredient.h"
#include "quantities/fault_of.h"
#include "store/back_up_store.h"
#include "store/backup_seal.h"
#include "store/child_process.h"
#include "store/random_entries.h"
#include "store/schema.h"
#include "store/store.h"
#include "store/whole_store.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const char* const restored_on = "2026-11-25";

/// A store in which every ingredient's note and the digest say the same word.
void make_saying(const fs::path& path, const std::string& word, int entries = 20) {
    Store store = Store::open(path);
    store.change([&] {
        for (int i = 0; i < entries; ++i) {
            Ingredient meal = ingredient_named("meal " + std::to_string(i));
            meal.note = word;
            store.put(meal, EntryOwner::person);
        }
        store.set_shipped_digest(word);
    });
}

void make_backup(const fs::path& store, const fs::path& backup) {
    BackupOrder order;
    order.store = store;
    order.target = backup;
    back_up(order);
}

RestoreOrder restore_of(const fs::path& from, const fs::path& store) {
    return {from, store, parse_date(restored_on)};
}

fs::path aside_of(const fs::path& store, const std::string& number = {}) {
    return store.string() + ".before-restore-" + restored_on + number;
}

/// The code of its refusal, and that nothing was changed by it.
std::string refusal_of_restore(const fs::path& from, const fs::path& store) {
    const std::string before = whole_file(store);
    const auto names = names_in(store.parent_path());
    std::string code = "restored";
    try {
        restore_store(restore_of(from, store));
    } catch (const Error& error) {
        code = error.faults().front().code;
        CHECK_FALSE(error.faults().front().hint.empty());
    }
    if (code == "restored") return code;
    CHECK(whole_file(store) == before);
    CHECK(names_in(store.parent_path()) == names);
    return code;
}

void flip_bit(const fs::path& path, std::size_t at, unsigned bit) {
    std::string bytes = whole_file(path);
    bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << bit));
    write_bytes(path, bytes);
}

}  // namespace

TEST_CASE("a restore brings back every row, keeps what was there, and can be taken back the same way") {
    const TemporaryFolder folder;
    make_saying(folder / "shed.db", "first");
    make_backup(folder / "shed.db", folder / "backup.db");
    const std::string first = rows_of(folder / "shed.db"), backup = whole_file(folder / "backup.db");
    make_saying(folder / "shed.db", "second", 300);
    const std::string second = rows_of(folder / "shed.db");
    const StoreRestored done = restore_store(restore_of(folder / "backup.db", folder / "shed.db"));
    CHECK(done.kept_aside == aside_of(folder / "shed.db"));
    CHECK(done.contents.ingredients == 20);
    CHECK(rows_of(folder / "shed.db") == first);
    CHECK(rows_of(done.kept_aside) == second);
    CHECK(whole_file(folder / "backup.db") == backup);
    CHECK(restore_store(restore_of(done.kept_aside, folder / "shed.db")).kept_aside ==
          aside_of(folder / "shed.db", "-2"));
    CHECK(rows_of(folder / "shed.db") == second);
    CHECK(rows_of(aside_of(folder / "shed.db", "-2")) == first);
    CHECK(value_of_sql(folder / "shed.db", "PRAGMA integrity_check") == "ok");
}

TEST_CASE("a restore where there is no store makes one") {
    const TemporaryFolder folder;
    make_saying(folder / "shed.db", "first");
    make_backup(folder / "shed.db", folder / "backup.db");
    CHECK(restore_store(restore_of(folder / "backup.db", folder / "new" / "shed.db")).kept_aside.empty());
    CHECK(rows_of(folder / "new" / "shed.db") == rows_of(folder / "shed.db"));
    make_saying(folder / "new" / "shed.db", "second");
    CHECK(names_in(folder / "new") == std::set<std::string>{"shed.db"});
}

TEST_CASE("a store that is gone but for what was last written to it is not mixed with what takes its place") {
    const TemporaryFolder folder;
    make_saying(folder / "other.db", "backed up");
    make_backup(folder / "other.db", folder / "backup.db");
    for (const char* side : {"-wal", "-journal"}) {
        const fs::path log = (folder / "shed.db").string() + side;
        write_bytes(log, "of another store");
        const auto names = names_in(folder / ".");
        CHECK(fault_of([&] { restore_store(restore_of(folder / "backup.db", folder / "shed.db")); }).code ==
              "log-without-store");
        CHECK(fault_of([&] { Store::open(folder / "shed.db"); }).code == "log-without-store");
        CHECK(names_in(folder / ".") == names);
        fs::remove(log);
    }
    write_bytes((folder / "shed.db").string() + "-wal", "");  // an empty one says nothing
    restore_store(restore_of(folder / "backup.db", folder / "shed.db"));
    CHECK(fs::exists(folder / "shed.db"));
}

TEST_CASE("what is no sound store of a known version is refused, and nothing is changed") {
    const TemporaryFolder folder, others;
    make_saying(folder / "shed.db", "first");
    make_backup(folder / "shed.db", others / "backup.db");
    const std::string whole = whole_file(others / "backup.db");
    const auto refused = [&](const char* name) { return refusal_of_restore(others / name, folder / "shed.db"); };
    CHECK(refused("none.db") == "no-such-file");
    fs::create_directory(others / "folder");
    CHECK(refused("folder") == "unreadable-file");
    write_bytes(others / "text.db", "name = \"river mix\"\n");
    CHECK(refused("text.db") == "not-a-store");
    write_bytes(others / "empty.db", "");
    CHECK(refused("empty.db") == "empty-file");
    run_sql(others / "foreign.db", "CREATE TABLE t (a)");
    CHECK(refused("foreign.db") == "foreign-database");
    make_saying(others / "newer.db", "newer");
    run_sql(others / "newer.db", "PRAGMA user_version = 999");
    CHECK(refused("newer.db") == "newer-store");
    for (const std::size_t size : {std::size_t{1}, std::size_t{100}, std::size_t{4096}, whole.size() / 2 / 4096 * 4096,
                                   whole.size() / 2, whole.size() - 8192, whole.size() - 4097}) {
        CAPTURE(size);
        write_bytes(others / "short.db", whole.substr(0, size));
        const std::string code = refused("short.db");
        CHECK((code == "damaged-store" || code == "damaged-backup" || code == "not-a-store"));
    }
    CHECK(refusal_of_restore(folder / "shed.db", folder / "shed.db") == "restore-from-itself");
}

TEST_CASE("a single bit that turned in a backup is found, wherever it is; in the seal itself it harms nothing") {
    const TemporaryFolder folder, others;
    make_saying(folder / "shed.db", "first");
    make_backup(folder / "shed.db", others / "backup.db");
    const std::string whole = whole_file(others / "backup.db"), rows = rows_of(folder / "shed.db");
    std::mt19937 chance(24);
    std::vector<std::size_t> places;
    for (std::size_t at = 0; at < 100; ++at) places.push_back(at);
    for (int i = 0; i < 200; ++i) places.push_back(chance() % (whole.size() - 4096));
    for (const std::size_t at : places) {
        const unsigned bit = chance() % 8;
        CAPTURE(at, bit);
        write_bytes(others / "bad.db", whole);
        flip_bit(others / "bad.db", at, bit);
        CHECK(refusal_of_restore(others / "bad.db", folder / "shed.db") != "restored");
    }
    for (std::size_t at = whole.size() - 4096; at < whole.size(); at += at < whole.size() - 4000 ? 7 : 501) {
        write_bytes(others / "bad.db", whole);
        flip_bit(others / "bad.db", at, 2);
        if (refusal_of_restore(others / "bad.db", folder / "shed.db") == "restored")
            CHECK(rows_of(folder / "shed.db") == rows);
    }
}

TEST_CASE("a backup that was used as a store keeps no seal, and can be restored as it is now") {
    const TemporaryFolder folder;
    make_saying(folder / "shed.db", "first");
    make_backup(folder / "shed.db", folder / "backup.db");
    make_saying(folder / "backup.db", "used", 40);
    CHECK(seal_of(folder / "backup.db") == Seal::none);
    restore_store(restore_of(folder / "backup.db", folder / "shed.db"));
    CHECK(rows_of(folder / "shed.db") == rows_of(folder / "backup.db"));
}

TEST_CASE("a backup of each older version is brought up to date on the way, and stays as it is itself") {
    for (int version = 1; version < newest_version(); ++version) {
        CAPTURE(version);
        const TemporaryFolder folder;
        make_saying(folder / "shed.db", "now");
        run_sql(folder / "old.db",
                whole_file(BAITWRIGHT_SOURCE_DIR "/tests/store/schema_v" + std::to_string(version) + ".sql") +
                    "INSERT INTO recipe (name, folded, feel, purpose, avoid, why, note, owner)"
                    " VALUES ('river mix', 'river mix', 'firm', '', '', '', '', 'person')");
        const std::string before = whole_file(folder / "old.db");
        CHECK(restore_store(restore_of(folder / "old.db", folder / "shed.db")).brought_from == version);
        CHECK(whole_file(folder / "old.db") == before);
        CHECK(value_of_sql(folder / "shed.db", "PRAGMA user_version") == std::to_string(newest_version()));
        CHECK(Store::open(folder / "shed.db").recipe_names() == std::vector<std::string>{"river mix"});
    }
}

TEST_CASE("a process that has the store open while it is restored sees one store or the other, never a mixture") {
    const TemporaryFolder folder;
    make_saying(folder / "a.db", "a", 200);
    make_saying(folder / "b.db", "b", 900);
    make_backup(folder / "a.db", folder / "a.backup");
    make_backup(folder / "b.db", folder / "b.backup");
    make_saying(folder / "shed.db", "a", 200);
    const pid_t reader = start_child([&] {
        std::set<std::string> seen;
        SQLite::Database database((folder / "shed.db").string(), SQLite::OPEN_READWRITE, 10000);
        SQLite::Statement words(database,
                                "SELECT value, (SELECT count(*) FROM ingredient), (SELECT count(*) FROM ingredient"
                                " WHERE note = value) FROM meta WHERE key = 'shipped_digest'");
        for (;; words.reset()) {
            if (!words.executeStep()) ::_exit(3);
            const std::string word = words.getColumn(0).getString();
            const int all = words.getColumn(1).getInt(), saying = words.getColumn(2).getInt();
            if (all != saying || all != (word == "a" ? 200 : 900)) ::_exit(4);
            seen.insert(word);
            if (seen.size() == 2 && fs::exists(folder / "stop")) ::_exit(0);
        }
    });
    for (int i = 0; i < 12; ++i)
        restore_store(restore_of(folder / (i % 2 == 0 ? "b.backup" : "a.backup"), folder / "shed.db"));
    write_bytes(folder / "stop", "x");
    CHECK(end_of(reader) == 0);
}

TEST_CASE("what was written and acknowledged before a restore is kept aside, and what comes after is in the store") {
    const TemporaryFolder folder;
    make_saying(folder / "shed.db", "first", 50);
    make_backup(folder / "shed.db", folder / "backup.db");
    std::array<int, 2> acknowledged{};
    REQUIRE(::pipe(acknowledged.data()) == 0);
    const pid_t writer = start_child([&] {
        Store store = Store::open(folder / "shed.db", std::chrono::seconds(30));
        for (int number = 0; !fs::exists(folder / "stop"); ++number) {
            store.change([&] { store.put(ingredient_named("new " + std::to_string(number)), EntryOwner::person); });
            if (::write(acknowledged[1], &number, sizeof number) != sizeof number) ::_exit(2);
        }
    });
    for (int i = 0; i < 12; ++i) restore_store(restore_of(folder / "backup.db", folder / "shed.db"));
    write_bytes(folder / "stop", "x");
    REQUIRE(end_of(writer) == 0);
    ::close(acknowledged[1]);
    std::set<std::string> kept;
    for (const std::string& name : names_in(folder.path()))
        if (name.starts_with("shed.db") && !name.ends_with("-wal") && !name.ends_with("-shm"))
            for (const std::string& meal : Store::open(folder / name.c_str()).ingredient_names()) kept.insert(meal);
    int number = 0, count = 0;
    for (; ::read(acknowledged[0], &number, sizeof number) == sizeof number; ++count)
        CHECK(kept.count("new " + std::to_string(number)) == 1);
    ::close(acknowledged[0]);
    CHECK(count > 0);
}

TEST_CASE("a store that cannot be opened any more is kept byte for byte, and a sound one takes its place") {
    for (const char* how : {"header", "text", "empty", "short", "schema"}) {
        CAPTURE(how);
        const TemporaryFolder folder;
        make_saying(folder / "shed.db", "first");
        make_backup(folder / "shed.db", folder / "backup.db");
        const std::string whole = whole_file(folder / "shed.db"), rows = rows_of(folder / "shed.db");
        const std::string kind = how;
        std::string bad = kind == "text" ? "bait" : kind == "empty" ? "" : whole;
        if (kind == "header") bad[3] = 'x';
        if (kind == "short") bad.resize(4096);
        if (kind == "schema") bad.replace(100, 60, std::string(60, '\xff'));
        write_bytes(folder / "shed.db", bad);
        const StoreRestored done = restore_store(restore_of(folder / "backup.db", folder / "shed.db"));
        CHECK(whole_file(done.kept_aside) == bad);
        CHECK(rows_of(folder / "shed.db") == rows);
    }
}

TEST_CASE("a disk that is full at any point of a restore leaves the store whole and nothing beside it") {
    const TemporaryFolder folder, others;
    make_saying(folder / "shed.db", "second", 400);
    make_saying(others / "other.db", "first", 600);
    make_backup(others / "other.db", others / "backup.db");
    const std::string before = rows_of(folder / "shed.db");
    const auto names = names_in(folder.path());
    const auto most = static_cast<rlim_t>(2 * fs::file_size(others / "backup.db"));
    int refused = 0;
    for (rlim_t room = 0; room < most; room += 16384) {
        const bool failed = end_of(start_child([&] {
                                ::signal(SIGXFSZ, SIG_IGN);
                                const rlimit limit{room, room};
                                ::setrlimit(RLIMIT_FSIZE, &limit);
                                restore_store(restore_of(others / "backup.db", folder / "shed.db"));
                            })) != 0;
        if (!failed) break;
        ++refused;
        CAPTURE(room);
        REQUIRE(rows_of(folder / "shed.db") == before);
        REQUIRE(names_in(folder.path()) == names);
    }
    CHECK(refused > 5);
    restore_store(restore_of(others / "backup.db", folder / "shed.db"));
    CHECK(rows_of(folder / "shed.db") == rows_of(others / "other.db"));
}

TEST_CASE("a database of another program that stands in the store's place is never written over") {
    const TemporaryFolder folder;
    make_saying(folder / "own.db", "first");
    make_backup(folder / "own.db", folder / "backup.db");
    run_sql(folder / "shed.db", "CREATE TABLE t (a)");
    CHECK(refusal_of_restore(folder / "backup.db", folder / "shed.db") == "foreign-database");
}

TEST_CASE("a store made with pages of another size can be restored") {
    const TemporaryFolder folder;
    make_saying(folder / "shed.db", "first");
    make_backup(folder / "shed.db", folder / "backup.db");
    run_sql(folder / "backup.db", "PRAGMA page_size = 8192; VACUUM");
    make_saying(folder / "shed.db", "second");
    restore_store(restore_of(folder / "backup.db", folder / "shed.db"));
    CHECK(value_of_sql(folder / "shed.db", "SELECT value FROM meta WHERE key = 'shipped_digest'") == "first");
}
