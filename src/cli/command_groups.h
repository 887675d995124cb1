#pragma once

#include <string>
#include <string_view>
#include <vector>

/// The front page of help: commands by the job they are for, those used most first.
namespace baitwright {

/// A command, or all commands that begin with its word.
struct JobLine {
    std::string_view word;  ///< "mix"; of the program itself also what is no command: "--version"
    std::string_view says;
};

struct JobGroup {
    std::string_view title;
    std::vector<JobLine> lines;
};

/// Every command's first word stands in one of them. A word that no command begins with yet is passed over by help.
const std::vector<JobGroup>& job_groups();

/// The second words of the commands that begin with this one: "list", "show"; empty where there are none.
std::vector<std::string> second_words(std::string_view word);

/// True where it is a command by itself: "stock", not "recipe".
bool is_command(std::string_view word);

/// True where a command begins with that word.
bool begins_command(std::string_view word);

}  // namespace baitwright
