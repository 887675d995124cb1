#include "report/no_price_text.h"

namespace baitwright {

std::string no_price_text(std::size_t things) {
    return things == 1 ? "1 thing has no price" : std::to_string(things) + " things have no price";
}

}  // namespace baitwright
