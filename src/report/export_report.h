#pragma once

#include "answers/shared/export_answer.h"
#include "report/reply.h"

namespace baitwright {

Reply export_reply(ExportAnswer answer);
Reply import_reply(ImportAnswer answer);

}  // namespace baitwright
