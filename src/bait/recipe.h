#pragma once

#include <string>
#include <variant>
#include <vector>

#include "bait/dose.h"
#include "quantities/quantity.h"

namespace baitwright {

struct WholePacks {
    double count;
};
struct Share {
    double parts;
};

/// How much of a part: exactly one of these.
using PartAmount = std::variant<Mass, Volume, WholePacks, Share>;

enum class Preparation { as_bought, soaked };

/// So much of an ingredient or of another recipe.
struct Part {
    std::string of;
    PartAmount amount;
    Preparation prepare = Preparation::as_bought;
};

/// An additive and its rate.
struct Dose {
    std::string of;
    DoseRate rate;
};

/// A mix as a person writes it down: parts in any measure, additives by rate, and the feel it is meant for.
struct Recipe {
    std::string name;
    std::string feel;     ///< empty: firm
    std::string purpose;  ///< what it is for
    std::string avoid;    ///< when not
    std::string why;
    std::string note;
    std::vector<Part> parts;
    std::vector<Dose> doses;
};

}  // namespace baitwright
