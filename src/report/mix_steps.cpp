#include "report/mix_steps.h"

#include <fmt/format.h>

#include "answers/mix/mix_doubt.h"
#include "quantities/listed.h"
#include "quantities/units.h"
#include "report/display.h"
#include "report/mix_targets_text.h"
#include "report/remedy_text.h"
#include "report/shape_text.h"
#include "report/stirred_in_last.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

std::string soak_step(const MixAnswer& answer) {
    std::vector<std::string> soaked;
    for (const PartAnswer& part : answer.parts) {
        if (part.prepare != Preparation::soaked) continue;
        std::string how = shown_mass(scale_mass(part.mass)) + " of " + part.name;
        if (part.soak)
            how += fmt::format(" ({} of water on them, {}, drain, stand {})", shown_water(jug_water(part.soak->pour)),
                               shown_soak_time(part.soak->soak), shown_soak_time(part.soak->stand));
        soaked.push_back(std::move(how));
    }
    if (soaked.empty()) return {};
    return fmt::format("First soak {}{}; they go in last.", listed(soaked),
                       answer.tubs.count > 1 ? ", for all the tubs" : "");
}

/// After the last riddling, which would crush it. What is not soaked is weighed now, for one tub of several.
std::string last_step(const MixAnswer& answer) {
    const bool one_tub = answer.tubs.count == 1;
    std::vector<std::string> last;
    for (const PartAnswer& part : answer.parts) {
        if (!part.goes_in_last) continue;
        if (part.prepare == Preparation::soaked)
            last.push_back((one_tub ? "" : "a share of ") + told_last(part.name, {}));
        else
            last.push_back(told_last(part.name, part.mass / answer.tubs.count));
    }
    if (last.empty()) return {};
    return sentence(stirred_in_last(last, lets_down(answer) ? answer.feel : std::string()) + ", and riddle it no more");
}

std::string additive_step(const MixAnswer& answer) {
    std::vector<std::string> liquids, powders;
    for (std::size_t i = 0; i < answer.additives.size(); ++i) {
        const AdditiveAnswer& additive = answer.additives[i];
        const Mass first = additive.mass - mass_with_let_down(answer, i);
        if (!(first > Mass{})) continue;
        if (additive.liquid)
            liquids.push_back(shown_dose(first / additive.mass * additive.volume / answer.tubs.count) + " of " +
                              additive.name);
        else
            powders.push_back(shown_dose(first / answer.tubs.count) + " of " + additive.name);
    }
    std::string text;
    if (!powders.empty())
        text += "Stir " + listed(powders) + " into the dry mix" + (answer.tubs.count > 1 ? " of each tub" : "") + ". ";
    if (!liquids.empty())
        text += "Stir " + listed(liquids) +
                (answer.water_to_add > Mass{} ? " into the water you pour first." : " into the mix.");
    return text;
}

/// "Squeeze 20 balls": what becomes of it, of each of several in their order.
void add_shape_steps(const MixAnswer& answer, std::vector<std::string>& steps) {
    for (std::string& step : target_steps(answer)) steps.push_back(std::move(step));
    if (answer.portions)
        steps.push_back(shape_text(*answer.portions, answer.state, answer.tubs.count));
    else if (answer.targets.empty() && answer.state == MixState::squeezed)
        steps.emplace_back("Squeeze it into balls as you need them.");
}

std::string creep_step(const MixAnswer& answer, Mass first) {
    const double tubs = answer.tubs.count;
    const Mass most = jug_water(answer.doubt->water.high / tubs);
    const bool poured = first >= 1.0 * gram;
    return fmt::format(
        "Add {} a little at a time, about {} and a minute between, until it feels right ({}). Most likely that is "
        "{}{}; never go past {}.",
        poured ? "the rest" : "water", shown_water(creeping_step(answer.tubs.water_each)), answer.feel,
        shown_water(std::max(first, jug_water(answer.tubs.water_each))), poured ? " with the first pour" : "",
        shown_water(most));
}

void add_dry_steps(const MixAnswer& answer, std::vector<std::string>& steps) {
    const auto add = [&steps](std::string step) {
        if (!step.empty()) steps.push_back(std::move(step));
    };
    add(soak_step(answer));
    if (answer.tubs.count > 1)
        add(
            fmt::format("Stir all the dry parts together, then work in {} tubs of about {} dry each. What follows is "
                        "for one tub.",
                        answer.tubs.count, shown_mass(scale_mass(answer.tubs.dry_each))));
    else if (answer.marks.slump > 0)
        add("Weigh the dry parts into a wide tub and stir them together dry.");
    else
        add("Weigh the parts into a wide tub and stir them together.");  // none of them takes water
    add(additive_step(answer));
}

/// With water in it already, what puts it right: as `water` says it, for all of it together.
void add_remedy_steps(const MixAnswer& answer, std::vector<std::string>& steps) {
    steps.push_back(remedy_text({answer.feel, answer.water_to_add, answer.dry_to_add, answer.all_parts_take_water}));
    if (answer.water_to_add > Mass{} && answer.doubt)
        steps.push_back(
            fmt::format("Let it rest {} (water at {}) and rub it through a riddle. Never add more than {} of water.",
                        shown_time(answer.rest), shown_temperature(answer.water_temperature),
                        shown_water(jug_water(answer.doubt->water.high))));
    else if (answer.dry_to_add > Mass{})
        steps.push_back(fmt::format("Give it {} before you judge it.", shown_time(answer.rest)));
    if (answer.tubs.count > 1)
        steps.push_back(
            fmt::format("It fills {} tubs: share it out between them, with what goes in.", answer.tubs.count));
}

}  // namespace

std::vector<std::string> mix_steps(const MixAnswer& answer) {
    if (answer.soaked_alone) return pellet_steps(answer);
    std::vector<std::string> steps;
    const auto add = [&steps](std::string step) {
        if (!step.empty()) steps.push_back(std::move(step));
    };
    const bool in_the_tub = answer.water_already_in > Mass{};  // the dry mix and what is stirred into it are, too
    if (!in_the_tub) add_dry_steps(answer, steps);
    if (in_the_tub) {
        add_remedy_steps(answer, steps);
        if (answer.dry_to_add > Mass{}) return steps;
        add_shape_steps(answer, steps);
        return steps;
    }
    if (answer.dry_to_add > Mass{}) {
        add(fmt::format("Add no water. Stir in about {} more of the dry mix{}, and let it rest {}.",
                        shown_mass(scale_mass(answer.dry_to_add / answer.tubs.count)),
                        answer.all_parts_take_water ? "" : ", leaving out what takes no water",
                        shown_time(answer.rest)));
        add(last_step(answer));
        return steps;
    }
    if (answer.water_to_add > Mass{} && answer.doubt) {
        const Mass first = jug_water(answer.doubt->first_pour / answer.tubs.count);
        if (first < 1.0 * gram) {
            add("Rub it through a riddle and feel it before you add any water: it may need none.");
        } else {
            add(fmt::format("Pour in {} of water, stirring all the while.", shown_water(first)));
            add(fmt::format("Rest {} (water at {}), then rub it through a riddle.", shown_time(answer.rest),
                            shown_temperature(answer.water_temperature)));
        }
        add(creep_step(answer, first));
    }
    add(last_step(answer));
    add_shape_steps(answer, steps);
    return steps;
}

}  // namespace baitwright
