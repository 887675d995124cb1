#include "store/back_up_store.h"

#include <sys/resource.h>

#include <catch2/catch.hpp>
#include <chrono>
#include <csignal>
#include <functional>
#include <thread>

#include "bait/ingredient.h"
#include "quantities/fault_of.h"
#include "store/backup_seal.h"
#include "store/child_process.h"
#include "store/dated_backups.h"
#include "store/random_entries.h"
#include "store/store.h"
#include "store/whole_store.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

BackupOrder order_of(const fs::path& store, const fs::path& target, const char* day = "2026-11-25") {
    BackupOrder order;
    order.store = store;
    order.target = target;
    order.today = parse_date(day);
    return order;
}

void make_shed(const fs::path& path, int entries) {
    Store store = Store::open(path);
    for (int i = 0; i < entries; ++i)
        store.change([&] {
            store.put(ingredient_named("meal " + std::to_string(i)), EntryOwner::person);
            Arrival arrival;
            arrival.name = "meal " + std::to_string(i % 7);
            arrival.lot.got_on = parse_date("2026-05-01");
            arrival.lot.left = {1000000};
            store.shed().add(Happening::bought, arrival);
        });
}

std::size_t findings_in(const fs::path& path) {
    const Store store = Store::open(path);
    StoreFindings findings;
    store.check().look(findings);
    return findings.count();
}

Fault fault_of_backup(const BackupOrder& order) {
    try {
        back_up(order);
    } catch (const Error& error) {
        return error.faults().front();
    }
    return {};
}

}  // namespace

TEST_CASE("a backup holds every row of the store, and is one private file that needs no other") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 30);
    const Store open = Store::open(folder / "shed.db");  // another has it open, with its log beside it
    const BackupAnswer answer = back_up(order_of(folder / "shed.db", folder / "copy.db"));
    CHECK(answer.contents.ingredients == 30);
    CHECK(answer.contents.shed_entries == 30);
    CHECK(rows_of(folder / "copy.db") == rows_of(folder / "shed.db"));
    CHECK(value_of_sql(folder / "copy.db", "PRAGMA integrity_check") == "ok");
    CHECK(value_of_sql(folder / "copy.db", "PRAGMA journal_mode") == "delete");
    CHECK(value_of_sql(folder / "copy.db", "PRAGMA application_id") == "1650551156");
    CHECK((fs::status(folder / "copy.db").permissions() & fs::perms::all) ==
          (fs::perms::owner_read | fs::perms::owner_write));
    CHECK(seal_of(folder / "copy.db") == Seal::holds);
}

TEST_CASE("a backup of a store of an older version leaves both of that version") {
    const TemporaryFolder folder;
    run_sql(folder / "old.db", whole_file(BAITWRIGHT_SOURCE_DIR "/tests/store/schema_v5.sql"));
    const std::string before = rows_of(folder / "old.db");
    CHECK(back_up(order_of(folder / "old.db", folder / "copy.db")).contents.version == 5);
    CHECK(rows_of(folder / "old.db") == before);
    CHECK(rows_of(folder / "copy.db") == before);
    CHECK(names_in(folder.path()) == std::set<std::string>{"copy.db", "old.db"});
}

TEST_CASE("backups made while two processes write are each a sound store with one state of it") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 20);
    std::vector<pid_t> writers;
    for (int writer = 0; writer < 2; ++writer)
        writers.push_back(start_child([&] {
            Store store = Store::open(folder / "shed.db", std::chrono::seconds(30));
            for (;;) {
                store.change([&] {
                    store.shed().take(Happening::used, {"meal 1", {1}}, {parse_date("2026-05-02"), {}});
                });
                store.change([&] {
                    Arrival arrival;
                    arrival.name = "meal 1";
                    arrival.lot.got_on = parse_date("2026-05-02");
                    arrival.lot.left = {10};
                    store.shed().add(Happening::bought, arrival);
                });
            }
        }));
    for (int i = 0; i < 15; ++i) {
        const fs::path copy = folder / ("copy-" + std::to_string(i) + ".db").c_str();
        back_up(order_of(folder / "shed.db", copy));
        CHECK(findings_in(copy) == 0);
    }
    const auto entries = [&](const char* name) {
        return std::stoi(value_of_sql(folder / name, "SELECT count(*) FROM stock_entry"));
    };
    CHECK(entries("copy-14.db") > entries("copy-0.db"));
    for (const pid_t writer : writers) {
        ::kill(writer, SIGKILL);
        end_of(writer);
    }
}

