#include "cli/new_store_told.h"

#include <system_error>

#include "quantities/in_quotes.h"
#include "report/json.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

bool is_there(const fs::path& path) {
    std::error_code failed;
    return fs::symlink_status(path, failed).type() != fs::file_type::not_found;
}

}  // namespace

NamedStore::NamedStore(const Arguments& arguments) : path_(arguments.value("--store").value_or("")) {
    if (path_.empty()) return;
    was_there_ = is_there(path_);
    const fs::path folder = path_.parent_path();
    if (!folder.empty() && !is_there(folder))
        throw StorageError(FaultClass::cannot_create, "no-folder",
                           "there is no folder " + in_quotes(folder.string()) + " for the store",
                           "look at the name once more, or make the folder first");
}

bool NamedStore::is_new() const {
    return !was_there_ && is_there(path_);
}

std::string NamedStore::message() const {
    return "a new store was made, " + in_quotes(path_.string()) + ", with an empty shed";
}

void NamedStore::tell(CommandResult& result, const Arguments& arguments) const {
    if (!is_new()) return;
    if (auto json = arguments.has("--json") ? parsed_json(result.output) : std::nullopt;
        json && json->contains("warnings")) {
        (*json)["warnings"].push_back({{"code", "new-store"}, {"message", message()}});
        result.output = json_text(*json);
        return;
    }
    result.aside = "note: " + message() + "\n";
}

Error NamedStore::told(const Error& error) const {
    std::vector<Fault> faults = error.faults();
    if (is_new() && !faults.empty())
        faults.back().hint += (faults.back().hint.empty() ? "" : "; ") + message() + ": is it the one you meant?";
    return {error.fault_class(), std::move(faults)};
}

}  // namespace baitwright
