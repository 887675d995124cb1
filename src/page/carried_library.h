#pragma once

#include "page/bank_contents.h"
#include "page/library_data.h"

namespace baitwright {

/// What a page carries: the whole library, and in place of entries of the same name those that its strategies mean,
/// which may be from files of their own. Throws UsageError "two-meanings" where two strategies mean different things by
/// a name.
CarriedLibrary carried_library(const BankContents& contents);

/// The usual ones of the ingredients that were measured, which tell of the hand.
CarriedLibrary usual_of(const BankContents& contents);

}  // namespace baitwright
