#pragma once

#include <filesystem>
#include <string>

namespace baitwright {

/// Opens the person's editor ($VISUAL, else $EDITOR) on the file and waits until it is left. Throws UsageError
/// "no-editor" where none is named, StorageError "editor-failed" where it cannot be run or says that it failed.
void run_editor(const std::filesystem::path& file);

/// Makes a file of the text in the folder for temporary files, that its owner alone can read: its name begins with
/// `name`. Throws StorageError.
std::filesystem::path file_to_edit(const std::string& name, const std::string& text);

}  // namespace baitwright
