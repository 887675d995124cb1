#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/one_currency.h"
#include "bait/resolved_mix.h"
#include "quantities/date.h"

namespace baitwright {

/// Names every ingredient whose price, the one by which its use is reckoned, is over a year old on that day. The answer
/// stands all the same. Only prices in that currency count; those in any, where it is null.
std::optional<Warning> stale_prices(const std::vector<const Ingredient*>& ingredients, Date today,
                                    const Currency* in = nullptr);

/// The warning for ingredients of which no price is known, left out of what is told: "the cost". The answer is no.
std::optional<Warning> no_price_warning(const std::vector<std::string>& names, const std::string& left_out_of);

/// "the cost leaves them out"
std::string leaves_out(const std::string& what, std::size_t things);

/// The warning "other-currency" for what is priced in another currency than the answer's, and counts as without a
/// price: with what comes of it (`leaves_out`), and the command that mends it. They must not be none. The answer is no.
Warning other_currency_warning(const std::vector<PricedElsewhere>& elsewhere, const Currency& in,
                               const std::string& so);

/// Those of the names that have no price in any currency.
std::vector<std::string> priced_nowhere(const std::vector<std::string>& unpriced,
                                        const std::vector<PricedElsewhere>& elsewhere);

/// The warning for these prices, each "name (day)"; nothing where there is none.
std::optional<Warning> stale_warning(const std::vector<std::string>& dated);

/// The ingredients of a mix: solid parts, then additives.
std::vector<const Ingredient*> ingredients_of(const ResolvedMix& mix);

}  // namespace baitwright
