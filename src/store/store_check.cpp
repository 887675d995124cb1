#include "store/store_check.h"

#include "store/connection.h"
#include "store/query.h"

namespace baitwright {

void add_faults(const Error& error, StoreFindings& findings) {
    for (const Fault& fault : error.faults()) {
        const bool of_the_store = error.fault_class() == FaultClass::bad_data || fault.code == "damaged-store" ||
                                  error.fault_class() == FaultClass::not_found ||
                                  error.fault_class() == FaultClass::answer_is_no;
        if (!of_the_store) throw error;
        findings.add({fault.code, fault.message, fault.hint, false});
    }
}

void StoreCheck::look(StoreFindings& findings) const {
    connection_->guarded([&] {
        Query(*connection_, "PRAGMA cache_size = -65536").run();
        check_form(*connection_, findings);
        if (findings.has("missing-table")) return;  // whatever looks for it would fail
        check_log(*connection_, findings);
        const StoreConnection::Snapshot snapshot(*connection_);
        check_rows(*connection_, findings);
        check_balances(*connection_, findings);
        check_marks(*connection_, findings);
    });
}

std::int64_t StoreCheck::data_version() const {
    return connection_->guarded([&] {
        Query row(*connection_, "PRAGMA data_version");
        return row.next() ? row.whole(0) : 0;
    });
}

void StoreCheck::mend() const {
    connection_->require_change();
    connection_->guarded([&] {
        mend_balances(*connection_);
        mend_marks(*connection_);
        mend_form(*connection_);
    });
}

}  // namespace baitwright
