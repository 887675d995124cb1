#include "answers/learn/mix_looks.h"

#include "answers/drop/drop_break.h"
#include "answers/drop/drop_setup.h"
#include "answers/drop/drop_sketch.h"
#include "answers/shared/wanted_feel.h"
#include "bait/pellets_alone.h"
#include "bait/resolve_mix.h"
#include "physics/falling_body.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Length deep_enough = 3.0 * metre;  // where it was not said how deep it was
constexpr Length least_depth = 10.0 * centimetre;
constexpr double came_down_whole = 0.98;  // of the depth

/// The recipe opened up, at the feel that was said.
struct MixAtFeel {
    ResolvedMix mix;
    Ratio wetness;
};

/// Pellets alone have no feel: they are soaked, and lie as that state has them. What was logged at a feel says nothing.
MixAtFeel at_feel(const Shelf& shelf, const Recipe& recipe, const std::string& feel, MixState pellets) {
    MixAtFeel made{resolve_as_made(recipe, shelf), 0.0};
    made.mix.learnt_mix.reset();  // against our model, not against what the log has made of it
    if (is_pellets_alone(made.mix)) {
        if (!feel.empty()) refuse_pellets_alone(made.mix);
        made.wetness = wetness_of_pellets(pellets);
        return made;
    }
    std::optional<std::string> said;
    if (!feel.empty()) said = feel;
    made.wetness = wanted_feel(shelf.feels(), made.mix.feel, said).wetness;
    return made;
}

/// A recipe may have changed since: what it no longer fits says nothing.
template <class Model>
std::optional<SeenAndModelled> if_it_fits(const Shelf& shelf, const std::string& name, const std::string& feel,
                                          MixState pellets, const Model& model) {
    const auto recipe = shelf.find_recipe(name);
    if (!recipe) return std::nullopt;
    try {
        const std::optional<SeenAndModelled> both = model(at_feel(shelf, *recipe, feel, pellets));
        return both && both->seen > 0 && both->modelled > 0 ? both : std::nullopt;
    } catch (const Error&) {
        return std::nullopt;
    }
}

MixState state_of(const LoggedLook& look) {
    return std::holds_alternative<Length>(look.form) ? MixState::squeezed : MixState::cupped;
}

DropRequest request_of(const LoggedLook& look) {
    DropRequest request;
    if (const auto* cup = std::get_if<Volume>(&look.form)) {
        request.form = DroppedCup{*cup};
    } else {
        request.form = DroppedBall{std::get<Length>(look.form)};
    }
    request.squeeze = look.squeeze;
    request.depth = look.depth >= least_depth ? look.depth : deep_enough;
    return request;
}

DropSetup setup_at(const MixAtFeel& made, const DropRequest& request) {
    DropAnswer answer;
    return setup_of(made.mix, portion_of(request.form, made.wetness), request, made.wetness, answer);
}

}  // namespace

std::optional<SeenAndModelled> cup_seen(const Shelf& shelf, const LoggedWeight& weight) {
    return if_it_fits(
        shelf, weight.of, weight.feel, MixState::cupped, [&](const MixAtFeel& made) -> std::optional<SeenAndModelled> {
            const MixNumbers numbers = numbers_of(made.mix);
            const WettedMix wetted = wet(numbers, made.wetness);
            const MixState state =
                can_be(MixState::cupped, made.wetness) ? MixState::cupped : usual_state(made.wetness);
            const SpecificVolume volume = wet_volume(pack(numbers, wetted), state, made.wetness);
            return SeenAndModelled{weight.mass.in(gram), (weight.vessel / volume * wetted.wet_mass).in(gram)};
        });
}

std::optional<SeenAndModelled> hold_seen(const Shelf& shelf, const LoggedLook& look) {
    if (!look.holds && !look.breaks_at) return std::nullopt;
    return if_it_fits(
        shelf, look.of, look.feel, state_of(look), [&](const MixAtFeel& made) -> std::optional<SeenAndModelled> {
            const DropRequest request = request_of(look);
            const DropSetup setup = setup_at(made, request);
            const Time usual =
                holds(setup.how, setup.wetness, diameter_of(setup.body.volume), setup.binder, request.squeeze);
            if (look.holds) return SeenAndModelled{look.holds->in(second), usual.in(second)};
            if (look.depth > Length{} && *look.breaks_at >= came_down_whole * look.depth) return std::nullopt;
            if (!(setup.body.under_water > Mass{})) return std::nullopt;
            const auto fell = fall_of(setup, {}, *look.breaks_at, never_breaks);
            if (!fell) return std::nullopt;
            return SeenAndModelled{(fell->at - waits_afloat(setup.body, setup.water)).in(second), usual.in(second)};
        });
}

std::optional<SeenAndModelled> carpet_seen(const Shelf& shelf, const LoggedLook& look) {
    if (!look.carpet || look.depth < least_depth) return std::nullopt;
    return if_it_fits(shelf, look.of, look.feel, state_of(look),
                      [&](const MixAtFeel& made) -> std::optional<SeenAndModelled> {
                          DropRequest request = request_of(look);
                          request.own.holds = look.holds;
                          request.own.breaks_at = look.breaks_at;
                          const DropOutcome outcome = follow(setup_at(made, request), {});
                          if (outcome.floats) return std::nullopt;
                          return SeenAndModelled{look.carpet->in(metre), outcome.sketch.width.most.in(metre)};
                      });
}

}  // namespace baitwright
