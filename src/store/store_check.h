#pragma once

#include <cstdint>

#include "answers/shared/store_health.h"
#include "quantities/fault.h"

namespace baitwright {

class StoreConnection;

/// What can be wrong with the rows of an open store, and what can be mended of it. What needs no other room: numbers
/// and words, balances, marks and stamps. Finding sees one state of the store.
class StoreCheck {
public:
    explicit StoreCheck(StoreConnection& connection) : connection_(&connection) {}

    /// Adds what it finds.
    void look(StoreFindings& findings) const;
    /// Rises with each change by another process.
    [[nodiscard]] std::int64_t data_version() const;
    /// Puts balances, marks and stamps right, from what they are kept of. Inside `Store::change` only.
    void mend() const;

private:
    StoreConnection* connection_;
};

/// Rows that belong to none that is there; numbers and words that no bait has.
void check_rows(StoreConnection& connection, StoreFindings& findings);
/// What the log and what was learnt hold, by reading it.
void check_log(StoreConnection& connection, StoreFindings& findings);
/// What is left of each lot, and of all of a name, against the movements.
void check_balances(StoreConnection& connection, StoreFindings& findings);
/// The marks by which other stores know the entries, and the stamps of what changed last.
void check_marks(StoreConnection& connection, StoreFindings& findings);

/// Tables, indexes and triggers against those of a new store.
void check_form(StoreConnection& connection, StoreFindings& findings);

// Inside a change only; the form last.
void mend_balances(StoreConnection& connection);
void mend_marks(StoreConnection& connection);
void mend_form(StoreConnection& connection);

/// What an error says of the store, as findings; thrown on where it is none of the store's: a lock, a full disk.
void add_faults(const Error& error, StoreFindings& findings);

}  // namespace baitwright
