#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "fuzz/fuzz_folder.h"

/// What the program promises of any command line: an answer, or a refusal with how to mend it.
namespace baitwright::fuzz {

/// A word that leads out of the folder, as the fuzzer must not write where it wants.
inline bool leads_out(std::string_view word) {
    if (word.find("..") != std::string_view::npos) return true;
    for (auto slash = word.find('/'); slash != std::string_view::npos; slash = word.find('/', slash + 1)) {
        const bool is_here = slash > 0 && word[slash - 1] == '.' && (slash == 1 || word[slash - 2] == '=');
        if (!is_here) return true;
    }
    return false;
}

/// Words a line each down to an empty line; behind it what lies in `case.toml` and `case.csv`, and in the folder `lib`.
inline std::string broken_command_line(std::string_view text) {
    std::vector<std::string> words;
    while (!text.empty() && text.front() != '\n') {
        const auto end = text.find('\n');
        words.emplace_back(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
        if (leads_out(words.back()) || words.back().find('\0') != std::string::npos || words.size() > 40) return {};
    }
    const FuzzFolder& folder = fuzz_folder();
    const FuzzFolder::Inside inside(folder);
    folder.lay(folder.store());
    if (!text.empty()) text.remove_prefix(1);
    for (const char* name : {"case.toml", "case.csv", "lib/case.toml"}) folder.write(name, text);
    return wrong_with_run(words);
}

}  // namespace baitwright::fuzz
