#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

/// The one gate for words: what a person types or writes into a file, before it is shown or stored. Letters that drive
/// a terminal, or that make a text look like another, do not pass.
namespace baitwright {

/// Whether words may run over several lines, as a note may and a name may not.
enum class LineBreaks { refused, allowed };

/// A letter that does not pass: its first byte, how many bytes it has, and what it is.
struct UnfitLetter {
    enum class Why { no_utf8, control, direction, zero_width, no_character };
    std::size_t at, size;
    Why why;
    char32_t code;  ///< of a byte that belongs to no letter, that byte
};

/// The bytes of the letter of UTF-8 at the front of a text that is not empty; 0 where there is none (RFC 3629: no
/// surrogates, nothing overlong, nothing above U+10FFFF).
std::size_t letter_size(std::string_view text);

/// The first letter from byte `from` on that does not pass: no UTF-8, a control character (C0, C1, a line end where it
/// is refused), one that turns the direction of writing, one without width, or a noncharacter.
/// **Source**: Unicode Standard 15, sections 23.1, 23.2, 23.7 and 23.8; UAX 9, table 4 (from memory).
std::optional<UnfitLetter> first_unfit_letter(std::string_view text, LineBreaks line_breaks = LineBreaks::refused,
                                              std::size_t from = 0);

/// What is wrong with a text that is to be a word or a few: "a line break or another control character". Empty where
/// nothing is.
std::string unfit_in(std::string_view text, LineBreaks line_breaks = LineBreaks::refused);

/// Why a text cannot be the name of anything: "is empty". Empty where it can: plain letters, at most 200 of them, no
/// path and no flag.
std::string refused_as_name(std::string_view text);

/// A name that an older program stored and that would not pass today, as one that does: what does not pass is written
/// out or put another way.
std::string mended_name(std::string name);

/// The text with each letter that does not pass written out, so that it is seen and not obeyed: `\u202e`, `\xff`.
std::string written_out(std::string_view text, LineBreaks line_breaks = LineBreaks::refused);

}  // namespace baitwright
