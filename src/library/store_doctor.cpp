#include "library/store_doctor.h"

#include <exception>
#include <future>
#include <system_error>

#include "library/check_entries.h"
#include "store/store_file_check.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

/// Adds what is wrong inside, while nobody changes it; where somebody does, it is looked at again.
void look_inside(const fs::path& path, StoreFindings& found) {
    constexpr int most_looks = 5;
    const Store store = Store::open(path);
    for (int look = 1;; ++look) {
        StoreFindings findings = found;
        const auto before = store.check().data_version();
        store.check().look(findings);
        if (!findings.has("missing-table")) check_entries(store, findings);
        if (findings.count() > found.count() && look < most_looks && store.check().data_version() != before) continue;
        found = std::move(findings);
        return;
    }
}

/// The file is looked at beside what is in it, for both take long; of a file that is damaged, that alone counts.
void look_over_at_once(const fs::path& store, StoreHealth& health) {
    auto file = std::async(std::launch::async, [&] { return look_at_store_file(store, health.contents); });
    StoreFindings inside;
    std::exception_ptr failed;
    try {
        look_inside(store, inside);
    } catch (const Error&) {
        failed = std::current_exception();
    }
    health.findings = file.get();
    if (health.findings.has("damaged-store")) return;
    if (failed) std::rethrow_exception(failed);
    health.findings.add_all(inside);
}

void look_over(const fs::path& store, StoreHealth& health) {
    health.contents = {};
    if (opens_as_it_is(store)) {
        look_over_at_once(store, health);
        return;
    }
    health.findings = look_at_store_file(store, health.contents);
    if (!health.findings.has("damaged-store")) look_inside(store, health.findings);
}

void mend_tables(const fs::path& path) {
    mend_store_file(path);
    StoreContents contents;
    if (look_at_store_file(path, contents).has("damaged-store")) return;
    Store store = Store::open(path);
    store.change([&] { store.check().mend(); });
}

/// Gives the name of the copy, which goes again where nothing came of it.
fs::path mend(const fs::path& path, StoreState state, Date today) {
    fs::path copy = copy_before_mending(path, state, today);
    try {
        mend_tables(path);
    } catch (const Error&) {
        std::error_code ignored;
        fs::remove(copy, ignored);
        throw;
    }
    return copy;
}

}  // namespace

StoreHealth examine_store(const fs::path& store, DoctorTask task, Date today) {
    StoreHealth health;
    health.store = store.string();
    look_over(store, health);
    health.found_before = health.findings.count();
    if (task == DoctorTask::look) return health;
    health.mended = true;
    if (!health.findings.any_mendable()) return health;
    const bool damaged = health.findings.has("damaged-store");
    health.copy = mend(store, damaged ? StoreState::damaged : StoreState::sound, today).string();
    look_over(store, health);
    if (!health.findings.any_mendable() || health.findings.has("damaged-store")) return health;
    Store open = Store::open(store);
    mend_references(open, today);
    look_over(store, health);
    return health;
}

}  // namespace baitwright
