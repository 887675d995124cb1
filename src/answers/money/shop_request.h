#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantities/date.h"
#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

/// When the sessions are.
struct SessionDays {
    Date first;
    int gap = 7;  ///< days
};

/// A question to `shop_sessions`.
struct ShopRequest {
    struct Delivery {
        std::string shop;
        Money charge;
    };
    Date today;
    const Currency* usual_currency = nullptr;  ///< answer in it where any pack is priced in it
    std::vector<std::string> at;  ///< the shops gone to; empty: all. Packs without a shop are sold anywhere.
    std::optional<std::string>
        rather_at;  ///< where one usually buys: what it sells is bought there, the rest elsewhere
    std::vector<Delivery> deliveries;
    enum class Trips { as_cheap_as_can_be, one_shop };
    Trips trips = Trips::as_cheap_as_can_be;
    std::optional<Mass> most_left_over;  ///< of what is bought of each ingredient
};

}  // namespace baitwright
