#pragma once

#include <string>
#include <string_view>

#include "quantities/fault.h"

/// What the command line says of a slip, in words for a phone, which has neither flags nor commands.
namespace baitwright {

/// A sentence without its flags: where one stands before an example of its value the value is left ("for example
/// --depth 2.5m": "for example 2.5m"), else it is named ("leave --added out": "leave the water poured in out").
/// Temperatures as people read them: "12degC": "12 \u00b0C".
std::string phone_words(std::string_view text);

/// A fault in such words; `subject` becomes the flag or the word whose value it is a fault of ("--depth", "AMOUNT"),
/// where it is one of these: it begins the message, or it is what the hint says by an example.
Fault phone_fault(Fault fault);

}  // namespace baitwright
