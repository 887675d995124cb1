#pragma once

#include "bait/log_entry.h"
#include "files/toml_reader.h"

/// One block of session notes each, all that it can hold; what else stands in it is a fault.
namespace baitwright {

LoggedSession read_logged_session(TableReader& table);
LoggedPutIn read_put_in(TableReader& table);
LoggedUse read_logged_use(TableReader& table);
LoggedCatch read_catch(TableReader& table);
LoggedMix read_logged_mix(TableReader& table);
LoggedSoak read_logged_soak(TableReader& table);
LoggedWeight read_logged_weight(TableReader& table);
LoggedLook read_logged_look(TableReader& table);
LoggedBag read_logged_bag(TableReader& table);

}  // namespace baitwright
