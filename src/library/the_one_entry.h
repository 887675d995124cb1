#pragma once

#include "bait/entry_kind.h"
#include "files/library_file.h"

namespace baitwright {

/// Calls `with` with the one entry of its kind in the file; false where there is none, or several.
template <class With>
bool with_the_one(LibraryFile& file, EntryKind kind, With&& with) {
    const auto the_one = [&](auto& entries) {
        if (entries.size() != 1) return false;
        with(entries.front().value);
        return true;
    };
    switch (kind) {
        case EntryKind::ingredient:
            if (file.ingredients.size() != 1) return false;
            with(file.ingredients.front());
            return true;
        case EntryKind::mix:
            return the_one(file.recipes);
        case EntryKind::strategy:
            return the_one(file.strategies);
        case EntryKind::venue:
            return the_one(file.venues);
        case EntryKind::blend:
            return the_one(file.blends);
    }
    return false;
}

}  // namespace baitwright
