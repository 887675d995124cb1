#include "store/store_fault.h"

#include <sqlite3.h>

#include <system_error>

#include "quantities/in_quotes.h"
#include "quantities/plain_words.h"

namespace baitwright {

namespace {

constexpr const char* damaged_code = "damaged-store";
constexpr const char* restore_hint =
    "put a backup in its place: baitwright restore BACKUP; without one, move the file away, and what stands beside it with "
    "-wal or -journal behind its name: the next command makes a new store from the shipped files";

}  // namespace

std::string shown(const std::filesystem::path& path) {
    return "'" + written_out(path.string()) + "'";
}

StorageError damaged_store(const std::filesystem::path& path, const std::string& finding) {
    return {FaultClass::input_output, damaged_code, "the store " + shown(path) + " is damaged: " + finding,
            restore_hint};
}

bool is_damage(const StorageError& error) {
    return error.faults().front().code == damaged_code;
}

StorageError stored_out_of_range(const std::string& ingredient, const std::string& finding) {
    return {FaultClass::bad_data, "stored-out-of-range", "in the store, " + in_quotes(ingredient) + ": " + finding,
            "for a pack or a price, tell the right one: baitwright price " + in_quotes(ingredient) +
                " --pack 1kg --is £4.20; else read the ingredient in again: baitwright ingredient import FILE"};
}

StorageError stored_mix_out_of_range(const std::string& mix, const std::string& finding) {
    return {FaultClass::bad_data, "stored-out-of-range", "in the store, the mix " + in_quotes(mix) + ": " + finding,
            "write it into a file with the right amounts, and add it again: baitwright recipe add FILE"};
}

StorageError stored_strategy_out_of_range(const std::string& strategy, const std::string& finding) {
    return {FaultClass::bad_data, "stored-out-of-range",
            "in the store, the strategy " + in_quotes(strategy) + ": " + finding,
            "write it into a file with the right numbers, and add it again: baitwright strategy add FILE"};
}

StorageError stored_log_out_of_range(std::int64_t entry, const std::string& finding) {
    const std::string number = std::to_string(entry);
    return {FaultClass::bad_data, "stored-out-of-range", "in the store, entry " + number + " of the log: " + finding,
            "take it back, and write down again what it was: baitwright log undo " + number};
}

StorageError stored_learnt_out_of_range(const std::string& subject, const std::string& finding) {
    return {FaultClass::bad_data, "stored-out-of-range", "in the store, what was learnt of " + subject + ": " + finding,
            "learn it from the log again: baitwright learn --apply"};
}

void refuse_no_store(const std::filesystem::path& path) {
    std::error_code failed;
    if (std::filesystem::status(path, failed).type() != std::filesystem::file_type::not_found) return;
    throw NotFound("no-store", "there is no store " + shown(path) + " yet",
                   "name another with --store FILE; the first command that needs one makes it");
}

StorageError cannot_make_store(const std::filesystem::path& path, const std::string& reason) {
    return {FaultClass::cannot_create, "cannot-write-store",
            "the store " + shown(path) + " cannot be made or written: " + reason,
            "make its folder writable, or name another file"};
}

StorageError storage_error(const SQLite::Exception& error, const std::filesystem::path& path) {
    const std::string what = error.what();
    switch (error.getErrorCode()) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
        case SQLITE_PROTOCOL:
            return {FaultClass::try_again, "store-locked", "another program is using the store " + shown(path),
                    "wait until it has finished, then try again"};
        case SQLITE_CANTOPEN:
        case SQLITE_PERM:
        case SQLITE_AUTH:
        case SQLITE_READONLY:
            return cannot_make_store(path, what);
        case SQLITE_NOTADB:
            return {FaultClass::input_output, "not-a-store", shown(path) + " is not a store of this program",
                    "name another file, or move this one away"};
        case SQLITE_FULL:
            return {FaultClass::input_output, "disk-full",
                    "the disk is full; the store " + shown(path) + " is as it was", "make room, then try again"};
        case SQLITE_NOMEM:
            return {FaultClass::try_again, "no-memory",
                    "there is not enough memory to work with the store " + shown(path) + "; it is as it was",
                    "close other programs, then try again"};
        case SQLITE_IOERR:
            return {FaultClass::input_output, "store-unreadable",
                    "the store " + shown(path) + " could not be read or written: " + what,
                    "check the disk, then try again"};
        case SQLITE_CONSTRAINT:
            return {FaultClass::input_output, "store-refused",
                    "the store " + shown(path) + " refuses the entry: " + what, "every number must be finite"};
        default:
            return damaged_store(path, what);
    }
}

}  // namespace baitwright
