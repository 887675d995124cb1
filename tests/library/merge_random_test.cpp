#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>

#include "library/canonical_dump.h"
#include "library/merge_store.h"
#include "library/merged_stores.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date merge_day = parse_date("2026-06-01");

/// Three stores of one beginning, changed apart, with a merge now and then.
class ThreeStores {
public:
    ThreeStores(const std::filesystem::path& begun, unsigned seed) : dice_(seed) {
        for (std::size_t i = 0; i < 3; ++i) {
            std::filesystem::copy_file(begun, path(i));
            stores_.emplace_back(path(i), 10 * seed + static_cast<unsigned>(i));
        }
    }

    void live(int rounds) {
        for (; rounds > 0; --rounds) {
            stores_[any()].change(1 + static_cast<int>(dice_() % 12));
            if (const std::size_t into = any(), from = any(); dice_() % 3 == 0 && into != from) merge(into, from);
        }
    }
    /// Each into each other, in an order of chance.
    void merge_all() {
        std::vector<std::pair<std::size_t, std::size_t>> pairs{{0, 1}, {0, 2}, {1, 0}, {1, 2}, {2, 0}, {2, 1}};
        std::shuffle(pairs.begin(), pairs.end(), dice_);
        for (const auto& [into, from] : pairs) merge(into, from);
    }
    [[nodiscard]] std::set<std::string> all_acknowledged() const {
        std::set<std::string> all;
        for (std::size_t i = 0; i < 3; ++i) all.merge(acknowledged(stores_[i].store, path(i)));
        return all;
    }
    [[nodiscard]] const Store& store(std::size_t i) const { return stores_[i].store; }
    [[nodiscard]] std::filesystem::path path(std::size_t i) const {
        return folder_ / (std::to_string(i) + ".db").c_str();
    }
    MergeAnswer merge(std::size_t into, std::size_t from) {
        return merge_store(stores_[into].store, path(from), merge_day);
    }

private:
    std::size_t any() { return dice_() % 3; }

    TemporaryFolder folder_;
    std::mt19937 dice_;
    std::vector<ChangedStore> stores_;
};

void check_sums(const std::filesystem::path& path) {
    SQLite::Database database(path.string());
    CHECK(database
              .execAndGet("SELECT count(*) FROM (SELECT l.id FROM stock_lot l LEFT JOIN stock_movement m ON m.lot_id ="
                          " l.id GROUP BY l.id HAVING l.left_mg - l.over_mg <> ifnull(sum(m.milligrams), 0)"
                          " OR min(l.left_mg, l.over_mg) <> 0)")
              .getInt() == 0);
    CHECK(database
              .execAndGet("SELECT count(*) FROM stock_item i WHERE left_mg <> ifnull((SELECT sum(left_mg) FROM"
                          " stock_lot WHERE item_id = i.id), 0) OR over_mg <> ifnull((SELECT sum(over_mg) FROM"
                          " stock_lot WHERE item_id = i.id), 0)")
              .getInt() == 0);
    SQLite::Statement keys(database, "PRAGMA foreign_key_check");
    CHECK_FALSE(keys.executeStep());
}

unsigned number_from(const char* variable, unsigned otherwise) {
    const char* said = std::getenv(variable);
    return said ? static_cast<unsigned>(std::strtoul(said, nullptr, 10)) : otherwise;
}

}  // namespace

TEST_CASE("three stores that were changed apart are one after each was merged into each, and nothing is lost") {
    const unsigned first = number_from("BAITWRIGHT_MERGE_SEED", 1), runs = number_from("BAITWRIGHT_MERGE_RUNS", 100);
    const TemporaryFolder folder;
    ChangedStore::begin(folder / "begun.db");
    for (unsigned seed = first; seed < first + runs; ++seed) {
        CAPTURE(seed);
        ThreeStores three(folder / "begun.db", seed);
        three.live(8);
        const std::set<std::string> before = three.all_acknowledged();
        three.merge_all();
        three.merge_all();
        const std::vector<std::string> dump = dump_by_marks(three.path(0));
        for (std::size_t i = 1; i < 3; ++i) CHECK(first_differences(dump, dump_by_marks(three.path(i))) == "");
        for (std::size_t i = 0; i < 3; ++i) {
            const std::set<std::string> after = acknowledged(three.store(i), three.path(i));
            std::vector<std::string> lost;
            std::set_difference(before.begin(), before.end(), after.begin(), after.end(), std::back_inserter(lost));
            CHECK(lost == std::vector<std::string>{});
            check_sums(three.path(i));
        }
        CHECK_FALSE(three.merge(0, 1).anything());
        CHECK(first_differences(dump, dump_by_marks(three.path(0))) == "");
    }
}
