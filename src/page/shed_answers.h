#pragma once

#include "page/opened_bank.h"
#include "questions/arguments.h"
#include "report/json.h"

namespace baitwright {

/// `shed` {entries: [{what: "buy" | "use" | "waste" | "count", of, amount, price, shop, on}]}: what is in the shed
/// after them, from what was there when the page was made; all later questions go by it. Prices of what was bought are
/// in use from then on. Reply: {status, told, json, refused: [{entry, code, message, hint, field}]}: an entry that is
/// refused changes nothing, and the others count all the same. `json` is that of `stock`.
Json take_shed(OpenedBank& bank, const Json& request, const Arguments& arguments);

}  // namespace baitwright
