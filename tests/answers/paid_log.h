#pragma once

#include <cstdint>
#include <initializer_list>
#include <string>
#include <vector>

#include "answers/paid/what_paid.h"
#include "day_of.h"
#include "quantities/units.h"

namespace baitwright::paid_log {

/// A log that grows by sessions.
class PaidLog {
public:
    std::vector<LogEntry> entries;

    LoggedSession& session(const std::string& strategy, double kilos, const char* on = "2026-07-04") {
        LoggedSession fished;
        fished.strategy = strategy;
        fished.length = 5.0 * hour;
        const std::int64_t id = add(0, on, fished);
        if (kilos > 0) add(id, on, LoggedCatch{{}, "bream", 4, kilos * kilogram});
        return std::get<LoggedSession>(entries[static_cast<std::size_t>(id) - 1].what);
    }
    std::int64_t add(std::int64_t of, const char* on, LoggedThing what) {
        LogEntry entry;
        entry.id = static_cast<std::int64_t>(entries.size()) + 1;
        entry.on = *day_of(on);
        entry.session = of;
        entry.what = std::move(what);
        entries.push_back(std::move(entry));
        return entries.back().id;
    }
    void sessions(const std::string& strategy, std::initializer_list<double> kilos, const char* on = "2026-07-04") {
        for (const double each : kilos) session(strategy, each, on);
    }
};

inline PaidRequest asked_of(const PaidLog& log, PaidBy by = PaidBy::all) {
    PaidRequest request;
    request.log = log.entries;
    request.by = by;
    return request;
}

inline bool warns_of(const PaidAnswer& answer, const std::string& code) {
    for (const Warning& warning : answer.warnings)
        if (warning.code == code) return true;
    return false;
}

inline Money pounds(std::int64_t pence) {
    return Money(pence, currency_named("GBP"));
}

}  // namespace baitwright::paid_log
