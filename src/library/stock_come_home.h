#pragma once

#include "answers/shared/log_answer.h"
#include "files/notes_reader.h"
#include "store/store.h"

namespace baitwright {

/// Enters what notes say of the shed, each entry once, however often the notes are taken in. Inside `Store::change`
/// only. Throws InputError at the place of what cannot be entered: a name that nothing has, an amount that says
/// nothing, more taken out than there is.
void take_stock_home(Store& store, const Notes& notes, LogAnswer& answer);

}  // namespace baitwright
