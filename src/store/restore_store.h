#pragma once

#include <filesystem>

#include "answers/shared/kept_store.h"
#include "quantities/date.h"

namespace baitwright {

struct RestoreOrder {
    std::filesystem::path from, store;
    Date today;
    Doing doing = Doing::done;
};

/// What `restore_store` did, or would do.
struct StoreRestored {
    StoreContents contents;
    int brought_from = 0;              ///< as in `RestoreAnswer`
    std::filesystem::path kept_aside;  ///< empty where there was no store, and where it was only looked at
};

/// Puts the store of that file in place of the store, whole or not at all. The file is checked first, copied, and its
/// copy brought up to date; it is not changed itself. What was there is kept beside it as
/// `NAME.before-restore-YYYY-MM-DD`, `-2` and so on. It is all one write of SQLite's: a process that has the store open
/// sees either store, and what it writes meanwhile waits; what was written before is in what is kept. Throws
/// UsageError, NotFound, InputError of a newer version and StorageError; nothing is changed then.
StoreRestored restore_store(const RestoreOrder& order);

}  // namespace baitwright
