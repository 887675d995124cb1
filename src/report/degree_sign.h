#pragma once

#include <string>
#include <string_view>

namespace baitwright {

/// What letters the terminal gets: beyond ASCII only where it takes UTF-8. Where `ascii` alone is asked for and it is a
/// pipe or a file, a name stays as it is; a terminal, `ascii_alone`, gets nothing else. The program says so once, as it
/// starts; a page, a picture and a sheet are always UTF-8.
enum class TerminalLetters { utf8, ascii, ascii_alone };
void write_for(TerminalLetters letters);

/// "15 degC", as answers, files and JSON have it, as people read it: "15 °C". Left alone in quotes and in what is to be
/// typed: "12degC".
std::string with_degree_signs(std::string_view text);

/// The same for the terminal that we write for.
std::string for_terminal(std::string_view text);

/// What was told already, in no other letters than the terminal takes.
std::string in_letters_of_terminal(const std::string& text);

/// In ASCII: "GBP 3.40", "creme" without its accent, "?" for what has nothing like it.
std::string in_plain_letters(std::string_view text);

}  // namespace baitwright