TEST_CASE("a disk that is full at any point leaves no backup, the former one whole and nothing half-written") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 60);
    make_shed(folder / "former.db", 1);
    const auto size = static_cast<rlim_t>(fs::file_size(folder / "shed.db"));
    const std::string before = rows_of(folder / "shed.db"), former = whole_file(folder / "former.db");
    int refused = 0;
    for (rlim_t room = 0; room < size + 4096; room += 16384) {
        refused += end_of(start_child([&] {
                       ::signal(SIGXFSZ, SIG_IGN);
                       const rlimit limit{room, room};
                       ::setrlimit(RLIMIT_FSIZE, &limit);
                       BackupOrder order = order_of(folder / "shed.db", folder / "former.db");
                       order.standing = FileInMaking::Standing::replaced;
                       if (fault_of_backup(order).code.empty()) ::_exit(2);
                       ::_exit(1);
                   })) == 1;
        CHECK(whole_file(folder / "former.db") == former);
        std::set<std::string> names = names_in(folder.path());
        for (const char* of_sqlite : {"shed.db-wal", "shed.db-shm"})
            names.erase(of_sqlite);  // gone when it is opened next
        CHECK(names == std::set<std::string>{"former.db", "shed.db"});
    }
    CHECK(refused > 10);
    CHECK(rows_of(folder / "shed.db") == before);
    CHECK(names_in(folder.path()) == std::set<std::string>{"former.db", "shed.db"});
}

TEST_CASE("a file that is there stays, unless it is to be written over; the store itself always stays") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 1);
    write_bytes(folder / "there.db", "mine");
    BackupOrder order = order_of(folder / "shed.db", folder / "there.db");
    CHECK(fault_of_backup(order).code == "file-exists");
    CHECK(whole_file(folder / "there.db") == "mine");
    order.standing = FileInMaking::Standing::replaced;
    back_up(order);
    CHECK(rows_of(folder / "there.db") == rows_of(folder / "shed.db"));
    fs::create_symlink(folder / "shed.db", folder / "link.db");
    for (const char* name : {"shed.db", "shed.db-wal", "link.db"}) {
        order.target = folder / name;
        CHECK(fault_of_backup(order).code == "output-is-store");
    }
    CHECK(fault_of_backup(order_of(folder / "none.db", folder / "copy.db")).code == "no-store");
    CHECK(fault_of_backup(order_of(folder / "shed.db", folder / "no" / "copy.db")).code == "cannot-create");
    CHECK_FALSE(fs::exists(folder / "copy.db"));
}

TEST_CASE("what a run that was killed left is taken away by the next, what a living one makes is not") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 1);
    const pid_t dead = start_child([] {});
    end_of(dead);
    const pid_t living = start_child([] { std::this_thread::sleep_for(std::chrono::minutes(1)); });
    const std::string of_dead = ".baitwright-" + std::to_string(dead) + "-0.new",
                      of_living = ".baitwright-" + std::to_string(living) + "-0.new";
    for (const std::string& name : {of_dead, of_dead + "-journal", of_living, std::string(".baitwright-x-0.new")})
        write_bytes(folder / name.c_str(), "x");
    back_up(order_of(folder / "shed.db", folder / "copy.db"));
    CHECK(names_in(folder.path()) == std::set<std::string>{".baitwright-x-0.new", of_living, "copy.db", "shed.db"});
    write_bytes(folder / of_dead.c_str(), "x");
    Store store = Store::open(folder / "shed.db");
    store.change([&] { store.set_shipped_digest("x"); });
    CHECK_FALSE(fs::exists(folder / of_dead.c_str()));
    ::kill(living, SIGKILL);
    end_of(living);
}

