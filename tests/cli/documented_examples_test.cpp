// Every example of README.md and docs/*.md is run: the lines of a ```console block that begin with "$ ", in the shell,
// one folder a document so that steps build on each other. The files of documented/ are laid into that folder. What a
// line prints (its output, then its errors) must be what stands below it; a line `[...]` stands for any lines, and one
// date is as good as another. A block after `<!-- file: NAME -->` must show documented/NAME. BAITWRIGHT_ACCEPT=1 writes
// what came into the documents, but for examples with `[...]`.
#include <algorithm>
#include <catch2/catch.hpp>
#include <optional>
#include <regex>
#include <sstream>
#include <vector>

#include "cli/program_run.h"

namespace {

namespace fs = std::filesystem;
using Lines = std::vector<std::string>;

const fs::path source = BAITWRIGHT_SOURCE_DIR;
const fs::path laid = source / "tests" / "cli" / "documented";
const std::string anything = "[...]";

Lines lines_of(const std::string& text) {
    Lines lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}

std::string joined(const Lines& lines) {
    std::string text;
    for (const std::string& line : lines) text += line + "\n";
    return text;
}

std::vector<fs::path> documents() {
    std::vector<fs::path> found{source / "README.md"};
    for (const auto& entry : fs::directory_iterator(source / "docs"))
        if (entry.path().extension() == ".md") found.push_back(entry.path());
    std::sort(found.begin(), found.end());
    return found;
}

/// What is typed, and where in the document its output stands.
struct Example {
    std::string command;
    std::size_t begin, end;
};

std::vector<Example> examples_in(const Lines& document) {
    std::vector<Example> examples;
    for (std::size_t i = 0; i < document.size(); ++i) {
        if (document[i] != "```console") continue;
        while (document.at(++i) != "```") {
            if (document[i].starts_with("$ ")) {
                std::string command = document[i].substr(2);
                while (command.ends_with("\\")) command += "\n" + document.at(++i);
                examples.push_back({command, i + 1, i + 1});
            } else if (!examples.empty()) {
                examples.back().end = i + 1;
            }
        }
    }
    return examples;
}

/// A folder with the laid files, where `baitwright` is the built program, its store in that folder.
class Bench {
public:
    Bench() {
        fs::copy(laid, here_.path(), fs::copy_options::recursive);
        fs::create_symlink(BAITWRIGHT_PROGRAM, aside_.path() / "baitwright");
    }

    /// Output, then errors, of one line; `$?` is the status of the line before.
    [[nodiscard]] const fs::path& folder() const { return here_.path(); }

