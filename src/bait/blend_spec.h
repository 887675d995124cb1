#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/mix_property.h"
#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

/// What is to be least.
enum class BlendGoal { per_kilogram, per_litre };

/// A least and a most, either or both; for shares as ratios, for a property in the unit of its facts.
struct Limits {
    std::optional<double> least, most;
};

/// What a mix may be made of.
struct BlendCandidate {
    std::string of;
    Limits share;
    std::optional<Money> price;  ///< of a kilogram; that of its packs where not stated
};

/// What must hold of the mix: of one property, or of the shares of several candidates together.
struct BlendLimit {
    std::optional<MixProperty> on;
    std::vector<std::string> of;  ///< where it is not on a property
    Limits bounds;
    std::string currency = {};  ///< of a bound on the price: its ISO 4217 code
};

/// A question that a person writes down: what a mix may be made of, what must hold of it, and what is to be least.
struct BlendSpec {
    std::string name;
    std::string feel;  ///< of the mix that it becomes; empty: firm
    std::string note;
    BlendGoal goal = BlendGoal::per_kilogram;
    std::optional<Mass> batch;
    std::vector<BlendCandidate> candidates;
    std::vector<BlendLimit> limits;
};

/// What is made where nothing is said.
inline constexpr Mass usual_batch = Mass::from_si(1.0);

}  // namespace baitwright
