#pragma once

#include <cstddef>

/// How wide a line may be. Like the units it is set once a run, before anything is told, by who knows the terminal;
/// JSON and CSV never heed it.
namespace baitwright {

/// What is told where there is no terminal: in a pipe, in a file, on paper.
inline constexpr std::size_t text_columns = 80;
/// A terminal is taken to be no narrower and no wider than these.
inline constexpr std::size_t fewest_columns = 40, most_columns = 200;

/// From here on; kept between the two.
void show_columns(std::size_t columns);

std::size_t columns_shown();

}  // namespace baitwright
