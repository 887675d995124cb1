#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// How many of the words behind a flag's value belong to it, typed without quotes: `--dry-mass 1.5 kg`, `--depth 8 ft
/// 6 in`, `--wet-volume half a pint`, `--start 9 am`, `--balls 12 x 55mm`. Only words that make one amount with the
/// value, of a flag that takes one (`takes` is what its help calls it: "MASS", "CLOCK"); so that the name of a recipe
/// stays one: neither words with a blank in them, nor a number alone behind a value that was whole without it.
std::size_t words_of_value(std::string_view takes, std::string_view value, const std::vector<std::string>& after);

/// "1,5 kg" as "1.5 kg": what it is can be told, though the readers of amounts refuse a comma.
std::string with_points(std::string_view text);

/// Whether the text is one mass, volume, length, time, temperature or size, counted or not, and the flag takes just
/// this (`takes` is what its help calls it): "3lb" is a MASS and no VOLUME, "12x55mm" are balls and no cups.
bool is_measure_taken(std::string_view flag, std::string_view takes, std::string_view text);

}  // namespace baitwright
