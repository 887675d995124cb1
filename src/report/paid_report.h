#pragma once

#include "answers/paid/paid_answer.h"
#include "report/reply.h"

namespace baitwright {

/// What each way of feeding brought, and in plain words which is better and how sure that is.
Told paid_told(const PaidAnswer& answer);

Json paid_json(const PaidAnswer& answer);

/// A row for each strategy of each group.
Rows paid_rows(const PaidAnswer& answer);

Reply paid_reply(PaidAnswer answer);

}  // namespace baitwright
