#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "answers/learn/learn_request.h"
#include "answers/learn/water_seen.h"
#include "answers/shared/warning.h"
#include "bait/shelf.h"

namespace baitwright {

/// What of the log tells of water, with what the person measured.
struct WaterLog {
    WaterProblem problem;
    std::unordered_map<std::string, std::size_t> ingredients;  ///< as the log writes them: places in `unknowns.bags_of`
    std::vector<bool> measured_absorption, measured_slump;     ///< of each of these
    bool has_mixes = false;
    std::vector<Warning> warnings;
};

/// A mix of the log is an observation where its dry mass, its water, its parts and how it felt were said:
/// ln(water + wetting) = ln sum m (A min(h, 1) + G max(h - 1, 0)) + the hand of the day + e. The sigma of e is that of
/// the feel, by the slope of ln w(h) at the library's values, and 1 % for scale and jug. A part whose moisture was told
/// has its marks moved to it, and none of its bag's doubt by moisture. A measured mark is an observation of the latest
/// bag, with what its spread goes beyond a day's, at the least 1 %.
WaterLog water_log(const Shelf& shelf, const LearnRequest& request);

/// The sum of such a mix, of the bags of a day, or of the latest.
std::vector<WaterSeen::Term> water_terms(const WaterLog& log, const LoggedMix& mix, std::optional<Date> on);

/// The sigma of e.
double sigma_of_reading(const std::vector<WaterSeen::Term>& terms, const LoggedMix& mix);

/// The bag of an ingredient that was open on a day; without one, the latest.
std::size_t bag_on(const WaterUnknowns& unknowns, std::size_t ingredient, std::optional<Date> on);

/// Whether an entry is an observation of water, but for unknown names.
const LoggedMix* observed_mix(const LogEntry& entry);

}  // namespace baitwright
