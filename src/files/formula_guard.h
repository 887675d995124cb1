#pragma once

#include <string>
#include <string_view>

/// A spreadsheet runs a cell that begins with one of = + - @ as a formula, whether it stands in quotes or not, and so
/// text from a stranger could do harm. Such text is written with an apostrophe in front, which makes it text.
/// **Source**: OWASP Application Security Verification Standard 5.0, requirement 1.2.10, which names = + - @, the tab
/// and the null character, and the apostrophe as the remedy; line ends, and blanks in front of them all, are our own
/// caution. A plain number below zero is no formula and stays a number.
namespace baitwright {

/// The text as a cell that no spreadsheet runs.
std::string guarded(std::string_view text);

/// The text that was guarded. One apostrophe goes where `guarded` would have put one, and nowhere else, so that every
/// text comes back as it was.
std::string unguarded(std::string_view cell);

}  // namespace baitwright
