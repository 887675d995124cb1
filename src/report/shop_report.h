#pragma once

#include "answers/money/shop_sessions.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

/// A list to take along, by shop, and what will be left over.
Told shop_told(const ShopAnswer& answer);

Json shop_json(const ShopAnswer& answer);

/// A row for each kind of pack and session.
Rows shop_rows(const ShopAnswer& answer);

}  // namespace baitwright
