#include "report/mix_targets_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "answers/mix/mix_doubt.h"
#include "quantities/listed.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/shape_text.h"

namespace baitwright {

namespace {

/// Of an additive that goes in with the let-down: less is no measure's, and goes in with the rest.
constexpr Mass least_dose_told = 0.05 * gram;

/// Of water: less is not told.
constexpr Mass least_let_down = 0.5 * gram;

/// As `tubs_of` splits a mix.
constexpr Mass most_in_a_tub = 5.0 * kilogram;

/// Targets of one feel, which are made out of one tub.
struct FeelShare {
    std::vector<const TargetAnswer*> targets;
    Mass take, water, low, high;
    std::vector<Mass> additives;  ///< more of each

    [[nodiscard]] const std::string& feel() const { return targets.front()->feel; }
    [[nodiscard]] Ratio wetness() const { return targets.front()->wetness; }
    [[nodiscard]] bool is_let_down() const { return water >= least_let_down; }
};

void add_target(FeelShare& share, const TargetAnswer& target) {
    share.targets.push_back(&target);
    share.take += target.take;
    share.water += target.let_down_water;
    share.low += target.let_down_range.low;
    share.high += target.let_down_range.high;
    share.additives.resize(target.let_down_additives.size());
    for (std::size_t i = 0; i < share.additives.size(); ++i) share.additives[i] += target.let_down_additives[i];
}

/// From the driest to the wettest. The ranges of one feel go with the dry mass, so that they may be summed.
std::vector<FeelShare> feel_shares(const MixAnswer& answer) {
    std::vector<FeelShare> shares;
    for (const TargetAnswer& target : answer.targets) {
        const auto same = std::find_if(shares.begin(), shares.end(),
                                       [&](const FeelShare& share) { return share.wetness() == target.wetness; });
        add_target(same == shares.end() ? shares.emplace_back() : *same, target);
    }
    sort_stably(shares.begin(), shares.end(),
                [](const FeelShare& a, const FeelShare& b) { return a.wetness() < b.wetness(); });
    return shares;
}

std::string names_of(const FeelShare& share) {
    std::vector<std::string> names;
    names.reserve(share.targets.size());
    for (const TargetAnswer* target : share.targets) names.push_back(portions_text(target->portions));
    return listed(names);
}

/// What goes into the let-down besides water, where a measure can tell it; empty where nothing does.
std::string more_of_doses(const MixAnswer& answer, const FeelShare& share) {
    std::vector<std::string> doses;
    for (std::size_t i = 0; i < share.additives.size(); ++i) {
        const AdditiveAnswer& additive = answer.additives[i];
        if (share.additives[i] < least_dose_told) continue;
        const std::string amount = additive.liquid ? shown_dose(share.additives[i] / additive.mass * additive.volume)
                                                   : shown_dose(share.additives[i]);
        doses.push_back(amount + " of " + additive.name);
    }
    return doses.empty() ? std::string() : " with " + listed(doses) + " in it";
}

std::string let_down_step(const MixAnswer& answer, const FeelShare& share, bool is_last) {
    const double tubs = std::ceil(share.take / most_in_a_tub - 1e-9);
    std::string text = fmt::format(
        "{}, about {}{}, for {}: add {} of water{} a little at a time, about {} and a minute between, until it feels "
        "right ({}).",
        is_last ? "Let down what is left" : "Take a share of it", shown_mass(scale_mass(share.take)),
        tubs > 1 ? fmt::format(" in {:.0f} tubs", tubs) : "", names_of(share), shown_water(jug_water(share.water)),
        more_of_doses(answer, share), shown_water(creeping_step(share.water)), share.feel());
    if (share.high > share.water) text += fmt::format(" Never go past {}.", shown_water(jug_water(share.high)));
    if (answer.wetness < 1) text += fmt::format(" Give it {} before you judge it.", shown_time(answer.rest));
    return text;
}

}  // namespace

bool lets_down(const MixAnswer& answer) {
    return std::any_of(answer.targets.begin(), answer.targets.end(),
                       [](const TargetAnswer& target) { return target.let_down_water >= least_let_down; });
}

std::string targets_title(const MixAnswer& answer) {
    std::string text;
    for (const TargetAnswer& target : answer.targets) {
        if (!text.empty()) text += lets_down(answer) ? "; " : ", ";
        text += portions_text(target.portions);
        if (lets_down(answer)) text += ", " + target.feel;
    }
    return text;
}

void tell_let_down_water(Told& told, const MixAnswer& answer) {
    for (const FeelShare& share : feel_shares(answer)) {
        if (!share.is_let_down()) continue;
        std::vector<std::string> cells{shown_water(jug_water(share.water))};
        if (std::string other = other_water(share.water); !other.empty()) cells.push_back(std::move(other));
        if (share.high > 1.02 * share.low)
            cells.push_back("on to " + share.feel() + "; 9 times in 10 it is " +
                            shown_water(jug_water(share.low), jug_water(share.high)));
        told.amounts("then", std::move(cells));
    }
}

std::string targets_made_text(const MixAnswer& answer) {
    Mass wet;
    for (const TargetAnswer& target : answer.targets) wet += target.wet_mass;
    return fmt::format("{} wet in all, from one batch", shown_mass(scale_mass(wet)));
}

void tell_targets(Told& told, const MixAnswer& answer) {
    for (const TargetAnswer& target : answer.targets) {
        std::string text = fmt::format("{}, {}: {} of the dry mix", portions_text(target.portions), target.feel,
                                       shown_mass(scale_mass(target.dry_mass)));
        if (target.water > Mass{}) text += fmt::format(" and {} of water in all", shown_water(jug_water(target.water)));
        if (target.water_range.high > 1.02 * target.water_range.low)
            text += fmt::format(" (9 times in 10 {})",
                                shown_water(jug_water(target.water_range.low), jug_water(target.water_range.high)));
        text += fmt::format(", enough for {}.", counted_range(target.count_range, target.portions.called));
        told.line("", text);
    }
}

Mass mass_with_let_down(const MixAnswer& answer, std::size_t additive) {
    Mass sum;
    for (const FeelShare& share : feel_shares(answer))
        if (share.is_let_down() && share.additives[additive] >= least_dose_told) sum += share.additives[additive];
    return sum;
}

std::vector<std::string> target_steps(const MixAnswer& answer) {
    std::vector<std::string> steps;
    const std::vector<FeelShare> shares = feel_shares(answer);
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (shares[i].is_let_down()) steps.push_back(let_down_step(answer, shares[i], i + 1 == shares.size()));
        for (const TargetAnswer* target : shares[i].targets)
            steps.push_back(shape_text(target->portions, target->state, i == 0 ? answer.tubs.count : 1));
    }
    return steps;
}

}  // namespace baitwright
