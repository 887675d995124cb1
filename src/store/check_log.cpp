#include <set>
#include <string>

#include "store/log_book.h"
#include "store/log_rows.h"
#include "store/query.h"
#include "store/store_check.h"

namespace baitwright {

namespace {

constexpr const char* select_log_numbers = "SELECT id FROM log_entry ORDER BY id";

/// False where something was found.
template <class Work>
bool reads_well(StoreFindings& findings, Work&& work) {
    try {
        work();
        return true;
    } catch (const Error& error) {
        add_faults(error, findings);
        return false;
    }
}

/// All at once; where that fails, one by one, so that each bad one is named.
void check_log_entries(StoreConnection& connection, StoreFindings& findings) {
    StoreFindings first;
    if (reads_well(first, [&] { static_cast<void>(read_entries(connection, {})); })) return;
    std::vector<std::int64_t> numbers;
    {
        Query rows(connection, select_log_numbers);
        while (rows.next()) numbers.push_back(rows.whole(0));
    }
    for (const std::int64_t number : numbers)
        reads_well(findings, [&] { static_cast<void>(read_entries(connection, {number, number})); });
    if (findings.count() == 0)
        for (const StoreFinding& finding : first.told()) findings.add(finding);
}

}  // namespace

void check_log(StoreConnection& connection, StoreFindings& findings) {
    check_log_entries(connection, findings);
    const LogBook book(connection);
    reads_well(findings, [&] { static_cast<void>(book.learnt_water()); });
    reads_well(findings, [&] { static_cast<void>(book.learnt_mixes()); });
}

}  // namespace baitwright
