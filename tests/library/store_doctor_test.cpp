#include "library/store_doctor.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "library/canonical_dump.h"
#include "library/change_library.h"
#include "library/own_entries.h"
#include "library/store_of_everything.h"
#include "store/past_triggers.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const Date examined_on = parse_date("2026-11-25");

/// A folder with one store of everything in it, made once by each seed and copied.
class DoctorsFolder {
public:
    explicit DoctorsFolder(unsigned seed = 24) {
        std::string name = (fs::temp_directory_path() / "doctor-XXXXXX").string();
        folder_ = mkdtemp(name.data());
        StoreOfEverything made(path(), seed);
        made.go_on(60);
    }
    ~DoctorsFolder() { fs::remove_all(folder_); }
    DoctorsFolder(const DoctorsFolder&) = delete;
    DoctorsFolder& operator=(const DoctorsFolder&) = delete;

    [[nodiscard]] fs::path path() const { return folder_ / "store.db"; }
    [[nodiscard]] StoreHealth look() const { return examine_store(path(), DoctorTask::look, examined_on); }
    [[nodiscard]] StoreHealth mend() const { return examine_store(path(), DoctorTask::mend, examined_on); }

private:
    fs::path folder_;
};

std::set<std::string> codes_of(const StoreFindings& findings) {
    std::set<std::string> codes;
    for (const StoreFinding& finding : findings.told()) {
        CHECK_FALSE(finding.what.empty());
        CHECK_FALSE(finding.todo.empty());
        codes.insert(finding.code);
    }
    return codes;
}

std::string told_of(const StoreFindings& findings) {
    std::string text;
    for (const StoreFinding& finding : findings.told()) text += finding.code + ": " + finding.what + "\n";
    return text;
}

/// Mending finds just that, puts it right after a copy of what was, and leaves a sound store.
void check_mended(const DoctorsFolder& folder, const std::string& code) {
    const std::vector<std::string> before = canonical_dump(folder.path());
    CHECK(codes_of(folder.look().findings) == std::set<std::string>{code});
    CHECK(canonical_dump(folder.path()) == before);
    const StoreHealth mended = folder.mend();
    INFO(told_of(mended.findings));
    CHECK(mended.findings.count() == 0);
    CHECK(mended.found_before > 0);
    REQUIRE(fs::exists(mended.copy));
    CHECK(first_differences(canonical_dump(mended.copy), before).empty());
}

}  // namespace

TEST_CASE("a store with something in every table is well, whatever was done to it") {
    for (unsigned seed = 1; seed <= 4; ++seed) {
        const DoctorsFolder folder(seed);
        const StoreHealth health = folder.look();
        INFO(told_of(health.findings));
        CHECK(health.findings.count() == 0);
        CHECK(health.contents.ingredients > 100);
        CHECK(health.contents.log_entries > 5);
        CHECK(folder.mend().copy.empty());
    }
}

TEST_CASE("each number of a store is found where it is none of bait") {
    const DoctorsFolder folder;
    std::vector<std::pair<std::string, std::string>> columns;
    {
        SQLite::Database database(folder.path().string());
        SQLite::Statement rows(
            database,
            "SELECT t.name, c.name, c.type FROM pragma_table_list t, pragma_table_info(t.name) c"
            " WHERE t.schema = 'main' AND t.type = 'table' AND c.pk = 0 AND c.type IN ('REAL', 'INTEGER')"
            " AND c.name NOT LIKE '%id' AND c.name NOT IN ('position', 'feed', 'undoes', 'air_sun')");
        while (rows.executeStep()) columns.emplace_back(rows.getColumn(0).getString(), rows.getColumn(1).getString());
    }
    CHECK(columns.size() > 70);
    const std::string whole = [&] {
        std::string bytes(fs::file_size(folder.path()), '\0');
        std::FILE* file = std::fopen(folder.path().c_str(), "rb");
        CHECK(std::fread(bytes.data(), 1, bytes.size(), file) == bytes.size());
        std::fclose(file);
        return bytes;
    }();
    for (const auto& [table, column] : columns)
        for (const char* value : {"4611686018427387904", "-4611686018427387904", "-1e300", "9e999"}) {
            CAPTURE(table, column, value);
            std::FILE* file = std::fopen(folder.path().c_str(), "wb");
            std::fwrite(whole.data(), 1, whole.size(), file);
            std::fclose(file);
            if (!run_past_triggers(folder.path(), "UPDATE " + table + " SET " + column + " = " + value)) continue;
            CHECK(folder.look().findings.count() > 0);
        }
}

TEST_CASE("of many rows with the same fault the first five are told and the others counted") {
    const DoctorsFolder folder;
    REQUIRE(run_past_triggers(folder.path(), "UPDATE ingredient SET owner = 'nobody'"));
    const StoreFindings findings = folder.look().findings;
    CHECK(findings.told().size() == 5);
    CHECK(findings.untold() > 0);
    SQLite::Database database(folder.path().string());
    CHECK(findings.count() ==
          static_cast<std::size_t>(database.execAndGet("SELECT count(*) FROM ingredient").getInt()));
}

