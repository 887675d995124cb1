#pragma once

#include <string>

namespace baitwright {

/// Which program this is: its version, the commit that it was built from where that is known, and its libraries.
std::string version_text();

}  // namespace baitwright
