#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/mix/mix_answer.h"
#include "answers/money/convert_prices.h"
#include "answers/money/price_answer.h"
#include "answers/shared/mix_request.h"
#include "answers/shared/stock_answer.h"
#include "store/store.h"

/// What changes the shed and the prices, each in one transaction: all of it or nothing.
namespace baitwright {

/// Packs that were bought: one lot, and, where the price is known, the price of one pack.
struct Purchase {
    std::string name;
    Pack pack;  ///< with price, day and shop where they are known
    double packs = 1;
    Lot lot;
};
/// Of an amount as a person says it, kept as it usually is; price and shop are still to be said. Throws InputError.
Purchase purchase_of(const Ingredient& ingredient, const std::string& amount, Date on);
StockChangeAnswer buy(Store& store, const Purchase& purchase);
/// Inside `Store::change` only.
StockReceipt enter_purchase(Store& store, const Purchase& purchase);

StockChangeAnswer keep(Store& store, const Arrival& arrival);
StockChangeAnswer count(Store& store, const StockCount& count, const Reach& reach);
/// Used or wasted.
StockChangeAnswer take(Store& store, Happening what, const StockNeed& need, const Reach& reach);
StockChangeAnswer undo(Store& store, std::optional<std::int64_t> entry, Date today);

/// Enters the price of a pack, with a warning where other prices in use are in another currency.
PriceChange tell_price(Store& store, const std::string& ingredient, const Pack& told);

/// Converts all prices in use, or takes them out of use, unless it is only to be shown. Throws what `convert_prices` of
/// a library throws; then nothing is changed.
PriceConversion convert_prices(Store& store, const ConvertRequest& request);

/// What the shed holds of everything that a mix takes, without what is left out for once. Throws Error (answer_is_no)
/// "not-in-shed", naming all of which it holds none. What is past its best counts, and is named in the warnings.
OnHand on_hand_in_shed(const Recipe& recipe, const Shelf& shelf, const Shed& shed, const MixRequest& asked, Date today,
                       std::vector<Warning>& warnings);

/// Takes what the answer weighs out of the shed, in one booking, and puts that into the answer. Throws Error
/// (answer_is_no) with everything that the shed is short of; then nothing is taken.
void book_mix(Store& store, MixAnswer& answer, Date on);

}  // namespace baitwright
