#include "page/first_answers.h"

#include <algorithm>

#include "answers/mix/answer_mix.h"
#include "answers/pellets/soak_pellets.h"
#include "answers/plan/plan_session.h"
#include "bait/recipe.h"
#include "files/value_text.h"
#include "page/mixes_fed.h"
#include "quantities/clock.h"
#include "quantities/number_text.h"
#include "questions/mix_question.h"
#include "questions/plan_question.h"
#include "questions/soak_question.h"

namespace baitwright {

namespace {

using Flags = std::map<std::string, std::vector<std::string>>;

/// As a command reads them: what is usual stands in for flags that were not typed.
Arguments asked_first(std::vector<std::string> words, Flags flags, const Usual& usual,
                      std::initializer_list<const char*> keys) {
    Arguments arguments(std::move(words), std::move(flags), usual);
    for (const char* key : keys) arguments.give_usual(std::string("--") + key, key);
    return arguments;
}

std::string warmth_text(Temperature water) {
    return number_text_within(water.in_celsius(), 1e-9) + "degC";
}

MixAnswer mixed(const BankContents& contents, const Shelf& shelf, const Recipe& mix, const Arguments& arguments) {
    MixRequest request = mix_request(arguments);
    request.today = contents.made_on;
    return answer_mix(shelf, mix, request);
}

/// What the plan makes by that name: a mix of the shelf, or of several things that go in together.
std::optional<Recipe> mix_called(const std::string& name, const MixesFed& fed, const Shelf& shelf) {
    for (const Recipe& mix : fed.together)
        if (mix.name == name) return mix;
    return shelf.find_recipe(name);
}

}  // namespace

SessionPlan first_plan(const BankContents& contents, const CarriedStrategy& carried,
                       const std::optional<Venue>& venue) {
    Flags flags;
    if (contents.start) flags["--start"] = {clock_text(*contents.start)};
    if (contents.people > 1) flags["--people"] = {std::to_string(contents.people)};
    PlanRequest request = plan_request(asked_first({carried.strategy.name}, std::move(flags), contents.always,
                                                   {"travel", "hands", "kit", "pump", "vessel", "water-temp", "tub"}),
                                       contents.made_on);
    request.venue = venue;
    return plan_session(*carried.shelf, carried.strategy, contents.stock, request);
}

std::optional<MixAnswer> first_mix(const BankContents& contents, const CarriedStrategy& carried,
                                   const SessionPlan& plan) {
    const MixesFed fed = mixes_fed(carried.strategy, *carried.shelf);
    for (const PlannedBatch& batch : plan.batches) {
        const auto mix = mix_called(batch.name, fed, *carried.shelf);
        if (!mix || !(batch.dry > Mass{})) continue;
        Flags flags{{"--dry-mass", {amount_text(batch.dry)}}, {"--water-temp", {warmth_text(plan.water)}}};
        if (!batch.feel.empty()) flags["--feel"] = {batch.feel};
        return mixed(contents, *carried.shelf, *mix, asked_first({batch.name}, std::move(flags), contents.always, {}));
    }
    return std::nullopt;
}

std::optional<SoakAnswer> first_soaks(const BankContents& contents, const Shelf& shelf, const SessionPlan& plan) {
    std::vector<std::pair<std::string, Mass>> amounts;
    for (const PlannedSoak& soak : plan.soaks) {
        const auto same =
            std::find_if(amounts.begin(), amounts.end(), [&](const auto& amount) { return amount.first == soak.name; });
        if (same == amounts.end())
            amounts.emplace_back(soak.name, soak.dry);
        else
            same->second += soak.dry;
    }
    if (amounts.empty()) return std::nullopt;
    std::vector<std::string> words;
    words.reserve(amounts.size());
    for (const auto& [name, dry] : amounts) words.push_back(name + "=" + amount_text(dry));
    return soak_pellets(shelf, soak_request(asked_first(std::move(words), {{"--water-temp", {warmth_text(plan.water)}}},
                                                        contents.always, {"pump", "vessel"})));
}

MixAnswer litre_of(const BankContents& contents, const Shelf& shelf, const std::string& mix) {
    return mixed(contents, shelf, shelf.recipe(mix),
                 asked_first({mix}, {{"--wet-volume", {"1l"}}}, contents.always, {"water-temp"}));
}

}  // namespace baitwright
