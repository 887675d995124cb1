#include "report/kept_text.h"

#include <algorithm>
#include <utility>

#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

constexpr Mass least_water_told = 2.5 * gram;  // less is no step of 5 ml

bool is_frozen(const KeptUse& use) {
    return use.of.state == StockState::frozen;
}

std::string place_words(const KeptUse& use) {
    return is_frozen(use) ? "the freezer" : "the cold";
}

/// "600 g of silt bed from the freezer": of each mix and place all tubs together, whatever feel they go in at.
std::vector<std::string> amounts_by_place(const std::vector<KeptUse>& kept) {
    std::vector<std::pair<std::string, Mass>> sums;
    for (const KeptUse& use : kept) {
        const std::string what = " of " + use.of.of + " from " + place_words(use);
        const auto same = std::find_if(sums.begin(), sums.end(), [&](const auto& sum) { return sum.first == what; });
        if (same == sums.end())
            sums.emplace_back(what, use.of.mass);
        else
            same->second += use.of.mass;
    }
    std::vector<std::string> amounts;
    amounts.reserve(sums.size());
    for (const auto& [what, mass] : sums) amounts.push_back(shown_mass(scale_mass(mass)) + what);
    return amounts;
}

}  // namespace

std::string kept_amount(const KeptUse& use) {
    return shown_mass(scale_mass(use.of.mass)) + " from " + place_words(use) + (is_frozen(use) ? ", thawed" : "");
}

std::string kept_handling(const KeptUse& use) {
    const std::string loosen = can_be(MixState::riddled, use.wetness) ? "riddle it, " : "stir it up, ";
    if (use.more_water > least_water_told)
        return loosen + "stir in about " + shown_water(jug_water(use.more_water)) + " of water to " + use.fed_at +
               ", and use it first";
    if (use.more_water < Mass{} - least_water_told)
        return "it is wetter than " + use.fed_at + ", so work it into the fresh mix before you pour; it brings about " +
               shown_water(jug_water(Mass{} - use.more_water)) + " of the water";
    return use.fed_at.empty() ? "use it first" : loosen + "and use it first";
}

std::string kept_in_batch(const PlannedBatch& batch) {
    const char* of_it = batch.dry > Mass{} || batch.kept.size() > 1 ? " Of it " : " That is ";
    std::string text;
    for (const KeptUse& use : batch.kept) {
        text += of_it + kept_amount(use) + ": ";
        text += kept_handling(use) + ".";
    }
    return text;
}

Mass kept_mass(const std::vector<KeptUse>& kept) {
    Mass mass;
    for (const KeptUse& use : kept) mass += use.of.mass;
    return mass;
}

std::string kept_text(const std::vector<KeptUse>& kept) {
    if (kept.empty()) return {};
    const std::vector<std::string> amounts = amounts_by_place(kept);
    std::string text = listed(amounts) + (amounts.size() > 1 ? " are" : " is") +
                       " used first: paid for before, so it is in no sum here, and nothing of it is bought or weighed.";
    if (std::any_of(kept.begin(), kept.end(), is_frozen))
        text += " Stir back in what drips as it thaws; that none is lost is an estimate. Do not freeze it again.";
    return text;
}

Json kept_json(const std::vector<KeptUse>& kept) {
    Json json = Json::array();
    for (const KeptUse& use : kept)
        json.push_back({{"name", use.of.of},
                        {"mass_g", use.of.mass.in(gram)},
                        {"state", name_of(use.of.state)},
                        {"feel", text_or_null(use.of.feel)},
                        {"fed_at", text_or_null(use.fed_at)},
                        {"dry_g", use.dry.in(gram)},
                        {"water_g", (use.water + use.soak_water).in(gram)},
                        {"more_water_g", use.more_water.in(gram)},
                        {"best_before", use.of.best_before ? Json(date_text(*use.of.best_before)) : Json()}});
    return json;
}

}  // namespace baitwright