TEST_CASE("in a folder backups are called by the day and counted within it") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 1);
    for (const char* name : {"baitwright-2026-11-25.db", "baitwright-2026-11-25-2.db", "baitwright-2026-11-25-3.db"}) {
        CHECK(back_up(order_of(folder / "shed.db", folder / "backups/")).file == folder / "backups/" / name);
        CHECK(fs::exists(folder / "backups" / name));
    }
    BackupOrder look = order_of(folder / "shed.db", folder / "backups");
    look.doing = Doing::looked_at;
    look.keep = 2;
    CHECK(back_up(look).file == folder / "backups" / "baitwright-2026-11-25-4.db");
    CHECK(back_up(look).removed == std::vector<std::string>{"baitwright-2026-11-25.db", "baitwright-2026-11-25-2.db"});
    CHECK(names_in(folder / "backups").size() == 3);
}

TEST_CASE("a store that is itself called like a backup is never taken away") {
    const TemporaryFolder folder;
    make_shed(folder / "baitwright-2026-01-01.db", 1);
    BackupOrder order = order_of(folder / "baitwright-2026-01-01.db", folder.path());
    order.keep = 1;
    CHECK(back_up(order).removed.empty());
    CHECK(back_up(order).removed == std::vector<std::string>{"baitwright-2026-11-25.db"});
    CHECK(names_in(folder.path()) == std::set<std::string>{"baitwright-2026-01-01.db", "baitwright-2026-11-25-2.db"});
}

TEST_CASE("to keep so many takes away the oldest of our own alone, and never the one just made") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 1);
    const fs::path backups = folder / "backups";
    fs::create_directory(backups);
    for (const char* day : {"2026-01-01", "2026-03-01", "2027-01-01", "2026-02-01"})
        back_up(order_of(folder / "shed.db", backups, day));
    write_bytes(backups / "baitwright-2025-01-01.db", "a text of mine");
    write_bytes(backups / "baitwright-2025-01-01-1.db", "another");
    write_bytes(backups / "baitwright-2025-02-30.db", "no such day");
    run_sql(backups / "baitwright-2025-01-02.db", "CREATE TABLE t (a)");
    fs::create_directory(backups / "baitwright-2025-01-03.db");
    fs::create_symlink(backups / "baitwright-2026-03-01.db", backups / "baitwright-2025-01-04.db");
    fs::copy(backups / "baitwright-2026-01-01.db", backups / "mine-2025-01-05.db");
    const std::size_t others = 7;
    BackupOrder order = order_of(folder / "shed.db", backups, "2025-06-01");  // a clock that went back
    order.keep = 2;
    const BackupAnswer answer = back_up(order);
    CHECK(answer.removed ==
          std::vector<std::string>{"baitwright-2026-01-01.db", "baitwright-2026-02-01.db", "baitwright-2026-03-01.db"});
    CHECK(fs::exists(backups / "baitwright-2025-06-01.db"));
    CHECK(fs::exists(backups / "baitwright-2027-01-01.db"));
    CHECK(names_in(backups).size() == others + 2);
}

TEST_CASE("a backup is written over neither a device nor a store that something is at work on") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 3);
    const auto code_of = [&](const fs::path& target) {
        BackupOrder order = order_of(folder / "shed.db", target);
        order.standing = FileInMaking::Standing::replaced;
        return fault_of([&] { back_up(order); }).code;
    };
    CHECK(code_of("/dev/full") == "no-file");
    back_up(order_of(folder / "shed.db", folder / "old.db"));
    write_bytes(folder / "old.db-wal", "not yet in it");
    CHECK(code_of(folder / "old.db") == "store-in-use");
}

TEST_CASE("a name that another took meanwhile, or that leads nowhere, is told and not called a backup") {
    const TemporaryFolder folder;
    make_shed(folder / "shed.db", 3);
    fs::create_symlink(folder / "nowhere/backup.db", folder / "link.db");
    CHECK(fault_of([&] { back_up(order_of(folder / "shed.db", folder / "link.db")); }).code == "file-exists");
}

TEST_CASE("one file after the other is made in a folder, however many") {
    const TemporaryFolder folder;
    for (int i = 0; i < 1100; ++i) CHECK_NOTHROW(FileInMaking(folder.path()));
    CHECK(names_in(folder.path()).empty());
}
