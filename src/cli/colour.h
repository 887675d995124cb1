#pragma once

#include <string>

/// Sparing colour over what is told already: the words stay the same, so that nothing is said by colour alone.
namespace baitwright {

/// The water to pour in bold, the words that begin a warning marked.
std::string coloured_answer(const std::string& told);

/// "error:" marked, where it begins a message.
std::string coloured_errors(const std::string& told);

}  // namespace baitwright
