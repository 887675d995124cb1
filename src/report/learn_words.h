#pragma once

#include <span>
#include <string>

#include "answers/learn/learn_answer.h"

namespace baitwright {

/// The standard deviations that 9 in 10 lie within.
inline constexpr double nine_in_ten = 1.645;

/// "12 % more", "7 % less"; "about as much" within half a per cent.
std::string more_or_less(double log_factor);
/// "6 to 18 % more", "3 % less to 9 % more".
std::string more_or_less(double low, double high);

/// "from 7 mixes", "from 1 soak": what it was learnt from.
std::string from_so_many(const Learnt& learnt);

/// The key of a property in JSON: "absorption", "cup_weight".
std::string key_of(Learnt::Property property);

/// The clause of one thing that was learnt: "takes 12 % more than the library says (9 in 10: 6 to 18 % more)".
std::string told_of(const Learnt& learnt);

/// How what was set aside is mended where it is a slip, and believed where it is true.
std::string what_to_do_with(std::span<const SetAside> set_aside);

/// Whether the log says something of it: its range is narrower than before by a tenth.
bool says_something(const Learnt& learnt);

}  // namespace baitwright
