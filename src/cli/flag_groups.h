#pragma once

#include <array>
#include <string_view>

/// What a flag is about: the headings of a command's help.
namespace baitwright {

enum class FlagGroup {
    how_much,
    how_wet,
    how_it_goes_in,
    the_water,
    the_day,
    the_shed,
    money,
    what_you_saw,
    anything_else,
    the_answer
};

inline constexpr std::array<std::string_view, 10> flag_group_titles{
    "How much", "How wet", "How it goes in", "The water",     "The day",
    "The shed", "Money",   "What you saw",   "Anything else", "The answer, and where from"};

/// The group of a flag of that command; null for one that the table does not know.
const FlagGroup* flag_group(std::string_view verb, std::string_view flag);

}  // namespace baitwright
