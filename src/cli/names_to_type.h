#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "bait/entry_kind.h"
#include "library/open_library.h"
#include "store/name_glance.h"

namespace baitwright {

struct LibraryFile;

/// The names of the library that a run would use, for somebody who is typing one: of the store at that place, without
/// making or changing it; of the folder in place of it; of what is shipped where there is no store yet. Where they
/// cannot be read, there are none: nothing is ever thrown for that.
class NamesToType {
public:
    explicit NamesToType(LibraryPlace place);

    [[nodiscard]] std::vector<GlancedName> names(EntryKind kind) const;
    /// Those with an older version: what `restore` puts back.
    [[nodiscard]] std::vector<GlancedName> retired(EntryKind kind) const;
    [[nodiscard]] std::vector<GlancedName> feels() const;
    [[nodiscard]] std::vector<GlancedName> shops() const;
    /// Those that advice knows.
    [[nodiscard]] std::vector<GlancedName> fish() const;

private:
    using Visit = std::function<void(const LibraryFile&)>;
    /// Every file of the folder, which is there.
    void visit_files(const Visit& visit) const;

    LibraryPlace place_;
    std::optional<NameGlance> store_;
    bool unreadable_ = false;
};

}  // namespace baitwright
