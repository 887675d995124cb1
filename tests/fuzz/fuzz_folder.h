#pragma once

#include <fcntl.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "cli/program.h"
#include "fuzz/check_faults.h"
#include "reference/whole_file.h"
#include "report/json.h"

namespace baitwright::fuzz {

/// A folder in memory, where there is one, to run the program in, in this process: with a store that is laid anew
/// before each run, no editor, nothing on standard input, and a fixed day.
class FuzzFolder {
public:
    FuzzFolder() {
        const bool in_memory = ::access("/dev/shm", W_OK) == 0;
        std::string name = in_memory ? "/dev/shm/baitwright-fuzz-XXXXXX"
                                     : (std::filesystem::temp_directory_path() / "baitwright-fuzz-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) std::abort();
        here_ = name;
        const Inside inside(*this);
        make_store();
    }
    ~FuzzFolder() {
        std::error_code failed;
        std::filesystem::remove_all(here_, failed);
    }
    FuzzFolder(const FuzzFolder&) = delete;
    FuzzFolder& operator=(const FuzzFolder&) = delete;

    /// While one lives the process is in the folder, and knows no other.
    class Inside {
    public:
        explicit Inside(const FuzzFolder& folder) : before_(std::filesystem::current_path()) {
            std::filesystem::current_path(folder.here_);
            for (const char* place : {"HOME", "XDG_DATA_HOME", "TMPDIR"}) set(place, folder.here_.c_str());
            for (const char* editor : {"VISUAL", "EDITOR"}) set(editor, nullptr);
            set("BAITWRIGHT_TODAY", "2026-11-25");
            input_ = ::dup(STDIN_FILENO);
            if (const int nothing = ::open("/dev/null", O_RDONLY); nothing >= 0) {
                ::dup2(nothing, STDIN_FILENO);
                if (nothing != STDIN_FILENO) ::close(nothing);
            }
        }
        ~Inside() {
            std::error_code failed;
            std::filesystem::current_path(before_, failed);
            for (const auto& [name, value] : set_before_) put(name, value ? value->c_str() : nullptr);
            if (input_ < 0) return;
            ::dup2(input_, STDIN_FILENO);
            ::close(input_);
        }
        Inside(const Inside&) = delete;
        Inside& operator=(const Inside&) = delete;

    private:
        void set(const char* name, const char* value) {
            const char* there = std::getenv(name);
            set_before_.emplace_back(name, there ? std::optional<std::string>(there) : std::nullopt);
            put(name, value);
        }
        static void put(const char* name, const char* value) { value ? ::setenv(name, value, 1) : ::unsetenv(name); }

        std::filesystem::path before_;
        std::vector<std::pair<const char*, std::optional<std::string>>> set_before_;
        int input_ = -1;
    };

    /// The store that a run begins with, as bytes.
    [[nodiscard]] const std::string& store() const { return store_; }
    [[nodiscard]] std::filesystem::path place_of_store() const { return here_ / "baitwright" / "baitwright.db"; }

    /// Empties the folder but for a store of these bytes.
    void lay(std::string_view store) const {
        std::error_code failed;
        for (const auto& entry : std::filesystem::directory_iterator(here_))
            std::filesystem::remove_all(entry.path(), failed);
        std::filesystem::create_directories(place_of_store().parent_path());
        write("baitwright/baitwright.db", store);
    }
    void write(const char* name, std::string_view bytes) const {
        if (std::filesystem::path(name).has_parent_path())
            std::filesystem::create_directories((here_ / name).parent_path());
        std::ofstream(here_ / name, std::ios::binary) << bytes;
    }

private:
    /// With one of each kind of thing in it that a command writes.
    void make_store() {
        const std::vector<std::vector<std::string>> lines{
            {"stock", "buy", "brown crumb", "3kg", "--price", "£4.20"},
            {"stock", "buy", "maize meal", "2kg", "--best-before", "2027-01-31"},
            {"stock", "keep", "silt bed", "1.2kg", "--frozen"},
            {"stock", "use", "brown crumb", "250g"},
            {"stock", "count", "maize meal", "1900g"},
            {"price", "maize meal", "--pack", "1kg", "--is", "£1.90", "--shop", "the mill", "--new-shop"},
            {"price", "maize meal", "--pack", "1kg", "--is", "£2.10", "--shop", "the mill"},
            {"log", "mix", "silt bed", "--dry", "1kg", "--water", "700ml", "--feel", "firm"},
            {"log", "catch", "--fish", "bream", "--count", "2"},
            {"log", "bag", "brown crumb"},
            {"log", "undo"},
            {"log", "mix", "silt bed", "--dry", "1kg", "--water", "740ml", "--feel", "soft"},
            {"learn", "--apply"},
            {"usual", "--pump", "80ml", "--units", "metric"},
        };
        std::filesystem::create_directories(place_of_store().parent_path());
        for (const auto& line : lines) static_cast<void>(wrong_with([&] { return run_program(line), std::string(); }));
        store_ = whole_file(place_of_store());
    }

    std::filesystem::path here_;
    std::string store_;
};

/// The one of this process.
inline const FuzzFolder& fuzz_folder() {
    static const FuzzFolder folder;
    return folder;
}

/// What is wrong with what the program says to these words; empty where nothing is.
inline std::string wrong_with_run(const std::vector<std::string>& words) {
    bool as_json = false, as_help = false, is_flag = true;  // behind "--" nothing is
    for (const std::string& word : words) {
        is_flag = is_flag && word != "--";
        as_json = as_json || (is_flag && word == "--json");
        as_help = as_help || word == "--help" || word == "-h" || word == "help" || word == "--version";
    }
    std::string broken;
    try {
        const CommandResult result = run_program(words);
        if (result.status != 0 && result.status != 1) return "ended with " + std::to_string(result.status);
        if (as_json && !as_help && !parsed_json(result.output)) return "printed what is no JSON";
        if (result.output.find('\x1b') != std::string::npos) return "printed an escape of the input";
        return {};
    } catch (const Error& error) {
        broken = lacking(error.faults());
        if (broken.empty() && exit_status(error.fault_class()) == 70) broken = "an error without a status";
        if (broken.empty() && as_json && !parsed_json(error_text(error, words))) broken = "refused in what is no JSON";
    } catch (const std::exception& error) {
        broken = std::string("what is no error of ours came out: ") + error.what();
    }
    return broken;
}

}  // namespace baitwright::fuzz
