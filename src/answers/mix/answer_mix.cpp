#include "answers/mix/answer_mix.h"

#include <algorithm>

#include "answers/mix/mix_doubt.h"
#include "answers/mix/mix_for_once.h"
#include "answers/mix/several_targets.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/shared/check_temperature.h"
#include "answers/shared/stale_prices.h"
#include "bait/caution.h"
#include "bait/ingredient_cautions.h"

namespace baitwright {

namespace {

std::vector<std::string> cautions_of(const ResolvedMix& mix) {
    std::vector<std::string> words;
    for (const SolidPart& part : mix.solids) add_caution_words(part.ingredient, words);
    for (const LiquidPart& part : mix.liquids) add_caution_words(part.ingredient, words);
    for (const ResolvedDose& dose : mix.doses) add_caution_words(dose.ingredient, words);
    return caution_sentences(words);
}

bool fills_cups(const MixAnswer& answer) {
    const auto cup = [](const TargetAnswer& target) { return target.state == MixState::cupped; };
    return answer.state == MixState::cupped || std::any_of(answer.targets.begin(), answer.targets.end(), cup);
}

/// What it takes from the log, said once.
void tell_learnt(const ResolvedMix& mix, MixAnswer& answer) {
    answer.learnt.add_water(mix);
    if (fills_cups(answer)) answer.learnt.add_cup(mix);
    if (auto told = answer.learnt.told()) answer.warnings.push_back(*std::move(told));
}

void add_soaks(const ResolvedMix& mix, MixAnswer& answer) {
    for (std::size_t i = 0; i < mix.solids.size(); ++i) {
        if (mix.solids[i].prepare != Preparation::soaked) continue;
        PartAnswer& part = answer.parts[i];
        const SoakedAnswer soaked = soak_one(mix.solids[i].ingredient, part.mass, answer.water_temperature);
        part.soak = PartSoak{soaked.pour, soaked.soak.middle, soaked.stand_ready.middle, soaked.wet()};
    }
}

}  // namespace

MixAnswer answer_mix(const Shelf& shelf, const Recipe& recipe, const MixRequest& request) {
    check_water_temperature(request.water_temperature);
    const ResolvedMix mix = resolve_for_once(recipe, shelf, request);
    MixAnswer answer = scale_batch(mix, shelf.feels(), request);
    answer.doubt = doubt_of(mix, answer, request.seed);
    doubt_targets(mix, answer, request.seed);
    if (auto learned = hand_learned(mix)) answer.warnings.push_back(*std::move(learned));
    tell_learnt(mix, answer);
    if (request.today)
        if (auto stale = stale_prices(ingredients_of(mix), *request.today, answer.currency))
            answer.warnings.push_back(*std::move(stale));
    answer.cautions = cautions_of(mix);
    add_soaks(mix, answer);
    return answer;
}

}  // namespace baitwright
