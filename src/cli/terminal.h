#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "cli/command.h"

/// What the program knows of the terminal that it is read on, and what the person wants of it.
namespace baitwright {

enum class ColourWish { automatic, always, never };

struct TerminalWishes {
    ColourWish colour = ColourWish::automatic;
    bool pager = true;
};

/// `--color` and `--no-pager`: every command takes them, at any place, and none heeds them itself.
const std::vector<Flag>& terminal_flags();

/// Takes those flags out of what was typed. Throws UsageError.
TerminalWishes take_terminal_wishes(std::vector<std::string>& given);

/// Where flags end: the place of a word "--", or the end.
std::vector<std::string>::const_iterator end_of_flags(const std::vector<std::string>& given);

/// How wide the terminal is, by COLUMNS or by what it says itself; the usual width where output goes elsewhere.
std::size_t terminal_columns(int descriptor);

/// How many lines it shows.
std::size_t terminal_lines(int descriptor);

/// Whether what goes there is to be coloured: as was wished; else on a terminal alone that can, unless NO_COLOR says
/// no.
bool takes_colour(int descriptor, ColourWish wish);

}  // namespace baitwright
