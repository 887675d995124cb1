#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <catch2/catch.hpp>
#include <set>

#include "store/content_mark.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

/// A shed and a log of version 7: a bag bought and used, the use taken back; a bag from a phone; a session from a page
/// with two catches alike, and a catch of no session.
constexpr const char* older_store = R"sql(
INSERT INTO stock_item VALUES (1, 'Crumb', 'crumb', 'ingredient', '2026-05-02', 0);
INSERT INTO stock_lot VALUES (1, 1, 'dry', '2026-05-01', NULL, NULL, 0, 0, NULL, NULL, '', NULL),
    (2, 1, 'dry', '2026-05-02', NULL, NULL, 0, 0, 420, 'GBP', '', NULL);
INSERT INTO stock_entry VALUES (1, 'bought', '2026-05-01', 1, '', NULL), (2, 'used', '2026-05-02', 1, '', NULL),
    (3, 'undone', '2026-05-02', 1, '', 2), (4, 'bought', '2026-05-02', 1, '', NULL);
INSERT INTO stock_movement VALUES (1, 1, 1000), (2, 1, -300), (3, 1, 300), (4, 2, 500);
INSERT INTO stock_from_notes VALUES ('mhz3k0v2001a7c4', 4);
INSERT INTO log_entry VALUES (1, 'session', '2026-05-02', NULL, 'far bank', 'far bank', NULL, NULL, 0),
    (2, 'catch', '2026-05-02', 1, 'bream', 'bream', NULL, NULL, 0),
    (3, 'catch', '2026-05-02', 1, 'bream', 'bream', NULL, NULL, 0),
    (4, 'catch', '2026-05-03', NULL, 'bream', 'bream', NULL, NULL, 0);
INSERT INTO log_session VALUES (1, '09:30', 18000, 1, 'a page', '', '', '', NULL, NULL, NULL, '');
INSERT INTO log_catch VALUES (2, 1, 2.5), (3, 1, 2.5), (4, 1, 2.5);
INSERT INTO gone VALUES ('mix', 'pit bed', 'pit bed', '', '');
)sql";

void make_older(const std::filesystem::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec(whole_file(BAITWRIGHT_SOURCE_DIR "/tests/store/schema_v7.sql"));
    database.exec(older_store);
}

std::vector<std::string> column_of(const std::filesystem::path& path, const std::string& sql) {
    SQLite::Database database(path.string());
    std::vector<std::string> values;
    SQLite::Statement rows(database, sql);
    while (rows.executeStep()) values.push_back(rows.getColumn(0).getString());
    return values;
}

constexpr const char* all_marks =
    "SELECT mark FROM stock_lot UNION ALL SELECT mark FROM stock_entry UNION ALL SELECT mark FROM log_entry";

}  // namespace

TEST_CASE("two copies of one older store agree on the marks of all that is in them, and no two are alike") {
    const TemporaryFolder folder;
    for (const char* name : {"one.db", "two.db"}) {
        make_older(folder / name);
        Store::open(folder / name);
    }
    const std::vector<std::string> marks = column_of(folder / "one.db", all_marks);
    CHECK(marks.size() == 10);
    CHECK(marks == column_of(folder / "two.db", all_marks));
    CHECK(std::set<std::string>(marks.begin(), marks.end()).size() == marks.size());
    for (const std::string& mark : marks) {
        CHECK(mark.size() == 32);
        CHECK(mark.find_first_not_of("0123456789abcdef") == std::string::npos);
    }
}

TEST_CASE("what came with notes has the mark that those notes give wherever they are taken in") {
    const TemporaryFolder folder;
    make_older(folder / "library.db");
    Store::open(folder / "library.db");
    const auto only = [&](const char* sql) { return column_of(folder / "library.db", sql).at(0); };
    const std::string noted = mark_of({"shed from notes", "mhz3k0v2001a7c4"});
    CHECK(only("SELECT mark FROM stock_entry WHERE id = 4") == noted);
    CHECK(only("SELECT mark FROM stock_lot WHERE id = 2") == mark_of({"lot of", noted}));
    CHECK(only("SELECT mark FROM log_entry WHERE id = 1") ==
          mark_of({"session from notes", "a page", "2026-05-02", "1"}));
    CHECK(only("SELECT mark FROM stock_entry WHERE id = 3") ==
          mark_of_undoing(only("SELECT mark FROM stock_entry WHERE id = 2")));
}

TEST_CASE("an older store keeps what is left, and its clock begins with what a person did") {
    const TemporaryFolder folder;
    make_older(folder / "library.db");
    Store store = Store::open(folder / "library.db");
    CHECK(store.shed().left_of("crumb") == Milligrams{1500});
    CHECK(column_of(folder / "library.db", "SELECT kind || ' ' || folded || ' ' || clock FROM stamp") ==
          std::vector<std::string>{"mix pit bed 1"});
    store.change([&] { store.shed().take(Happening::used, {"crumb", {200}}, {parse_date("2026-05-03"), {}}); });
    CHECK(store.shed().left_of("crumb") == Milligrams{1300});
}
