#pragma once

#include <string>
#include <vector>

#include "answers/blend/blend_answer.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

/// "protein at least 22 %", "brown crumb at most 45 %", "rusk and brown crumb together at most 60 %".
std::string limit_text(const BlendLimitEnd& limit, const Currency* currency);

/// What it is made of, what it comes to, what each limit costs; or which limits cannot hold together.
Told blend_told(const BlendAnswer& answer);
Json blend_json(const BlendAnswer& answer);
Rows blend_rows(const BlendAnswer& answer);

/// Properties as JSON keys with their unit: "absorption_g_g"; shares as ratios. Null for what is not given.
Json properties_json(const std::vector<BlendPropertyValue>& properties);

/// "absorption 0.55 g/g", "fines 8 %".
std::string property_text(const BlendPropertyValue& property);

}  // namespace baitwright
