#include "files/new_name.h"

#include <cerrno>
#include <csignal>
#include <string_view>
#include <system_error>
#include <vector>

#include "quantities/number_text.h"

namespace baitwright {

namespace fs = std::filesystem;

std::string NewName::text(pid_t process, int attempt) const {
    return front_ + std::to_string(process) + "-" + std::to_string(attempt) + ".new";
}

pid_t NewName::process_of(const std::string& name) const {
    if (name.compare(0, front_.size(), front_) != 0) return 0;
    std::string_view rest = std::string_view(name).substr(front_.size());
    const std::string_view process = take_digits(rest);
    const bool dash = rest.substr(0, 1) == "-";
    rest.remove_prefix(dash ? 1 : 0);
    const bool fits = dash && !process.empty() && process.size() < 10 && !take_digits(rest).empty();
    return fits && rest == ".new" ? static_cast<pid_t>(std::stol(std::string(process))) : 0;
}

void sweep_leftovers(const fs::path& folder, const NewName& name) {
    std::error_code failed;
    std::vector<fs::path> leftovers;
    fs::directory_iterator entry(folder, failed);
    for (const fs::directory_iterator end; !failed && entry != end; entry.increment(failed)) {
        const pid_t process = name.process_of(entry->path().filename().string());
        if (process > 0 && ::kill(process, 0) != 0 && errno == ESRCH) leftovers.push_back(entry->path());
    }
    for (const fs::path& leftover : leftovers) fs::remove_all(leftover, failed);
}

fs::path folder_of(const fs::path& path) {
    return path.has_parent_path() ? path.parent_path() : ".";
}

fs::path behind_links(const fs::path& path) {
    std::error_code failed;
    const fs::path real = fs::is_symlink(path, failed) ? fs::weakly_canonical(path, failed) : path;
    return failed ? path : real;
}

}  // namespace baitwright
