#pragma once

#include <string>

namespace baitwright {

/// Whether a person sits at both ends and the text is longer than the screen: then it is worth a pager.
bool is_worth_a_pager(const std::string& text);

/// Shows it in $PAGER, else in less; false where neither is wanted or there, and nothing was shown.
bool shown_in_pager(const std::string& text);

}  // namespace baitwright
