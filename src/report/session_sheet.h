#pragma once

#include <string>

#include "answers/plan/plan_answer.h"
#include "report/card_sheet.h"
#include "report/json.h"
#include "report/sheet_printer.h"
#include "report/told.h"

namespace baitwright {

/// The plan as one sheet to take along: what to weigh and wet, soak and pump; what to do before the start; what goes in
/// when, to tick off; all of it together; what to mind.
CardSheet session_sheet(const SessionPlan& plan, Date today);

/// As it is drawn, with its degrees as people read them.
CardSheet with_degree_signs(CardSheet sheet);

/// What was written where, the sheet's own words, and its amounts unrounded.
Json card_json(const SessionPlan& plan, const CardSheet& sheet, const std::string& file, SheetFormat format,
               const PrintedSheet& printed);
Told card_told(const SessionPlan& plan, const std::string& file, const PrintedSheet& printed);

}  // namespace baitwright
