#include "library/folder_files.h"

#include <tuple>
#include <utility>

#include "files/disk.h"

namespace baitwright {

FolderFiles::File* FolderFiles::find(const std::string& name) {
    const auto [known, is_first] = files_.try_emplace(name);
    if (!is_first) return known->second ? &*known->second : nullptr;
    order_.push_back(name);
    try {
        std::string text = read_large_text_file(folder_ / name);
        File& file = known->second.emplace(File{path_of(name), std::move(text), FileFaults({}, {})});
        file.faults = FileFaults(file.text, file.name);
        return &file;
    } catch (const NotFound&) {
        add(fault_of_file("missing-file", "this file is not there",
                          "put it back; where it is to hold nothing, its headings alone will do", path_of(name)));
    } catch (const Error& error) {
        for (const Fault& fault : error.faults())
            add(fault_of_file(fault.code, fault.message, fault.hint, path_of(name)));
    }
    return nullptr;
}

std::vector<Fault> FolderFiles::faults() const {
    std::vector<Fault> all = others_;
    for (const std::string& name : order_)
        if (const std::optional<File>& file = files_.at(name)) {
            const std::vector<Fault> told = file->faults.in_file_order();
            all.insert(all.end(), told.begin(), told.end());
        }
    return all;
}

}  // namespace baitwright
