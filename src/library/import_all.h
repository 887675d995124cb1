#pragma once

#include <filesystem>

#include "answers/shared/export_answer.h"
#include "quantities/date.h"

namespace baitwright {

/// Takes in what `export_all` wrote, and a person may have changed. Where there is no store yet, the folder becomes it;
/// else what it holds is merged into the store as another store's would be (`merge_store.h`). All of it or nothing;
/// or it is only looked at, and nothing is changed.
/// Throws NotFound, InputError with the faults of all files, StorageError.
ImportAnswer import_all(const std::filesystem::path& store, const std::filesystem::path& folder, Date today,
                        Doing doing = Doing::done);

}  // namespace baitwright
