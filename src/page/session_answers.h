#pragma once

#include "page/opened_bank.h"
#include "questions/arguments.h"
#include "report/reply.h"

/// What is asked of strategies, as the commands of these names answer it. All throw the project's errors.
namespace baitwright {

Reply asked_cost(const OpenedBank& bank, const Arguments& arguments);
Reply asked_compare(const OpenedBank& bank, const Arguments& arguments);
Reply asked_shop(const OpenedBank& bank, const Arguments& arguments);
/// The rest of it where --now is given.
Reply asked_plan(const OpenedBank& bank, const Arguments& arguments);

}  // namespace baitwright
