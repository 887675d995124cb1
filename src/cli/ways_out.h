#pragma once

#include <string>
#include <vector>

/// What a person may type where no command has that name, and what to type instead.
namespace baitwright {

/// Throws UsageError: why these words name no command, and what to type. `given` holds at least one word.
[[noreturn]] void refuse_command(const std::vector<std::string>& given);

/// Throws UsageError: help knows neither a command nor a topic of that name.
[[noreturn]] void refuse_help(const std::vector<std::string>& words);

}  // namespace baitwright
