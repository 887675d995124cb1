#pragma once

#include <string>
#include <string_view>

namespace baitwright {

class StoreConnection;

/// Kinds of what is stamped beside the kinds of entries; "feel" is one too.
inline constexpr std::string_view stamp_of_packs = "packs", stamp_of_usual = "usual", stamp_of_learnt = "learnt",
                                  stamp_of_belief = "believed";

/// Says that this has just changed: the clock goes on by one, and the stamp has it. `folded` is the name as names are
/// compared, the key of what is usual, the mark of an entry of the log that is believed or not, or nothing of what was
/// learnt. Inside a change only.
void stamp(StoreConnection& connection, std::string_view kind, std::string_view folded);

/// The same of a name that was given up: of the packs of an ingredient nothing is left to be stamped.
void stamp_gone(StoreConnection& connection, std::string_view kind, std::string_view folded);

/// The same of an entry that there was not before.
void stamp_new(StoreConnection& connection, std::string_view kind, std::string_view folded);

}  // namespace baitwright
