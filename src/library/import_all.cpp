#include "library/import_all.h"

#include <algorithm>
#include <system_error>

#include "library/merge_store.h"
#include "library/open_library.h"
#include "library/store_from_folder.h"
#include "quantities/fault.h"
#include "store/file_in_making.h"
#include "store/new_store.h"
#include "store/schema.h"
#include "store/store_fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

StoreContents contents_of(const Store& store, const fs::path& file) {
    const std::vector<OwnedEntry> entries = store.kept().entries();
    const auto count = [&](std::string_view kind) {
        return std::count_if(entries.begin(), entries.end(),
                             [&](const OwnedEntry& entry) { return entry.kind == kind; });
    };
    const auto rows = [&](std::string_view table) { return store.kept().count(kept_table(table)); };
    StoreContents contents;
    contents.version = newest_version();
    contents.ingredients = count("ingredient");
    contents.mixes = count("mix");
    contents.strategies = count("strategy");
    contents.venues = count("venue");
    contents.blends = count("blend");
    contents.shed_entries = rows("shed-entries");
    contents.sessions = rows("log-sessions");
    contents.log_entries = rows("log");
    std::error_code failed;
    const std::uintmax_t bytes = fs::file_size(file, failed);
    contents.bytes = failed ? 0 : static_cast<std::int64_t>(bytes);
    return contents;
}

void make_folder_for(const fs::path& store) {
    std::error_code failed;
    fs::create_directories(folder_of_file(store), failed);
    if (failed) throw cannot_make_store(store, failed.message());
}

/// Makes a store of its own of the folder, in the file in the making.
ImportAnswer make_from_folder(const FileInMaking& made, const fs::path& folder) {
    make_store_in(made);
    ImportAnswer answer;
    Store store = Store::open(made.path());
    FolderTaken taken = fill_from_folder(store, folder);
    answer.folder = folder.string();
    answer.contents = contents_of(store, made.path());
    answer.changed = std::move(taken.changed);
    answer.fewer = std::move(taken.fewer);
    return answer;
}

}  // namespace

ImportAnswer import_all(const fs::path& store, const fs::path& folder, Date today, Doing doing) {
    make_folder_for(store);
    sweep_left_in_making(folder_of_file(store));
    FileInMaking made(folder_of_file(store));
    ImportAnswer answer = make_from_folder(made, folder);
    answer.store = store.string();
    answer.doing = doing;
    std::error_code failed;
    const bool looks = doing == Doing::looked_at;
    if (!fs::exists(store, failed) && (looks || made.put_in_place(store, FileInMaking::Standing::kept))) return answer;
    Store present = open_store(store);
    answer.merged = merge_store(present, made.path(), today, looks ? MergeDoing::only_shown : MergeDoing::done);
    answer.merged->other = answer.folder;
    return answer;
}

}  // namespace baitwright