TEST_CASE("of wrong balances, too, the first five are told and the others counted") {
    const DoctorsFolder folder;
    REQUIRE(run_past_triggers(folder.path(), "UPDATE stock_item SET over_mg = over_mg + 5"));
    SQLite::Database database(folder.path().string());
    const int things = database.execAndGet("SELECT count(*) FROM stock_item").getInt();
    REQUIRE(things >= 5);
    const StoreFindings findings = folder.look().findings;
    CHECK(findings.told().size() == 5);
    CHECK(findings.count() == static_cast<std::size_t>(things));
}

TEST_CASE("balances that do not come to the movements are found and reckoned anew") {
    for (const char* sql : {"UPDATE stock_lot SET left_mg = left_mg + 7", "UPDATE stock_item SET left_mg = 0",
                            "UPDATE stock_item SET over_mg = 5", "UPDATE stock_lot SET left_mg = 4611686018427387904",
                            "UPDATE stock_lot SET over_mg = over_mg + 1 WHERE left_mg > 0"}) {
        CAPTURE(sql);
        const DoctorsFolder folder;
        const std::vector<std::string> right = canonical_dump(folder.path());
        REQUIRE(run_past_triggers(folder.path(), sql));
        check_mended(folder, "wrong-balance");
        CHECK(first_differences(canonical_dump(folder.path()), right).empty());
    }
}

TEST_CASE("marks and stamps that are missing are found and given") {
    for (const char* sql :
         {"UPDATE stock_lot SET mark = '' WHERE id = 1", "UPDATE stock_entry SET mark = 'x' WHERE id = 1",
          "UPDATE log_entry SET mark = upper(mark) WHERE id = 1",
          "UPDATE log_entry SET mark = 'ffffffffffffffffffffffffffffffff' WHERE undoes IS NOT NULL"
          " AND id = (SELECT max(id) FROM log_entry WHERE undoes IS NOT NULL)",
          "DELETE FROM stamp WHERE kind = 'mix'", "DELETE FROM meta WHERE key = 'clock'",
          "UPDATE meta SET value = '0' WHERE key = 'clock'", "UPDATE meta SET value = 'noon' WHERE key = 'clock'"}) {
        CAPTURE(sql);
        const DoctorsFolder folder;
        REQUIRE(run_past_triggers(folder.path(), sql));
        check_mended(folder, "wrong-mark");
    }
}

TEST_CASE("an index or a trigger that is missing is made anew; a missing table is named") {
    const DoctorsFolder folder;
    const auto run = [&](const char* sql) {
        SQLite::Database(folder.path().string(), SQLite::OPEN_READWRITE).exec(sql);
    };
    run("DROP INDEX stock_movement_of_lot");
    check_mended(folder, "missing-index");
    run("DROP TRIGGER stock_movement_counts");
    const StoreHealth mended = folder.mend();
    CHECK(mended.findings.count() == 0);
    CHECK(mended.found_before == 1);
    run("DROP TABLE usual");
    const StoreHealth health = folder.mend();
    CHECK(codes_of(health.findings) == std::set<std::string>{"missing-table"});
    CHECK(health.copy.empty());
}

TEST_CASE("a mix that refers to what was renamed past it follows the new name") {
    const DoctorsFolder folder;
    {
        Store store = open_store(folder.path());
        Recipe mine{"my bed", {}, {}, {}, {}, {}, {}, {}};
        mine.parts.push_back({"maize meal", Share{1}, Preparation::as_bought});
        put_recipes(store, {mine}, examined_on);
        if (store.entries().find_name(EntryKind::ingredient, "maize meal"))
            rename_entry(store, EntryKind::ingredient, "maize meal", "corn meal");
    }
    REQUIRE(
        run_past_triggers(folder.path(), "UPDATE recipe_part SET part_of = 'maize meal' WHERE part_of = 'corn meal'"));
    CHECK(folder.look().findings.any_mendable());
    const StoreHealth mended = folder.mend();
    INFO(told_of(mended.findings));
    CHECK(mended.findings.count() == 0);
    CHECK(Store::open(folder.path()).find_recipe("my bed")->parts.at(0).of == "corn meal");
}

