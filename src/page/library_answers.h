#pragma once

#include "page/opened_bank.h"
#include "questions/arguments.h"
#include "report/reply.h"

/// What is asked of the library: which strategies and mixes suit the day, what holds some words, and what is written
/// down of one entry. All throw the project's errors.
namespace baitwright {

/// By the rules that the bank was opened with; what the person's log says of past days is not among them.
Reply asked_advice(const OpenedBank& bank, const Arguments& arguments);
/// Ingredients, mixes, strategies and venues: a phone has no blends.
Reply asked_find(const OpenedBank& bank, const Arguments& arguments);
Reply asked_ingredient(const OpenedBank& bank, const Arguments& arguments);
Reply asked_recipe(const OpenedBank& bank, const Arguments& arguments);
Reply asked_strategy(const OpenedBank& bank, const Arguments& arguments);

}  // namespace baitwright
