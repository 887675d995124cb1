#pragma once

#include <string_view>
#include <vector>

/// What the manual says of the world around the program: how it ends, where it keeps things, what it heeds.
namespace baitwright {

struct StatusTold {
    std::string_view number, says;
};
/// Every status that the program ends with, in rising order.
std::vector<StatusTold> statuses_told();

struct PlaceTold {
    std::string_view name, says;
};
/// The files of its own.
std::vector<PlaceTold> places_told();
/// The variables of the environment that it reads.
std::vector<PlaceTold> variables_told();

}  // namespace baitwright