TEST_CASE("what a mix refers to though it was removed comes back as it was last") {
    const DoctorsFolder folder;
    {
        Store store = open_store(folder.path());
        copy_entry(store, EntryKind::ingredient, "brown crumb", "old crumb", examined_on);
        Recipe mine{"my bed", {}, {}, {}, {}, {}, {}, {}};
        mine.parts.push_back({"brown crumb", Share{1}, Preparation::as_bought});
        put_recipes(store, {mine}, examined_on);
        remove_entry(store, EntryKind::ingredient, "old crumb", examined_on);
    }
    REQUIRE(run_past_triggers(folder.path(),
                              "UPDATE recipe_part SET part_of = 'old crumb' WHERE recipe_id ="
                              " (SELECT id FROM recipe WHERE folded = 'my bed')"));
    const StoreHealth before = folder.look();
    CHECK(before.findings.count() == 1);
    CHECK_THAT(before.findings.told().at(0).what, Catch::Matchers::Contains("my bed"));
    const StoreHealth mended = folder.mend();
    INFO(told_of(mended.findings));
    CHECK(mended.findings.count() == 0);
    CHECK(Store::open(folder.path()).find_ingredient("old crumb"));
}

TEST_CASE("a name that nothing ever had is named and left to the person") {
    const DoctorsFolder folder;
    {
        Store store = open_store(folder.path());
        Recipe mine{"my bed", {}, {}, {}, {}, {}, {}, {}};
        mine.parts.push_back({"brown crumb", Share{1}, Preparation::as_bought});
        put_recipes(store, {mine}, examined_on);
    }
    REQUIRE(run_past_triggers(folder.path(),
                              "UPDATE recipe_part SET part_of = 'brwn crumb' WHERE recipe_id ="
                              " (SELECT id FROM recipe WHERE folded = 'my bed')"));
    const StoreHealth health = folder.mend();
    REQUIRE(health.findings.count() == 1);
    CHECK_THAT(health.findings.told().at(0).what, Catch::Matchers::Contains("brwn crumb"));
    CHECK(health.copy.empty());
}

TEST_CASE("rows that belong to none, and entries of the log that are not whole, are found") {
    for (const char* sql : {"DELETE FROM ingredient WHERE folded = 'brown crumb'", "DELETE FROM stock_lot WHERE id = 1",
                            "UPDATE stock_entry SET what = 'eaten' WHERE id = 1",
                            "UPDATE stock_entry SET happened_on = '2026-02-30' WHERE id = 1",
                            "UPDATE log_entry SET happened_on = 'May' WHERE id = 1",
                            "DELETE FROM log_session WHERE entry_id = (SELECT min(entry_id) FROM log_session)"}) {
        CAPTURE(sql);
        const DoctorsFolder folder;
        REQUIRE(run_past_triggers(folder.path(), std::string("PRAGMA foreign_keys = OFF; ") + sql));
        CHECK(folder.look().findings.count() > 0);
    }
}

TEST_CASE("what stopped runs left beside the store is found and taken away") {
    const DoctorsFolder folder;
    const fs::path left = folder.path().parent_path() / ".baitwright-999999999-0.new";
    std::fclose(std::fopen(left.c_str(), "w"));
    check_mended(folder, "leftover-file");
    CHECK_FALSE(fs::exists(left));
}

TEST_CASE("a store of one's own beside it is not taken for what a stopped run left, however it is called") {
    const DoctorsFolder folder;
    const fs::path own = folder.path().string() + ".new-laptop", left = folder.path().string() + ".new-17-wal";
    for (const fs::path& path : {own, left}) {
        std::fclose(std::fopen(path.c_str(), "w"));
        fs::last_write_time(path, fs::file_time_type::clock::now() - std::chrono::hours(2));
    }
    check_mended(folder, "leftover-file");
    CHECK(fs::exists(own));
    CHECK_FALSE(fs::exists(left));
}

TEST_CASE("a damaged file is named as such, and of a damaged index alone it is mended") {
    const DoctorsFolder folder;
    {
        SQLite::Database database(folder.path().string(), SQLite::OPEN_READWRITE);
        database.exec(
            "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET rootpage ="
            " (SELECT rootpage FROM sqlite_schema WHERE name = 'stock_lot_of_item')"
            " WHERE name = 'stock_movement_of_lot'");
    }
    CHECK(codes_of(folder.look().findings).count("damaged-store") == 1);
    const auto size = fs::file_size(folder.path());
    fs::resize_file(folder.path(), size - 1000);
    const StoreHealth health = folder.mend();
    CHECK(codes_of(health.findings) == std::set<std::string>{"damaged-store"});
    CHECK(fs::file_size(health.copy) == size - 1000);
}

TEST_CASE("feels that do not rise from the driest to the wettest are found, and the two are named") {
    const DoctorsFolder folder;
    REQUIRE(run_past_triggers(folder.path(), "UPDATE feel SET aim = 1.25 WHERE folded = 'tacky'"));
    const StoreHealth health = folder.look();
    CHECK(codes_of(health.findings) == std::set<std::string>{"not-rising"});
    CHECK(told_of(health.findings).find("'tacky' is aimed at 1.25") != std::string::npos);
    CHECK(told_of(health.findings).find("'firm' before it ends at 1.3") != std::string::npos);
}
