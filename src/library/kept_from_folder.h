#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>

#include "bait/kept_tables.h"
#include "files/kept_csv.h"
#include "library/folder_files.h"
#include "store/store.h"

namespace baitwright {

/// Takes the tables of a folder (`bait/kept_tables.h`) into a store, row by row; what cannot be taken is a fault at its
/// cell. Inside `Store::change` only.
class KeptFromFolder {
public:
    KeptFromFolder(Store& store, FolderFiles& files) : store_(store), kept_(store.kept()), files_(files) {}

    /// One table.
    void take(std::string_view table);
    /// All others but `stamps`, each behind those that it refers to.
    void take_all_but(std::string_view table);

    /// Last, once all is taken: what the doctor would say of the store, and could not mend.
    void check_all();

    /// How many rows each file has.
    [[nodiscard]] const std::map<std::string, std::int64_t>& rows() const { return rows_; }

private:
    /// Which rows of a table: those that refer to others of the same one come behind them.
    enum class Which { all, plain, of_session, taking_back };

    struct Places;

    void take(const KeptTable& table, Which which);
    void take_row(const KeptTable& table, KeptCsvReader& reader, KeptRow& row);
    bool may_take_back(const KeptTable& table, const Places& places, KeptCsvReader& reader, const KeptRow& row);
    bool knows_feel(const KeptTable& table, const Places& places, KeptCsvReader& reader, KeptRow& row);
    void check_log();
    void check_learnt();
    [[nodiscard]] bool can_write(const KeptTable& table) const;

    Store& store_;
    KeptRows kept_;
    FolderFiles& files_;
    std::set<std::string_view> faulty_;  ///< tables
    std::map<std::string, std::int64_t> rows_;
    std::set<std::pair<std::string_view, Which>> seen_;                         ///< rows of that sort are in a table
    std::map<std::string_view, std::set<std::int64_t>> undoings_;               ///< the entries that take others back
    std::map<std::pair<std::string_view, std::int64_t>, std::int64_t> undone_;  ///< by which entry, of a table
    std::set<std::int64_t> logged_by_hand_;
};

}  // namespace baitwright
