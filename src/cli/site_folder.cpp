#include "cli/site_folder.h"

#include <algorithm>
#include <fstream>
#include <system_error>

#include "files/disk.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse_folder(const fs::path& folder, const std::string& why, const std::string& hint) {
    throw StorageError(FaultClass::cannot_create, "no-folder", in_quotes(folder.string()) + " " + why, hint);
}

/// Whether it is an `index.html` that we wrote.
bool is_page_of_ours(const fs::path& file) {
    std::ifstream page(file, std::ios::binary);
    std::string head(4096, '\0');
    page.read(head.data(), static_cast<std::streamsize>(head.size()));
    return head.find(site_mark) != std::string::npos;
}

/// What an earlier run that was ended left beside a file of ours; the next one takes it away.
bool is_leftover(const std::string& name) {
    return name.starts_with('.') && name.ends_with(".new");
}

bool belongs_to_site(const fs::path& file, bool has_page) {
    const std::vector<std::string> names = site_file_names();
    const std::string name = file.filename().string();
    if (is_leftover(name)) return true;
    return has_page && std::find(names.begin(), names.end(), name) != names.end();
}

/// The first thing in the folder that is not of a site of ours; empty where there is none.
std::string other_thing_in(const fs::path& folder) {
    const bool has_page = is_page_of_ours(folder / "index.html");
    std::vector<std::string> others;
    std::error_code failed;
    fs::directory_iterator entry(folder, failed);
    for (const fs::directory_iterator end; !failed && entry != end; entry.increment(failed))
        if (!belongs_to_site(entry->path(), has_page)) others.push_back(entry->path().filename().string());
    if (failed) refuse_folder(folder, "cannot be read: " + failed.message(), "give another folder");
    return others.empty() ? "" : *std::min_element(others.begin(), others.end());
}

void refuse_folder_of_store(const fs::path& folder, const fs::path& store) {
    std::error_code failed;
    if (!store.empty() && fs::equivalent(folder, fs::absolute(store).parent_path(), failed))
        throw UsageError("output-is-store",
                         "--site: " + in_quotes(folder.string()) + " is the store's folder, of your library and shed",
                         "give another folder");
}

}  // namespace

fs::path site_folder(const Arguments& arguments, const fs::path& store) {
    fs::path folder = arguments.value("--site").value_or("");
    std::error_code failed;
    const fs::file_status there = fs::status(folder, failed);
    if (failed && there.type() != fs::file_type::not_found)
        refuse_folder(folder, "cannot be written: " + failed.message(), "give another name or folder");
    if (!fs::exists(there)) return folder;
    if (!fs::is_directory(there)) refuse_folder(folder, "is a file, not a folder", "give another name");
    refuse_folder_of_store(folder, store);
    const std::string other = other_thing_in(folder);
    if (!other.empty() && !arguments.has("--replace"))
        throw StorageError(FaultClass::cannot_create, "folder-in-use",
                           in_quotes(folder.string()) + " holds other things: " + in_quotes(other),
                           "give a folder of its own, or add --replace to write beside them");
    return folder;
}

void write_site(const fs::path& folder, const std::vector<SiteFile>& files) {
    std::error_code failed;
    const bool is_new = fs::create_directory(folder, failed);
    if (failed) refuse_folder(folder, "cannot be made: " + failed.message(), "make the folder that it is in first");
    std::vector<FileToWrite> to_write;
    to_write.reserve(files.size());
    for (const SiteFile& file : files) to_write.push_back({folder / file.name, file.bytes});
    try {
        write_text_files(to_write);
    } catch (...) {
        if (is_new) fs::remove(folder, failed);  // where nothing is in it
        throw;
    }
}

}  // namespace baitwright
