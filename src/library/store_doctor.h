#pragma once

#include <filesystem>

#include "answers/shared/store_health.h"
#include "quantities/date.h"

namespace baitwright {

enum class DoctorTask { look, mend };

/// Looks a store over: its file, its tables, every number and name in it, its sums against the movements, its marks.
/// Mending first copies it beside itself, then puts right what can be, and looks again. A store of an older version is
/// brought up to date as by any command. Throws NotFound "no-store"; StorageError for what is no store, or locked.
StoreHealth examine_store(const std::filesystem::path& store, DoctorTask task, Date today);

}  // namespace baitwright
