#pragma once

#include <optional>
#include <string_view>

namespace baitwright {

/// A colour by how light it is (0 black, 100 white), how red (above 0) or green, and how yellow (above 0) or blue: the
/// axes of CIELAB (CIE 15). The differences between two are about as large as they look.
struct Colour {
    double lightness, redness, yellowness;
};

/// About what dry bait of that colour word looks like; nothing for a word that is not known, and for "clear".
/// **Source**: default, from memory; no instrument saw them.
std::optional<Colour> colour_called(std::string_view word);

}  // namespace baitwright
