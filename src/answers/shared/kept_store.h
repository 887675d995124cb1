#pragma once

#include <string>
#include <vector>

#include "answers/shared/store_contents.h"

/// What was done, or would be, to keep a store or to have it back. Files are named as the person did.
namespace baitwright {

/// Whether it was done, or only looked at.
enum class Doing { done, looked_at };

struct BackupAnswer {
    Doing doing = Doing::done;
    std::string file;
    StoreContents contents;
    std::vector<std::string> removed;  ///< older backups, oldest first
};

struct RestoreAnswer {
    Doing doing = Doing::done;
    std::string file;  ///< that it was restored from
    StoreContents contents;
    int brought_from = 0;  ///< the version of its tables before it was brought up to date; 0 where it was
    std::string store;
    std::string kept_aside;  ///< what stood there before; empty where there was no store
};

}  // namespace baitwright
