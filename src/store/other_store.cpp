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

std::string mend_first(const std::filesystem::path& other) {
    return "nothing was taken in; mend it first: baitwright doctor --mend --store " + shown(other);
}

StorageError damaged_other(const std::filesystem::path& other, const std::string& finding) {
    return {FaultClass::input_output, "damaged-store", "the store " + shown(other) + " is damaged: " + finding,
            mend_first(other)};
}

/// What was said of the copy, of which nobody knows, said of the store that it was made from.
StorageError said_of(const std::filesystem::path& other, const std::filesystem::path& made, const StorageError& error) {
    const Fault& fault = error.faults().front();
    const std::string copy = shown(made);
    const auto at = fault.message.find(copy);
    if (at == std::string::npos) return error;
    std::string message = fault.message;
    message.replace(at, copy.size(), shown(other));
    return {error.fault_class(), fault.code, message, is_damage(error) ? mend_first(other) : fault.hint};
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
        throw said_of(other, made, error);
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

void OtherStore::refuse_damaged(const StorageError& met) {
    refuse_damaged();  // what failed on the way may have failed for that
    throw said_of(other_, made_.path(), met);
}

}  // namespace baitwright
