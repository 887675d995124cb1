#pragma once

#include <filesystem>
#include <string>

#include "cli/command.h"

/// A slip in `--store` gives an empty shed where the full one was meant: a store that a run has made is told of.
namespace baitwright {

/// The store that the person named; it knows whether it was there before the run.
class NamedStore {
public:
    /// Throws StorageError "no-folder" where the folder that it is to stand in is not there: only the usual store's
    /// folders are made.
    explicit NamedStore(const Arguments& arguments);

    /// Says so, beside the answer or in its warnings, where the run made it.
    void tell(CommandResult& result, const Arguments& arguments) const;
    /// The error with the same added to its hint.
    [[nodiscard]] Error told(const Error& error) const;

private:
    [[nodiscard]] bool is_new() const;
    [[nodiscard]] std::string message() const;

    std::filesystem::path path_;
    bool was_there_ = true;
};

}  // namespace baitwright
