#pragma once

#include <string>

#include "bait/shelf.h"

namespace baitwright {

/// The whole name of the additive or mix that a person means. Throws NotFound.
std::string dosed_name(const Shelf& shelf, const std::string& word);

}  // namespace baitwright
