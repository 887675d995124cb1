#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantities/fault.h"

/// A name as a person says it, looked up among the names that there are.
namespace baitwright {

/// What a name that was said stands for.
struct SaidName {
    std::optional<std::string> name;   ///< the one that is meant, in full
    std::vector<std::string> several;  ///< those that may be meant, where they are more than one
};

/// The name itself, whatever its case and blanks; else the one of the same words (`loose_words.h`) in the same order;
/// else the one that begins with them, of at least three letters and figures. A word in the middle of a name names
/// nothing.
/// Names that differ in case and blanks alone are one.
SaidName said_name(std::string_view said, const std::vector<std::string>& names);

/// Whether both are the same words in the same order.
bool said_alike(std::string_view a, std::string_view b);

/// The fault of a name that `said_name` does not find: "several-fit" with the names where several may be meant; else
/// `none`, whose hint gives way to the names that are near.
Fault fault_of_name(std::string_view said, const std::vector<std::string>& names, Fault none);

}  // namespace baitwright
