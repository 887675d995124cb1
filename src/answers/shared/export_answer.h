#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "answers/shared/kept_store.h"
#include "answers/shared/merge_answer.h"
#include "answers/shared/store_contents.h"

/// What was taken out of a store into a folder, and what came of taking one in.
namespace baitwright {

struct ExportAnswer {
    Doing doing = Doing::done;
    std::string folder;                                       ///< as the person named it
    std::vector<std::pair<std::string, std::int64_t>> files;  ///< with their entries or rows
};

struct ImportAnswer {
    Doing doing = Doing::done;
    std::string folder, store;
    StoreContents contents;             ///< of the folder
    std::vector<std::string> changed;   ///< entries that a person changed or added by hand
    std::vector<std::string> fewer;     ///< files that have fewer rows than when they were written
    std::optional<MergeAnswer> merged;  ///< what came of it where there was a store already
};

}  // namespace baitwright