    Lines type(const std::string& command) {
        const std::string aside = aside_.path().string();
        program_run::write(aside_.path() / "line", "(exit " + std::to_string(status_) + ")\n" + command + "\n");
        const int raw = std::system(("cd '" + here_.path().string() + "' && PATH='" + aside +
                                     "':\"$PATH\" LC_ALL=C.UTF-8 HOME=\"$PWD\" "
                                     "XDG_DATA_HOME=\"$PWD/data\" NO_COLOR=1 BAITWRIGHT_TODAY=" +
                                     program_run::today + " sh '" + aside +
                                     "/line' "
                                     "</dev/null >'" +
                                     aside + "/output' 2>'" + aside + "/errors'")
                                        .c_str());
        status_ = WIFEXITED(raw) ? WEXITSTATUS(raw) : 128 + WTERMSIG(raw);
        return lines_of(program_run::whole_file(aside_.path() / "output") +
                        program_run::whole_file(aside_.path() / "errors"));
    }

private:
    program_run::Folder here_, aside_;
    int status_ = 0;
};

std::string without_dates(const std::string& line) {
    static const std::regex date("20[0-9]{2}-[0-9]{2}-[0-9]{2}");
    return std::regex_replace(line, date, "DATE");
}

using Line = Lines::const_iterator;

bool same(Line shown, Line shown_end, Line came, Line came_end) {
    if (shown == shown_end) return came == came_end;
    if (*shown == anything) {
        for (Line rest = came; rest != came_end; ++rest)
            if (same(shown + 1, shown_end, rest, came_end)) return true;
        return same(shown + 1, shown_end, came_end, came_end);
    }
    return came != came_end && without_dates(*shown) == without_dates(*came) &&
           same(shown + 1, shown_end, came + 1, came_end);
}

bool same(const Lines& shown, const Lines& came) {
    return same(shown.begin(), shown.end(), came.begin(), came.end());
}

/// Puts `came` in place of what the example shows; later examples move along.
void accept(Lines& document, std::vector<Example>& examples, std::size_t which, const Lines& came) {
    const Example& example = examples[which];
    const auto at = [&](std::size_t line) { return document.begin() + static_cast<std::ptrdiff_t>(line); };
    const std::size_t begin = example.begin, before = example.end - begin;
    document.erase(at(begin), at(example.end));
    document.insert(at(begin), came.begin(), came.end());
    for (Example& other : examples) {
        if (other.begin > begin) other.begin += came.size() - before;
        if (other.end > begin) other.end += came.size() - before;
    }
}

/// `worked-session-drop.svg` beside `worked-session.md` is the `drop.svg` that its examples drew.
void check_pictures(const fs::path& path, const fs::path& drawn_in, bool accepting) {
    for (const auto& entry : fs::directory_iterator(drawn_in)) {
        const fs::path shown = path.parent_path() / (path.stem().string() + "-" + entry.path().filename().string());
        if (entry.path().extension() != ".svg" || !fs::exists(shown)) continue;
        INFO(shown.filename().string());
        if (accepting) fs::copy_file(entry.path(), shown, fs::copy_options::overwrite_existing);
        CHECK(program_run::whole_file(shown) == program_run::whole_file(entry.path()));
    }
}

void check_examples(const fs::path& path, bool accepting) {
    Lines document = lines_of(program_run::whole_file(path));
    std::vector<Example> examples = examples_in(document);
    Bench bench;
    for (std::size_t i = 0; i < examples.size(); ++i) {
        const Example example = examples[i];
        const Lines shown(document.begin() + static_cast<std::ptrdiff_t>(example.begin),
                          document.begin() + static_cast<std::ptrdiff_t>(example.end));
        const Lines came = bench.type(example.command);
        if (same(shown, came)) continue;
        if (accepting && std::find(shown.begin(), shown.end(), anything) == shown.end())
            accept(document, examples, i, came);
        INFO(path.filename().string() << ", line " << example.begin << ": $ " << example.command);
        CHECK(joined(shown) == joined(came));
    }
    check_pictures(path, bench.folder(), accepting);
    if (accepting) program_run::write(path, joined(document));
}

/// The file that a line `<!-- file: NAME -->` names.
std::optional<std::string> file_named(const std::string& line) {
    const std::string before = "<!-- file: ", after = " -->";
    if (!line.starts_with(before) || !line.ends_with(after)) return std::nullopt;
    return line.substr(before.size(), line.size() - before.size() - after.size());
}

}  // namespace

TEST_CASE("each example in the documents prints what the document shows") {
    const bool accepting = std::getenv("BAITWRIGHT_ACCEPT") != nullptr;
    std::size_t count = 0;
    for (const fs::path& path : documents()) {
        count += examples_in(lines_of(program_run::whole_file(path))).size();
        check_examples(path, accepting);
    }
    CHECK(count >= 60);
}

TEST_CASE("each file shown in the documents is the one the examples run on") {
    std::size_t count = 0;
    for (const fs::path& path : documents()) {
        const Lines document = lines_of(program_run::whole_file(path));
        for (std::size_t i = 0; i + 1 < document.size(); ++i) {
            const auto name = file_named(document[i]);
            if (!name) continue;
            REQUIRE(document[i + 1].starts_with("```"));
            const auto begin = document.begin() + static_cast<std::ptrdiff_t>(i) + 2;
            INFO(path.filename().string() << ", line " << i + 1);
            CHECK(joined(Lines(begin, std::find(begin, document.end(), "```"))) ==
                  program_run::whole_file(laid / *name));
            ++count;
        }
    }
    CHECK(count >= 5);
}

TEST_CASE("an example that is changed is not the same") {
    const Lines came{"a", "b 2026-11-24", "c", "d"};
    CHECK(same(came, came));
    CHECK(same({"a", "b 2025-01-02", "c", "d"}, came));
    CHECK(same({"a", "[...]", "d"}, came));
    CHECK(same({"[...]", "c", "[...]"}, came));
    CHECK_FALSE(same({"a", "b 2026-11-24", "c"}, came));
    CHECK_FALSE(same({"a", "[...]", "c"}, came));
    CHECK_FALSE(same({"a", "[...]", "b", "d"}, came));
    CHECK_FALSE(same({"a", "b 2026-11-24", "C", "d"}, came));
    CHECK_FALSE(same({}, came));
}
