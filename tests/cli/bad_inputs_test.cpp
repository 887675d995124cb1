// What goes wrong at the keyboard, as a table: `bad_inputs.csv`. A row says in words what is wrong, what is typed after
// the program's name, which file lies in the working folder (a name ending in / is an empty folder; `stdin` is what the
// program reads as standard input) and what stands in it, how the run must end, and what it must say.
// In a file's text \x00 is a byte by its hex digits, and {{1000*ab}} is a text so many times.
#include <algorithm>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>

#include "cli/program_run.h"
#include "reference/reference_rows.h"

namespace {

namespace fs = std::filesystem;
using Case = baitwright::reference::Row;

std::vector<Case> cases() {
    return baitwright::reference::rows_of(
        program_run::whole_file(fs::path(BAITWRIGHT_SOURCE_DIR) / "tests" / "cli" / "bad_inputs.csv"));
}

std::string with_repeats(const std::string& text) {
    std::string result;
    for (std::size_t at = 0;;) {
        const auto open = text.find("{{", at), star = text.find('*', open), close = text.find("}}", star);
        result += text.substr(at, open - at);
        if (open == std::string::npos) return result;
        for (int left = std::stoi(text.substr(open + 2, star - open - 2)); left > 0; --left)
            result += text.substr(star + 1, close - star - 1);
        at = close + 2;
    }
}

std::string with_bytes(const std::string& text) {
    std::string result;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const std::string digits = text.substr(at, 2) == "\\x" ? text.substr(at + 2, 2) : std::string();
        if (digits.size() == 2 && digits.find_first_not_of("0123456789ABCDEF") == std::string::npos) {
            result += static_cast<char>(std::stoi(digits, nullptr, 16));
            at += 3;
        } else {
            result += text[at];
        }
    }
    return result;
}

void lay(const fs::path& folder, const Case& row) {
    const std::string& name = row.at("file");
    if (name.empty()) return;
    if (name.back() == '/')
        fs::create_directories(folder / name);
    else
        program_run::write(folder / name, with_bytes(with_repeats(row.at("text"))));
}

program_run::Outcome run(const fs::path& folder, const Case& row, const std::string& more = {}) {
    const std::string input = row.at("file") == "stdin" ? "stdin" : "/dev/null";
    return program_run::run(folder, row.at("command") + more, input, "C");
}

/// The store as the program makes it at its first command, and the folder it was made in.
class Shed {
public:
    Shed() {
        made_ = program_run::run(here_.path(), "recipe list").status == 0;
        store_ = store();
    }
    [[nodiscard]] bool made() const { return made_ && !store_.empty(); }
    [[nodiscard]] const fs::path& path() const { return here_.path(); }
    [[nodiscard]] bool untouched() const { return store() == store_; }
    /// Takes out what a case laid in; names what else is there.
    std::string tidy(const Case& row) {
        const std::string& name = row.at("file");
        if (!name.empty()) fs::remove_all(path() / *fs::path(name).begin());
        const std::set<std::string> kept{"data", "output", "errors"};
        std::string left;
        for (const auto& entry : fs::directory_iterator(path()))
            if (kept.count(entry.path().filename().string()) == 0) left += entry.path().filename().string() + " ";
        return left;
    }

private:
    [[nodiscard]] std::string store() const {
        return program_run::whole_file(path() / "data" / "baitwright" / "baitwright.db");
    }

    program_run::Folder here_;
    bool made_ = false;
    std::string store_;
};

bool is_refusal(int status) {
    return status >= 64 && status <= 75;
}

std::size_t count_of(const std::string& text, const std::string& word) {
    std::size_t count = 0;
    for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) ++count;
    return count;
}

/// Each fault is told with how to mend it.
std::size_t faults_without_hint(const std::string& errors) {
    return count_of("\n" + errors, "error: ") -
           std::min(count_of("\n" + errors, "error: "), count_of(errors, "  hint: "));
}

bool holds_a_digit(const std::string& text) {
    return std::any_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

void check_plain(const program_run::Outcome& outcome, const Case& row) {
    CHECK(std::to_string(outcome.status) == row.at("status"));
    CHECK(outcome.status < 128);
    CHECK((outcome.output + outcome.errors).find(row.at("says")) != std::string::npos);
    if (!is_refusal(outcome.status)) return;
    CHECK(outcome.output.empty());
    CHECK(faults_without_hint(outcome.errors) == 0);
}

/// What is wrong with one entry of "errors"; empty where nothing is.
std::string wrong_with(const nlohmann::json& error) {
    std::set<std::string> keys;
    for (const auto& entry : error.items()) keys.insert(entry.key());
    if (keys != std::set<std::string>{"code", "message", "file", "line", "column", "hint"}) return "its keys";
    if (!error["code"].is_string() || !error["message"].is_string()) return "no code or no message";
    if (!error["file"].is_string() && !error["file"].is_null()) return "file";
    if (!error["hint"].is_string() || error["hint"].get<std::string>().empty()) return "no hint";
    // Out of its range says from where to where, or an example of what is inside.
    if (error["code"] == "out-of-range" &&
        !holds_a_digit(error["message"].get<std::string>() + error["hint"].get<std::string>()))
        return "neither a range nor an example";
    for (const char* key : {"line", "column"})
        if (!error[key].is_number_integer() && !error[key].is_null()) return key;
    return {};
}

void check_json(const program_run::Outcome& outcome, const program_run::Outcome& plain) {
    CHECK(outcome.status == plain.status);
    CHECK(outcome.errors.empty() == plain.errors.empty());
    const std::string& text = plain.errors.empty() ? outcome.output : outcome.errors;
    const auto json = nlohmann::json::parse(text, nullptr, false);
    REQUIRE_FALSE(json.is_discarded());
    if (plain.errors.empty()) return;
    CHECK(outcome.output.empty());
    REQUIRE(json.contains("errors"));
    CHECK_FALSE(json["errors"].empty());
    for (const auto& error : json["errors"]) CHECK(wrong_with(error) == "");
}

}  // namespace

TEST_CASE("whatever is typed wrongly is refused in words, as a person and as a program reads them") {
    const std::vector<Case> rows = cases();
    CHECK(rows.size() >= 110);
    Shed shed;
    REQUIRE(shed.made());
    for (const Case& row : rows) {
        INFO(row.at("what") << ": baitwright " << row.at("command"));
        lay(shed.path(), row);
        const program_run::Outcome plain = run(shed.path(), row);
        INFO("it said: " << (plain.output + plain.errors).substr(0, 1000));
        check_plain(plain, row);
        check_json(run(shed.path(), row, " --json"), plain);
        CHECK(shed.untouched());
        CHECK(shed.tidy(row) == "");
    }
}

TEST_CASE("no two bad inputs of the table have one description") {
    std::set<std::string> seen;
    for (const Case& row : cases()) {
        CAPTURE(row.at("what"));
        CHECK(seen.insert(row.at("what")).second);
    }
}
