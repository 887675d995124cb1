#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "files/file_faults.h"
#include "quantities/fault.h"

namespace baitwright {

/// The files of a folder that is taken in, each read once, and what is wrong with them, in the order in which they were
/// read.
class FolderFiles {
public:
    explicit FolderFiles(std::filesystem::path folder) : folder_(std::move(folder)) {}

    struct File {
        std::string name, text;  ///< the name with its folder's
        FileFaults faults;
    };
    /// Null, and a fault said once, where it is not there or cannot be read.
    File* find(const std::string& name);

    /// A fault of a file as a whole, or one with a place of its own.
    void add(Fault fault) { others_.push_back(std::move(fault)); }
    void add(const std::vector<Fault>& faults) { others_.insert(others_.end(), faults.begin(), faults.end()); }

    [[nodiscard]] std::string path_of(const std::string& name) const { return (folder_ / name).string(); }
    /// All of them.
    [[nodiscard]] std::vector<Fault> faults() const;

private:
    std::filesystem::path folder_;
    std::map<std::string, std::optional<File>> files_;
    std::vector<std::string> order_;
    std::vector<Fault> others_;
};

}  // namespace baitwright
