#include "answers/plan/last_in_tub.h"

#include <algorithm>

#include "answers/plan/prep_minutes.h"

namespace baitwright {

namespace {

constexpr double no_share = 0.001;  // of a part: less is what rounding leaves

bool is_stirred_dry(const PlannedTotal& part) {
    return !part.liquid && !goes_in_last(part.kind) && part.mass - part.soaked > no_share * part.mass;
}

/// Some of its dry parts are no doses, so that there is something to stir the rest into.
bool has_meal(const PlannedBatch& batch) {
    for (std::size_t i = 0; i < batch.parts.size(); ++i)
        if (is_stirred_dry(batch.parts[i]) && std::find(batch.doses.begin(), batch.doses.end(), i) == batch.doses.end())
            return true;
    return false;
}

}  // namespace

std::vector<LastPart> last_in_tub(const PlannedBatch& batch) {
    std::vector<LastPart> last;
    if (batch.feel.empty() || !has_meal(batch)) return last;
    for (const PlannedTotal& part : batch.parts) {
        if (part.soaked > Mass{})
            last.push_back({part.name, part.soaked, true});
        else if (goes_in_last(part.kind))
            last.push_back({part.name, part.mass, false});
    }
    return last;
}

Mass mass_of(const std::vector<LastPart>& last) {
    Mass sum;
    for (const LastPart& part : last) sum += part.mass;
    return sum;
}

Mass stirred_dry(const PlannedBatch& batch) {
    return std::max(Mass{}, batch.dry - mass_of(last_in_tub(batch)));
}

std::vector<std::string> stirred_dry_parts(const PlannedBatch& batch) {
    std::vector<std::string> names;
    if (!has_meal(batch)) return names;
    for (const PlannedTotal& part : batch.parts)
        if (is_stirred_dry(part)) names.push_back(part.name);
    return names;
}

Mass kept_meal(const PlannedBatch& batch) {
    return batch.dry > Mass{} ? batch.kept_dry * (stirred_dry(batch) / batch.dry) : Mass{};
}

Time stirring_in(const std::vector<LastPart>& last, double buckets) {
    if (last.empty()) return {};
    const auto weighed = std::count_if(last.begin(), last.end(), [](const LastPart& part) { return !part.soaked; });
    return static_cast<double>(weighed) * weigh_a_part + buckets * stir_in_a_bucket;
}

}  // namespace baitwright
