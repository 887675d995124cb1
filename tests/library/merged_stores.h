#pragma once

#include <filesystem>
#include <random>
#include <set>
#include <string>
#include <vector>

#include "library/own_entries.h"
#include "store/store.h"

namespace baitwright {

/// A small store that a person changes at random, by a seed: entries, prices, the shed, the log, what is usual and what
/// was learnt. Its names come from a few, so that stores which are changed apart run into each other.
class ChangedStore {
public:
    ChangedStore(const std::filesystem::path& path, unsigned seed);

    void change(int times);
    Store store;

    /// The entries that every one of them begins with.
    static void begin(const std::filesystem::path& path);

private:
    int below(int end);
    std::string one_of(const std::vector<std::string>& names);
    std::string free_name();
    std::string note();
    Date day();

    void edit_ingredient();
    void edit_mix();
    void edit_strategy();
    void edit_venue();
    void rename_some();
    void remove_some();
    void restore_some();
    void tell_price();
    void buy();
    void use();
    void book();
    void count_some();
    void undo_stock();
    void log_session();
    void log_alone();
    void undo_log();
    void believe();
    void learn();
    void tell_usual();

    std::mt19937 dice_;
    unsigned seed_;
    int made_ = 0;
};

/// All that a store holds, as SQLite reads it, by names and marks in place of row numbers, sorted.
std::vector<std::string> dump_by_marks(const std::filesystem::path& store);

/// Every mark, and every note that an entry has or had.
std::set<std::string> acknowledged(const Store& store, const std::filesystem::path& path);

}  // namespace baitwright
