#pragma once

#include <string>
#include <vector>

namespace baitwright {

/// The ISO 4217 codes of the currencies that are known here (`money.h`), those used most first.
std::vector<std::string> currency_codes();

}  // namespace baitwright
