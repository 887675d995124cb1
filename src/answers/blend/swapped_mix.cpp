#include "answers/blend/swapped_mix.h"

#include <algorithm>
#include <cmath>

#include "answers/shared/stale_prices.h"
#include "bait/amount.h"
#include "bait/feel.h"
#include "bait/ingredient_cautions.h"
#include "bait/mix_property.h"
#include "bait/one_currency.h"
#include "bait/own_values.h"
#include "bait/pellets_alone.h"
#include "bait/pricing.h"
#include "bait/wetted_mix.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

bool holds(const std::vector<SolidPart>& parts, const std::string& name) {
    return std::any_of(parts.begin(), parts.end(),
                       [&](const SolidPart& part) { return folded_name(part.ingredient.name) == folded_name(name); });
}

/// Compares the mix before and after.
class SwapTeller {
public:
    SwapTeller(const Shelf& shelf, const Recipe& recipe, const ResolvedMix& mix, const std::vector<SolidPart>& removed,
               const std::vector<SolidPart>& solids, const Currency* usual)
        : shelf_(shelf), recipe_(recipe), before_(mix), after_(mix), removed_(removed), usual_(usual) {
        after_.solids = solids;
        if (after_.learnt) heed_own_values(after_, shelf);
    }

    SwapAnswer run() {
        answer_.recipe = before_.name;
        for (const SolidPart& part : removed_) answer_.without.push_back(part.ingredient.name);
        take_shares();
        take_water();
        answer_.hold = std::exp(binder(after_.solids) - binder(before_.solids));
        take_prices();
        take_cautions();
        take_recipe();
        return std::move(answer_);
    }

private:
    void take_shares() {
        for (const SolidPart& part : removed_)
            answer_.gone.push_back({part.ingredient.name, part.prepare, part.share, 0.0});
        for (const SolidPart& part : after_.solids) {
            SwapShare share{part.ingredient.name, part.prepare, 0.0, part.share};
            for (const SolidPart& old : before_.solids)
                if (old.ingredient.name == part.ingredient.name && old.prepare == part.prepare) share.was = old.share;
            (holds(before_.solids, share.name) ? answer_.rest : answer_.stand_ins).push_back(std::move(share));
        }
    }

    void take_water() {
        answer_.soaked_alone = is_soaked_alone(before_) && is_soaked_alone(after_);
        if (answer_.soaked_alone) {
            answer_.feel = answer_.feel_of_old_water = feel_of_pellets;
            answer_.water_was = water_kept_soaked(before_);
            answer_.water_is = water_kept_soaked(after_);
            answer_.wetness_of_old_water = wetness_of_pellets(MixState::squeezed);
            return;
        }
        const Feel& feel = before_.feel;
        answer_.feel = feel.name;
        const MixNumbers old_numbers = numbers_of(before_), numbers = numbers_of(after_);
        const WettedMix was = wet(old_numbers, feel.aim), is = wet(numbers, feel.aim);
        answer_.water_was = was.water;
        answer_.water_is = is.water;
        const WettedMix with_old = wet(numbers, feel.aim, was.water);
        if (!(with_old.need.wetted_share > 0)) {
            answer_.feel_of_old_water = feel.name;
            answer_.wetness_of_old_water = feel.aim;
            return;
        }
        answer_.wetness_of_old_water = std::min<double>(
            wettest, wetness_at(with_old.need.marks, with_old.wetting_present / with_old.need.wetted_share));
        answer_.feel_of_old_water = feel_of(shelf_.feels(), answer_.wetness_of_old_water).name;
    }

    static double binder(const std::vector<SolidPart>& solids) {
        double sum = 0;
        for (const SolidPart& part : solids) sum += part.share * part.ingredient.binder.value;
        return sum;
    }

    /// Of a kilogram; nothing where a price is missing or is in another currency.
    [[nodiscard]] std::optional<double> price(const std::vector<SolidPart>& solids) const {
        double sum = 0;
        for (const SolidPart& part : solids) {
            const auto minor = exact_cost_minor(part.ingredient, part.share * (1.0 * kilogram), answer_.currency);
            if (!minor) return std::nullopt;
            sum += *minor;
        }
        return sum;
    }

    void take_prices() {
        std::vector<const Ingredient*> ingredients;
        for (const SolidPart& part : before_.solids) ingredients.push_back(&part.ingredient);
        for (const SolidPart& part : after_.solids)
            if (!holds(before_.solids, part.ingredient.name)) ingredients.push_back(&part.ingredient);
        std::vector<PricedIn> priced;
        for (const Ingredient* ingredient : ingredients) add_currencies(priced, *ingredient);
        answer_.currency = answer_currency(priced, usual_);
        answer_.price_was = price(before_.solids);
        answer_.price_is = price(after_.solids);
        std::vector<PricedElsewhere> elsewhere;
        for (const Ingredient* ingredient : ingredients)
            if (auto other = priced_elsewhere(*ingredient, answer_.currency)) elsewhere.push_back(*std::move(other));
        if (elsewhere.empty()) return;
        answer_.warnings.push_back(
            other_currency_warning(elsewhere, *answer_.currency, "the prices of a kilo are not compared"));
        answer_.warnings.back().answer_is_no = false;  // the swap is right all the same
    }

