#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "bait/ingredient_kind.h"
#include "quantities/quantity.h"

namespace baitwright {

/// What a rule of a venue is about: all that is fed, what is wetted to a feel (groundbait), a kind of ingredient, or
/// one ingredient.
struct AllFeed {};
struct Groundbait {};
struct OneIngredient {
    std::string name;
};
using RuleSubject = std::variant<AllFeed, Groundbait, IngredientKind, OneIngredient>;

/// "all feed", "groundbait", "pellet", "fishmeal pellet 6 mm".
std::string name_of(const RuleSubject& subject);

/// At most so much of it, in one session.
struct VenueLimit {
    RuleSubject subject;
    std::variant<Mass, Volume> most;
    enum class Reckoned { dry, wet } reckoned = Reckoned::dry;  ///< dry: as bought; wet: as it goes in
    enum class Per { angler, everyone } per = Per::angler;
};

struct VenueBan {
    RuleSubject subject;
    std::string why;  ///< may be empty
};

/// The rules of one water as far as a plan can be held against them; the rest as free text.
struct Venue {
    std::string name;
    std::string note;
    std::vector<VenueLimit> limits;
    std::vector<VenueBan> bans;
    std::vector<std::string> rules;
};

}  // namespace baitwright
