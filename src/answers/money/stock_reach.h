#pragma once

#include <cstdint>
#include <vector>

#include "answers/money/buy_packs.h"

namespace baitwright {

/// What the stock alone does: where it first falls short, with what then is left, or the end.
class StockReach {
public:
    explicit StockReach(const PackNeed& need);

    [[nodiscard]] int falls_short_at() const { return at_; }
    /// Grams usable in the session in which it falls short; where it never does, after the last.
    [[nodiscard]] std::int64_t left() const { return left_; }
    /// Grams.
    [[nodiscard]] std::int64_t used() const { return used_; }

private:
    [[nodiscard]] std::int64_t usable() const;
    void use(std::int64_t grams);

    std::vector<StockedGrams> lots_;
    int at_ = 0;
    std::int64_t left_ = 0, used_ = 0;
};

/// What comes of a need by the stock alone: what is left over of it and what went past its best.
PackPlan plan_without_buying(const PackNeed& need, const StockReach& reach);

}  // namespace baitwright
