#include "page/opened_bank.h"

#include "bait/price_book.h"
#include "questions/cost_question.h"

namespace baitwright {

const Shelf& OpenedBank::here() const {
    return own_ ? *own_ : shelf;
}

MemoryShelf& OpenedBank::own() {
    if (!own_) own_ = std::make_unique<MemoryShelf>(&shelf);
    return *own_;
}

void OpenedBank::put_price(Ingredient ingredient, const Pack& told) {
    PriceBook book{std::move(ingredient.packs), {}};
    enter_price(book, told);
    ingredient.packs = std::move(book.packs);
    own().put(std::move(ingredient));
}

void OpenedBank::forget_own() {
    own_.reset();
    in_shed.reset();
}

StockOnHand OpenedBank::stock(const Arguments& arguments) const {
    if (arguments.has("--have") || arguments.has("--empty-shed")) return stock_told(arguments, here());
    return in_shed ? *in_shed : have;
}

}  // namespace baitwright
