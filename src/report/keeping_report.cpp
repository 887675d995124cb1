#include "report/keeping_report.h"

#include <fmt/format.h>

#include "quantities/units.h"

namespace baitwright {

std::string keeping_text(const Keeping& keeps) {
    std::string text;
    const auto add = [&text](const std::optional<Time>& time, const char* where) {
        if (!time) return;
        const double days = time->in(day);
        const std::string span =
            days > 60 ? fmt::format("{:.0f} months", time->in(month)) : fmt::format("{:.0f} days", days);
        text += (text.empty() ? "" : "; ") + span + " " + where;
    };
    add(keeps.dry, "dry");
    add(keeps.cold, "damp in the cold");
    add(keeps.frozen, "frozen");
    return text;
}

Json keeping_json(const Keeping& keeps) {
    const auto days = [](const std::optional<Time>& time) { return time ? Json(time->in(day)) : Json(); };
    return {{"dry_days", days(keeps.dry)}, {"cold_days", days(keeps.cold)}, {"frozen_days", days(keeps.frozen)}};
}

}  // namespace baitwright