    void take_cautions() {
        const auto warned = [&](const std::string& word) {
            return std::any_of(before_.solids.begin(), before_.solids.end(), [&](const SolidPart& part) {
                const std::vector<std::string> words = caution_words(part.ingredient);
                return std::find(words.begin(), words.end(), word) != words.end();
            });
        };
        std::vector<std::string>& news = answer_.new_cautions;
        for (const SolidPart& part : after_.solids)
            for (const std::string& word : caution_words(part.ingredient))
                if (!warned(word) && std::find(news.begin(), news.end(), word) == news.end()) news.push_back(word);
    }

    [[nodiscard]] bool rest_moves() const {
        return std::any_of(answer_.rest.begin(), answer_.rest.end(),
                           [](const SwapShare& share) { return std::abs(share.is - share.was) > 1e-9; });
    }

    /// Why the recipe cannot be rewritten part by part; empty where it can.
    [[nodiscard]] std::string obstacle() const {
        for (const SolidPart& part : before_.solids) {
            const auto times = std::count_if(recipe_.parts.begin(), recipe_.parts.end(), [&](const Part& written) {
                return folded_name(written.of) == folded_name(part.ingredient.name);
            });
            if (times > 1) return in_quotes(part.ingredient.name) + " is in it twice";
            if (times == 1 || (!rest_moves() && !holds(removed_, part.ingredient.name))) continue;
            return in_quotes(part.ingredient.name) + " is inside another mix of it; swap it there";
        }
        return {};
    }

    /// The mass of a part as written, or its parts of all parts.
    PartAmount scaled(const Part& part, double factor) const {
        if (const Share* share = std::get_if<Share>(&part.amount)) return Share{share->parts * factor};
        if (const Mass* mass = std::get_if<Mass>(&part.amount)) return *mass * factor;
        const auto ingredient = shelf_.find_ingredient(part.of);
        for (const SolidPart& solid : before_.solids)
            if (ingredient && solid.ingredient.name == ingredient->name)
                return before_.as_written * solid.share * factor;
        return part.amount;  // a liquid, or another mix, which stays as it is
    }

    /// As the recipe has what ran out: pellets alone are soaked without a word of it there.
    [[nodiscard]] Preparation written_preparation(const SwapShare& share) const {
        if (!is_soaked_alone(before_)) return share.prepare;
        const auto written = std::find_if(recipe_.parts.begin(), recipe_.parts.end(),
                                          [&](const Part& part) { return holds(removed_, part.of); });
        return written == recipe_.parts.end() ? share.prepare : written->prepare;
    }

    void take_recipe() {
        answer_.why_not_saved = obstacle();
        if (!answer_.why_not_saved.empty()) return;
        Recipe changed = recipe_;
        changed.parts.clear();
        double share_parts = 0, share_gone = 0;
        for (const SolidPart& part : removed_) share_gone += part.share;
        for (const Part& part : recipe_.parts) {
            if (holds(removed_, part.of)) {
                if (const Share* share = std::get_if<Share>(&part.amount)) share_parts += share->parts;
                continue;
            }
            changed.parts.push_back(part);
            for (const SwapShare& share : answer_.rest)
                if (rest_moves() && folded_name(share.name) == folded_name(part.of))
                    changed.parts.back().amount = scaled(part, share.is / share.was);
        }
        for (const SwapShare& share : answer_.stand_ins) {
            Part part{share.name, before_.as_written * share.is, written_preparation(share)};
            if (share_parts > 0) part.amount = Share{share_parts * share.is / share_gone};
            changed.parts.push_back(std::move(part));
        }
        answer_.changed = std::move(changed);
    }

    const Shelf& shelf_;
    const Recipe& recipe_;
    const ResolvedMix& before_;
    ResolvedMix after_;
    const std::vector<SolidPart>& removed_;
    const Currency* usual_;
    SwapAnswer answer_;
};

}  // namespace

SwapAnswer swapped_mix(const Shelf& shelf, const Recipe& recipe, const ResolvedMix& mix,
                       const std::vector<SolidPart>& removed, const std::vector<SolidPart>& solids,
                       const Currency* usual) {
    return SwapTeller(shelf, recipe, mix, removed, solids, usual).run();
}

}  // namespace baitwright
