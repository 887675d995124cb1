#pragma once

#include <string>
#include <string_view>

namespace baitwright {

/// A person's words as a message shows them: in quotes, cut where long, letters that a terminal would obey written
/// out (`plain_words.h`).
std::string in_quotes(std::string_view text);

}  // namespace baitwright
