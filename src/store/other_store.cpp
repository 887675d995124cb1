#include "store/other_store.h"

#include <system_error>

#include "quantities/fault.h"
#include "store/backup_seal.h"
#include "store/copy_store.h"
#include "store/file_header.h"
#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

StorageError damaged_other(const std::filesystem::path& other, const std::string& finding) {
    return {FaultClass::input_output, "damaged-store", "the store " + shown(other) + " is damaged: " + finding,
            "nothing was taken in; mend it first: baitwright doctor --mend --store " + shown(other)};
}

void refuse_unfit(const std::filesystem::path& other, const std::filesystem::path& store) {
    std::error_code failed;
    if (std::filesystem::status(other, failed).type() == std::filesystem::file_type::not_found)
        throw NotFound("no-such-file", "there is no file " + shown(other), "look at the path once more");
    if (std::filesystem::is_directory(other, failed))
        throw StorageError(
            FaultClass::input_output, "unreadable-file", shown(other) + " is a folder",
            "name the store in it; what an export wrote goes in with: baitwright import " + shown(other));
    if (std::filesystem::equivalent(other, store, failed))
        throw UsageError("merge-with-itself", shown(other) + " is the store itself", "name the other store");
}

std::string what_is_broken_in(const std::filesystem::path& path) {
    try {
        SQLite::Database copy(path.string(), SQLite::OPEN_READONLY);
        return what_is_broken(copy);
    } catch (const SQLite::Exception& error) {
        return error.what();
    }
}

/// Copies it, looks it over and brings it up to date; the copy is opened.
Store opened_copy(const std::filesystem::path& other, const std::filesystem::path& made) {
    if (seal_of(other) == Seal::broken) throw damaged_other(other, "it is not as the backup was written");
    try {
        {
            SQLite::Database source = open_to_copy(other);
            refuse_what_is_no_store(source, other, newest_version());
            copy_into(source, made);
        }
        SQLite::Database copy(made.string(), SQLite::OPEN_READWRITE);
        const int version = version_of(copy);
        if (version > newest_version()) refuse_newer_store(other, version);
        if (version < newest_version()) {
            if (const std::string broken = what_is_broken(copy); !broken.empty()) throw damaged_other(other, broken);
            migrate(copy, migrations());
        }
    } catch (const SQLite::Exception& error) {
        if (is_damage(storage_error(error, other))) throw damaged_other(other, error.what());
        throw storage_error(error, other);
    }
    try {
        return Store::open(made);
    } catch (const StorageError& error) {
        if (is_damage(error)) throw damaged_other(other, error.what());
        throw;
    }
}

}  // namespace

OtherStore::OtherStore(const std::filesystem::path& other, const std::filesystem::path& store)
    : other_(other),
      made_((refuse_unfit(other, store), folder_of_file(store))),
      store_(opened_copy(other, made_.path())),
      broken_(std::async(std::launch::async, what_is_broken_in, made_.path())) {}

void OtherStore::refuse_damaged() {
    if (const std::string broken = broken_.get(); !broken.empty()) throw damaged_other(other_, broken);
}

}  // namespace baitwright
