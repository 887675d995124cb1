#pragma once

#include <SQLiteCpp/Database.h>

#include <array>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>

/// Marks by which two stores know one entry: 32 hexadecimal digits.
namespace baitwright {

/// **Source**: FIPS 180-4, "Secure Hash Standard", 6.2 (from memory). **Test**: its published examples.
std::array<std::uint8_t, 32> sha256(std::string_view bytes);

/// The mark of what holds just these texts: the first half of the SHA-256 of them, each ended by a byte 31.
std::string mark_of(std::initializer_list<std::string_view> texts);

/// Of an undoing, by the mark of what it takes back: its halves changed over.
std::string mark_of_undoing(std::string_view mark);

/// Gives the connection the same as a function of SQL, `mark_of(...)`: null is the empty text, and a number its
/// shortest text of 17 digits.
void know_mark_of(SQLite::Database& database);

}  // namespace baitwright
