#pragma once

#include "page/bank_contents.h"
#include "report/json.h"

namespace baitwright {

/// {id, version, made_on, start, people, strategies: [name], have: ["brown crumb=400 g"], taken_home: [mark], usual,
/// currency, units, always, library, advice, learnt, contents}: `strategies` are those that the page offers first,
/// `library`
/// (`library_data`) is all that it can be asked of, `usual` likewise the ingredients that measured ones took the place
/// of, `currency` the code of the one that the person always uses or null, `units` "metric", "imperial", "both" or
/// empty, `always` the {pump, vessel, water_temp, plan} that the fields begin with, each with its unit or null; `plan`
/// has the flags of a plan that are usual besides. `id` is another where anything that is worked out from would be
/// another. `advice` is that of `advice_data`, `learnt` that of `learnt_data`, and not there where nothing was learnt.
/// `contents` is what `Bank` replies to `open`, of the strategies those on offer, of the ingredients the pellets.
/// Throws UsageError "two-meanings" where two strategies mean different things by a name.
Json bank_data(const BankContents& contents);

}  // namespace baitwright
