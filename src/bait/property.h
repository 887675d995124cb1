#pragma once

#include <string>
#include <string_view>

#include "quantities/quantity.h"

namespace baitwright {

/// Where a value comes from, weakest first.
enum class Origin {
    absent,     ///< nobody stated it and it cannot be derived
    derived,    ///< worked out from others, or the rule of thumb for the kind
    standing,   ///< a default we ship: "default: from memory"
    published,  ///< "published: USDA SR24 18079"
    learned,    ///< "learned: 6 mixes"
    measured,   ///< "measured: level vessel, 2026-03-01"
};

struct Source {
    Origin origin = Origin::absent;
    std::string detail;  ///< what follows the colon
};

/// Writes "published: USDA SR24 18079"; and back. `parse_source` throws InputError "unknown-source".
std::string source_text(const Source& source);
Source parse_source(std::string_view text);

/// "default: from memory": nobody looked it up, and all of these may be off the same way.
bool from_memory(const Source& source);

/// A value that is not known exactly: the median of a log-normal, its relative standard deviation, and its source.
template <class Q>
struct Property {
    Q value{};
    Ratio spread{};
    Source source{};

    [[nodiscard]] bool known() const { return source.origin != Origin::absent; }
    [[nodiscard]] bool stated() const { return known() && source.origin != Origin::derived; }
};

}  // namespace baitwright
