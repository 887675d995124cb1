#include "library/store_from_folder.h"

#include <map>
#include <set>
#include <system_error>

#include "files/library_text.h"
#include "library/change_library.h"
#include "library/exported_library.h"
#include "library/kept_from_folder.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

void require_export(const std::filesystem::path& folder) {
    std::error_code failed;
    const std::string name = in_quotes(std::string_view(folder.native()));
    if (!std::filesystem::is_directory(folder, failed))
        throw NotFound("no-such-folder", "there is no folder " + name, "look at the path once more");
    if (!std::filesystem::exists(folder / export_about, failed))
        throw NotFound("no-export", "the folder " + name + " has no " + export_about + ", so no export wrote it",
                       "name a folder that was written by: baitwright export --all FOLDER");
}

AboutExport about_of(FolderFiles& files) {
    const FolderFiles::File* file = files.find(export_about);
    std::vector<Fault> faults;
    std::optional<AboutExport> about;
    if (file) about = read_about(file->text, file->name, faults);
    files.add(faults);
    if (!about) throw InputError(files.faults());
    return *std::move(about);
}

std::vector<std::string> files_with_fewer(const AboutExport& about, const std::map<std::string, std::int64_t>& rows) {
    std::vector<std::string> fewer;
    for (const auto& [file, count] : about.rows)
        if (const auto found = rows.find(file); found != rows.end() && found->second < count) fewer.push_back(file);
    return fewer;
}

}  // namespace

FolderTaken fill_from_folder(Store& store, const std::filesystem::path& folder) {
    require_export(folder);
    FolderFiles files(folder);
    FolderTaken taken;
    store.fill_in_making([&] {
        const AboutExport about = about_of(files);
        KeptFromFolder kept(store, files);
        kept.take("shops");
        ExportedLibrary library(store, files);
        library.take();
        kept.take_all_but("shops");
        library.compare_usual();
        if (const std::vector<Fault> faults = files.faults(); !faults.empty()) throw InputError(faults);
        store.set_shipped_digest(about.shipped);
        store.kept().set_clock(about.clock);
        kept.take("stamps");
        taken.changed = library.stamp_changes();
        if (files.faults().empty()) kept.check_all();
        if (const std::vector<Fault> faults = files.faults(); !faults.empty()) throw InputError(faults);
        std::map<std::string, std::int64_t> rows = kept.rows();
        rows.merge(library.rows());
        taken.fewer = files_with_fewer(about, rows);
    });
    return taken;
}

}  // namespace baitwright
