#pragma once

/// Whether what is changed is kept. Set once a run, before a store is opened for it.
namespace baitwright {

/// Undone changes are made as ever, and seen by all that reads the same store after them in this run; when it is let
/// go, it is as before.
enum class Changes { kept, undone };

void make_changes(Changes changes);

Changes changes_made();

}  // namespace baitwright
