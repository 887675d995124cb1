#pragma once

#include <filesystem>
#include <random>
#include <string>
#include <vector>

#include "library/open_library.h"

namespace baitwright {

/// A store with something in every table, made up at random by a seed: changed, renamed and removed entries, what is
/// usual, purchases, uses, counts, bookings, undoings, entries of the log of every kind, what was learnt, and names as
/// hostile as names can be. Numbers have all their bits.
class StoreOfEverything {
public:
    StoreOfEverything(const std::filesystem::path& path, unsigned seed);

    /// So many random changes more.
    void go_on(int changes);

    Store store;

private:
    double between(double low, double high);
    int below(int end);
    std::string any_name();
    std::string any_shipped();
    Date any_day();

    void change_ingredient();
    void add_mix();
    void change_strategy();
    void add_venue();
    void rename_one();
    void remove_one();
    void tell_price();
    void buy_some();
    void use_some();
    void count_some();
    void undo_some();
    void log_session();
    void log_bait();
    void undo_log();
    void learn_something();
    void tell_usual();

    std::mt19937 dice_;
    Date day_;
    int made_ = 0;
};

}  // namespace baitwright
