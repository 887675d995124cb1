#pragma once

#include <string>
#include <string_view>

namespace baitwright {

/// What letters the terminal gets: beyond ASCII only where it takes UTF-8. The program says so once, as it starts; a
/// page, a picture and a sheet are always UTF-8.
enum class TerminalLetters { utf8, ascii };
void write_for(TerminalLetters letters);

/// "15 degC", as answers, files and JSON have it, as people read it: "15 °C". Left alone in quotes and in what is to be
/// typed: "12degC".
std::string with_degree_signs(std::string_view text);

/// The same for the terminal that we write for.
std::string for_terminal(std::string_view text);

}  // namespace baitwright
