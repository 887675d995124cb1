#include "store/kept_changes.h"

namespace baitwright {

namespace {

Changes& changes_in_use() {
    static Changes changes = Changes::kept;
    return changes;
}

}  // namespace

void make_changes(Changes changes) {
    changes_in_use() = changes;
}

Changes changes_made() {
    return changes_in_use();
}

}  // namespace baitwright
