#include "answers/answer_mix.h"

#include "answers/mix_doubt.h"
#include "answers/scale_mix.h"
#include "bait/caution.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

/// Fresh water outside this does not stay liquid, or scalds hands and cooks the bait.
void check_temperature(Temperature water) {
    if (water < Temperature::from_celsius(0) || water > Temperature::from_celsius(60))
        throw UsageError("out-of-range", "the water temperature must be from 0 to 60 degC", "for example --water-temp 12degC");
}

std::vector<std::string> cautions_of(const ResolvedMix& mix) {
    std::vector<std::string> words;
    const auto add = [&](const Ingredient& ingredient) {
        words.insert(words.end(), ingredient.cautions.begin(), ingredient.cautions.end());
    };
    for (const SolidPart& part : mix.solids) add(part.ingredient);
    for (const LiquidPart& part : mix.liquids) add(part.ingredient);
    for (const ResolvedDose& dose : mix.doses) add(dose.ingredient);
    return caution_sentences(words);
}

}  // namespace

MixAnswer answer_mix(const Shelf& shelf, const Recipe& recipe, const MixRequest& request) {
    check_temperature(request.water_temperature);
    const ResolvedMix mix = resolve(recipe, shelf);
    MixAnswer answer = scale_mix(mix, shelf.feels(), request);
    answer.doubt = doubt_of(mix, answer, request.seed);
    answer.cautions = cautions_of(mix);
    return answer;
}

}  // namespace baitwright
