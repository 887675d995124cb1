#pragma once

#include <filesystem>
#include <string>

#include "answers/shared/export_answer.h"
#include "quantities/date.h"
#include "store/store.h"

namespace baitwright {

/// Writes all that the store holds into a folder, as files that a person can read and change: the library as TOML, all
/// else as CSV. They are of one state of the store, to the last bit. The folder is there whole or not at all; one that
/// an earlier export made is replaced. Where it is only to be looked at, all of it is made, and goes again. Throws
/// StorageError as `folder_to_replace` does.
ExportAnswer export_all(const Store& store, const std::filesystem::path& folder, const std::string& made_by, Date today,
                        Doing doing = Doing::done);

}  // namespace baitwright
