#pragma once

#include <string>
#include <string_view>

namespace baitwright {

/// A person's words as a message shows them: in quotes, cut where long, control characters (which could drive a
/// terminal) replaced by '?'.
std::string in_quotes(std::string_view text);

}  // namespace baitwright
