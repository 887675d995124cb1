#pragma once

#include <string>
#include <string_view>
#include <vector>

/// A command line as bash has it while it is typed.
namespace baitwright {

struct TypedLine {
    std::vector<std::string> words;  ///< without their quotes; the last is being typed, and may be empty
    char quote = 0;                  ///< the quote that is still open, ' or "; 0 for none
    std::size_t kept = 0;            ///< letters of the last word that bash keeps as they are, and puts what is chosen
                                     ///< behind
};

/// Parts the line, which ends at the cursor, into words as bash would, and takes quotes and backslashes away. Nothing
/// is expanded and nothing run: `$HOME` stays as it is. Bash puts what is chosen behind the last of `breaks` that is
/// not quoted (its COMP_WORDBREAKS), and behind a quote that is open.
TypedLine typed_line(std::string_view line, std::string_view breaks);

/// The text as it must be typed for bash to take every letter for itself, where that quote is open or none.
std::string quoted_for_bash(std::string_view text, char quote);

}  // namespace baitwright
