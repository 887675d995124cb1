#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <chrono>
#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "store/store_fault.h"

namespace baitwright {

/// The open file: its statements, each prepared once; its one way to write; and the seam at which SQLite's errors
/// become ours. Opening an existing store costs one read of its header and of its version, for every command pays it.
class StoreConnection {
public:
    StoreConnection(const std::filesystem::path& path, std::chrono::milliseconds patience);

    /// Runs the work; what SQLite throws in it leaves as StorageError with the file's name.
    template <class Work>
    auto guarded(Work&& work) const {
        try {
            return work();
        } catch (const SQLite::Exception& error) {
            throw storage_error(error, path_);
        }
    }

    /// See `Store::change`.
    void change(const std::function<void()>& work);

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

    /// From here on it is written fast: no other process knows the file yet, and it goes where this one is stopped.
    void write_alone();
    /// Nothing is written any more, and others may come to know the file.
    void write_no_more();

    /// Throws std::logic_error where no `change` is running.
    void require_change() const;

    /// From here on, until something is changed, all reading sees one state of the store; and one reading of it costs
    /// SQLite's locks once, not once a question.
    void look_from_now();

    /// Attaches the file of another store as `other`, to be read; and lets it go. Not inside a change.
    void attach_other(const std::filesystem::path& path);
    void detach_other();

    /// `mark_of` (`content_mark.h`) can be called in SQL from now on.
    void know_marks();

    /// Runs SQL that is not worth keeping prepared. Inside a change only.
    void run_once(const std::string& sql);
    /// An index is made faster where what is sorted at once fits the caches of the processor.
    void sort_in_small_heaps(const std::function<void()>& work);

    /// The statement of that text, reset. `sql` must be a constant: it is the key.
    SQLite::Statement& prepared(const char* sql);

    [[nodiscard]] StorageError damaged(const std::string& finding) const { return damaged_store(path_, finding); }

    using Names = std::map<std::string, std::string>;
    /// Names of a kind of entry, folded, as they are shown and as an older program stored them, where the two differ.
    /// This program stores none such, so that they are looked for once.
    template <class Look>
    const Names& mended_names(std::string_view kind, Look&& look) {
        const auto [known, is_first] = mended_names_.try_emplace(std::string(kind));
        if (is_first) known->second = look();
        return known->second;
    }

    /// While one lives, all reading sees one state of the store: an entry spread over several tables is read whole. One
    /// inside another sees what that sees.
    class Snapshot {
    public:
        explicit Snapshot(StoreConnection& connection);
        ~Snapshot();
        Snapshot(const Snapshot&) = delete;
        Snapshot& operator=(const Snapshot&) = delete;

    private:
        StoreConnection* begun_ = nullptr;
    };

private:
    void check_version();
    void prepare_for_writing();
    void look_no_more();

    std::filesystem::path path_;
    SQLite::Database database_;
    std::map<const char*, SQLite::Statement> statements_;
    std::optional<SQLite::Transaction> undone_;  ///< holds what is changed but not to be kept; goes before the rest
    std::map<std::string, Names> mended_names_;  ///< by the kind of entry
    bool knows_marks_ = false;                   ///< `know_marks` was called
    bool writes_ = false;                        ///< the settings for writing are made
    bool changing_ = false;                      ///< inside `change`
    bool looking_ = false;                       ///< a snapshot lives, or `look_from_now` was called
    bool looks_on_ = false;                      ///< by `look_from_now`
};

}  // namespace baitwright
