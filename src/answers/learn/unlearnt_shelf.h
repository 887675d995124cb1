#pragma once

#include "bait/shelf_over.h"

namespace baitwright {

/// A shelf as if nothing had been learnt: learnt values are the library's again, those that a person measured stay.
/// What the log teaches is reckoned from there, so that applying it does not count it twice.
class UnlearntShelf : public ShelfOver {
public:
    using ShelfOver::ShelfOver;

    /// Where the library has none, a learnt value stays, as doubtful as one that nobody looked up.
    [[nodiscard]] std::optional<Ingredient> find_ingredient(std::string_view name) const override;
    [[nodiscard]] LearntWater learnt_water(const std::vector<std::string>&) const override { return {}; }
    [[nodiscard]] std::optional<LearntMix> learnt_mix(std::string_view) const override { return std::nullopt; }
};

}  // namespace baitwright
