#pragma once

#include <string>

#include "answers/shared/kept_store.h"
#include "answers/shared/store_health.h"
#include "report/reply.h"

namespace baitwright {

/// "154 ingredients, 31 mixes, 12 sessions".
std::string contents_text(const StoreContents& contents);
Json contents_json(const StoreContents& contents);

Reply doctor_reply(StoreHealth health);
/// Both take the command that undoes it: `back` has the backup back, or what a restore kept aside.
Reply backup_reply(BackupAnswer answer, std::string back);
Reply restore_reply(RestoreAnswer answer, std::string back);

}  // namespace baitwright
